/** Names of places as people read them at the bench, made from their ids. */
import { classNames, type PartClass, partClasses } from '../parts/part.ts';

const frontNames: Record<string, string> = {
  'power-button': 'the pins for the power button',
  'usb-2': 'the USB 2 pins',
  'usb-3': 'the USB 3 pins',
  'usb-c': 'the USB-C pins',
  'hd-audio': 'the audio pins',
};

const plugNames: Record<string, string> = { hdmi: 'HDMI', displayport: 'DisplayPort', 'dvi-d': 'DVI', vga: 'VGA' };

const panelNames: Record<string, string> = { front: 'the front', rear: 'the rear', top: 'the top' };

/**
 * By the kind of the place and its id: `memory-slot`, `motherboard-1/memory-slot-a2` is "slot A2". Names stand
 * inside a sentence and need no article. A name whose shape is not known is its id's own words: never empty, never wrong.
 */
export function placeName(kind: string, place: string): string {
  const slash = place.indexOf('/');
  const unit = place.slice(0, slash);
  const name = place.slice(slash + 1);
  return namers[kind]?.(name, unit) ?? name.replaceAll('-', ' ');
}

type Namer = (name: string, unit: string) => string | undefined;

const namers: Record<string, Namer | undefined> = {
  'processor-socket': () => 'the processor socket',
  'cooler-mount': () => 'the cooler mounting of the board',
  cooling: () => 'the cooler',
  'memory-slot': (name) => `slot ${without(name, 'memory-slot').toUpperCase()}`,
  'expansion-slot': (name) => `slot ${without(name, 'expansion-slot')}`,
  'module-slot': (name) => `M.2 slot ${without(without(name, 'module-slot'), 'm2')}`,
  'drive-data': (name) => `data port ${without(name, 'sata')}`,
  'drive-bay': (name) => `drive bay ${without(name, 'bay')}`,
  'board-mount': () => 'the tray',
  'supply-mount': () => 'the bay for the supply',
  'fan-mount': (name) => {
    const [, panel = '', number] = /(front|rear|top)(?:-(\d+))?$/.exec(name) ?? [];
    return panelNames[panel] && (number ? `${panelNames[panel]}, place ${number}` : panelNames[panel]);
  },
  'board-power': leadPlug,
  'processor-power': leadPlug,
  'card-power': leadPlug,
  'drive-power': leadPlug,
  'fan-header': (name) => `the fan header marked ${without(name, 'header')}`,
  'front-panel': (name) => {
    const [, plug = '', number] = /(power-button|usb-2|usb-3|usb-c|hd-audio)(?:-(\d+))?$/.exec(name) ?? [];
    return frontNames[plug] && (number ? `${frontNames[plug]}, block ${number}` : frontNames[plug]);
  },
  picture: (name, unit) => {
    const [, plug = '', number] = /(hdmi|displayport|dvi-d|vga)(?:-(\d+))?$/.exec(name) ?? [];
    const owner = partClasses.find((partClass) => unit.replace(/-\d+$/, '') === partClass);
    return plugNames[plug] && `${plugNames[plug]} socket${number ? ` ${number}` : ''} of the ${classOf(owner)}`;
  },
};

/** `lead-card-1-plug-2` is "plug 2 of the supply's card lead 1". */
function leadPlug(name: string): string | undefined {
  const [, lead, plug] = /^lead-(.+)-plug-(\d+)$/.exec(name) ?? [];
  if (!lead) return undefined;
  const [, words = lead, number] = /^(.*?)(?:-(\d+))?$/.exec(lead) ?? [];
  return `plug ${plug} of the supply's ${words.replaceAll('-', ' ')} lead${number ? ` ${number}` : ''}`;
}

const without = (name: string, prefix: string): string =>
  name.startsWith(`${prefix}-`) ? name.slice(prefix.length + 1) : name;
const classOf = (partClass: PartClass | undefined): string => (partClass ? classNames[partClass].one : 'machine');
