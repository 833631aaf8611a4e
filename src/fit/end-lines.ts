/** What a part needs and offers, as people read it on the part's own page. */

import type { Part } from '../parts/part.ts';
import { showGbitps, showKg, showMemory } from '../units/amounts.ts';
import { showNumber } from '../units/money.ts';
import { either, list } from '../wording/phrases.ts';
import { notRecorded } from '../wording/sheet-lines.ts';
import { termName } from '../wording/terms.ts';
import type { KindName, Lowered, Unrecorded, Value } from './model.ts';
import { type Block, blocksOf } from './needs/bus-lines.ts';
import { lower } from './needs/index.ts';

/** What a need of the kind is joined to, and what a place of the kind is. */
const kindWords: Record<KindName, { need: string; place: string }> = {
  'processor-socket': { need: 'a processor socket', place: 'socket for a processor' },
  'coprocessor-socket': { need: 'a coprocessor socket', place: 'socket for a coprocessor' },
  'cooler-mount': { need: 'a mounting beside the processor socket', place: 'mounting for a cooler' },
  cooling: { need: 'a cooler', place: 'cooling for a processor' },
  'memory-slot': { need: 'a memory slot', place: 'slot for a memory module' },
  'memory-bank': { need: 'a place in a memory bank', place: 'bank for memory modules' },
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
  setting: { need: 'lines of the bus, by jumpers or for good', place: 'position of a jumper' },
  'monitor-mount': { need: 'a monitor to carry', place: 'holes for an arm' },
};

/** What a need of the kind is joined to: "a header for lights". */
export const needWords = (kind: KindName): string => kindWords[kind].need;

const itself = (said: string): string => said;
const mm = (said: string): string => `${said} mm`;

type AttrWords = {
  name: string;
  say: (said: string, raw: Value) => string;
  /** At a place it is the most that goes there. */
  isMost?: true;
};

/** How a value of an attribute is said. An attribute that is not here is for the search alone, and is not said. */
const attrWords: Readonly<Record<string, AttrWords>> = {
  armHolesMm: { name: 'distance of its holes', say: (said) => `holes ${said} mm apart` },
  at: { name: 'place on the ribbon', say: (said) => (said === 'end' ? 'at the end' : 'in the middle') },
  bay: { name: 'size', say: itself },
  bays: { name: 'sizes', say: itself },
  boardSocket: { name: 'socket', say: itself },
  bus: { name: 'bus', say: itself },
  carriesGrams: { name: 'weight it carries', say: (_, raw) => `at most ${amountOf(raw, showKg)}` },
  depthMm: { name: 'depth', say: (said) => `${said} mm deep` },
  dualMode: { name: 'dual mode', say: (said) => (said === 'yes' ? 'dual-mode' : 'not dual-mode') },
  formFactor: { name: 'form', say: itself },
  formFactors: { name: 'forms', say: itself },
  generation: { name: 'generation', say: (said) => (/^\d/.test(said) ? `generation ${said}` : said) },
  grams: { name: 'weight', say: (_, raw) => amountOf(raw, showKg) },
  hasParity: { name: 'parity', say: (said) => (said === 'yes' ? 'with parity' : 'without parity') },
  heightMm: { name: 'height', say: (said) => `${said} mm high`, isMost: true },
  holesMm: { name: 'distance of the holes', say: (said) => `holes ${said} mm apart` },
  key: { name: 'key', say: itself },
  kilobits: { name: 'data rate', say: (said) => `${said} kbit/s`, isMost: true },
  lanes: { name: 'lanes', say: (said) => `${said} ${said === '1' ? 'lane' : 'lanes'}` },
  largestKb: { name: 'largest module', say: (_, raw) => `modules of at most ${amountOf(raw, showMemory)}` },
  lengthLanes: { name: 'length of the slot', say: (said) => `x${said} long` },
  lengthMm: { name: 'length', say: (said) => `${said} mm long`, isMost: true },
  lengthsMm: { name: 'lengths', say: (said) => `${said} mm long` },
  link: { name: 'link', say: itself },
  links: { name: 'links', say: itself },
  megabits: { name: 'data rate', say: (_, raw) => amountOf(raw, showGbitps), isMost: true },
  mountings: { name: 'mountings', say: itself },
  nanoseconds: { name: 'access time', say: (said) => `${said} ns` },
  pictureMbps: { name: 'data rate of the picture', say: (_, raw) => amountOf(raw, showGbitps) },
  pins: { name: 'contacts', say: (said) => (/^\d+$/.test(said) ? `${said} pins` : said) },
  plug: { name: 'plug', say: itself },
  plugs: { name: 'plugs', say: itself },
  radiatorsMm: { name: 'radiators', say: (said) => `radiators of ${said} mm` },
  registered: { name: 'whether registered', say: (said) => (said === 'yes' ? 'registered' : 'unregistered') },
  senseW: { name: 'what its sense pins announce', say: (said) => `announces ${said} W` },
  shape: { name: 'shape', say: itself },
  signal: { name: 'signal', say: itself },
  signals: { name: 'signals', say: itself },
  sizeGb: { name: 'size', say: (said) => `${said} GB`, isMost: true },
  sizeMm: { name: 'size', say: mm },
  sizesMm: { name: 'sizes', say: mm },
  slots: { name: 'slots', say: (said) => (said === '1' ? 'one module fills it' : `filled ${said} at a time`) },
  slowestNs: { name: 'slowest module', say: (said) => `${said} ns or faster` },
  socket: { name: 'socket', say: itself },
  stackMm: { name: 'thickness with its fans', say: (said) => `${said} mm thick with its fans` },
};

const amountOf = (raw: Value, show: (amount: number) => string): string => show(Number(raw));

/** What says nothing to whoever reads it: the socket behind a ribbon; a rate or lanes where there are none to record. */
function isIdle(kind: KindName, attrs: Lowered['needs'][number]['attrs'], name: string): boolean {
  if (kind === 'drive-data' && name === 'socket') return true;
  if (attrs[name] !== undefined) return false;
  if (name === 'lanes' || name === 'generation') return attrs['link'] === 'sata';
  const isFloppy = String(attrs['socket'] ?? attrs['plug']).startsWith('floppy');
  return (
    (name === 'kilobits' && !isFloppy) ||
    ((name === 'megabits' || name === 'pictureMbps') && Boolean(attrs['signal'] ?? attrs['signals']))
  );
}

const quantityWords: Readonly<Record<string, (amount: number) => string>> = {
  milliamps: (amount) => `draws ${showNumber(amount)} mA`,
  leadDeciwatts: (amount) => `draws ${showNumber(amount / 10)} W`,
  busMBps: (amount) => `up to ${showNumber(amount)} MB/s`,
  halfSlots: (amount) =>
    amount === 1 ? 'half a slot thick' : `${showNumber(amount / 2)} ${amount === 2 ? 'slot' : 'slots'} thick`,
};

export type EndLine = { what: string; count: number; details: string };

/** One line for equal needs, and one for equal places. Ways of one place are one place; positions of a jumper are said with the jumper. */
export function endLines(part: Part): { needs: EndLine[]; places: EndLine[] } {
  const unit = `${part.class}-1`;
  const { needs, places, unrecorded } = lower({ id: unit, part });
  // No board of today has a socket for a coprocessor, so none of them leaves one out.
  const isOfToday = part.class === 'motherboard' && !part.busSlots;
  const isMissing = (of: 'needs' | 'places') => (one: Unrecorded) =>
    one.of === of && !(isOfToday && one.kind === 'coprocessor-socket');
  const said = new Set<string>();
  return {
    needs: gather([
      ...needs
        .filter(({ kind }) => kind !== 'setting')
        .map(({ kind, attrs, draws }): End => [kindWords[kind].need, detailsOf(kind, attrs, false, draws)]),
      ...(part.class === 'bus-card' ? blocksOf(unit, part).map(blockEnd) : []),
      ...unrecorded.filter(isMissing('needs')).map(({ kind }): End => [kindWords[kind].need, notRecorded]),
    ]),
    places: gather([
      ...places.flatMap((place): End[] => {
        const { kind, attrs, meters } = place;
        // A socket for either is one socket, and an empty list is a place where nothing goes.
        const id = meters?.['inputs']?.[0] ?? place.id;
        const isNone = Object.values(attrs).some((value) => Array.isArray(value) && value.length === 0);
        if (kind === 'setting' || isNone || said.has(id)) return [];
        said.add(id);
        const what = meters?.['inputs'] ? 'socket for a keyboard or a mouse' : kindWords[kind].place;
        return [[isOnRibbon(attrs) ? 'place for a drive on a ribbon' : what, detailsOf(kind, attrs, true)]];
      }),
      ...unrecorded.filter(isMissing('places')).map(({ kind }): End => [kindWords[kind].place, notRecorded]),
    ]),
  };
}

type End = readonly [what: string, details: string];

const isOnRibbon = ({ at }: Readonly<Record<string, Value>>): boolean => typeof at === 'string';

/** "its jumper: printer port", "interrupt 7 and port address 378; or off". */
function blockEnd({ says, positions }: Block): End {
  const lines = positions.map((position) => (position.lines.length === 0 ? 'off' : list(position.lines.map(termName))));
  return says === null
    ? ['lines of the bus that no jumper moves', lines.join()]
    : [`its jumper: ${says}`, lines.join('; or ')];
}

function gather(ends: readonly End[]): EndLine[] {
  const lines = new Map<string, EndLine>();
  for (const [what, details] of ends) {
    const key = `${what}\n${details}`;
    const known = lines.get(key);
    if (known) known.count += 1;
    else lines.set(key, { what, count: 1, details });
  }
  return [...lines.values()];
}

/** What only says the name of the kind, or another value, again is left out. */
function detailsOf(
  kind: KindName,
  attrs: Readonly<Record<string, Value>>,
  isPlace: boolean,
  draws: Readonly<Record<string, number>> = {},
): string {
  const values = Object.entries(attrs).flatMap(([name, value]) =>
    isIdle(kind, attrs, name) ? [] : valueWords(name, value, isPlace),
  );
  const amounts = Object.entries(draws).flatMap(([quantity, amount]) => quantityWords[quantity]?.(amount) ?? []);
  return [...new Set([...values, ...amounts])].filter((said) => said !== kindWords[kind].place).join('; ');
}

/** Nothing where there is no limit. */
function valueWords(attr: string, value: Value, isPlace: boolean): string[] {
  const words = attrWords[attr];
  if (!words || value === null) return [];
  if (value === undefined) return [`${words.name} ${notRecorded}`];
  if (typeof value === 'boolean') return [words.say(value ? 'yes' : 'no', value)];
  const values = Array.isArray(value) ? value : [value];
  if (values.length === 0) return [`${words.name}: none`];
  const said = words.say(either(values.map(named)), value);
  return [isPlace && words.isMost ? `at most ${said}` : said];
}

const named = (value: string | number): string => (typeof value === 'number' ? showNumber(value) : termName(value));
