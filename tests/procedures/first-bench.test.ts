import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { judge } from '../../src/fit/judge.ts';
import { resolveList } from '../../src/parts/list.ts';
import type { PartsList } from '../../src/parts/part.ts';
import { faultyTicks, reachable, tailor } from '../../src/procedures/tailor.ts';
import type { JobCard, Procedure } from '../../src/procedures/types.ts';
import { content } from '../helpers/content.ts';

const { parts } = content;
const procedure = content.procedures.find(({ id }) => id === 'current-desktop') as Procedure;
const { list } = parse(readFileSync('content/worked-builds/first-bench.yaml', 'utf8')) as { list: PartsList };

const makeCard = (of: PartsList) => {
  const report = judge(resolveList(of, parts).input);
  return { report, card: tailor(procedure, of, report) };
};
const made = (card: JobCard): string[] => card.steps.flatMap(({ makes }) => makes).sort();

describe('the card of the machine on bench 1', () => {
  const { report, card } = makeCard(list);

  test('is of a machine on which every need has its place', () => {
    expect(report.left).toEqual([]);
    expect(report.joints.length).toBeGreaterThan(20);
    expect(card.unmade).toEqual([]);
  });

  test('makes each joint of the hookup exactly once', () => {
    expect(made(card)).toEqual(report.joints.map(({ id }) => id).sort());
  });

  test('leaves no word to be filled in, and no name of a place empty', () => {
    const text = JSON.stringify(card.steps);
    expect(text).not.toMatch(/\{[a-z]+\}/);
    expect(text).not.toMatch(/undefined| {2}| \./);
  });

  test('names module, slot and lead', () => {
    const actions = card.steps.map(({ action }) => action);
    expect(actions).toContain('Push Tammer 16 GB into slot A2 until the latch closes.');
    expect(actions).toContain('Push Tammer 16 GB into slot B2 until the latch closes.');
    expect(actions).toContain('Slide Marl 1 TB into M.2 slot 1 at a slant, as far as it goes.');
    expect(actions).toContain("Push plug 1 of the supply's board lead into the wide power socket of Orrisk B2.");
  });

  test('can be done from the first step to the last in the order it stands', () => {
    const ticked = new Set<string>();
    for (const { key } of card.steps) {
      expect(reachable(card, ticked)).toContain(key);
      ticked.add(key);
    }
    expect(faultyTicks(card, ticked)).toEqual([]);
  });
});

test('whatever is on the list, the card makes each joint of its hookup exactly once, or says that it does not', () => {
  const lists = fc.array(
    fc.record({ part: fc.constantFrom(...parts.map(({ id }) => id)), quantity: fc.integer({ min: 1, max: 3 }) }),
    {
      maxLength: 14,
    },
  );
  fc.assert(
    fc.property(lists, (of) => {
      const { report, card } = makeCard([...list, ...of]);
      expect([...made(card), ...card.unmade].sort()).toEqual(report.joints.map(({ id }) => id).sort());
    }),
    { numRuns: 40 },
  );
}, 20_000);

test('a machine without card and drives in bays has no step for them', () => {
  const few = list.filter(({ part }) => !['brindle-4', 'hask-deep-2tb', 'skarn-120'].includes(part));
  const { card } = makeCard(few);
  const chapters = card.chapters.map(({ id }) => id);
  expect(chapters).toContain('fans');
  expect(chapters).not.toContain('card');
  expect(chapters).not.toContain('drives');
});
