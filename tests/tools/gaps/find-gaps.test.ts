import { expect, test } from 'vitest';
import { aPart } from '../../../src/fit/examples.ts';
import type { Part } from '../../../src/parts/part.ts';
import { findGaps } from '../../../src/tools/gaps/find-gaps.ts';

const unknown = (part: Part, field: string): Part => {
  const fields = Object.entries(part).filter(([name]) => name !== field);
  return Object.fromEntries(fields) as unknown as Part;
};
const chassis = aPart('chassis');
const board = aPart('motherboard');
const processor = aPart('processor');
const tall = { ...unknown(aPart('cooler'), 'heightMm'), id: 'untold' } as Part;
const low = aPart('cooler');
const plain = (id: string) => ({
  id,
  title: id,
  says: id,
  list: [chassis, board, processor, low].map((part) => ({ part: part.id, quantity: 1 })),
});

test('a height that is not recorded is counted once for each build that it leaves open', () => {
  const parts = [chassis, board, processor, low, tall];
  const { gaps, judged } = findGaps({ parts, workedBuilds: [plain('one'), plain('two')] });
  expect(judged).toBe(10);
  expect(gaps.filter(({ partClass }) => partClass === 'cooler')).toEqual([
    { partClass: 'cooler', field: 'heightMm', lists: 2, parts: ['untold'] },
  ]);
});

test('the gap of a build is not the gap of every part tried in it', () => {
  const parts = [chassis, board, processor, tall];
  const build = {
    ...plain('one'),
    list: [chassis, board, processor, tall].map((part) => ({ part: part.id, quantity: 1 })),
  };
  const { gaps } = findGaps({ parts, workedBuilds: [build] });
  expect(gaps.filter(({ field }) => field === 'heightMm')).toEqual([
    { partClass: 'cooler', field: 'heightMm', lists: 1, parts: ['untold'] },
  ]);
});
