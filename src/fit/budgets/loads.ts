/** What each class of part draws from the supply, in deciwatts, idle, under steady load, at its likely peak and in a short excursion. */
import type { PartOf } from '../../parts/part.ts';
import type { UnitId } from '../model.ts';
import { deciwatts } from '../needs/amounts.ts';
import { type Share, type Term, term } from './total.ts';

export type Load = 'idle' | 'sustained' | 'peak' | 'excursion';

/** Deciwatts, by common practice: what a maker does not give, and what is much the same for all. */
export const allowances = { motherboard: 400, 'memory-module': 50, 'bank-module': 20, coprocessor: 20 } as const;

/** Milliamps at so many volts as deciwatts, rounded up. */
export const deciwattsOf = (milliamps: number, volts: number): number => Math.ceil((milliamps * volts) / 100);
/** Milliwatts as deciwatts, rounded up. */
const deciwattsOfMilli = (milliwatts: number): number => Math.ceil(milliwatts / 100);

export const lightVolts = { 'light-5v-3': 5, 'light-12v-4': 12 } as const;

const allowed = (amount: number): Share[] => [{ amount, field: 'allowance' }];
const inWatts = (watts: number | undefined, field: string): Share => ({
  amount: watts === undefined ? undefined : deciwatts(watts),
  field,
});
const inMilliwatts = (milliwatts: number | undefined, field: string): Share => ({
  amount: milliwatts === undefined ? undefined : deciwattsOfMilli(milliwatts),
  field,
});

type Watts = { idleW?: number | undefined; sustainedW?: number | undefined; peakW?: number | undefined };

/** A burst where it is recorded, otherwise the steady load. */
const peak = ({ peakW, sustainedW }: Watts): Share =>
  peakW === undefined ? inWatts(sustainedW, 'sustainedW') : inWatts(peakW, 'peakW');

const atLoad = (load: Load, part: Watts): Share => {
  if (load === 'idle') return inWatts(part.idleW, 'idleW');
  return load === 'sustained' ? inWatts(part.sustainedW, 'sustainedW') : peak(part);
};

/** Without the figure for an excursion, a card draws its burst at least. */
const excursion = (part: Watts & { excursionW?: number | undefined }): Share =>
  part.excursionW === undefined ? { ...peak(part), isFloor: true } : inWatts(part.excursionW, 'excursionW');

type Light = { light?: { plug: keyof typeof lightVolts; milliamps: number } | undefined };
const light = ({ light }: Light): Share[] =>
  light ? [{ amount: deciwattsOf(light.milliamps, lightVolts[light.plug]), field: 'light.milliamps' }] : [];

/** A card draws at 5 V; most draw nothing at 12 V, so an amount that is not there is none. */
const busCard = ({ milliamps5v, milliamps12v }: Pick<PartOf<'bus-card'>, 'milliamps5v' | 'milliamps12v'>): Share[] => [
  { amount: milliamps5v === undefined ? undefined : deciwattsOf(milliamps5v, 5), field: 'milliamps5v' },
  ...(milliamps12v === undefined ? [] : [{ amount: deciwattsOf(milliamps12v, 12), field: 'milliamps12v' }]),
];

const readsAt = {
  idle: ['idleW'],
  sustained: ['sustainedW'],
  peak: ['sustainedW', 'peakW'],
  excursion: ['sustainedW', 'peakW'],
} as const;

/** One term for each class that draws. Fans count at full speed and lights lit, whatever the load. */
export const loads = (load: Load): Term[] => [
  term('chassis', ['fittedFans', 'lights'], ({ fittedFans, lights = [] }) => [
    ...(fittedFans ?? [{ milliamps: undefined }]).map(({ milliamps }) =>
      milliamps === undefined
        ? { amount: undefined, field: 'fittedFans' }
        : { amount: deciwattsOf(milliamps, 12), field: 'fittedFans.milliamps' },
    ),
    ...lights.map(({ plug, milliamps }) => ({
      amount: deciwattsOf(milliamps, lightVolts[plug]),
      field: 'lights.milliamps',
    })),
  ]),
  load === 'idle'
    ? term('motherboard', ['idleW'], ({ idleW }) =>
        idleW === undefined ? allowed(allowances.motherboard) : [inWatts(idleW, 'idleW')],
      )
    : term('motherboard', [], () => allowed(allowances.motherboard)),
  term('processor', readsAt[load], (part) => [atLoad(load, part)]),
  term('cooler', ['fan', 'radiator', 'light'], ({ fan, radiator, light: own }) => [
    ...(fan ? [{ amount: deciwattsOf(fan.milliamps * (radiator?.fans ?? 1), 12), field: 'fan.milliamps' }] : []),
    ...light({ light: own }),
  ]),
  term('memory-module', [], () => allowed(allowances['memory-module'])),
  load === 'excursion'
    ? term('graphics-card', ['sustainedW', 'peakW', 'excursionW'], (part) => [excursion(part)])
    : term('graphics-card', readsAt[load], (part) => [atLoad(load, part)]),
  load === 'idle'
    ? term('storage-drive', ['idleMilliwatts'], (part) => [inMilliwatts(part.idleMilliwatts, 'idleMilliwatts')])
    : term('storage-drive', ['milliwatts'], (part) => [inMilliwatts(part.milliwatts, 'milliwatts')]),
  term('fan', ['milliamps', 'light'], (part) => [
    { amount: part.milliamps === undefined ? undefined : deciwattsOf(part.milliamps, 12), field: 'milliamps' },
    ...light(part),
  ]),
  term('bank-module', [], () => allowed(allowances['bank-module'])),
  term('coprocessor', [], () => allowed(allowances.coprocessor)),
  term('processor-board', ['sustainedW'], (part) => [inWatts(part.sustainedW, 'sustainedW')]),
  term('bus-card', ['milliamps5v', 'milliamps12v'], busCard),
  load === 'idle'
    ? term('expansion-card', ['idleW'], (part) => [inWatts(part.idleW, 'idleW')])
    : term('expansion-card', ['sustainedW'], (part) => [inWatts(part.sustainedW, 'sustainedW')]),
  term('floppy-drive', ['milliwatts'], (part) => [inMilliwatts(part.milliwatts, 'milliwatts')]),
  load === 'peak' || load === 'excursion'
    ? term('fixed-disk', ['spinUpMilliwatts'], (part) => [inMilliwatts(part.spinUpMilliwatts, 'spinUpMilliwatts')])
    : term('fixed-disk', ['milliwatts'], (part) => [inMilliwatts(part.milliwatts, 'milliwatts')]),
];

const steady = loads('sustained');

/** Where a unit's file records what it draws, by the class in its id: `sustainedW`, `milliwatts`, `milliamps`. */
export const loadField = (unit: UnitId): string =>
  steady.find((one) => one.class === unit.replace(/-\d+$/, ''))?.reads[0] ?? 'sustainedW';
