/** What is kept from list to list never shows in a report. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { aPart, exampleList } from '../../../src/fit/examples.ts';
import { findHookup } from '../../../src/fit/hookup/search.ts';
import { judge } from '../../../src/fit/judge.ts';
import { judgeBy } from '../../../src/fit/judging/judge-by.ts';
import { kindNumber, planOf } from '../../../src/fit/judging/plan.ts';
import { openDesk } from '../../../src/fit/judging/table.ts';
import { lowerEach, putTogether, unitsOf } from '../../../src/fit/needs/index.ts';
import { sortOut } from '../../../src/fit/needs/units.ts';
import type { FitReport } from '../../../src/fit/report.ts';
import type { ExampleParts, JudgeInput } from '../../../src/fit/rule.ts';
import { rules } from '../../../src/fit/rules/index.ts';
import { type Part, partClasses } from '../../../src/parts/part.ts';
import { anyList } from '../../helpers/any-part.ts';
import { likelyList } from '../../helpers/likely-list.ts';
import * as small from './small-rules.ts';

/** By a judge that has judged nothing, of parts that nobody has met. */
const afresh = (list: JudgeInput): FitReport => judgeBy(rules)(structuredClone(list));

function freeze<T>(value: T): T {
  if (typeof value !== 'object' || value === null || Object.isFrozen(value)) return value;
  for (const one of Object.values(value)) freeze(one);
  return Object.freeze(value);
}

describe.each([
  ['lists as people make them', likelyList],
  ['whatever a file may hold', anyList(7)],
])('%s', (_, lists) => {
  test('come to the same after any other list, again, and afresh', () => {
    fc.assert(
      fc.property(lists, lists, (list, other) => {
        const first = judge(list);
        judge(other);
        expect(judge(list)).toStrictEqual(first);
        expect(judge(list)).toStrictEqual(first);
        expect(first).toStrictEqual(afresh(list));
      }),
      { numRuns: 60 },
    );
  });

  test('come to the same when one part at a time is taken off and put back', () => {
    fc.assert(
      fc.property(lists, (list) => {
        const whole = afresh(list);
        for (const [at] of list.entries()) {
          const rest = list.toSpliced(at, 1);
          expect(judge(rest)).toStrictEqual(afresh(rest));
          expect(judge(list)).toStrictEqual(whole);
        }
      }),
      { numRuns: 12 },
    );
  });

  test('may be frozen, and so may their reports', () => {
    fc.assert(
      fc.property(lists, (list) => {
        const frozen = freeze(structuredClone(list));
        const report = freeze(judge(frozen));
        expect(judge(frozen)).toStrictEqual(report);
      }),
      { numRuns: 50 },
    );
  });
});

describe('what is told again only while it holds', () => {
  test('who stands in the way of a need left over, though nothing of its own kind has changed', () => {
    const switchesOff = ['sata-1'];
    const slot = { id: 'm2-1', key: 'm', lengthsMm: [80], links: ['pcie'], lanes: 4, generation: 4, switchesOff };
    const board = { part: { ...aPart('motherboard'), sataPorts: 1, moduleSlots: [slot] } as Part, quantity: 1 };
    const box: JudgeInput[number] = { part: { ...aPart('storage-drive'), build: '2.5' }, quantity: 1 };
    const holders = (name: string) => {
      const short: Part = { ...aPart('storage-drive'), id: 'a-short-drive', name };
      const { findings } = judge([board, box, { part: short, quantity: 1 }]);
      return findings.find(({ rule, verdict }) => rule === 'storage/drive-port' && verdict !== 'fits')?.facts[
        'holders'
      ];
    };
    expect([holders('Early'), holders('Late')]).toEqual([['Early'], ['Late']]);
  });

  test('what is lost at a joint, though the joint is the same', () => {
    const plan = planOf([small.linkWidth]);
    const { groups } = sortOut(exampleList({ motherboard: {}, 'graphics-card': {} }));
    const each = lowerEach(groups.flatMap(({ units }) => units));
    const hookup = findHookup({ ...putTogether(each), kinds: plan.kinds });
    const desk = openDesk(plan);
    const lostWith = (wanted: number) => {
      const used = new Map([...hookup.used].map(([id, amount]) => [id, id.endsWith('busMBps') ? wanted : amount]));
      const { joints } = desk.lay(groups, each, { ...hookup, used }, []);
      return joints[kindNumber('expansion-slot')]?.[0]?.lost['busMBps'];
    };
    // Sixteen lanes of generation 4 carry 31,507 MB/s: 16 GT/s × 128/130 ÷ 8 for each.
    expect([31_507, 31_600, 31_507, 40_000].map(lostWith)).toEqual([0, 93, 0, 8493]);
  });
});

describe('a brief', () => {
  const machine: ExampleParts = Object.fromEntries(partClasses.slice(0, 10).map((partClass) => [partClass, {}]));

  test('is read each time', () => {
    const list = exampleList(machine);
    const ofMains = (mainsVolts: number) => judge(list, { mainsVolts });
    const [first, second] = [ofMains(230), ofMains(120)];
    expect(ofMains(230)).toStrictEqual(first);
    expect(second).toStrictEqual(judgeBy(rules)(structuredClone(list), { mainsVolts: 120 }));
  });
});

describe('units', () => {
  test('are the same objects for the same part and number', () => {
    const list = exampleList({ fan: [{}, {}] });
    expect(unitsOf(list)[1]).toBe(unitsOf(list)[1]);
    expect(unitsOf(list)[0]).not.toBe(unitsOf(list)[1]);
  });

  test('two parts of one id that hold the same are one part twice, in whatever order', () => {
    const [line] = exampleList({ fan: {} }) as [JudgeInput[number]];
    const twin = { ...line, part: structuredClone(line.part) };
    expect(judge([line, twin])).toEqual(judge([{ ...line, quantity: 2 }]));
  });

  test('two parts of one id that differ are told apart, whichever comes first', () => {
    const [line] = exampleList({ fan: {} }) as [JudgeInput[number]];
    const other = { ...line, part: { ...line.part, name: 'Another edition' } };
    const report = judge([line, other]);
    expect(judge([other, line])).toEqual(report);
    expect(new Set(report.units.map(({ name }) => name))).toEqual(new Set([line.part.name, 'Another edition']));
  });
});
