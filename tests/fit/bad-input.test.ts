/** Lists that nobody should send: a finding or a clear message, never a throw, and never a wrong "fits". */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { aPart, exampleList } from '../../src/fit/examples.ts';
import { judge, judgeList } from '../../src/fit/judge.ts';
import { neededFields } from '../../src/fit/needs/units.ts';
import type { JudgeInput } from '../../src/fit/rule.ts';
import { sayFinding, sayUnjudged } from '../../src/fit/say.ts';
import { partSchemas } from '../../src/parts/classes/index.ts';
import { mostInAll, mostOfOne } from '../../src/parts/limits.ts';
import { type Part, partClasses } from '../../src/parts/part.ts';
import { anyList } from '../helpers/any-part.ts';

/** One plain part of each class that makes up a current machine, and the list of it. */
const machine: JudgeInput = exampleList(Object.fromEntries(partClasses.slice(0, 10).map((of) => [of, {}])));
const parts = machine.map(({ part }) => part);
const written = machine.map(({ part, quantity }) => ({ part: part.id, quantity }));
const plainly = judge(machine).overall;
/** What the list comes to with something on it that is not judged. */
const partly = plainly === 'fits' ? 'cannot-tell' : plainly;

const absurd = [0, -1, 1.5, Number.NaN, Number.POSITIVE_INFINITY, 1e9, mostOfOne + 1];

describe('a quantity that is no count', () => {
  test.each(absurd)('%d of a part: the part is named, the rest is judged, and the list does not fit', (quantity) => {
    const list = [...machine, { part: aPart('keyboard'), quantity }];
    const report = judge(list);
    expect(report.unjudged).toEqual([{ part: 'plain-keyboard', why: 'miscounted' }]);
    expect(report.units.map(({ class: of }) => of)).not.toContain('keyboard');
    expect(report.overall).toBe(partly);
    expect(judgeList([...written, { part: 'plain-keyboard', quantity }], [...parts, aPart('keyboard')])).toEqual(
      report,
    );
  });

  test.each(absurd)('%d of a part on one line spoils the count of the others', (quantity) => {
    const fan = aPart('fan');
    expect(
      judge([
        { part: fan, quantity: 1 },
        { part: fan, quantity },
      ]).unjudged,
    ).toEqual([{ part: fan.id, why: 'miscounted' }]);
  });
});

describe('a list without end', () => {
  test('10,000 different parts: the first hundred are judged and the others named', () => {
    const fans = Array.from({ length: 10_000 }, (_, n): Part => ({ ...aPart('fan'), id: `fan-${n}` }));
    const report = judge(fans.map((part) => ({ part, quantity: 1 })));
    expect(report.units).toHaveLength(mostInAll);
    expect(report.unjudged).toHaveLength(10_000 - mostInAll);
    expect(report.unjudged.every(({ why }) => why === 'too-many')).toBe(true);
    expect(report.overall).not.toBe('fits');
  });

  test('10,000 lines of one part are a count that no list has', () => {
    const lines = Array.from({ length: 10_000 }, () => ({ part: 'plain-fan', quantity: 1 }));
    expect(judgeList(lines, [aPart('fan')])).toMatchObject({
      units: [],
      unjudged: [{ part: 'plain-fan', why: 'miscounted' }],
      overall: 'cannot-tell',
    });
  });

  test('exactly a hundred are judged', () => {
    const report = judge([
      { part: aPart('fan'), quantity: 60 },
      { part: aPart('memory-module'), quantity: 40 },
    ]);
    expect([report.units.length, report.unjudged]).toEqual([100, []]);
  });
});

describe('an id that no part has', () => {
  test('is named, and the list does not fit', () => {
    const report = judgeList([...written, { part: 'no-such-part', quantity: 1 }], parts);
    expect(report.unjudged).toEqual([{ part: 'no-such-part', why: 'unknown-part' }]);
    expect(report.overall).toBe(partly);
  });

  test('may be the name of something every object has', () => {
    const names = ['constructor', '__proto__', 'toString', ''];
    const report = judgeList(
      names.map((part) => ({ part, quantity: 1 })),
      parts,
    );
    expect(report.unjudged.map(({ part }) => part).sort()).toEqual([...names].sort());
  });
});

describe('a part of another edition', () => {
  const as = (part: object): JudgeInput[number] => ({ part: part as Part, quantity: 1 });

  test('fields that this edition does not know change nothing', () => {
    const strange = machine.map(({ part, quantity }) => ({
      part: { ...part, glow: 'green', since: [1, 2] },
      quantity,
    }));
    expect(judge(strange)).toEqual(judge(machine));
  });

  test('a class that this edition does not know is named', () => {
    const report = judge([...machine, as({ ...aPart('fan'), class: 'teapot', id: 'a-teapot' })]);
    expect(report.unjudged).toEqual([{ part: 'a-teapot', why: 'unknown-class' }]);
    expect(report.overall).toBe(partly);
  });

  test('a class may be the name of something every object has', () => {
    expect(judge([as({ ...aPart('fan'), class: 'constructor' })]).unjudged).toHaveLength(1);
  });

  test.each(partClasses)('a part of class %s with no measure at all is judged, and nothing of it is known', (of) => {
    const { class: partClass, id, name, maker, source, ...rest } = aPart(of);
    const needed = Object.fromEntries(
      Object.entries(rest).filter(([field]) => (neededFields[of] as readonly string[] | undefined)?.includes(field)),
    );
    const bare = { class: partClass, id, name, maker, source, ...needed };
    expect(partSchemas[of].safeParse(bare).error).toBeUndefined();
    const report = judge([as(bare)]);
    expect(report.unjudged).toEqual([]);
    expect(report.overall).not.toBe('fits');
  });

  test.each(partClasses)('a part of class %s without a field that every one has is named', (of) => {
    for (const field of ['id', 'name', ...((neededFields[of] ?? []) as readonly string[])]) {
      const part: Record<string, unknown> = { ...aPart(of) };
      delete part[field];
      expect(partSchemas[of].safeParse(part).success, field).toBe(false);
      expect(judge([as(part)]).unjudged.map(({ why }) => why)).toEqual(['not-whole']);
    }
  });

  test('every field without which the schemas refuse a part is looked for', () => {
    const common = ['class', 'id', 'name', 'maker', 'source'];
    for (const of of partClasses) {
      const needed = Object.entries(partSchemas[of].shape).flatMap(([field, schema]) =>
        schema.safeParse(undefined).success || common.includes(field) ? [] : [field],
      );
      expect([...((neededFields[of] ?? []) as readonly string[])], of).toEqual(needed);
    }
  });
});

test('every reason is a sentence that names the part', () => {
  for (const why of ['unknown-part', 'unknown-class', 'not-whole', 'miscounted', 'too-many'] as const) {
    expect(sayUnjudged({ part: 'a-part', why })).toMatch(/“a-part”.*\.$/);
  }
});

describe('whatever a file may hold', () => {
  test('the lists of these tests hold every class', () => {
    const met = new Set(
      fc.sample(anyList(12), { numRuns: 200, seed: 1 }).flatMap((list) => list.map(({ part }) => part.class)),
    );
    expect([...met].sort()).toEqual([...partClasses].sort());
  });

  test('judging and saying never throw; a list that fits has nothing amiss', () => {
    fc.assert(
      fc.property(anyList(12), (list) => {
        const { findings, overall, left, unjudged } = judge(list);
        for (const finding of findings) expect(sayFinding(finding).what, finding.id).toMatch(/\.$/);
        if (overall !== 'fits') return;
        const isGrave = (severity: string) => severity === 'hazard' || severity === 'blocker';
        expect(findings.filter(({ verdict, severity }) => verdict !== 'fits' && isGrave(severity))).toEqual([]);
        expect([...left.filter(({ severity }) => isGrave(severity)), ...unjudged]).toEqual([]);
      }),
      { numRuns: 300 },
    );
  });
});
