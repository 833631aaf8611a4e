import { existsSync, readdirSync } from 'node:fs';
import { join, relative } from 'node:path';
import { describe, expect, test } from 'vitest';
import { exampleList, verdictOf } from '../../src/fit/examples.ts';
import { judgeBy } from '../../src/fit/judging/judge-by.ts';
import { kinds } from '../../src/fit/kinds.ts';
import { lowerAll, unitsOf } from '../../src/fit/needs/index.ts';
import type { Example, Rule } from '../../src/fit/rule.ts';
import { rules } from '../../src/fit/rules/index.ts';
import { sayFinding } from '../../src/fit/say.ts';
import { partClasses } from '../../src/parts/part.ts';
import { recordReads } from '../helpers/record-reads.ts';

const top = join(import.meta.dirname, '../..');
const folder = join(top, 'src/fit/rules');

/** Verdicts that a rule cannot come to, and why. */
const stopped = 'only when the search is stopped before every way was tried, which no short list brings about';
const never: Record<string, Partial<Record<Example['verdict'], string>>> = {
  'socket/board-present': { 'cannot-tell': stopped },
  'socket/processor-present': { 'cannot-tell': 'a list says which parts are on it' },
  'memory/memory-present': { 'cannot-tell': 'a list says which parts are on it' },
  'cooling/cooler-in-use': { 'cannot-tell': stopped },
  'cooling/no-cooling': { 'cannot-tell': stopped },
  'mounting/case-present': { 'cannot-tell': stopped },
  'mounting/supply-bay': { 'cannot-tell': stopped },
  'memory/mixed-modules': { 'cannot-tell': 'a part always has its id' },
  'storage/older-start': {
    'cannot-tell': 'how a machine starts is asked once, by firmware/boot-mode and storage/boot-drive',
  },
  'storage/module-shares-port': { 'cannot-tell': 'a slot that names no port shares with none' },
  'emissions/built-for-sale': { 'cannot-tell': 'what nobody was asked is not judged' },
  'expansion/bus-width': { 'cannot-tell': 'a card whose bus is not recorded is told once, by expansion/bus-slot' },
  'expansion/card-settings': { 'cannot-tell': 'jumpers that are not recorded are told once, by expansion/bus-lines' },
  'storage/ribbon-positions': { 'cannot-tell': 'the search gives every drive its place' },
  'power/two-plug-order': {
    fits: 'no list says how hands put two like plugs in',
    'cannot-tell': 'a board whose sockets are not recorded is told once, by power/board-lead',
  },
  'mounting/fan-taken-out': { 'cannot-tell': 'panels that are not recorded are told once, by mounting/radiator-place' },
  'mounting/monitor-arm': { 'cannot-tell': stopped },
  'power/supply-headroom': { 'cannot-tell': 'a load or rating that is not known is told once, by power/supply-load' },
};

/** `<class>.<field>` and `brief.<answer>`. A class may be declared for its name alone. */
const declaredBy = (rule: Rule): string[] => {
  const fields = 'joins' in rule ? rule.joins : 'gathers' in rule ? rule.gathers : 'at' in rule ? rule.reads : {};
  const asks: readonly string[] = 'gathers' in rule ? (rule.asks ?? []) : [];
  return [
    ...Object.entries(fields as Record<string, readonly string[]>).flatMap(([partClass, names]) =>
      names.map((name) => `${partClass}.${name}`),
    ),
    ...asks.map((answer) => `brief.${answer}`),
  ];
};

// Every rule at once, each held to the fields it declares.
const judge = judgeBy(rules.map((rule) => recordReads(rule)));
const judgeExample = ({ parts, shelf, brief }: Example) => judge(exampleList(parts, shelf), brief);

describe.each(rules.map((rule) => [rule.id, rule] as const))('%s', (id, rule) => {
  test.each(rule.examples.map((example) => [example.title, example.verdict, example] as const))(
    '%s: %s',
    (_, verdict, example) => {
      expect(verdictOf(judgeExample(example), id)).toBe(verdict);
    },
  );

  test('has an example of each verdict that it can come to', () => {
    const shown = new Set(rule.examples.map(({ verdict }) => verdict));
    for (const verdict of ['fits', 'does-not-fit', 'cannot-tell'] as const) {
      const why = never[id]?.[verdict];
      expect(shown.has(verdict), why ?? `no example of ${verdict}`).toBe(why === undefined);
    }
  });

  test('no two examples are called the same or are the same list', () => {
    const titles = rule.examples.map(({ title }) => title);
    expect(new Set(titles).size).toBe(titles.length);
    const lists = rule.examples.map(({ parts, shelf, brief }) => JSON.stringify([exampleList(parts, shelf), brief]));
    expect(new Set(lists).size).toBe(lists.length);
  });

  test('says what it found in whole sentences, whatever the example', () => {
    for (const example of rule.examples) {
      for (const finding of judgeExample(example).findings.filter((one) => one.rule === id)) {
        const { headline, what, why, remedy } = sayFinding(finding);
        expect(what, finding.id).toMatch(/^[^\s].*[.]$/s);
        if (finding.verdict === 'does-not-fit') expect(why, finding.id).toMatch(/[.]$/);
        if (finding.verdict !== 'fits') {
          expect(headline, finding.id).toMatch(/^[^\s].*[^.]$/);
          expect(remedy, finding.id).toMatch(/[.]$/);
        }
        for (const text of [headline, what, why, remedy]) {
          expect(text, finding.id).not.toMatch(/undefined|null|NaN|\[object| {2}/);
        }
      }
    }
  });

  test('its words are those of the house', () => {
    const said = rule.examples.flatMap((example) =>
      judgeExample(example)
        .findings.filter((one) => one.rule === id)
        .map(sayFinding),
    );
    for (const { headline, what, why, remedy } of said) {
      expect(`${headline} ${what} ${why} ${remedy}`).not.toMatch(
        /\b(invalid|illegal|incompatible|error|simply|just|obviously|oops|please|did you mean)\b|!/i,
      );
      expect(headline.split(/\s+/).length, headline).toBeLessThanOrEqual(8);
    }
  });

  test('reads all that it declares', () => {
    const seen = new Set<string>();
    const watching = judgeBy(rules.map((one) => (one === rule ? recordReads(one, seen) : one)));
    for (const { parts, shelf, brief } of rule.examples) watching(exampleList(parts, shelf), brief);
    expect(declaredBy(rule).filter((field) => !seen.has(field))).toEqual([]);
  });

  test('rests on something: a source, a lesson, and no more than its basis allows', () => {
    expect(rule.sources.length).toBeGreaterThan(0);
    for (const source of rule.sources) {
      expect(existsSync(join(top, `content/sources/${source}.yaml`)), source).toBe(true);
    }
    expect(existsSync(join(top, `content/lessons/${rule.lesson}.mdx`)), rule.lesson).toBe(true);
    if (rule.basis === 'practice') expect(['limit', 'note']).toContain(rule.severity);
  });
});

describe('the list of rules', () => {
  test('holds every file of rules once, each called by its path', () => {
    const paths = readdirSync(folder, { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile() && entry.parentPath !== folder)
      .map((entry) => relative(folder, join(entry.parentPath, entry.name)).replace(/\.ts$/, ''));
    expect(rules.map(({ id }) => id).toSorted()).toEqual(paths.toSorted());
  });

  test('there are 14 or more', () => {
    expect(rules.length).toBeGreaterThanOrEqual(14);
  });

  test('every kind of need that parts have is worded by one rule when it is left over', () => {
    const each = partClasses.map((partClass) => ({ [partClass]: {} }));
    const lists = [...each, { 'storage-drive': { build: '2.5' as const } }];
    const met = lists.flatMap((parts) => lowerAll(unitsOf(exampleList(parts))).needs.map(({ kind }) => kind));
    for (const kind of new Set(met)) {
      expect(rules.filter((rule) => 'left' in rule && rule.left === kind).length, kind).toBe(1);
    }
  });

  test('every test of the hookup bears the id of a rule', () => {
    const ids = new Set(rules.map(({ id }) => id));
    const tests = Object.values(kinds).flatMap((kind) => kind.tests.map(({ name }) => name));
    expect(tests.length).toBeGreaterThan(0);
    expect(tests.filter((name) => !ids.has(name))).toEqual([]);
  });
});

test('reading a field that is not declared is caught', () => {
  const sly = {
    ...(rules[0] as Rule),
    id: 'test/sly',
    joins: { fan: ['sizeMm'] },
    judge: ({ fan }: { fan: { pins?: number } }) => ({ verdict: 'fits', facts: { pins: fan.pins ?? 0 } }),
  } as unknown as Rule;
  expect(() => judgeBy([recordReads(sly)])(exampleList({ fan: {} }))).toThrow('test/sly reads fan.pins undeclared');
});
