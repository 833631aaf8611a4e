import { expect, test } from 'vitest';
import { proofSlips, senseSlips } from '../../src/exercises/prove.ts';
import type { ChooseExercise } from '../../src/exercises/types.ts';
import { choose, misfits, parts } from './bench.ts';

const answering = (change: (part: string) => string): ChooseExercise => ({
  ...choose,
  answer: (choose.answer ?? []).map((line) => ({ ...line, part: change(line.part) })),
});

test('an exercise whose answer earns every mark is proved', () => {
  expect(senseSlips(choose)).toEqual([]);
  expect(proofSlips(choose, parts)).toEqual([]);
  expect(senseSlips(misfits)).toEqual([]);
  expect(proofSlips(misfits, parts)).toEqual([]);
});

test('an answer that falls short in a line names the line and what it earned', () => {
  const slips = proofSlips(
    answering((part) => (part === 'skarn-low' ? 'skarn-mast' : part)),
    parts,
  );
  expect(slips).toHaveLength(1);
  expect(slips[0]).toMatchObject({ path: ['answer'], id: 'exercise/answer-not-full-marks', expected: 'all of them' });
  expect(slips[0]?.actual).toMatch(/^an answer that earns 0 of 3 in "fits" \(.*7 mm.*\)$/);
});

test('an answer with a part from elsewhere is told the part', () => {
  expect(
    proofSlips(
      answering((part) => (part === 'quellin-buoy' ? 'velm-back-room' : part)),
      parts,
    ),
  ).toEqual([
    {
      path: ['answer', 2, 'part'],
      id: 'exercise/answer-off-shelf',
      actual: '"velm-back-room"',
      expected: 'a part on the shelf of this exercise',
    },
    { path: ['answer'], id: 'exercise/answer-not-complete', actual: 'an answer with 0 for "processor"', expected: '1' },
  ]);
});

test('an answer with more than a place takes is told the place', () => {
  const answer = (choose.answer ?? []).map((line) => (line.part === 'tammer-16' ? { ...line, quantity: 5 } : line));
  expect(proofSlips({ ...choose, answer }, parts)).toEqual([
    {
      path: ['answer'],
      id: 'exercise/answer-not-complete',
      actual: 'an answer with 5 for "memory"',
      expected: '1 to 4',
    },
  ]);
});

test('a rubric that asks whether it fits also asks whether everything is known', () => {
  const rubric = choose.rubric.filter((line) => line.for !== 'known');
  expect(senseSlips({ ...choose, rubric })).toMatchObject([
    { path: ['rubric', 1, 'for'], id: 'exercise/rubric-without-known' },
  ]);
});

test('a statement of which no rule has anything to say is refused', () => {
  const statements = misfits.statements.map((one) =>
    one.id === 'room' ? { ...one, rule: 'clearance/card-length' } : one,
  );
  expect(proofSlips({ ...misfits, statements }, parts)).toMatchObject([
    {
      path: ['statements', 0, 'rule'],
      id: 'exercise/statement-without-finding',
      actual: 'clearance/card-length about a cooler',
    },
  ]);
});

test('statements that are all right, or all wrong, are refused', () => {
  const list = misfits.list.map((line) => (line.part === 'skarn-mast' ? { ...line, part: 'skarn-low' } : line));
  expect(proofSlips({ ...misfits, list }, parts)).toEqual([
    {
      path: ['statements'],
      id: 'exercise/statements-all-alike',
      actual: 'statements whose verdict is always fits',
      expected: 'at least two different verdicts',
    },
  ]);
});
