/** What a part needs and offers, as people read it on the part's own page. */

import { showNumber } from '../units/money.ts';
import { list } from '../wording/phrases.ts';
import { termName } from '../wording/terms.ts';
import type { KindName, Lowered, Value } from './model.ts';

/** What a need of the kind is joined to, and what a place of the kind is. */
const kindWords: Record<KindName, { need: string; place: string }> = {
  'processor-socket': { need: 'a processor socket', place: 'socket for a processor' },
  'coprocessor-socket': { need: 'a coprocessor socket', place: 'socket for a coprocessor' },
  'cooler-mount': { need: 'a mounting beside the processor socket', place: 'mounting for a cooler' },
  cooling: { need: 'a cooler', place: 'cooling for a processor' },
  'memory-slot': { need: 'a memory slot', place: 'slot for a memory module' },
  'memory-bank': { need: 'a place in a memory bank', place: 'bank for memory modules, filled together' },
  'expansion-slot': { need: 'a slot for a card', place: 'slot for a card' },
  'module-slot': { need: 'an M.2 slot', place: 'slot for an M.2 drive' },
  'drive-data': { need: 'a data port', place: 'data port' },
  'drive-bay': { need: 'a drive bay', place: 'drive bay' },
  'board-mount': { need: 'a tray in a case', place: 'tray for a board' },
  'supply-mount': { need: 'the bay for a supply', place: 'bay for a power supply' },
  'fan-mount': { need: 'a place for a fan', place: 'place for a fan' },
  'radiator-mount': { need: 'a panel for its radiator', place: 'place for a radiator' },
  'board-power': { need: 'a lead for the board', place: 'plug for a board' },
  'processor-power': { need: 'a lead for the processor', place: 'plug for processor power' },
  'card-power': { need: 'a lead for a card', place: 'plug for a card' },
  'drive-power': { need: 'a lead for a drive', place: 'plug for a drive' },
  'fan-header': { need: 'a fan header', place: 'fan header' },
  'light-header': { need: 'a header for lights', place: 'header for lights' },
  'front-panel': { need: 'pins for a front lead', place: 'pins for a front lead' },
  picture: { need: 'a picture socket', place: 'picture socket' },
  keyboard: { need: 'a socket for a keyboard', place: 'socket for a keyboard' },
  pointer: { need: 'a socket for a mouse', place: 'socket for a mouse' },
  mains: { need: 'a mains socket', place: 'mains socket' },
  setting: { need: 'a setting of its jumpers', place: 'setting of a jumper' },
  'monitor-mount': { need: 'a monitor to carry', place: 'holes for an arm' },
};

const itself = (said: string): string => said;
const mm = (said: string): string => `${said} mm`;

/** How a value of an attribute is said. An attribute that is not here is for the search alone, and is not said. */
const attrWords: Readonly<Record<string, { name: string; say: (said: string) => string }>> = {
  armHolesMm: { name: 'distance of its holes', say: (said) => `holes ${said} mm apart` },
  bay: { name: 'size', say: itself },
  bays: { name: 'sizes', say: itself },
  bus: { name: 'bus', say: itself },
  carriesGrams: { name: 'weight it carries', say: (said) => `at most ${said} g` },
  depthMm: { name: 'depth', say: (said) => `${said} mm deep` },
  formFactor: { name: 'form', say: itself },
  formFactors: { name: 'forms', say: itself },
  generation: { name: 'generation', say: (said) => (/^\d/.test(said) ? `generation ${said}` : said) },
  grams: { name: 'weight', say: (said) => `${said} g` },
  hasParity: { name: 'parity', say: (said) => (said === 'yes' ? 'with parity' : 'without parity') },
  heightMm: { name: 'height', say: (said) => `${said} mm high` },
  holesMm: { name: 'distance of the holes', say: (said) => `holes ${said} mm apart` },
  key: { name: 'key', say: itself },
  kilobits: { name: 'data rate', say: (said) => `${said} kbit/s` },
  lanes: { name: 'lanes', say: (said) => `${said} ${said === '1' ? 'lane' : 'lanes'}` },
  largestKb: { name: 'largest module', say: (said) => `modules of ${said} kB at most` },
  lengthLanes: { name: 'length of the slot', say: (said) => `x${said} long` },
  lengthMm: { name: 'length', say: (said) => `${said} mm long` },
  lengthsMm: { name: 'lengths', say: (said) => `${said} mm long` },
  link: { name: 'link', say: itself },
  links: { name: 'links', say: itself },
  megabits: { name: 'data rate', say: (said) => `${said} Mbit/s` },
  mountings: { name: 'mountings', say: itself },
  nanoseconds: { name: 'access time', say: (said) => `${said} ns` },
  pictureMbps: { name: 'data rate of the picture', say: (said) => `${said} Mbit/s` },
  pins: { name: 'contacts', say: (said) => (/^\d+$/.test(said) ? `${said} pins` : said) },
  plug: { name: 'plug', say: itself },
  plugs: { name: 'plugs', say: itself },
  radiatorsMm: { name: 'radiators', say: (said) => `radiators of ${said} mm` },
  registered: { name: 'whether registered', say: (said) => (said === 'yes' ? 'registered' : 'unregistered') },
  senseW: { name: 'what its sense pins announce', say: (said) => `announces ${said} W` },
  shape: { name: 'shape', say: itself },
  signal: { name: 'signal', say: itself },
  signals: { name: 'signals', say: itself },
  sizeGb: { name: 'size', say: (said) => `${said} GB` },
  sizeMm: { name: 'size', say: mm },
  sizesMm: { name: 'sizes', say: mm },
  slots: { name: 'slots', say: (said) => `${said} ${said === '1' ? 'slot' : 'slots'} filled together` },
  slowestNs: { name: 'slowest module', say: (said) => `${said} ns or faster` },
  socket: { name: 'socket', say: itself },
  stackMm: { name: 'thickness with its fans', say: (said) => `${said} mm thick with its fans` },
};
/** A socket of the board behind a data plug is the search's own. */
const unsaid: ReadonlySet<string> = new Set(['drive-data socket']);

const quantityWords: Readonly<Record<string, (amount: number) => string>> = {
  milliamps: (amount) => `draws ${showNumber(amount)} mA`,
  leadDeciwatts: (amount) => `draws ${showNumber(amount / 10)} W`,
  busMBps: (amount) => `up to ${showNumber(amount)} MB/s`,
  halfSlots: (amount) => `${showNumber(amount / 2)} ${amount === 2 ? 'slot' : 'slots'} thick`,
};

export type EndLine = { what: string; count: number; details: string };

/** One line for equal needs, and one for equal places; ways of one place are one place. */
export function endLines({ needs, places }: Lowered): { needs: EndLine[]; places: EndLine[] } {
  const seen = new Set<string>();
  const ways = places.filter(({ id }) => !seen.has(id) && seen.add(id));
  return {
    needs: gather(needs.map(({ kind, attrs, draws }) => [kindWords[kind].need, detailsOf(kind, attrs, draws)])),
    places: gather(
      ways.map(({ kind, attrs, draws }) => [
        kindWords[kind].place,
        detailsOf(kind, attrs, kind === 'setting' ? draws : undefined),
      ]),
    ),
  };
}

function gather(ends: readonly (readonly [what: string, details: string])[]): EndLine[] {
  const lines = new Map<string, EndLine>();
  for (const [what, details] of ends) {
    const key = `${what}\n${details}`;
    const known = lines.get(key);
    if (known) known.count += 1;
    else lines.set(key, { what, count: 1, details });
  }
  return [...lines.values()];
}

function detailsOf(
  kind: KindName,
  attrs: Readonly<Record<string, Value>>,
  draws: Readonly<Record<string, number>> = {},
): string {
  const values = Object.entries(attrs).flatMap(([name, value]) =>
    unsaid.has(`${kind} ${name}`) ? [] : valueWords(name, value),
  );
  const amounts = Object.entries(draws).flatMap(([quantity, amount]) =>
    /^(irq|dma|io|mem)-/.test(quantity) ? [quantity] : (quantityWords[quantity]?.(amount) ?? []),
  );
  return [...values, ...amounts].join('; ');
}

/** Nothing where there is no limit. */
function valueWords(attr: string, value: Value): string[] {
  const words = attrWords[attr];
  if (!words || value === null) return [];
  if (value === undefined) return [`${words.name} not recorded`];
  if (typeof value === 'boolean') return [words.say(value ? 'yes' : 'no')];
  const values = Array.isArray(value) ? value : [value];
  return values.length === 0 ? [`${words.name}: none`] : [words.say(list(values.map(named)))];
}

const named = (value: string | number): string => (typeof value === 'number' ? showNumber(value) : termName(value));
