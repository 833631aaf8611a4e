/** How much warmer the air leaves the case than it came. In thousandths of a kelvin. */
import type { PartOf } from '../../parts/part.ts';
import { air, airRiseK } from '../../standards/heat.ts';
import { isOf } from '../needs/index.ts';
import type { Budget, WorkingLine } from '../report.ts';
import type { JudgeBrief } from '../rule.ts';
import type { Bench } from './bench.ts';
import { sustainedPower } from './power.ts';
import { budgetOf } from './total.ts';

type Panel = NonNullable<PartOf<'chassis'>['fittedFans']>[number]['panel'];
type Mover = { unit: string; panel: Panel; airflowM3h: number | undefined; field: string };

/**
 * Fans side by side add up; those at the front and those at the rear and top move the same air one after the other, so
 * the stronger side counts. Absent without a case, without a fan, and when no fan's airflow is recorded.
 */
export function airBudget(bench: Bench, brief: JudgeBrief): Budget | undefined {
  const [chassis] = bench.units.filter(isOf('chassis'));
  const heat = budgetOf(sustainedPower, bench.units, brief);
  if (!chassis || !heat) return undefined;
  const movers = moversOf(bench, chassis.id, chassis.part);
  const flowAt = (panels: readonly Panel[]) =>
    movers.reduce((sum, { panel, airflowM3h }) => sum + (panels.includes(panel) ? (airflowM3h ?? 0) : 0), 0);
  const [inwards, outwards] = [flowAt(['front']), flowAt(['rear', 'top'])];
  const flow = Math.max(inwards, outwards);
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

function moversOf(bench: Bench, id: string, { fittedFans }: PartOf<'chassis'>): Mover[] {
  const fitted = (fittedFans ?? []).map(
    ({ panel, airflowM3h }): Mover => ({ unit: id, panel, airflowM3h, field: 'fittedFans.airflowM3h' }),
  );
  const added = [...bench.rungsOf('fan-mount'), ...bench.rungsOf('radiator-mount')].flatMap(
    ({ need, place }): Mover[] => {
      const panel = panelOf(place.id.slice(place.part.length + 1));
      const part = bench.unit(need.part)?.part;
      if (!panel || !part) return [];
      if (part.class === 'fan') return [{ unit: need.part, panel, airflowM3h: part.airflowM3h, field: 'airflowM3h' }];
      if (part.class !== 'cooler' || !part.radiator || !part.fan) return [];
      const { airflowM3h } = part.fan;
      const each: Mover = { unit: need.part, panel, airflowM3h, field: 'fan.airflowM3h' };
      return Array.from({ length: part.radiator.fans }, () => each);
    },
  );
  return [...fitted, ...added];
}

const panels: readonly Panel[] = ['front', 'rear', 'top'];
/** `fan-front-1` and `radiator-front` are at the front. */
const panelOf = (name: string): Panel | undefined => panels.find((panel) => name.split('-').includes(panel));
