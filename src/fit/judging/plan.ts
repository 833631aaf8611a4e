/** A list of rules put in order once, so that a rule whose classes or kinds are absent costs nothing. */
import { type Part, type PartClass, partClasses } from '../../parts/part.ts';
import { sortKey } from '../../units/ids.ts';
import type { KindName, Kinds, Test } from '../model.ts';
import type { BudgetName, Finding } from '../report.ts';
import type {
  AnyFacts,
  BudgetRule,
  Fields,
  GathersRule,
  JoinsRule,
  JointRule,
  JudgeBrief,
  LeftRule,
  RefusesRule,
  Rule,
} from '../rule.ts';
import { kindsOf } from './kinds-of.ts';

/** A rule and its turn: findings are told in the order of rules' ids. */
export type Turn<R extends Rule> = { readonly rule: R; readonly turn: number };

/** What a rule reads of a class: its place in `partClasses`, and the fields. */
export type ClassRead = { readonly of: PartClass; readonly at: number; readonly fields: readonly (keyof Part)[] };

export type Joins = Turn<JoinsRule<AnyFacts, AnyFacts>> & { readonly classes: readonly ClassRead[] };
export type Gathers = Turn<GathersRule<AnyFacts, AnyFacts>> & {
  /** In the order of `partClasses`. */
  readonly classes: readonly ClassRead[];
  /** Numbers of the kinds it sees. */
  readonly kinds: readonly number[];
  readonly asks: readonly (keyof JudgeBrief)[];
};
export type AtJoint = Turn<JointRule<AnyFacts, AnyFacts>> & {
  readonly fields: { readonly [C in PartClass]?: readonly (keyof Part)[] };
};

/** A kind of joint with the rules that word it. */
export type KindPlan = {
  readonly kind: KindName;
  /** By test of the kind: the rule that words it, when it is not the one for needs left over. */
  readonly tests: readonly { readonly test: Test; readonly words: Turn<RefusesRule> | undefined }[];
  readonly left: Turn<LeftRule> | undefined;
  readonly at: readonly AtJoint[];
};

export type Plan = {
  readonly kinds: Kinds;
  readonly count: number;
  /** In the order of `kindNames`. */
  readonly byKind: readonly KindPlan[];
  readonly joins: readonly Joins[];
  readonly gathers: readonly Gathers[];
  readonly budgets: ReadonlyMap<BudgetName, readonly Turn<BudgetRule<AnyFacts>>[]>;
};

/** What was found, by the turn of the rule. */
export type Told = (readonly Finding[] | undefined)[];

export function planOf(list: readonly Rule[]): Plan {
  const kinds = kindsOf(list);
  const keys = new Map(list.map((rule) => [rule, sortKey(rule.id)]));
  const key = (rule: Rule): string => keys.get(rule) ?? '';
  const inTurn = [...list].sort((a, b) => (key(a) < key(b) ? -1 : key(a) > key(b) ? 1 : 0));
  const turns = inTurn.map((rule, turn): Turn<Rule> => ({ rule, turn }));

  const joins: Joins[] = [];
  const gathers: Gathers[] = [];
  const at = new Map<KindName, AtJoint[]>();
  const budgets = new Map<BudgetName, Turn<BudgetRule<AnyFacts>>[]>();
  const refuses = new Map<string, Turn<RefusesRule>>();
  const left = new Map<KindName, Turn<LeftRule>>();
  for (const { rule, turn } of turns) {
    if ('joins' in rule) joins.push({ rule, turn, classes: readsOf(rule.joins) });
    else if ('gathers' in rule) {
      const seen = (rule.sees ?? []).map((kind) => kindNumber(kind));
      const classes = readsOf(rule.gathers).sort((a, b) => a.at - b.at);
      gathers.push({ rule, turn, classes, kinds: seen, asks: rule.asks ?? [] });
    } else if ('at' in rule) add(at, rule.at, { rule, turn, fields: rule.reads });
    else if ('budget' in rule) add(budgets, rule.budget, { rule, turn });
    else if ('refuses' in rule) refuses.set(rule.id, { rule, turn });
    else left.set(rule.left, { rule, turn });
  }
  const byKind = kindNames.map((kind) => ({
    kind,
    tests: kinds[kind].tests.map((test) => ({ test, words: refuses.get(test.name) })),
    left: left.get(kind),
    at: at.get(kind) ?? [],
  }));
  return { kinds, count: list.length, byKind, joins, gathers, budgets };
}

/** Every kind, in a fixed order that numbers them. */
export const kindNames: readonly KindName[] = Object.keys(kindsOf([])) as KindName[];
const numbers = new Map(kindNames.map((kind, at) => [kind, at]));
export const kindNumber = (kind: KindName): number => numbers.get(kind) ?? -1;

const readsOf = (fields: Fields): ClassRead[] =>
  (Object.entries(fields) as [PartClass, readonly (keyof Part)[]][]).map(([of, read]) => ({
    of,
    at: partClasses.indexOf(of),
    fields: read,
  }));

function add<K, T>(map: Map<K, T[]>, key: K, one: T): void {
  const known = map.get(key);
  if (known) known.push(one);
  else map.set(key, [one]);
}
