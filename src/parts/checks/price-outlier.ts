import type { Part } from '../part.ts';
import type { SenseCheck } from './check.ts';

const times = 10;
/** Fewer prices than this have no median worth the name. */
const fewest = 5;

/** The price in the middle; of an even number the lower of the two, so that it is a price somebody asks. */
function median(prices: readonly number[]): number | undefined {
  return [...prices].sort((a, b) => a - b)[Math.floor((prices.length - 1) / 2)];
}

const priced = (part: Part) => part.priceCents !== undefined;
const euro = (cents: number) => (cents / 100).toFixed(2);

/** What one pays for, where a class comes in sizes far apart. */
function sizeOf(part: Part): number | undefined {
  if ('capacityGb' in part) return part.capacityGb;
  if ('capacityKb' in part) return part.capacityKb;
  return 'capacityMb' in part ? part.capacityMb : undefined;
}

const isFarFrom = (value: number, middle: number): boolean => value >= middle * times || value * times <= middle;

/** True when the price for its size is far from what others of its class ask for theirs; also when it has no size. */
function isDearForSize(part: Part, others: readonly Part[]): boolean {
  const perSize = (one: Part) => (one.priceCents ?? 0) / (sizeOf(one) ?? Number.NaN);
  const middle = median(others.map(perSize).filter((price) => price > 0));
  const own = perSize(part);
  return middle === undefined || Number.isNaN(own) || isFarFrom(own, middle);
}

/**
 * A price ten times the median of its class, or a tenth of it, is most often a slip of the decimal point. A large
 * module or disk may cost that, if its price for its size is like the others'.
 */
export const priceOutlier: SenseCheck = {
  id: 'price-outlier',
  check: (parts) =>
    parts.filter(priced).flatMap((part) => {
      const { id, class: of, priceCents = 0 } = part;
      const ofClass = parts.filter((one) => one.class === of && priced(one));
      const prices = ofClass.map((one) => one.priceCents ?? 0);
      const middle = median(prices);
      if (prices.length < fewest || middle === undefined) return [];
      if (!isFarFrom(priceCents, middle) || !isDearForSize(part, ofClass)) return [];
      const expected = `between a tenth and ten times ${euro(middle)}, the median of its class`;
      return [{ part: id, path: ['priceCents'], actual: euro(priceCents), expected }];
    }),
};
