import type { PartClass, PartOf } from '../../parts/part.ts';
import type { Unit, UnitId } from '../model.ts';
import { deciwatts } from '../needs/amounts.ts';
import { isOf } from '../needs/index.ts';
import type { Budget } from '../report.ts';

/** A part's share of a budget; undefined when it has one that is not recorded. */
export type Share = { amount: number | undefined; field: string };

export const allOf = <C extends PartClass>(units: readonly Unit[], partClass: C): Unit<PartOf<C>>[] =>
  units.filter(isOf(partClass));

/** In deciwatts: the least of several ratings, since nothing says which of them serves what; none when one is not recorded. */
export function leastOf(ratings: readonly (number | undefined)[]): Pick<Budget, 'limit'> {
  const known = ratings.filter((rating) => rating !== undefined);
  return known.length === 0 || known.length < ratings.length ? {} : { limit: deciwatts(Math.min(...known)) };
}

/** One row of working for each share, and their sum. */
export function inAll(
  units: readonly Unit[],
  sharesOf: (unit: Unit) => readonly Share[],
): Pick<Budget, 'used' | 'unknown' | 'working'> {
  const unknown: UnitId[] = [];
  const working: Budget['working'] = [];
  let used = 0;
  for (const unit of units) {
    for (const { amount, field } of sharesOf(unit)) {
      if (amount === undefined) unknown.push(unit.id);
      else {
        working.push({ unit: unit.id, amount, field });
        used += amount;
      }
    }
  }
  return { used, unknown, working };
}
