/**
 * A total: a sum of whole-number amounts, one term for each class of part, against a bound that one class, the brief or
 * a standard sets. Judge, budgets and solver read the same declaration; none of them adds up in a way of its own.
 *
 * Laws: the budget of a total is the sum of its shares; the order of units changes neither `used` nor `limit`; a share
 * that is not recorded makes `used` a floor.
 */
import type { Part, PartClass, PartOf } from '../../parts/part.ts';
import { kept } from '../../units/kept.ts';
import type { Unit } from '../model.ts';
import type { Budget, BudgetName, BudgetUnit } from '../report.ts';
import type { JudgeBrief } from '../rule.ts';

/**
 * What a part adds. `amount` is a whole number of the total's unit, from 0 up; undefined when it is not recorded.
 * `isFloor`: the part adds this much at least; how much in all is not recorded.
 */
export type Share = { amount: number | undefined; field: string; isFloor?: true };

/** What parts of one class add; `shares` is given the fields in `reads` and may read no other. */
export type Term = {
  readonly class: PartClass;
  readonly reads: readonly string[];
  shares(part: Part): readonly Share[];
};

/**
 * What sets the limit. `amount` is in the total's unit; undefined when it is not recorded, null when the part sets no
 * such limit, so that the total is not about it.
 */
export type Bound =
  | { readonly class: PartClass; readonly reads: readonly string[]; amount(part: Part): number | undefined | null }
  | { readonly asks: 'budgetCents' }
  | { readonly most: number };

export type Total = {
  readonly name: BudgetName;
  /** What tells it from others of its name. */
  readonly of?: string;
  readonly unit: BudgetUnit;
  readonly adds: readonly Term[];
  readonly bound?: Bound;
  /**
   * When a list has it: always; when a part of one of its terms is on the list; or when a part is on the list that
   * sets its limit or would if it were recorded.
   */
  readonly when: 'always' | 'added' | 'bound';
  readonly formula: string;
  readonly source: string;
};

/** A term, held by the compiler to the fields that it says it reads. */
export const term = <C extends PartClass, const K extends keyof PartOf<C>>(
  partClass: C,
  reads: readonly K[],
  shares: (part: Pick<PartOf<C>, K>) => readonly Share[],
): Term => ({
  class: partClass,
  reads: reads as readonly string[],
  // A term is only ever given parts of its own class.
  shares: (part) => shares(part as Part & Pick<PartOf<C>, K>),
});

/** A bound set by the parts of one class, held to its fields in the same way. */
export const boundBy = <C extends PartClass, const K extends keyof PartOf<C>>(
  partClass: C,
  reads: readonly K[],
  amount: (part: Pick<PartOf<C>, K>) => number | undefined | null,
): Bound => ({
  class: partClass,
  reads: reads as readonly string[],
  amount: (part) => amount(part as Part & Pick<PartOf<C>, K>),
});

/** What one part adds to each of several totals, and what it sets as their limits. */
type Adds = { shares: readonly (readonly Share[] | undefined)[]; amounts: readonly Amount[] };
/** `none`: parts of this class set no limit. */
type Amount = number | undefined | null | 'none';

const addsBy = (totals: readonly Total[], part: Part): Adds => ({
  shares: totals.map(({ adds }) => adds.find((one) => one.class === part.class)?.shares(part)),
  amounts: totals.map(({ bound }) =>
    bound && 'class' in bound && bound.class === part.class ? bound.amount(part) : 'none',
  ),
});

/**
 * Adds up several totals of any list; what a part adds is worked out once, since parts do not change. A total that the
 * list does not have is left out. Of several parts that set a limit the least counts, since nothing says which of them
 * serves what; there is no limit when one of them is not recorded.
 */
export function adder(totals: readonly Total[]): (units: readonly Unit[], brief: JudgeBrief) => Budget[] {
  const addsOf = kept((part: Part): Adds => addsBy(totals, part));
  return (units, brief) => {
    const parts = units.map(({ part }) => addsOf(part));
    return totals.flatMap((total, n) => addUp(total, n, units, parts, brief) ?? []);
  };
}

/** The budget of one list, or undefined when the list has none. */
export const budgetOf = (total: Total, units: readonly Unit[], brief: JudgeBrief): Budget | undefined =>
  adder([total])(units, brief)[0];

function addUp(
  { name, of, unit, bound, when, formula, source }: Total,
  n: number,
  units: readonly Unit[],
  parts: readonly Adds[],
  brief: JudgeBrief,
): Budget | undefined {
  const about: Budget['about'] = [];
  const unknown: Budget['unknown'] = [];
  const working: Budget['working'] = [];
  let used = 0;
  let hasTerm = false;
  let limit =
    bound && 'most' in bound ? bound.most : bound && 'asks' in bound ? brief[bound.asks] : Number.POSITIVE_INFINITY;
  for (let at = 0; at < units.length; at += 1) {
    const { id } = units[at] as Unit;
    const { shares, amounts } = parts[at] as Adds;
    const own = shares[n];
    if (own) {
      hasTerm = true;
      let isUnknown = false;
      for (const { amount, field, isFloor } of own) {
        if (amount === undefined || isFloor) isUnknown = true;
        if (amount === undefined) continue;
        working.push({ unit: id, amount, field });
        used += amount;
      }
      if (isUnknown) unknown.push(id);
    }
    const amount = amounts[n];
    if (amount === 'none' || amount === null) continue;
    about.push(id);
    limit = amount === undefined || limit === undefined ? undefined : Math.min(limit, amount);
  }
  if (when === 'added' && !hasTerm) return undefined;
  if (when === 'bound' && about.length === 0) return undefined;
  const budget: Budget = { name, unit, used, about, unknown, working, formula, source };
  if (of !== undefined) budget.of = of;
  if (limit !== undefined && limit !== Number.POSITIVE_INFINITY) budget.limit = limit;
  return budget;
}

/**
 * How far a budget is past a part of its limit, in whole numbers: more than 0 is too much. A fifth left free is
 * `past(budget, 5, 4)`, which is 5 × used − 4 × limit. undefined when there is no limit.
 */
export const past = ({ used, limit }: Pick<Budget, 'used' | 'limit'>, times = 1, of = 1): number | undefined =>
  limit === undefined ? undefined : times * used - of * limit;
