/** The picture of each monitor against the link that carries it, its scan on an analog one, and heads in use. */
import type { PartOf } from '../../parts/part.ts';
import { linkCarries, pictureLinks } from '../../standards/picture.ts';
import { bitRateMbps, timingOf } from '../../standards/timings.ts';
import type { Unit } from '../model.ts';
import { modeMbps } from '../needs/amounts.ts';
import { isOf } from '../needs/index.ts';
import type { Budget, WorkingLine } from '../report.ts';
import type { Bench, Rung } from './bench.ts';

type Monitor = Unit<PartOf<'monitor'>>;

export function pictureBudgets(bench: Bench): Budget[] {
  const monitors = bench.units.filter(isOf('monitor'));
  return [
    ...monitors.flatMap((monitor) => [...pictureBudget(bench, monitor), ...scanBudget(bench, monitor)]),
    ...headsBudget(bench),
  ];
}

const rungOf = (bench: Bench, monitor: Monitor): Rung | undefined =>
  bench.rungsOf('picture').find(({ need }) => need.part === monitor.id);

/** Joined by a plug whose lines a beam follows. */
const isAnalog = ({ place }: Rung): boolean => ['vga', 'de-9'].includes(String(place.attrs['plug']));

/**
 * In megabits a second, for a monitor with a size and a rate that is not joined by an analog plug. Of the depths that
 * the link carries the greatest is given; none when it carries not even eight bits.
 */
function pictureBudget(bench: Bench, monitor: Monitor): Budget[] {
  const { widthPx, heightPx, refreshHz, bitsPerColour } = monitor.part;
  const rung = rungOf(bench, monitor);
  const plug = rung?.place.attrs['plug'];
  const mbps = modeMbps(monitor.part);
  if (mbps === undefined || widthPx === undefined || heightPx === undefined || refreshHz === undefined) return [];
  if (bitsPerColour === undefined || (rung && isAnalog(rung))) return [];
  const timing = timingOf('cvt-rb2', { widthPx, heightPx, refreshHz });
  const limit = rung && carriedBy(bench, monitor, rung, mbps);
  const depth = [bitsPerColour, 8].find(
    (bits) =>
      limit !== undefined &&
      bitRateMbps(timing, bits) <= limit &&
      (bits === 8 || typeof plug !== 'string' || !isEightBitOnly(plug)),
  );
  const least = linkIds
    .filter((id) => pictureLinks[id].plug === plug && linkCarries(id, timing.pixelClockKHz, bitsPerColour))
    .map((id) => pictureLinks[id])
    .sort((a, b) => a.megabits - b.megabits)[0];
  return [
    {
      name: 'picture',
      of: monitor.id,
      unit: 'megabit-a-second',
      used: mbps,
      ...(limit === undefined ? {} : { limit }),
      about: [monitor.id, ...(rung ? [rung.place.part] : [])],
      unknown: [],
      working: [
        { unit: monitor.id, amount: widthPx, in: 'pixel', field: 'widthPx' },
        { unit: monitor.id, amount: heightPx, in: 'line', field: 'heightPx' },
        { unit: monitor.id, amount: refreshHz, in: 'hertz', field: 'refreshHz' },
        { amount: timing.hTotal, in: 'pixel', field: 'timing.hTotal' },
        { amount: timing.vTotal, in: 'line', field: 'timing.vTotal' },
        { amount: timing.pixelClockKHz, in: 'kilohertz', field: 'timing.pixelClock' },
        { unit: monitor.id, amount: bitsPerColour, in: 'bit', field: 'bitsPerColour' },
        ...(least ? [{ amount: least.megabits, in: 'megabit-a-second' as const, field: `least ${least.name}` }] : []),
        ...(depth === undefined ? [] : [{ amount: depth, in: 'bit' as const, field: 'carried.bitsPerColour' }]),
      ],
      formula:
        'Pixels and lines of a picture, blanking counted in, times pictures a second are the pixel clock; three colours of so many bits for each pixel are the bit rate. The slowest link on the way from the machine to the monitor is the limit.',
      source: 'vesa-cvt-2',
    },
  ];
}

const linkIds = Object.keys(pictureLinks) as (keyof typeof pictureLinks)[];

const isEightBitOnly = (plug: string): boolean => plug === 'dvi-d' || plug === 'dvi-i';

/**
 * The least that any link from the machine to the monitor carries, with what others take of it taken off; undefined
 * when the socket of the machine or of the monitor has no figure.
 */
function carriedBy(bench: Bench, { part }: Monitor, rung: Rung, mbps: number): number | undefined {
  const own = (part.sockets ?? []).filter(({ plug }) => plug === rung.place.attrs['plug']);
  const ownBest = own.map(({ megabits }) => megabits);
  if (ownBest.length === 0 || ownBest.some((megabits) => megabits === undefined)) return undefined;
  let limit = Math.max(...ownBest.map((megabits) => megabits ?? 0));
  for (const { place } of bench.chain(rung, ['picture'])) {
    const [link] = place.meters?.['pictureMbps'] ?? [];
    const passesOn = ['adapter', 'monitor'].includes(bench.unit(place.part)?.part.class ?? '');
    const capacity = link === undefined ? undefined : bench.resources.get(link);
    if (link === undefined || capacity === undefined) {
      // A cable or adapter without a figure sets no limit; a socket without one may.
      if (passesOn) continue;
      return undefined;
    }
    const others = Math.max(0, (bench.used.get(link) ?? 0) - Math.min(mbps, limit));
    limit = Math.min(limit, Math.max(0, capacity - others));
  }
  return limit;
}

const hertz = (kilohertz: number): number => Math.round(kilohertz * 1000);

/** In lines a second, for a monitor that is joined by an analog plug and whose file says which lines it follows. */
function scanBudget(bench: Bench, monitor: Monitor): Budget[] {
  const { horizontalKhz, verticalHz } = monitor.part;
  const rung = rungOf(bench, monitor);
  if (!horizontalKhz || !rung || !isAnalog(rung)) return [];
  const machine = bench.chain(rung, ['picture']).at(-1)?.place;
  const card = machine && bench.unit(machine.part)?.part;
  const output =
    card?.class === 'bus-card' ? card.outputs?.find(({ id }) => machine?.id.endsWith(`output-${id}`)) : undefined;
  const modes = output?.modes ?? [];
  const working: WorkingLine[] = [
    { unit: monitor.id, amount: hertz(horizontalKhz[0]), in: 'hertz', field: 'horizontalKhz.from' },
    { unit: monitor.id, amount: hertz(horizontalKhz[1]), in: 'hertz', field: 'horizontalKhz.to' },
    ...(verticalHz
      ? ([
          { unit: monitor.id, amount: Math.round(verticalHz[0] * 1000), in: 'millihertz', field: 'verticalHz.from' },
          { unit: monitor.id, amount: Math.round(verticalHz[1] * 1000), in: 'millihertz', field: 'verticalHz.to' },
        ] as const)
      : []),
    ...modes.flatMap((mode): WorkingLine[] => [
      { unit: machine?.part ?? '', amount: hertz(mode.horizontalKhz), in: 'hertz', field: `${mode.id} lines` },
      {
        unit: machine?.part ?? '',
        amount: Math.round(mode.verticalHz * 1000),
        in: 'millihertz',
        field: `${mode.id} pictures`,
      },
    ]),
  ];
  return [
    {
      name: 'scan',
      of: monitor.id,
      unit: 'hertz',
      used: Math.max(0, ...modes.map(({ horizontalKhz: lines }) => hertz(lines))),
      limit: hertz(horizontalKhz[1]),
      about: [monitor.id, rung.place.part],
      unknown: modes.length === 0 ? [machine?.part ?? rung.place.part] : [],
      working,
      formula:
        'The most lines a second of any picture that the card sends, against the most that the monitor draws. Every picture it is shown must lie between the least and the most, in lines and in pictures a second.',
      source: 'scan-rates',
    },
  ];
}

/** Monitors joined, against sockets for a picture that there are: those of cards in a slot and of the board. */
function headsBudget(bench: Bench): Budget[] {
  const heads = new Map<string, string>();
  for (const { id, part, kind, after = [] } of bench.places) {
    const partClass = bench.unit(part)?.part.class;
    if (kind !== 'picture' || partClass === 'adapter' || partClass === 'monitor') continue;
    if (after.every((need) => bench.rungOf(need))) heads.set(id, part);
  }
  const shown = bench.rungsOf('picture').filter(({ need }) => bench.unit(need.part)?.part.class === 'monitor');
  if (heads.size + shown.length === 0) return [];
  return [
    {
      name: 'heads',
      unit: 'count',
      used: shown.length,
      limit: heads.size,
      about: [...new Set(heads.values())],
      unknown: [],
      working: shown.map(({ need }) => ({ unit: need.part, amount: 1, field: 'picture' })),
      formula:
        'Monitors that show a picture, against picture sockets of cards in a slot and of the board. A card may drive fewer at once than it has sockets; its sheet says how many.',
      source: 'maker-data-sheet',
    },
  ];
}
