import fc from 'fast-check';
import { expect, test } from 'vitest';
import { findHookup } from '../../../src/fit/hookup/search.ts';
import type { Problem } from '../../../src/fit/model.ts';
import { readJoints } from './build.ts';
import { tryEverything } from './oracle.ts';
import { chainedProblem, drawnProblem, randomProblem } from './random-problem.ts';
import { splitterProblem } from './random-splitters.ts';

function agrees(problem: Problem): void {
  const hookup = findHookup(problem);
  const found = { joined: readJoints(hookup), cost: hookup.cost, used: Object.fromEntries(hookup.used) };
  expect(found).toEqual(tryEverything(problem));
}

test('the search finds what trying everything finds: joints, cost and amounts', () => {
  fc.assert(fc.property(randomProblem, agrees), { numRuns: 2000, seed: 1 });
}, 60_000);

test('and so it does where most places wait for other needs', () => {
  fc.assert(fc.property(chainedProblem, agrees), { numRuns: 1000, seed: 1 });
}, 60_000);

test('and where what is drawn passes through many hands to few resources', () => {
  fc.assert(fc.property(drawnProblem, agrees), { numRuns: 1500, seed: 1 });
}, 60_000);

test('and where fans are shared out over splitters, and much is alike', () => {
  fc.assert(fc.property(splitterProblem, agrees), { numRuns: 300, seed: 1 });
}, 120_000);
