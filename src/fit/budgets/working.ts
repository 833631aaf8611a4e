/** All budgets of a list with their working: for screens, which ask when somebody looks. */
import { findHookup } from '../hookup/search.ts';
import type { Kinds } from '../model.ts';
import { lowerAll, unitsOf } from '../needs/index.ts';
import type { Budget } from '../report.ts';
import type { JudgeBrief, JudgeInput } from '../rule.ts';
import { airBudget } from './air.ts';
import { layBench } from './bench.ts';
import { footprintBudget } from './footprint.ts';
import { budgetsOf } from './index.ts';
import { lanesBudgets } from './lanes.ts';
import { leadBudgets } from './leads.ts';
import { bandwidthBudgets, banksBudget, banksMemory, memory } from './memory.ts';
import { pictureBudgets } from './picture.ts';
import { idlePower } from './power.ts';
import { soundBudget } from './sound.ts';
import { budgetOf } from './total.ts';
import { wallBudgets } from './wall.ts';
import { monitorWeights } from './weight.ts';

/**
 * Those of the fit report first, in its order, then the others. It finds the hookup anew, so it costs what judging
 * costs; the kinds are those the list was judged by. Never throws on parts that the schemas let through.
 */
export function workingOf(input: JudgeInput, brief: JudgeBrief, kinds: Kinds): Budget[] {
  const units = unitsOf(input);
  const lowered = lowerAll(units);
  const bench = layBench(units, lowered, findHookup({ ...lowered, kinds }));
  const judged = budgetsOf(units, brief);
  const more = [
    budgetOf(idlePower, units, brief),
    ...wallBudgets(units, brief),
    ...leadBudgets(bench),
    airBudget(bench, brief),
    soundBudget(units),
    ...lanesBudgets(bench),
    ...pictureBudgets(bench),
    budgetOf(memory, units, brief),
    budgetOf(banksMemory, units, brief),
    banksBudget(bench),
    ...bandwidthBudgets(bench),
    footprintBudget(bench),
    ...monitorWeights(units),
  ];
  return [...judged, ...more.filter((budget) => budget !== undefined)];
}
