/** Money: the price of every part on the list, against what the brief allows. */
import type { Unit } from '../model.ts';
import type { Budget } from '../report.ts';
import type { JudgeBrief } from '../rule.ts';
import { inAll } from './share.ts';

/** In cents. */
export function moneyBudget(units: readonly Unit[], { budgetCents }: JudgeBrief): Budget {
  return {
    name: 'money',
    unit: 'cent',
    ...inAll(units, ({ part }) => [{ amount: part.priceCents, field: 'priceCents' }]),
    ...(budgetCents === undefined ? {} : { limit: budgetCents }),
    about: [],
    formula: 'The prices of all parts on the list, added up.',
    source: 'common-practice',
  };
}
