/** A judgement rests on what its rule declares, and on nothing else. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { judgeBy } from '../../../src/fit/judging/judge-by.ts';
import type { Finding } from '../../../src/fit/report.ts';
import type { Fields, JudgeInput, Rule } from '../../../src/fit/rule.ts';
import { rules } from '../../../src/fit/rules/index.ts';
import type { Part } from '../../../src/parts/part.ts';
import { anyList, anyPartOf } from '../../helpers/any-part.ts';
import { likelyList } from '../../helpers/likely-list.ts';

const lists = fc.oneof(likelyList, anyList(8));
const judge = judgeBy(rules);

const declaredOf = (rule: Rule): Fields => {
  if ('joins' in rule) return rule.joins;
  if ('gathers' in rule) return rule.gathers;
  if ('at' in rule) return rule.reads;
  return {};
};

/** What a rule said, with nothing but what it may depend on. */
const saidBy = (findings: readonly Finding[], id: string) =>
  findings
    .filter(({ rule }) => rule === id)
    .map(({ verdict, facts, missing, about }) => ({ verdict, facts, missing, about }));

/** The part with everything changed for that of another part of its class, but for what tells them apart and `kept`. */
function changed(part: Part, other: Part, kept: readonly string[]): Part {
  const own = ['id', 'class', 'name', 'source', ...kept];
  const mine = Object.entries(part).filter(([field]) => own.includes(field));
  const theirs = Object.entries(other).filter(([field]) => !own.includes(field));
  return Object.fromEntries([...mine, ...theirs]) as Part;
}

/** The same list, every field that this rule does not declare taken from parts that have nothing to do with it. */
const changedList = (list: JudgeInput, others: readonly Part[], fields: Fields): JudgeInput =>
  list.map(({ part, quantity }, at) => {
    const other = others[at];
    const kept = (fields[part.class] ?? []) as readonly string[];
    return { part: other ? changed(part, other, kept) : part, quantity };
  });

const withOthers = lists.chain((list) =>
  fc.tuple(fc.constant(list), fc.tuple(...list.map(({ part }) => anyPartOf(part.class)))),
);

/** What decides needs and places is what they are lowered from; such rules see joints, and are tested below. */
const readsPartsOnly = (rule: Rule): boolean =>
  'joins' in rule || ('gathers' in rule && (rule.sees ?? []).length === 0);

describe('a rule that reads parts alone', () => {
  test.each(rules.filter(readsPartsOnly).map((rule) => [rule.id, rule] as const))(
    '%s says the same whatever else is recorded',
    (id, rule) => {
      const fields = declaredOf(rule);
      fc.assert(
        fc.property(withOthers, ([list, others]) => {
          // More than one board or case is judged machine by machine, and which is whose depends on the joints.
          const one = list.filter(
            ({ part }, at) =>
              (part.class !== 'chassis' && part.class !== 'motherboard') ||
              list.findIndex((other) => other.part.class === part.class) === at,
          );
          const single = one.map((line) => ({ ...line, quantity: 1 }));
          const those = one.map((line) => others[list.indexOf(line)] as Part);
          const ids = single.map(({ part }, at): JudgeInput[number] => ({
            part: { ...part, id: `p-${at}` },
            quantity: 1,
          }));
          const before = saidBy(judgeBy([rule])(ids).findings, id);
          expect(saidBy(judgeBy([rule])(changedList(ids, those, fields)).findings, id)).toEqual(before);
        }),
        { numRuns: 15 },
      );
    },
  );
});

/** The same rule; what it is given is kept, deep-frozen. */
function spyOn(rule: Rule, given: { rule: Rule; input: unknown[]; judgement: unknown }[]): Rule {
  if (!('judge' in rule)) return rule;
  return {
    ...rule,
    judge: (...input: unknown[]) => {
      const judgement = (rule.judge as (...of: unknown[]) => unknown)(...input);
      given.push({ rule, input: structuredClone(input), judgement: structuredClone(judgement) });
      return judgement;
    },
  } as Rule;
}

function freeze<T>(value: T): T {
  if (typeof value === 'object' && value !== null) for (const one of Object.values(value)) freeze(one);
  return Object.freeze(value);
}

test('what a rule says depends on what it is given alone, and it changes nothing of that', () => {
  fc.assert(
    fc.property(lists, (list) => {
      const given: { rule: Rule; input: unknown[]; judgement: unknown }[] = [];
      judgeBy(rules.map((rule) => spyOn(rule, given)))(list, { mainsVolts: 230, usedAt: 'home' });
      for (const { rule, input, judgement } of given) {
        if (!('judge' in rule)) continue;
        expect((rule.judge as (...of: unknown[]) => unknown)(...freeze(input)), rule.id).toEqual(judgement);
      }
    }),
    { numRuns: 50 },
  );
});

test('a rule is given the fields that it declares, and no others', () => {
  fc.assert(
    fc.property(lists, (list) => {
      const given: { rule: Rule; input: unknown[]; judgement: unknown }[] = [];
      judgeBy(rules.map((rule) => spyOn(rule, given)))(list, { mainsVolts: 230, usedAt: 'home', forSale: true });
      for (const { rule, input } of given) {
        const fields = declaredOf(rule) as Record<string, readonly string[]>;
        const only = (value: object, allowed: readonly string[]) =>
          expect(
            Object.keys(value).filter((key) => !allowed.includes(key)),
            rule.id,
          ).toEqual([]);
        const [first] = input as [Record<string, object>];
        if ('joins' in rule) {
          for (const [of, part] of Object.entries(first)) only(part, fields[of] ?? []);
        } else if ('gathers' in rule) {
          const [, hookup, brief] = input as [unknown, { joints: { kind: string }[] }, object];
          for (const [of, parts] of Object.entries(first)) {
            for (const part of parts as object[]) only(part, ['unit', 'name', ...(fields[of] ?? [])]);
          }
          const kinds: readonly string[] = rule.sees ?? [];
          expect(
            hookup.joints.filter(({ kind }) => !kinds.includes(kind)),
            rule.id,
          ).toEqual([]);
          only(brief, rule.asks ?? []);
        } else if ('at' in rule) {
          for (const end of [first['need'], first['place']] as { unit: { part: Part } }[]) {
            only(end.unit.part, ['class', 'name', ...(fields[end.unit.part.class] ?? [])]);
          }
        }
      }
    }),
    { numRuns: 30 },
  );
});

test('the whole core finds nothing more in the fields of a part for authors', () => {
  fc.assert(
    fc.property(lists, (list) => {
      const noted = list.map(({ part, quantity }) => ({ part: { ...part, trap: 'a trap', says: 'a word' }, quantity }));
      expect(judge(noted).findings).toEqual(judge(list).findings);
    }),
    { numRuns: 20 },
  );
});
