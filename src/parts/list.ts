/** From a parts list, as somebody wrote it, to the parts themselves. */
import { byId } from '../units/ids.ts';
import { isCount, mostInAll } from './limits.ts';
import type { Part, PartId, PartsList } from './part.ts';

/**
 * One line a part, by part id; quantities of one part are added up. Never throws: `unknown` lists the ids that no
 * part has, `miscounted` those whose quantity is not a whole number from 1 to 99, or with which the list has more than
 * 100 parts. Neither is judged.
 */
export function resolveList(
  list: PartsList,
  parts: readonly Part[],
): { input: { part: Part; quantity: number }[]; unknown: PartId[]; miscounted: PartId[] } {
  const catalogue = new Map(parts.map((part) => [part.id, part]));
  const quantities = new Map<PartId, number>();
  for (const { part, quantity } of list) quantities.set(part, (quantities.get(part) ?? 0) + count(quantity));

  const resolved: ReturnType<typeof resolveList> = { input: [], unknown: [], miscounted: [] };
  let sum = 0;
  for (const [id, quantity] of [...quantities].sort(([a], [b]) => byId(a, b))) {
    const part = catalogue.get(id);
    if (!part) resolved.unknown.push(id);
    else if (isCount(quantity) && sum + quantity <= mostInAll) {
      sum += quantity;
      resolved.input.push({ part, quantity });
    } else resolved.miscounted.push(id);
  }
  return resolved;
}

/** A quantity that is no count makes the sum none either. */
const count = (quantity: number): number => (isCount(quantity) ? quantity : Number.NaN);
