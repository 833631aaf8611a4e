import { expect, test } from 'vitest';
import { findHookup } from '../../../src/fit/hookup/search.ts';
import { fans, recorded, rising } from './recorded.ts';

test.each(recorded)('$name', ({ problem, left, steps }) => {
  const hookup = findHookup(problem);
  expect(hookup.left).toHaveLength(left);
  expect(hookup.proved).toBe(true);
  expect(hookup.steps).toBeLessThanOrEqual(steps);
});

test('at the step limit the best found is kept, and what is left over is not proved', () => {
  const problem = fans(rising(8, 250, 50), [1000, 1000, 1000], [3, 3]);
  const { left, steps, stopped, proved } = findHookup(problem, { stepLimit: 10 });
  expect(steps).toBe(10);
  expect(proved).toBe(false);
  // Each in turn, strongest first: 600 on the third header, 550 and 450 on one splitter, 500 and 400 on the other.
  expect(left.filter(({ id }) => id.startsWith('fan')).length).toBeLessThanOrEqual(3);
  expect(stopped).toEqual(left.map(({ id }) => id));
});
