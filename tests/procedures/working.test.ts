import { expect, test } from 'vitest';
import type { CardStep, JobCard } from '../../src/procedures/types.ts';
import { mayBeDone, minutesLeft, nextStep, restingOn } from '../../src/procedures/working.ts';

/** A card of four steps: c and d both wait for b, b for a. */
const step = (key: string, n: number, after: string[], usual: number): CardStep => ({
  key,
  n,
  after,
  step: key,
  chapter: 'mat',
  action: `Do ${key}.`,
  tools: [],
  minutes: [0, usual, usual * 2],
  cautions: [],
  right: 'It is done.',
  claim: 'Done',
  ifNot: [],
  drawing: 'none',
  makes: [],
});
const card: JobCard = {
  id: 'p-1',
  procedure: 'p',
  revision: 1,
  title: 'Four steps',
  list: [],
  chapters: [{ id: 'mat', title: 'On the mat', mat: [], tools: [] }],
  steps: [step('a', 1, [], 1), step('b', 2, ['a'], 2), step('c', 3, ['b'], 4), step('d', 4, ['b'], 8)],
  holds: 0,
  unmade: [],
};
const [, b, c] = card.steps as [CardStep, CardStep, CardStep, CardStep];

test('a step may be done when everything before it is', () => {
  expect(mayBeDone(c, new Set(['a', 'b']))).toBe(true);
  expect(mayBeDone(c, new Set(['a']))).toBe(false);
});

test('the next step is the first that is not done, also after one further on was done', () => {
  expect(nextStep(card, new Set(['a', 'b', 'd']))?.key).toBe('c');
  expect(nextStep(card, new Set(['a', 'b', 'c', 'd']))).toBeUndefined();
});

test('taking a step back takes back every done step that rests on it, and no other', () => {
  expect(restingOn(card, 'b', new Set(['a', 'b', 'd']))).toEqual(['d']);
  expect(restingOn(card, 'a', new Set(['a', 'b', 'c', 'd']))).toEqual(['b', 'c', 'd']);
  expect(restingOn(card, b.key, new Set(['a', 'b']))).toEqual([]);
});

test('the time left is the usual time of what is not done', () => {
  expect(minutesLeft(card, new Set(['a', 'c']))).toBe(2 + 8);
});
