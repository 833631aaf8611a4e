import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { budgetsOf } from '../../src/fit/budgets/index.ts';
import { aPart, exampleList } from '../../src/fit/examples.ts';
import { unitsOf } from '../../src/fit/needs/index.ts';
import type { Budget } from '../../src/fit/report.ts';
import type { ExampleParts, JudgeInput, MoneyTerms } from '../../src/fit/rule.ts';

const cost = (list: JudgeInput, money: MoneyTerms, budgetCents?: number): Budget =>
  budgetsOf(unitsOf(list), { money, ...(budgetCents === undefined ? {} : { budgetCents }) }).find(
    ({ name }) => name === 'money',
  ) as Budget;
const on = (money: MoneyTerms, parts: ExampleParts, budgetCents?: number) =>
  cost(exampleList(parts), money, budgetCents);

const offer = (shop: string, priceCents: number, more: object = {}) => ({
  shop,
  date: '2031-03-01',
  priceCents,
  ...more,
});

describe('prices of shops', () => {
  const fan = { offers: [offer('quay', 900), offer('mole', 1000)], priceCents: 1100 };

  test('the cheapest counts, or the shop that is named; without an offer the price in the file', () => {
    expect(on({}, { fan })).toMatchObject({
      used: 900,
      working: [{ unit: 'fan-1', amount: 900, field: 'offers.quay.2031-03-01' }],
    });
    expect(on({ shop: 'mole' }, { fan }).used).toBe(1000);
    expect(on({ shop: 'elsewhere' }, { fan }).used).toBe(1100);
    expect(on({}, { fan: { priceCents: 1100 } }).used).toBe(1100);
    expect(on({}, { fan: { priceCents: undefined } })).toMatchObject({ used: 0, unknown: ['fan-1'] });
  });

  test('of two prices of one shop the newer counts, dearer or not', () => {
    const offers = [offer('quay', 900), { ...offer('quay', 950), date: '2031-04-01' }];
    expect(on({}, { fan: { offers } }).used).toBe(950);
  });

  test('a price for three or more holds from three', () => {
    const three = { offers: [offer('quay', 900), offer('quay', 700, { from: 3 })] };
    expect(on({}, { fan: [three, three] }).used).toBe(1800);
    expect(on({}, { fan: [three, three, three] }).used).toBe(2100);
  });

  test('tax is added to a price without it, to the nearest cent; without a rate the sum is a floor', () => {
    // 19 % of 9.99 is 1.8981.
    const parts: ExampleParts = { fan: { offers: [offer('quay', 999, { withoutTax: true })], priceCents: undefined } };
    expect(on({ salesTaxPermille: 190 }, parts)).toMatchObject({ used: 1189, unknown: [] });
    expect(on({}, parts)).toMatchObject({ used: 999, unknown: ['fan-1'] });
    expect(on({ salesTaxPermille: 190 }, { fan: { offers: [offer('quay', 999)] } }).used).toBe(999);
  });

  test('one charge for each order: two cheap orders lose against one that is dearer by less than the charge', () => {
    // At the quay 9 + 20 and 5 for the order; the cooler at the mole is 1 cheaper, and an order there is 5 as well.
    const parts: ExampleParts = {
      fan: { offers: [offer('quay', 900, { shippingCents: 500 })] },
      cooler: { offers: [offer('quay', 2000, { shippingCents: 500 }), offer('mole', 1900, { shippingCents: 500 })] },
    };
    expect(on({}, parts)).toMatchObject({ used: 900 + 2000 + 500 });
    expect(on({}, { cooler: parts.cooler as object }).used).toBe(1900 + 500);
  });
});

describe('packages', () => {
  const parts: ExampleParts = { processor: { priceCents: 20_000 }, motherboard: { priceCents: 12_000 }, fan: [{}, {}] };
  const pack = (priceCents: number, ...names: string[]) => ({
    id: names.join('-'),
    parts: names.map((name) => `plain-${name}`),
    priceCents,
  });

  test('a package is taken when it costs less than its parts, and not when it costs as much', () => {
    const taken = on({ packages: [pack(31_000, 'processor', 'motherboard')] }, parts);
    expect(taken.used).toBe(31_000 + 20_000);
    expect(taken.working).toContainEqual({ amount: 31_000, field: 'package processor-motherboard' });
    expect(on({ packages: [pack(32_000, 'processor', 'motherboard')] }, parts)).toMatchObject({
      used: 52_000,
      working: [{ amount: 12_000 }, { amount: 20_000 }, { amount: 10_000 }, { amount: 10_000 }],
    });
  });

  test('one with a part that is not on the list is not taken, and two of one part need two', () => {
    expect(on({ packages: [pack(1, 'processor', 'monitor')] }, parts).used).toBe(52_000);
    expect(on({ packages: [pack(15_000, 'fan', 'fan')] }, parts).used).toBe(32_000 + 15_000);
    expect(on({ packages: [pack(1, 'fan', 'fan', 'fan')] }, parts).used).toBe(52_000);
  });

  test('the greatest single saving is left when two others together save more', () => {
    const packages = [
      pack(27_000, 'processor', 'motherboard'), // saves 50
      pack(27_000, 'processor', 'fan'), // saves 30
      pack(19_000, 'motherboard', 'fan'), // saves 30
    ];
    expect(on({ packages }, parts).used).toBe(27_000 + 19_000);
  });

  test('a package gives a price to a part that has none', () => {
    const unpriced: ExampleParts = { processor: { priceCents: undefined }, fan: {} };
    expect(on({ packages: [pack(40_000, 'processor', 'fan')] }, unpriced)).toMatchObject({ used: 40_000, unknown: [] });
  });

  test('where there are too many to try them all, the formula says so', () => {
    const fans = Array.from({ length: 40 }, () => ({}));
    const packages = Array.from({ length: 4 }, (_, n) => ({ ...pack(9000, 'fan'), id: `p${n}` }));
    const budget = on({ packages }, { fan: fans });
    expect(budget.formula).toContain('too many packages');
    expect(budget.used).toBe(40 * 9000);
  });
});

describe('what a shop adds and what comes back', () => {
  test('a mark-up on the parts, not on the orders', () => {
    // Common practice: 5 % at a parts fair. 5 % of 109.99 is 5.4995.
    const parts: ExampleParts = { fan: { offers: [offer('quay', 10_999, { shippingCents: 500 })] } };
    expect(on({ markUpPermille: 50 }, parts).used).toBe(10_999 + 500 + 550);
  });

  test('net cost is the new, less what is sold and what is allowed for', () => {
    // Common practice: net cost = new - resale - allowance.
    const money: MoneyTerms = {
      resale: [{ part: 'old-card', cents: 3000 }],
      tradeIn: [{ part: 'old-board', cents: 1500 }],
    };
    expect(on(money, { motherboard: {} }, 8000)).toMatchObject({ used: 5500, limit: 8000 });
    expect(on(money, { motherboard: { priceCents: 4000 } }).used).toBe(-500);
  });
});

// A slow, obvious second way: every part at each of its prices, after every row of packages that can be taken.
function cheapest(list: JudgeInput, packages: NonNullable<MoneyTerms['packages']>): number {
  let best = Number.POSITIVE_INFINITY;
  const price = (left: ReadonlyMap<string, number>, paid: number): void => {
    const loose = list.filter(({ part }) => (left.get(part.id) ?? 0) > 0);
    const choose = (at: number, sum: number, charges: ReadonlyMap<string, number>): void => {
      const here = loose[at];
      if (!here) {
        best = Math.min(best, sum + [...charges.values()].reduce((all, charge) => all + charge, 0));
        return;
      }
      const quantity = left.get(here.part.id) ?? 0;
      for (const { shop, priceCents, shippingCents = 0, from = 1 } of here.part.offers ?? []) {
        if (from <= quantity) choose(at + 1, sum + quantity * priceCents, new Map(charges).set(shop, shippingCents));
      }
    };
    choose(0, paid, new Map());
    for (const { parts, priceCents } of packages) {
      const next = new Map(left);
      for (const part of parts) next.set(part, (next.get(part) ?? 0) - 1);
      if ([...next.values()].every((count) => count >= 0)) price(next, paid + priceCents);
    }
  };
  price(new Map(list.map(({ part, quantity }) => [part.id, quantity])), 0);
  return best;
}

test('the way of buying that is found is the cheapest there is', () => {
  const shops = ['quay', 'mole', 'lock'];
  const classes = ['fan', 'cooler', 'monitor'] as const;
  const prices = fc.integer({ min: 1, max: 40 });
  const offers = fc.array(
    fc.record({ shop: fc.constantFrom(...shops), priceCents: prices, from: fc.constantFrom(1, 1, 2) }),
    { maxLength: 4 },
  );
  const lists = fc.tuple(
    ...classes.map((partClass) =>
      fc.record({ offers, first: prices, quantity: fc.integer({ min: 1, max: 2 }), partClass: fc.constant(partClass) }),
    ),
  );
  const charges = fc.tuple(...shops.map(() => fc.integer({ min: 0, max: 30 })));
  const packages = fc.array(
    fc.record({
      parts: fc.array(fc.constantFrom(...classes.map((one) => `plain-${one}`)), { minLength: 1, maxLength: 3 }),
      priceCents: fc.integer({ min: 1, max: 90 }),
    }),
    { maxLength: 3 },
  );
  fc.assert(
    fc.property(lists, charges, packages, (lines, charge, some) => {
      const list: JudgeInput = lines.map(({ partClass, offers: given, first, quantity }) => {
        // A part is sold one at a time somewhere, and of two prices of one shop for one number there is one.
        const all = [{ shop: 'quay', priceCents: first, from: 1 }, ...given];
        const unlike = new Map(all.map((one) => [`${one.shop} ${one.from}`, one]));
        const own = [...unlike.values()].map((one) => ({
          ...one,
          date: '2031-03-01',
          shippingCents: charge[shops.indexOf(one.shop)] ?? 0,
        }));
        return { part: { ...aPart(partClass), offers: own }, quantity };
      });
      const named = some.map((one, n) => ({ ...one, id: `p${n}` }));
      const budget = cost(list, { packages: named });
      expect(budget.used).toBe(cheapest(list, named));
      expect(budget.working.reduce((sum, { amount }) => sum + amount, 0)).toBe(budget.used);
      expect(cost(list.toReversed(), { packages: named.toReversed() })).toEqual(budget);
    }),
    { numRuns: 300 },
  );
});
