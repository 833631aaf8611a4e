import { expect, test } from 'vitest';
import { showDate, showDay } from '../../src/wording/dates.ts';

test('a day of the course is printed with its year', () => {
  expect(showDate('2026-11-10')).toBe('10 Nov 2026');
});

test('the first evening is a Tuesday', () => {
  expect(showDay('2026-11-03')).toBe('Tue 3 Nov');
});

test('the last day of a month stays in its month, wherever the machine stands', () => {
  expect(showDay('2027-02-28')).toBe('Sun 28 Feb');
  expect(showDate('2028-02-29')).toBe('29 Feb 2028');
});
