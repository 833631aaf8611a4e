import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { budgetsOf, judgedTotals, totals } from '../../src/fit/budgets/index.ts';
import { budgetOf, past, type Total } from '../../src/fit/budgets/total.ts';
import { workingOf } from '../../src/fit/budgets/working.ts';
import { kinds } from '../../src/fit/kinds.ts';
import type { Unit } from '../../src/fit/model.ts';
import { unitsOf } from '../../src/fit/needs/index.ts';
import { rules } from '../../src/fit/rules/index.ts';
import type { Part } from '../../src/parts/part.ts';
import { anyList, anyPart } from '../helpers/any-part.ts';

const all = [...totals.values()].flat();
const called = ({ name, of }: Total) => (of === undefined ? name : `${name} ${of}`);

describe('totals', () => {
  test('the table has every total of the fit report under its name', () => {
    for (const total of judgedTotals) expect(totals.get(total.name)).toContain(total);
    for (const [name, own] of totals) expect(own.every((total) => total.name === name)).toBe(true);
  });

  test('no class adds twice to one total', () => {
    for (const { adds } of all) expect(new Set(adds.map((one) => one.class)).size).toBe(adds.length);
  });

  test.each(all.map((total) => [called(total), total] as const))(
    '%s reads only what it declares, in whole amounts',
    (_, total) => {
      const only = (part: Part, reads: readonly string[]): Part =>
        new Proxy(part, {
          get(target, key, receiver) {
            if (typeof key === 'string' && !reads.includes(key))
              throw new Error(`reads ${part.class}.${key} undeclared`);
            return Reflect.get(target, key, receiver);
          },
        });
      fc.assert(
        fc.property(anyPart, (part) => {
          for (const one of total.adds.filter((term) => term.class === part.class)) {
            for (const { amount } of one.shares(only(part, one.reads))) {
              if (amount !== undefined) expect(Number.isSafeInteger(amount) && amount >= 0).toBe(true);
            }
          }
          const { bound } = total;
          if (!bound || !('class' in bound) || bound.class !== part.class) return;
          const amount = bound.amount(only(part, bound.reads));
          if (typeof amount === 'number') expect(Number.isSafeInteger(amount) && amount >= 0).toBe(true);
        }),
        { numRuns: 100 },
      );
    },
  );

  test('for any list in any order: the sum of the shares, and the least limit', () => {
    const shuffled = anyList(8).chain((list) => {
      const units = unitsOf(list);
      return fc.tuple(fc.constant(units), fc.shuffledSubarray(units, { minLength: units.length }));
    });
    fc.assert(
      fc.property(shuffled, fc.constantFrom(...all), ([units, mixed], total) => {
        const budget = budgetOf(total, units, {});
        const again = budgetOf(total, mixed, {});
        expect(again?.used).toBe(budget?.used);
        expect(again?.limit).toBe(budget?.limit);
        expect(again?.unknown.toSorted()).toEqual(budget?.unknown.toSorted());
        if (budget) expect(budget.used).toBe(sumOfShares(total, units));
      }),
      { numRuns: 100 },
    );
  });

  test('a share that is not recorded makes the sum a floor: recording it never makes it less', () => {
    fc.assert(
      fc.property(anyList(6), fc.constantFrom(...all), fc.nat(), (list, total, at) => {
        const units = unitsOf(list);
        const before = budgetOf(total, units, {});
        const unit = units[at % units.length] as Unit;
        const [field] = total.adds.find((one) => one.class === unit.part.class)?.reads ?? [];
        // Taken out, the part adds less or as much, and then it is unknown unless another field stands in.
        const { [field as keyof Part]: _, ...rest } = unit.part;
        const bare = units.map((one) => (one === unit ? { ...one, part: rest as Part } : one));
        const after = budgetOf(total, bare, {});
        if (field === undefined || !before || !after) return;
        if (after.unknown.includes(unit.id) && !before.unknown.includes(unit.id))
          expect(after.used).toBeLessThanOrEqual(before.used);
      }),
      { numRuns: 500 },
    );
  });

  test('of a limit a fifth is free exactly where five times the load is no more than four times the limit', () => {
    expect(past({ used: 4400, limit: 5500 }, 5, 4)).toBe(0);
    expect(past({ used: 4401, limit: 5500 }, 5, 4)).toBe(5);
    expect(past({ used: 5501, limit: 5500 })).toBe(1);
    expect(past({ used: 5501 })).toBeUndefined();
  });
});

const sumOfShares = (total: Total, units: readonly Unit[]): number =>
  units.reduce((sum, { part }) => {
    const own = total.adds.find((one) => one.class === part.class)?.shares(part) ?? [];
    return own.reduce((all, { amount }) => all + (amount ?? 0), sum);
  }, 0);

describe('all budgets', () => {
  test('power, heat and money are always there, first, in that order', () => {
    fc.assert(
      fc.property(anyList(5), (list) => {
        expect(
          budgetsOf(unitsOf(list), {})
            .slice(0, 3)
            .map(({ name }) => name),
        ).toEqual(['power', 'heat', 'money']);
      }),
      { numRuns: 50 },
    );
    expect(budgetsOf([], {}).map(({ name }) => name)).toEqual(['power', 'heat', 'money']);
  });

  test('every rule about a budget stands on one that the fit report has, and a grave one on a total', () => {
    for (const rule of rules) {
      if (!('budget' in rule)) continue;
      expect(
        judgedTotals.map(({ name }) => name),
        rule.id,
      ).toContain(rule.budget);
    }
  });

  test('for any list: whole amounts, nothing negative, rows that add up, and the same again whatever the order', () => {
    const brief = { hoursPerDay: 3.5, tariffMilliEuros: 287, roomCelsius: 21.5, budgetCents: 50_000 };
    fc.assert(
      fc.property(anyList(10), (list) => {
        const budgets = workingOf(list, brief, kinds);
        for (const { name, used, limit, working } of budgets) {
          expect(Number.isSafeInteger(used) && used >= 0, name).toBe(true);
          if (limit !== undefined) expect(Number.isSafeInteger(limit) && limit >= 0, name).toBe(true);
          expect(
            working.every(({ amount }) => Number.isSafeInteger(amount)),
            name,
          ).toBe(true);
          const counted = working.filter((line) => line.in === undefined);
          if (counted.length > 0)
            expect(
              counted.reduce((sum, { amount }) => sum + amount, 0),
              name,
            ).toBe(used);
        }
        // Two supplies of unlike eras each have their own rails.
        const keys = budgets.map(({ name, of, about }) => `${name} ${of} ${about}`);
        expect(new Set(keys).size).toBe(keys.length);
        expect(JSON.parse(JSON.stringify(budgets))).toEqual(budgets);
        expect(workingOf(list.toReversed(), brief, kinds)).toEqual(budgets);
      }),
      { numRuns: 80 },
    );
  });
});
