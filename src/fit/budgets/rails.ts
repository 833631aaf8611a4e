/**
 * What each rail of the supply gives under steady load. Where a part's file does not say which rail it draws on, the
 * whole of it counts on each rail that it may draw on, so every sum is the most it can be.
 *
 * A supply with a lead for the processor feeds it at 12 V; one without feeds it, through the board, at 5 V. So there are
 * two totals for some rails, and each supply sets the limit of one of them.
 */
import type { PartOf } from '../../parts/part.ts';
import { deciwatts } from '../needs/amounts.ts';
import { kindOfPlug } from '../needs/power-supply.ts';
import { allowances, lightVolts } from './loads.ts';
import { type Bound, boundBy, type Share, type Term, type Total, term } from './total.ts';

type Rail = '12v' | '5v' | '3.3v';
const millivolts: Record<Rail, number> = { '12v': 12_000, '5v': 5000, '3.3v': 3300 };

/** Milliamps, rounded up. */
const milliampsAt = (rail: Rail, milliwatts: number): number => Math.ceil((milliwatts * 1000) / millivolts[rail]);

/** A share in milliwatts, which each rail counts in its own unit. */
type Milliwatts = { milliwatts: number | undefined; field: string };
type Of = (share: Milliwatts) => Share;
const inMilliamps =
  (rail: Rail): Of =>
  ({ milliwatts, field }) => ({
    amount: milliwatts === undefined ? undefined : milliampsAt(rail, milliwatts),
    field,
  });
const inDeciwatts: Of = ({ milliwatts, field }) => ({
  amount: milliwatts === undefined ? undefined : Math.ceil(milliwatts / 100),
  field,
});

const watts = (amount: number | undefined): number | undefined =>
  amount === undefined ? undefined : deciwatts(amount) * 100;
const sustained = ({ sustainedW }: { sustainedW?: number | undefined }): Milliwatts => ({
  milliwatts: watts(sustainedW),
  field: 'sustainedW',
});
const drive = ({ milliwatts }: { milliwatts?: number | undefined }): Milliwatts => ({
  milliwatts,
  field: 'milliwatts',
});
const allowance = (partClass: keyof typeof allowances): Milliwatts => ({
  milliwatts: allowances[partClass] * 100,
  field: 'allowance',
});
/** Milliwatts at 5 V of a disk that turns, by common practice: its motor draws the rest at 12 V. */
const diskElectronics = 5000;
const low = (part: Pick<PartOf<'storage-drive'>, 'build' | 'milliwatts' | 'isSolidState'>): Milliwatts => {
  const { milliwatts, field } = drive(part);
  const turns = part.build === '3.5' && part.isSolidState === false;
  return { milliwatts: turns && milliwatts !== undefined ? Math.min(milliwatts, diskElectronics) : milliwatts, field };
};
const at = (volts: number, milliamps: number | undefined, field: string): Milliwatts => ({
  milliwatts: milliamps === undefined ? undefined : milliamps * volts,
  field,
});

type Light = { plug: keyof typeof lightVolts; milliamps: number };
const lit = (volts: number, lights: readonly (Light | undefined)[], field: string): Milliwatts[] =>
  lights.flatMap((light) => (light && lightVolts[light.plug] === volts ? [at(volts, light.milliamps, field)] : []));

const processor = (of: Of): Term => term('processor', ['sustainedW'], (part) => [of(sustained(part))]);

/** Fans, graphics cards, and whatever has a motor. */
const twelve = (of: Of): Term[] => [
  term('chassis', ['fittedFans', 'lights'], ({ fittedFans, lights = [] }) => [
    ...(fittedFans
      ? fittedFans.map(({ milliamps }) => of(at(12, milliamps, 'fittedFans.milliamps')))
      : [of(at(12, undefined, 'fittedFans'))]),
    ...lit(12, lights, 'lights.milliamps').map(of),
  ]),
  term('cooler', ['fan', 'radiator', 'light'], ({ fan, radiator, light }) => [
    ...(fan ? [of(at(12, fan.milliamps * (radiator?.fans ?? 1), 'fan.milliamps'))] : []),
    ...lit(12, [light], 'light.milliamps').map(of),
  ]),
  term('fan', ['milliamps', 'light'], ({ milliamps, light }) => [
    of(at(12, milliamps, 'milliamps')),
    ...lit(12, [light], 'light.milliamps').map(of),
  ]),
  term('graphics-card', ['sustainedW'], (part) => [of(sustained(part))]),
  term('expansion-card', ['sustainedW'], (part) => [of(sustained(part))]),
  term('storage-drive', ['build', 'milliwatts'], (part) => (part.build === '3.5' ? [of(drive(part))] : [])),
  term('fixed-disk', ['milliwatts'], (part) => [of(drive(part))]),
  term('floppy-drive', ['size', 'milliwatts'], (part) => (part.size === '3.5' ? [] : [of(drive(part))])),
  term('bus-card', ['milliamps12v'], ({ milliamps12v }) =>
    milliamps12v === undefined ? [] : [of(at(12, milliamps12v, 'milliamps12v'))],
  ),
];

/** Boards, memory, cards of about 1990, and the electronics of drives. */
const five = (of: Of): Term[] => [
  term('chassis', ['lights'], ({ lights = [] }) => lit(5, lights, 'lights.milliamps').map(of)),
  term('cooler', ['light'], ({ light }) => lit(5, [light], 'light.milliamps').map(of)),
  term('fan', ['light'], ({ light }) => lit(5, [light], 'light.milliamps').map(of)),
  term('motherboard', [], () => [of(allowance('motherboard'))]),
  term('memory-module', [], () => [of(allowance('memory-module'))]),
  term('bank-module', [], () => [of(allowance('bank-module'))]),
  term('coprocessor', [], () => [of(allowance('coprocessor'))]),
  term('processor-board', ['sustainedW'], (part) => [of(sustained(part))]),
  term('storage-drive', ['build', 'milliwatts', 'isSolidState'], (part) =>
    part.build === 'm2' ? [] : [of(low(part))],
  ),
  term('fixed-disk', ['milliwatts'], (part) => [of(drive(part))]),
  term('floppy-drive', ['milliwatts'], (part) => [of(drive(part))]),
  term('bus-card', ['milliamps5v'], ({ milliamps5v }) => [of(at(5, milliamps5v, 'milliamps5v'))]),
];

/** Modules in M.2 slots, and what cards take of a slot beside its 12 V. */
const three = (of: Of): Term[] => [
  term('expansion-card', ['sustainedW'], (part) => [of(sustained(part))]),
  term('storage-drive', ['build', 'milliwatts'], (part) => (part.build === 'm2' ? [of(drive(part))] : [])),
];

const both = (of: Of): Term[] => [
  ...five(of).filter(({ class: partClass }) => partClass !== 'storage-drive'),
  term('expansion-card', ['sustainedW'], (part) => [of(sustained(part))]),
  term('storage-drive', ['build', 'milliwatts', 'isSolidState'], (part) => [of(low(part))]),
];

type Supply = Pick<PartOf<'power-supply'>, 'leads' | 'shape'>;
export const isOlder = ({ shape }: Pick<Supply, 'shape'>): boolean => shape === 'full-at' || shape === 'baby-at';
/** Where the leads are not recorded, the older shapes are those without. */
const hasProcessorLead = ({ leads, shape }: Supply): boolean =>
  leads ? leads.some(({ plugs }) => plugs.some((plug) => kindOfPlug[plug] === 'processor-power')) : !isOlder({ shape });

/**
 * Undefined where no rail of the supply is recorded; none where its file lists others but not this one. The older
 * shapes make no 3.3 V.
 */
const railOf = (rail: Rail, feedsProcessor: boolean | undefined): Bound =>
  boundBy('power-supply', ['rails', 'leads', 'shape'], (part) => {
    if (feedsProcessor !== undefined && hasProcessorLead(part) !== feedsProcessor) return null;
    if (rail === '3.3v' && isOlder(part)) return null;
    return part.rails ? (part.rails.find(({ id }) => id === rail)?.milliamps ?? null) : undefined;
  });

const total = (of: Rail, bound: Bound, adds: readonly Term[], formula: string): Total => ({
  name: 'rail',
  of,
  unit: 'milliamp',
  adds,
  bound,
  when: 'bound',
  formula: `${formula} Steady power divided by the voltage; where a part does not say which rail it draws on, all of it counts here.`,
  source: 'practice-power-allowance',
});

const ofTwelve = 'Fans, cards and drives at 12 V';
const ofFive = 'The board, its memory, cards and drives at 5 V (a disk that turns counts 5 W here)';

export const rails: readonly Total[] = [
  total(
    '12v',
    railOf('12v', true),
    [processor(inMilliamps('12v')), ...twelve(inMilliamps('12v'))],
    `${ofTwelve}, and the processor through its own lead, added up.`,
  ),
  total('12v', railOf('12v', false), twelve(inMilliamps('12v')), `${ofTwelve}, added up.`),
  total('5v', railOf('5v', true), five(inMilliamps('5v')), `${ofFive}, added up.`),
  total(
    '5v',
    railOf('5v', false),
    [processor(inMilliamps('5v')), ...five(inMilliamps('5v'))],
    `${ofFive}, and the processor through the board, added up.`,
  ),
  total(
    '3.3v',
    railOf('3.3v', undefined),
    three(inMilliamps('3.3v')),
    'M.2 drives, and cards as far as they draw at 3.3 V, added up.',
  ),
  {
    name: 'rail',
    of: '3.3v+5v',
    unit: 'deciwatt',
    adds: both(inDeciwatts),
    bound: boundBy('power-supply', ['rails', 'combinedLowW', 'shape'], ({ rails: listed, combinedLowW, shape }) => {
      if (combinedLowW !== undefined) return deciwatts(combinedLowW);
      return isOlder({ shape }) || (listed && !listed.some(({ id }) => id === '3.3v')) ? null : undefined;
    }),
    when: 'bound',
    formula:
      'Everything that draws at 3.3 V or 5 V, added up: a supply makes both from one part of itself. Where a part does not say which rail it draws on, all of it counts here.',
    source: 'practice-power-allowance',
  },
];
