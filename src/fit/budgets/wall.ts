/** Power from the wall, and what it costs in a year. */

import type { PartOf } from '../../parts/part.ts';
import type { Unit } from '../model.ts';
import { deciwatts } from '../needs/amounts.ts';
import { isOf } from '../needs/index.ts';
import type { Budget, WorkingLine } from '../report.ts';
import type { JudgeBrief } from '../rule.ts';
import { sustainedPower } from './power.ts';
import { budgetOf } from './total.ts';

type Curve = NonNullable<PartOf<'power-supply'>['efficiency']>;
type Point = { hundredThousandths: number; isBeyond: boolean };

const whole = 100_000;

/**
 * Efficiency at a load, in hundred-thousandths, rounded down: a straight line between the two points beside it, in
 * whole numbers; the nearest end, and `isBeyond`, outside them. undefined for a curve without points.
 */
export function efficiencyAt(curve: Curve, loadDeciwatts: number, ratedDeciwatts: number): Point | undefined {
  const points = [...curve].sort((a, b) => a.loadPercent - b.loadPercent || a.permille - b.permille);
  // Per cent of the rating, times the rating, so that nothing is divided before the end.
  const at = loadDeciwatts * 100;
  const [first, last] = [points[0], points.at(-1)];
  if (!first || !last) return undefined;
  if (at <= first.loadPercent * ratedDeciwatts)
    return { hundredThousandths: first.permille * 100, isBeyond: at < first.loadPercent * ratedDeciwatts };
  const above = points.findIndex(({ loadPercent }) => at <= loadPercent * ratedDeciwatts);
  const [low, high] = [points[above - 1], points[above]];
  if (!low || !high) return { hundredThousandths: last.permille * 100, isBeyond: true };
  const [from, to] = [low.loadPercent * ratedDeciwatts, high.loadPercent * ratedDeciwatts];
  const weighed = low.permille * (to - at) + high.permille * (at - from);
  return { hundredThousandths: Math.floor((weighed * 100) / (to - from)), isBeyond: false };
}

/** Deciwatts from the wall for deciwatts given, rounded up. */
const fromWall = (given: number, { hundredThousandths }: Point): number =>
  Math.ceil((given * whole) / hundredThousandths);

/** Power from the wall when the list has a supply; its cost when the brief gives hours and a tariff as well. */
export function wallBudgets(units: readonly Unit[], brief: JudgeBrief): Budget[] {
  const supply = units.find(isOf('power-supply'));
  const given = budgetOf(sustainedPower, units, brief);
  if (!supply || !given) return [];
  const wall = wallBudget(supply, given, units);
  const { hoursPerDay, tariffMilliEuros } = brief;
  if (hoursPerDay === undefined || tariffMilliEuros === undefined) return [wall];
  return [wall, costBudget(wall, Math.round(hoursPerDay * 60), tariffMilliEuros)];
}

function wallBudget(supply: Unit<PartOf<'power-supply'>>, given: Budget, units: readonly Unit[]): Budget {
  const { ratedW, efficiency } = supply.part;
  const point =
    ratedW === undefined || efficiency === undefined
      ? undefined
      : efficiencyAt(efficiency, given.used, deciwatts(ratedW));
  const working: WorkingLine[] = [{ unit: supply.id, amount: given.used, field: 'given' }];
  if (point) {
    working.push({ unit: supply.id, amount: fromWall(given.used, point) - given.used, field: 'loss' });
    working.push({
      unit: supply.id,
      amount: Math.round(point.hundredThousandths / 100),
      in: 'permille',
      field: point.isBeyond ? 'efficiency.end' : 'efficiency',
    });
  }
  const unknown = [...given.unknown, ...(point ? [] : [supply.id])];
  for (const { id, part } of units.filter(isOf('monitor'))) {
    if (part.sustainedW === undefined) unknown.push(id);
    else working.push({ unit: id, amount: deciwatts(part.sustainedW), field: 'sustainedW' });
  }
  const strips = units.filter(isOf('power-strip'));
  const ratings = strips.flatMap(({ part }) => part.ratedW ?? []);
  return {
    name: 'wall-power',
    unit: 'deciwatt',
    used: working.reduce((sum, line) => (line.in ? sum : sum + line.amount), 0),
    ...(ratings.length > 0 && ratings.length === strips.length ? { limit: deciwatts(Math.min(...ratings)) } : {}),
    about: strips.map(({ id }) => id),
    unknown,
    working,
    formula: [
      "What the supply gives under steady load, divided by its efficiency at that load, and the monitors' own. Between two recorded loads the efficiency lies on a straight line.",
      ...(point?.isBeyond
        ? ['This load lies outside those that are recorded for the supply, so the nearest of them counts.']
        : []),
    ].join(' '),
    source: 'maker-data-sheet',
  };
}

const daysInYear = 365;

/** Cents a year, to the nearest: deciwatts are tenths of a watt, and a tenth of a cent a kilowatt-hour is what a tariff counts in. */
function costBudget(wall: Budget, minutesPerDay: number, tariff: number): Budget {
  return {
    name: 'running-cost',
    unit: 'cent-a-year',
    used: Math.round((wall.used * minutesPerDay * daysInYear * tariff) / (10_000 * 60 * 10)),
    about: [],
    unknown: wall.unknown,
    working: [
      { amount: wall.used, in: 'deciwatt', field: 'wall-power' },
      { amount: minutesPerDay, in: 'minute-a-day', field: 'brief.hoursPerDay' },
      { amount: tariff, in: 'tenth-of-a-cent-a-kilowatt-hour', field: 'brief.tariff' },
    ],
    formula:
      'Power from the wall, times the hours of a year that the machine is on, times the price of a kilowatt-hour. It is reckoned at steady load all that time, so it is the most: a machine that waits draws less.',
    source: 'common-practice',
  };
}
