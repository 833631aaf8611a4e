import { expect, test } from 'vitest';
import { compareIds } from '../../../src/fit/hookup/order.ts';

test('numbers in ids count as numbers, and the rest as plain text', () => {
  const ids = [
    'module-10/edge',
    'module-2/edge',
    'Module-3/edge',
    'module-2/slot-b10',
    'module-2/slot-b9',
    'module/edge',
  ];
  expect(ids.sort(compareIds)).toEqual([
    'Module-3/edge',
    'module-2/edge',
    'module-2/slot-b9',
    'module-2/slot-b10',
    'module-10/edge',
    'module/edge',
  ]);
});

test('ids that differ only in leading zeros still have an order', () => {
  expect(compareIds('slot-2', 'slot-02')).toBeGreaterThan(0);
  expect(compareIds('slot-02', 'slot-2')).toBeLessThan(0);
  expect(compareIds('slot-2', 'slot-2')).toBe(0);
});
