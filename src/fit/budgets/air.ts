/** How much warmer the air leaves the case than it came. In thousandths of a kelvin. */
import type { PartOf } from '../../parts/part.ts';
import { air, airRiseK } from '../../standards/heat.ts';
import type { PlaceId, UnitId } from '../model.ts';
import { radiatorInstead } from '../needs/chassis.ts';
import { isOf } from '../needs/index.ts';
import type { Budget, WorkingLine } from '../report.ts';
import type { JudgeBrief } from '../rule.ts';
import type { Bench } from './bench.ts';
import { sustainedPower } from './power.ts';
import { budgetOf } from './total.ts';

type Fitted = NonNullable<PartOf<'chassis'>['fittedFans']>;
type Panel = Fitted[number]['panel'];
type Mover = { unit: UnitId; panel: Panel; airflowM3h: number | undefined; field: string };
/** A fan that the list adds, or the fans of a radiator: where they are, and what each of them moves. */
export type AddedFans = {
  unit: UnitId;
  place: PlaceId;
  way: string | undefined;
  airflowM3h: number | undefined;
  field: string;
  fans: number;
};

/**
 * Fans side by side add up; those at the front and those at the rear and top move the same air one after the other, so
 * the stronger side counts. Absent without a case, without a fan, and when no fan's airflow is recorded.
 */
export function airBudget(bench: Bench, brief: JudgeBrief): Budget | undefined {
  const [chassis] = bench.units.filter(isOf('chassis'));
  const heat = budgetOf(sustainedPower, bench.units, brief);
  if (!chassis || !heat) return undefined;
  const movers = moversOf(chassis.id, chassis.part.fittedFans, addedTo(bench));
  const { inwards, outwards, flow } = flowOf(movers);
  if (flow === 0) return undefined;
  const used = Math.ceil(airRiseK(heat.used / 10, flow) * 1000);
  const { roomCelsius } = brief;
  const working: WorkingLine[] = [
    { amount: heat.used, in: 'deciwatt', field: 'sustained-power' },
    ...movers.flatMap(({ unit, airflowM3h, field, panel }): WorkingLine[] =>
      airflowM3h === undefined
        ? []
        : [{ unit, amount: airflowM3h, in: 'cubic-metre-an-hour', field: `${field} ${panel}` }],
    ),
    { amount: inwards, in: 'cubic-metre-an-hour', field: 'flow in' },
    { amount: outwards, in: 'cubic-metre-an-hour', field: 'flow out' },
    ...(roomCelsius === undefined
      ? []
      : [{ amount: Math.round(roomCelsius * 1000) + used, in: 'millicelsius' as const, field: 'air out' }]),
  ];
  return {
    name: 'air',
    unit: 'millikelvin',
    used,
    about: [chassis.id],
    unknown: [
      ...new Set([
        ...heat.unknown,
        ...movers.flatMap(({ unit, airflowM3h }) => (airflowM3h === undefined ? [unit] : [])),
      ]),
    ],
    working,
    formula:
      'The steady power of everything in the case, divided by the mass of the air that the fans move in a second and by what a kilogram of air takes up. Fans side by side add up; of the fans that bring air in and those that take it out, the stronger side counts. Makers give the flow with nothing in the way, and a case is in the way, so it will be more than this.',
    source: air.source,
  };
}

function addedTo(bench: Bench): AddedFans[] {
  return [...bench.rungsOf('fan-mount'), ...bench.rungsOf('radiator-mount')].flatMap(
    ({ need, place, joint }): AddedFans[] => {
      const part = bench.unit(need.part)?.part;
      const at = { unit: need.part, place: place.id, way: joint.way };
      if (part?.class === 'fan') return [{ ...at, airflowM3h: part.airflowM3h, field: 'airflowM3h', fans: 1 }];
      if (part?.class !== 'cooler' || !part.radiator || !part.fan) return [];
      return [{ ...at, airflowM3h: part.fan.airflowM3h, field: 'fan.airflowM3h', fans: part.radiator.fans }];
    },
  );
}

/** Every fan that moves air through the case. Those that came with it move none where a radiator has their place. */
export function moversOf(id: UnitId, fittedFans: Fitted | undefined, added: readonly AddedFans[]): Mover[] {
  const cleared = added.filter(({ way }) => way === radiatorInstead).map(({ place }) => panelOf(place));
  const fitted = (fittedFans ?? [])
    .filter(({ panel }) => !cleared.includes(panel))
    .map(({ panel, airflowM3h }): Mover => ({ unit: id, panel, airflowM3h, field: 'fittedFans.airflowM3h' }));
  const more = added.flatMap(({ unit, place, airflowM3h, field, fans }) => {
    const panel = panelOf(place);
    return panel ? Array.from({ length: fans }, (): Mover => ({ unit, panel, airflowM3h, field })) : [];
  });
  return [...fitted, ...more];
}

/** Cubic metres an hour in and out, and through. What is not recorded counts as nothing. */
export function flowOf(movers: readonly Mover[]): { inwards: number; outwards: number; flow: number } {
  const at = (panels: readonly Panel[]) =>
    movers.reduce((sum, { panel, airflowM3h }) => sum + (panels.includes(panel) ? (airflowM3h ?? 0) : 0), 0);
  const [inwards, outwards] = [at(['front']), at(['rear', 'top'])];
  return { inwards, outwards, flow: Math.max(inwards, outwards) };
}

const panels: readonly Panel[] = ['front', 'rear', 'top'];
/** `chassis-1/fan-front-1` and `chassis-1/radiator-front` are at the front. */
const panelOf = (place: PlaceId): Panel | undefined => {
  const name = place.slice(place.indexOf('/') + 1);
  return panels.find((panel) => name.split('-').includes(panel));
};
