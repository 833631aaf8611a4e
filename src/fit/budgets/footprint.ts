/** The room that the machine and its monitors take on a desk. In square millimetres. */
import { isOf } from '../needs/index.ts';
import type { Budget, WorkingLine } from '../report.ts';
import type { Bench } from './bench.ts';

/** Absent without a case and a monitor. A monitor on an arm has no foot on the desk. */
export function footprintBudget(bench: Bench): Budget | undefined {
  const onArms = new Set(bench.rungsOf('monitor-mount').map(({ place }) => place.part));
  const working: WorkingLine[] = [];
  const unknown: string[] = [];
  const stand = (unit: string, wide: number | undefined, deep: number | undefined, field: string): void => {
    if (wide === undefined || deep === undefined) unknown.push(unit);
    else working.push({ unit, amount: Math.ceil(wide * deep), field });
  };
  const cases = bench.units.filter(isOf('chassis'));
  const monitors = bench.units.filter(isOf('monitor'));
  if (cases.length + monitors.length === 0) return undefined;
  for (const { id, part } of cases) stand(id, part.widthMm, part.depthMm, 'widthMm × depthMm');
  for (const { id, part } of monitors) {
    if (!onArms.has(id)) stand(id, part.footWidthMm, part.footDepthMm, 'footWidthMm × footDepthMm');
  }
  return {
    name: 'footprint',
    unit: 'square-millimetre',
    used: working.reduce((sum, { amount }) => sum + amount, 0),
    about: [],
    unknown,
    working,
    formula:
      'Width times depth of the case and of the foot of each monitor, side by side; a monitor on an arm has none.',
    source: 'maker-data-sheet',
  };
}
