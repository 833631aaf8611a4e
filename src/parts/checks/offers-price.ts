import type { SenseCheck } from './check.ts';

/** The price a list is reckoned with is one that somebody asks, where shops are named at all. */
export const offersPrice: SenseCheck = {
  id: 'offers-price',
  check: (parts) =>
    parts.flatMap(({ id, priceCents, offers }) => {
      if (priceCents === undefined || !offers || offers.length === 0) return [];
      const asked = offers.map((offer) => offer.priceCents);
      if (priceCents >= Math.min(...asked) && priceCents <= Math.max(...asked)) return [];
      const expected = `a price within those of its offers, ${Math.min(...asked)} to ${Math.max(...asked)}`;
      return [{ part: id, path: ['priceCents'], actual: String(priceCents), expected }];
    }),
};
