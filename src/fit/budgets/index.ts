/**
 * Budgets, and the totals behind most of them.
 *
 * `budgetsOf` gives what is part of every fit report: power, heat and money, then every other total that a rule may
 * stand on. `workingOf` (`working.ts`) gives all budgets of a list, those that need the hookup or the brief among them; it
 * is for screens, which ask when somebody looks. So a rule reads only names in `judgedTotals`.
 */
import type { Unit } from '../model.ts';
import type { Budget, BudgetName } from '../report.ts';
import type { JudgeBrief } from '../rule.ts';
import { heat } from './heat.ts';
import { banksMemory, memory } from './memory.ts';
import { money, moneyOnTerms } from './money.ts';
import { excursion, idlePower, power, sustainedPower } from './power.ts';
import { rails } from './rails.ts';
import { adder, type Total } from './total.ts';
import { weight } from './weight.ts';

/** What every fit report adds up, in this order. */
export const judgedTotals: readonly Total[] = [power, heat, money, sustainedPower, excursion, ...rails, weight];

const byName = new Map<BudgetName, Total[]>();
for (const total of [...judgedTotals, idlePower, memory, banksMemory]) {
  byName.set(total.name, [...(byName.get(total.name) ?? []), total]);
}

/** Every total there is, by the name of its budget. */
export const totals: ReadonlyMap<BudgetName, readonly Total[]> = byName;

const addJudged = adder(judgedTotals);

/** Power, heat and money always and first; the others where the list has them. */
export function budgetsOf(units: readonly Unit[], brief: JudgeBrief): Budget[] {
  const budgets = addJudged(units, brief);
  if (!brief.money) return budgets;
  const onTerms = moneyOnTerms(units, brief, brief.money);
  return budgets.map((budget) => (budget.name === 'money' ? onTerms : budget));
}
