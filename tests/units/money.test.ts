import { expect, test } from 'vitest';
import { showMoney, showNumber } from '../../src/units/money.ts';

test('cents are printed as euro with two figures after the point', () => {
  expect(showMoney(81200)).toBe('€812.00');
  expect(showMoney(5)).toBe('€0.05');
  expect(showMoney(0)).toBe('€0.00');
  expect(showMoney(-250)).toBe('−€2.50');
});

test('large numbers have a comma after every third figure', () => {
  expect(showMoney(181205)).toBe('€1,812.05');
  expect(showNumber(999)).toBe('999');
  expect(showNumber(1000)).toBe('1,000');
  expect(showNumber(1234567)).toBe('1,234,567');
});

test('figures after the point are not grouped', () => {
  expect(showNumber(1234.5678)).toBe('1,234.5678');
});
