import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { budgetsOf } from '../../src/fit/budgets/index.ts';
import { exampleList } from '../../src/fit/examples.ts';
import { unitsOf } from '../../src/fit/needs/index.ts';
import type { Budget, BudgetName } from '../../src/fit/report.ts';
import type { ExampleParts, JudgeBrief } from '../../src/fit/rule.ts';
import { anyList } from '../helpers/any-part.ts';

const budget = (name: BudgetName, parts: ExampleParts, brief: JudgeBrief = {}): Budget =>
  budgetsOf(unitsOf(exampleList(parts)), brief).find((one) => one.name === name) as Budget;

describe('power', () => {
  // By hand: processor 90 W in a burst, board 40 W, two modules of 5 W, card 160 W in a burst, M.2 drive 6 W,
  // fans 250 mA, 200 mA (fitted) and 150 mA at 12 V, which are 3 W, 2.4 W and 1.8 W. 313.2 W in all.
  const list: ExampleParts = {
    chassis: {},
    motherboard: {},
    processor: {},
    cooler: {},
    'memory-module': [{}, {}],
    'graphics-card': {},
    'storage-drive': {},
    'power-supply': {},
    fan: {},
    monitor: {},
  };

  test('the likely peak against what the supply is rated for, with every share shown', () => {
    const { used, limit, unknown, working } = budget('power', list);
    expect({ used, limit, unknown }).toEqual({ used: 3132, limit: 5500, unknown: [] });
    expect(working).toEqual([
      { unit: 'chassis-1', amount: 24, field: 'fittedFans.milliamps' },
      { unit: 'motherboard-1', amount: 400, field: 'allowance' },
      { unit: 'processor-1', amount: 900, field: 'peakW' },
      { unit: 'cooler-1', amount: 30, field: 'fan.milliamps' },
      { unit: 'memory-module-1', amount: 50, field: 'allowance' },
      { unit: 'memory-module-2', amount: 50, field: 'allowance' },
      { unit: 'graphics-card-1', amount: 1600, field: 'peakW' },
      { unit: 'storage-drive-1', amount: 60, field: 'milliwatts' },
      { unit: 'fan-1', amount: 18, field: 'milliamps' },
    ]);
  });

  test('without a peak the steady load counts; without either the share is unknown', () => {
    expect(budget('power', { processor: { peakW: undefined, sustainedW: 65 } })).toMatchObject({
      used: 650,
      unknown: [],
    });
    expect(budget('power', { processor: { peakW: undefined, sustainedW: undefined } })).toMatchObject({
      used: 0,
      unknown: ['processor-1'],
      working: [],
    });
  });

  test('tenths of a watt are kept and parts of a tenth rounded up', () => {
    expect(budget('power', { processor: { peakW: 65.1 } }).used).toBe(651);
    expect(budget('power', { processor: { peakW: 65.11 } }).used).toBe(652);
    expect(budget('power', { 'storage-drive': { milliwatts: 4501 } }).used).toBe(46);
  });

  test('of two supplies the weaker sets the limit', () => {
    expect(budget('power', { 'power-supply': [{ ratedW: 550 }, { ratedW: 450 }] }).limit).toBe(4500);
  });

  test('no limit without a supply, or with one that is not rated', () => {
    expect(budget('power', { processor: {} })).not.toHaveProperty('limit');
    expect(budget('power', { 'power-supply': { ratedW: undefined } })).not.toHaveProperty('limit');
    expect(budget('power', { 'power-supply': [{}, { ratedW: undefined }] })).not.toHaveProperty('limit');
  });
});

describe('heat', () => {
  test('what the processor makes steadily against what the cooler carries away', () => {
    expect(budget('heat', { processor: { sustainedW: 105 }, cooler: { ratedW: 120 } })).toMatchObject({
      used: 1050,
      limit: 1200,
      working: [{ unit: 'processor-1', amount: 1050, field: 'sustainedW' }],
    });
  });

  test('a steady load that is not recorded is unknown, and a burst does not stand in for it', () => {
    expect(budget('heat', { processor: { sustainedW: undefined, peakW: 90 } })).toMatchObject({
      used: 0,
      unknown: ['processor-1'],
    });
  });
});

describe('money', () => {
  test('three fans cost three times one, against what the brief allows', () => {
    const parts: ExampleParts = {
      fan: [{ priceCents: 1100 }, { priceCents: 1100 }, { priceCents: 1100 }],
      monitor: {},
    };
    expect(budget('money', parts, { budgetCents: 20_000 })).toMatchObject({ used: 13_300, limit: 20_000 });
    expect(budget('money', parts)).not.toHaveProperty('limit');
  });

  test('a part without a price is unknown', () => {
    expect(budget('money', { fan: [{}, { priceCents: undefined }] })).toMatchObject({
      used: 10_000,
      unknown: ['fan-2'],
    });
  });
});

test('for any list, the rows of every budget add up to what is used, in whole amounts', () => {
  fc.assert(
    fc.property(anyList(8), (list) => {
      for (const { used, working } of budgetsOf(unitsOf(list), {})) {
        expect(working.reduce((sum, { amount }) => sum + amount, 0)).toBe(used);
        expect(Number.isSafeInteger(used)).toBe(true);
      }
    }),
    { numRuns: 200 },
  );
});
