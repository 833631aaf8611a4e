import type { Part, PartClass } from '../../../parts/part.ts';
import { air, airflowM3h, airRiseK } from '../../../standards/heat.ts';
import { showDeciwatts } from '../../../units/amounts.ts';
import { showNumber } from '../../../units/money.ts';
import { type AddedFans, flowOf, moversOf } from '../../budgets/air.ts';
import { sustainedPower } from '../../budgets/power.ts';
import type { Joint } from '../../model.ts';
import { unitOf } from '../../needs/names.ts';
import { cannotTell, doesNotApply, doesNotFit, fits, gathersRule } from '../../rule.ts';
import { drawsAir } from '../air.ts';
import { lacks } from '../words.ts';

/** Kelvins, by common practice. The textbook's case is cooled to 10, and no case is as free of hindrance as a fan on its sheet. */
const mostK = 15;

/** Upwards, as the budget of the air counts: what is past the most shows. */
const tenths = (value: number): number => Math.ceil(value * 10 - 1e-6) / 10;

type Gathered = { [C in PartClass]?: readonly { readonly unit: string }[] };

/** Deciwatts under steady load, as the budget of that name adds them up, and whose share is not recorded. */
function heatOf(parts: Gathered): { deciwatts: number; unknown: string[] } {
  const shares = sustainedPower.adds.flatMap((term) =>
    (parts[term.class] ?? []).flatMap((part) =>
      // Each term reads only fields that are declared below; a test holds the two together.
      term.shares(part as unknown as Part).map((share) => ({ ...share, unit: part.unit })),
    ),
  );
  return {
    deciwatts: shares.reduce((sum, { amount = 0 }) => sum + amount, 0),
    unknown: shares.flatMap(({ unit, amount, field }) => (amount === undefined ? [`${unit}.${field}`] : [])),
  };
}

export const airRise = gathersRule({
  id: 'cooling/air-rise',
  title: `The air leaves the case no more than ${mostK} °C warmer than it came`,
  severity: 'limit',
  basis: 'practice',
  sources: [air.source, 'common-practice'],
  lesson: 'fit/choosing-for-a-purpose',

  gathers: {
    chassis: ['fittedFans', 'lights', 'supplyShape'],
    motherboard: [],
    processor: ['sustainedW'],
    cooler: ['fan', 'radiator', 'light'],
    'memory-module': [],
    'graphics-card': ['sustainedW'],
    'storage-drive': ['milliwatts'],
    fan: ['milliamps', 'light', 'airflowM3h'],
    'bank-module': [],
    coprocessor: [],
    'processor-board': ['sustainedW'],
    'bus-card': ['milliamps5v', 'milliamps12v'],
    'expansion-card': ['sustainedW'],
    'floppy-drive': ['milliwatts'],
    'fixed-disk': ['milliwatts'],
  },
  sees: ['fan-mount', 'radiator-mount'],
  asks: ['roomCelsius'],
  judge(parts, { joints }, { roomCelsius }) {
    const [housing] = parts.chassis;
    // Without a processor the sum says nothing yet.
    if (housing === undefined || parts.processor.length === 0 || drawsAir(housing.supplyShape)) return doesNotApply;
    if (housing.fittedFans === undefined) return cannotTell(`${housing.unit}.fittedFans`);

    const own = (joint: Joint) => ({ unit: unitOf(joint.need), place: joint.place });
    const added = joints.flatMap((joint): AddedFans[] => {
      const at = { ...own(joint), way: joint.way };
      const fan = parts.fan.find(({ unit }) => unit === at.unit);
      if (fan) return [{ ...at, airflowM3h: fan.airflowM3h, field: 'airflowM3h', fans: 1 }];
      const cooler = parts.cooler.find(({ unit }) => unit === at.unit);
      if (!cooler?.fan || !cooler.radiator) return [];
      return [{ ...at, airflowM3h: cooler.fan.airflowM3h, field: 'fan', fans: cooler.radiator.fans }];
    });
    const movers = moversOf(housing.unit, housing.fittedFans, added);
    // A case without a fan is told by cooling/case-airflow.
    if (movers.length === 0) return doesNotApply;
    const { flow } = flowOf(movers);
    const still = movers.flatMap(({ unit, airflowM3h: moves, field }) =>
      moves === undefined ? [`${unit}.${field.replace(/\..*/, '')}`] : [],
    );
    const { deciwatts, unknown } = heatOf(parts);
    const rise = flow === 0 ? Number.POSITIVE_INFINITY : airRiseK(deciwatts / 10, flow);
    // Fans of no record could only make it less, parts of no record only more.
    if (rise > mostK && still.length > 0) return cannotTell(...new Set(still));
    if (rise <= mostK && unknown.length > 0) return cannotTell(...unknown);
    const facts = {
      chassis: housing.name,
      heat: deciwatts,
      flow: tenths(flow),
      rise: tenths(rise),
      wanted: Math.ceil(airflowM3h(deciwatts / 10, mostK)),
      room: roomCelsius ?? null,
      out: roomCelsius === undefined ? null : tenths(roomCelsius + rise),
    };
    return rise <= mostK ? fits(facts, [housing.unit]) : doesNotFit(facts, [housing.unit]);
  },

  say: {
    fits: ({ chassis, heat, flow, rise, room, out }) =>
      `The parts make ${showDeciwatts(heat)} of heat under steady load; the fans of ${chassis} move ${showNumber(flow)} m³ an hour at most, so the air leaves about ${showNumber(rise)} °C warmer than it came${room === null || out === null ? '' : `: at ${showNumber(out)} °C in a room at ${showNumber(room)} °C`}.`,
    doesNotFit: ({ chassis, heat, flow, rise, wanted, room, out }) => ({
      headline: `The air gets ${showNumber(rise)} °C warmer`,
      what: `The parts make ${showDeciwatts(heat)} of heat under steady load; the fans of ${chassis} move ${showNumber(flow)} m³ an hour at most, so the air leaves about ${showNumber(rise)} °C warmer than it came, where ${mostK} °C is the usual most${room === null || out === null ? '' : `: at ${showNumber(out)} °C in a room at ${showNumber(room)} °C`}.`,
      why: 'Every part is cooled by the air of the case, so each runs as much hotter as that air is. Makers give the flow of a fan with nothing in its way, so it will be more than this.',
      remedy: `The fans should move ${showNumber(wanted)} m³ an hour or more: add one at the front and one at the rear or top, or choose stronger ones, or parts that draw less.`,
    }),
    cannotTell: (missing) =>
      lacks(missing, 'chassis') || lacks(missing, 'fan')
        ? {
            headline: 'How much air do the fans move?',
            what: 'The airflow of a fan is not recorded, so it is not judged how warm the air in the case gets.',
            findOut: "Read it on the maker's sheet, in m³/h, or in CFM: 1 CFM is 1.7 m³/h.",
          }
        : {
            headline: 'How much heat do the parts make?',
            what: 'The power of a part is not recorded, so it is not judged how warm the air in the case gets.',
            findOut: "Read the watts on the part's box or on its maker's sheet.",
          },
  },

  // 60 m³/h of air at 1.204 kg/m³ and 1,005 J/(kg·K) take up 302.5 W while they get 15 K warmer. Board and fan take 42.4 W.
  examples: [
    {
      title: 'one fan of 60 m³ an hour and 302 W of heat',
      parts: {
        chassis: {
          fittedFans: [
            { id: 'rear-1', panel: 'rear', sizeMm: 120, thicknessMm: 25, pins: 3, milliamps: 200, airflowM3h: 60 },
          ],
        },
        motherboard: {},
        processor: { sustainedW: 259.6 },
      },
      brief: { roomCelsius: 22 },
      verdict: 'fits',
    },
    {
      title: 'one watt more',
      parts: {
        chassis: {
          fittedFans: [
            { id: 'rear-1', panel: 'rear', sizeMm: 120, thicknessMm: 25, pins: 3, milliamps: 200, airflowM3h: 60 },
          ],
        },
        motherboard: {},
        processor: { sustainedW: 260.6 },
      },
      brief: { roomCelsius: 22 },
      verdict: 'does-not-fit',
    },
    {
      title: 'a fan more for a card, modules and drives, and old parts that count too',
      parts: {
        chassis: {
          fittedFans: [
            { id: 'rear-1', panel: 'rear', sizeMm: 120, thicknessMm: 25, pins: 3, milliamps: 200, airflowM3h: 80 },
          ],
        },
        motherboard: {},
        processor: {},
        cooler: {},
        'memory-module': {},
        'graphics-card': {},
        'storage-drive': {},
        fan: { airflowM3h: 120 },
        'bank-module': {},
        coprocessor: {},
        'processor-board': {},
        'bus-card': {},
        'expansion-card': {},
        'floppy-drive': {},
        'fixed-disk': {},
      },
      verdict: 'fits',
    },
    {
      title: 'what the fan of the case moves is not recorded',
      parts: { chassis: {}, motherboard: {}, processor: { sustainedW: 65 } },
      verdict: 'cannot-tell',
    },
    {
      title: "the card's power is not recorded",
      parts: {
        chassis: {
          fittedFans: [
            { id: 'rear-1', panel: 'rear', sizeMm: 120, thicknessMm: 25, pins: 3, milliamps: 200, airflowM3h: 60 },
          ],
        },
        motherboard: {},
        processor: { sustainedW: 65 },
        'graphics-card': { sustainedW: undefined },
      },
      verdict: 'cannot-tell',
    },
    {
      title: 'a case of about 1990, whose supply draws the air',
      shelf: 'vintage',
      parts: { chassis: {}, motherboard: {}, processor: {} },
      verdict: 'does-not-apply',
    },
  ],
});
