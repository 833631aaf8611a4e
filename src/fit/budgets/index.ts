import type { Unit } from '../model.ts';
import type { Budget } from '../report.ts';
import type { JudgeBrief } from '../rule.ts';
import { heatBudget } from './heat.ts';
import { moneyBudget } from './money.ts';
import { powerBudget } from './power.ts';

/** Always all three, in this order. */
export const budgetsOf = (units: readonly Unit[], brief: JudgeBrief): Budget[] => [
  powerBudget(units),
  heatBudget(units),
  moneyBudget(units, brief),
];
