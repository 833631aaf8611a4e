import { expect } from 'vitest';
import type { Need, Place, Resource } from '../../../src/fit/model.ts';
import { problem, solve } from './build.ts';
import { tryEverything } from './oracle.ts';

/** What is joined is as expected, and trying everything says so too. */
export function check(
  lists: { needs: Need[]; places: Place[]; resources: Resource[] },
  expected: Record<string, string>,
): void {
  expect(solve(lists).joined).toEqual(expected);
  expect(tryEverything(problem(lists)).joined).toEqual(expected);
}
