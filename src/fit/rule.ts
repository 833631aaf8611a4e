/**
 * What a rule is. One rule, one file: identity, authority, judgement, words, examples.
 *
 * A rule takes one of six forms, told apart by what it reads:
 *
 * - `refuses`: words a test of the hookup. The test's name is the rule's id, so the search and the
 *   rule cannot differ. Runs once per joint of the kind (fits, cannot tell) and once per need left
 *   over that this test refused (does not fit): as severe as the need left over, or a hazard where the rule is one.
 * - `left`: a need of this kind found no place though no test stood in its way: nothing offers one,
 *   all are taken, or a resource is spent. Runs for joined needs too (fits), and for needs and places
 *   whose number or amounts are not recorded (cannot tell).
 *
 * Needs of equal parts with equal facts are told once: `about` lists all their units.
 * - `at`: once per joint of the kind, with both ends; of the two parts it sees only the fields that `reads` names, beside
 *   the attributes of the need and the place.
 * - `joins`: once per combination of one unit of each class; reads only the fields it names.
 * - `gathers`: once, over all units of the classes it names, with the joints of the kinds that `sees` names and, when
 *   `asks` names them, answers of the brief.
 * - `budget`: once for each computed budget of that name. A rule of severity hazard or blocker stands only on a budget
 *   that is a total (a sum of whole-number amounts against a bound, `budgets/total.ts`), so that a solver can bound it.
 *
 * What a rule says it reads is all it gets: the compiler and a recording test hold it to that, and the solver builds
 * its tables from it.
 */
import type { Listed, Part, PartClass, PartId, PartOf } from '../parts/part.ts';
import type { Attr, Basis, Joint, KindName, RuleId, Severity, Test, UnitId, Value, WhyLeft } from './model.ts';
import type { Budget, BudgetName, Facts } from './report.ts';

/** What a judgement returns; `missing` names fields as `<class or unit>.<field>`. */
export type Judgement<F extends Facts> =
  | { verdict: 'fits'; facts: F; about?: UnitId[] }
  | { verdict: 'does-not-fit'; facts: F; about?: UnitId[] }
  | { verdict: 'cannot-tell'; missing: string[]; about?: UnitId[] }
  | { verdict: 'does-not-apply' };

export const fits = <F extends Facts>(facts: F, about?: UnitId[]): Judgement<F> => ({
  verdict: 'fits',
  facts,
  ...(about ? { about } : {}),
});
export const doesNotFit = <F extends Facts>(facts: F, about?: UnitId[]): Judgement<F> => ({
  verdict: 'does-not-fit',
  facts,
  ...(about ? { about } : {}),
});
export const cannotTell = (...missing: string[]): Judgement<never> => ({ verdict: 'cannot-tell', missing });
export const doesNotApply: Judgement<never> = { verdict: 'does-not-apply' };

/** What, why, do: three fields, never one long string. Whole sentences. */
export type Words = { what: string; why: string; remedy: string };

/** `headline` is at most eight words and carries the number: "The graphics card is 24 mm too long". */
export type Say<F extends Facts> = {
  fits: (facts: F) => string;
  doesNotFit: (facts: F) => Words & { headline: string };
  /** Given the fields that are not recorded, as `<class or unit>.<field>`: which one decides the words. */
  cannotTell: (missing: readonly string[]) => NotTold;
};

/** `what` says that it is not judged and why; `findOut` how to find out. */
export type NotTold = { headline: string; what: string; findOut: string };

/** A whole parts list in short: per class, one or several parts that differ from `aPart(class)` by these fields. */
export type ExampleParts = { [C in PartClass]?: Partial<PartOf<C>> | readonly Partial<PartOf<C>>[] };
export type Example = {
  title: string;
  /** Only these classes are in the list; each is the plain part of its class with these fields changed. A field set to undefined is not recorded. */
  parts: ExampleParts;
  /** The plain parts are those of about 1990. */
  shelf?: 'vintage';
  brief?: JudgeBrief;
  verdict: 'fits' | 'does-not-fit' | 'cannot-tell' | 'does-not-apply';
};

type Identity<F extends Facts> = {
  id: RuleId;
  /** What is true when it fits, as a sentence without its full stop. */
  title: string;
  severity: Severity;
  basis: Basis;
  /** Ids in `content/sources`. */
  sources: string[];
  /** Id of a lesson, `<unit>/<name>`. */
  lesson: string;
  say: Say<F>;
  examples: Example[];
};

/** Facts of a `refuses` rule: the names of the two parts, the two values, and how far apart they are when both are numbers. */
export type MatingFacts = {
  part: string;
  on: string;
  need: string | number | boolean | null | readonly (string | number)[];
  offered: string | number | boolean | null | readonly (string | number)[];
  difference: number | null;
};

/** Facts of a `left` rule: counted from the reasons of the hookup. */
export type LeftFacts = {
  part: string;
  /** The plug or socket of the need, such as `pcie-8`, where it has one; otherwise what its part calls it: `edge`, `mount`. */
  needName: string;
  /**
   * `joined` is for fits only. `none-offered`: no part on the list has a place of the kind. `refused`: there are
   * some, and the plug test refuses them all.
   */
  reason: 'joined' | 'none-offered' | 'taken' | 'spent' | 'absent' | 'too-few-alike' | 'refused';
  /** Places of the kind there are, and how many of them would mate. */
  places: number;
  mating: number;
  /** Needs of this kind in the list that are no spares; where it has a plug, those with the same plug. */
  wanting: number;
  /** For `spent`: what the resource holds and what was wanted from it in all. */
  capacity: number | null;
  wanted: number | null;
  /** For `spent`: what ran out, by the last piece of its id: `irq-5`, `pos-8`. */
  resource: string | null;
  /** For `too-few-alike`: how many alike the place takes, and how many there are. */
  fill: number | null;
  alike: number | null;
  /** For `taken` and `spent`: names of the parts that hold what was wanted, each once. */
  holders: string[];
  /** For `absent`: name of the part that would offer the place and is itself without one. */
  waitsFor: string | null;
};

export type RefusesRule = Identity<MatingFacts> & {
  refuses: { kind: KindName; op: Test['op']; need: Attr; place: Attr };
};
export type LeftRule = Identity<LeftFacts> & {
  left: KindName;
  /**
   * A kind whose only test is the plug, or the jumper block that a position belongs to: the test bears this rule's id,
   * and where it refuses every place the reason is `refused`.
   */
  plugTest?: { need: 'plug'; place: 'plug' } | { need: 'block'; place: 'block' };
};
export type Fields = { [C in PartClass]?: readonly (keyof PartOf<C>)[] };
type Read<J extends Fields> = {
  [C in keyof J & PartClass]: J[C] extends readonly (infer K extends keyof PartOf<C>)[]
    ? { readonly [P in K]: PartOf<C>[P] | undefined }
    : never;
};
export type JoinsRule<J extends Fields, F extends Facts> = Identity<F> & {
  joins: J;
  judge(parts: Read<J>): Judgement<F>;
};

/** The part at one end of a joint: its class and name, and the fields that the rule reads of that class. */
export type Seen<J extends Fields> =
  | { [C in keyof J & PartClass]: { readonly class: C; readonly name: string } & Read<J>[C] }[keyof J & PartClass]
  | { readonly class: Exclude<PartClass, keyof J>; readonly name: string };
export type JointEnd<J extends Fields> = {
  unit: { readonly id: UnitId; readonly part: Seen<J> };
  attrs: Record<Attr, Value>;
};
/** `missing` of an `at`, `joins`, `gathers` or `budget` rule may name a class; the runner puts the units in its place. */
export type JointEnds<J extends Fields = Fields> = {
  joint: Joint;
  need: JointEnd<J>;
  place: JointEnd<J>;
  /** Loss metered at this place, by quantity: how much more was wanted than can pass. */
  lost: Record<string, number>;
};
export type JointRule<J extends Fields, F extends Facts> = Identity<F> & {
  at: KindName;
  reads: J;
  judge(ends: JointEnds<J>): Judgement<F>;
};

type Many<J extends Fields> = {
  [C in keyof J & PartClass]: J[C] extends readonly (infer K extends keyof PartOf<C>)[]
    ? readonly ({ readonly unit: UnitId; readonly name: string } & { readonly [P in K]: PartOf<C>[P] | undefined })[]
    : never;
};
export type Gathered = { joints: readonly Joint[]; left: readonly WhyLeft[] };
export type GathersRule<J extends Fields, F extends Facts> = Identity<F> & {
  gathers: J;
  /** Joints of these kinds, and needs of these kinds left over, are all it is given of the hookup. None when absent. */
  sees?: readonly KindName[];
  /** Answers of the brief it may read. None when absent. */
  asks?: readonly (keyof JudgeBrief)[];
  judge(parts: Many<J>, hookup: Gathered, brief: JudgeBrief): Judgement<F>;
};
export type BudgetRule<F extends Facts> = Identity<F> & { budget: BudgetName; judge(budget: Budget): Judgement<F> };

// The list of rules holds many fact types; each rule is checked against its own where it is defined.
// biome-ignore lint/suspicious/noExplicitAny: a heterogeneous list; the facts of a rule go only from its own judge to its own words
export type AnyFacts = any;
export type Rule =
  | RefusesRule
  | LeftRule
  | JointRule<AnyFacts, AnyFacts>
  | JoinsRule<AnyFacts, AnyFacts>
  | GathersRule<AnyFacts, AnyFacts>
  | BudgetRule<AnyFacts>;

export const refusesRule = (rule: RefusesRule): RefusesRule => rule;
export const leftRule = (rule: LeftRule): LeftRule => rule;
export const jointRule = <const J extends Fields, F extends Facts>(rule: JointRule<J, F>): JointRule<J, F> => rule;
export const joinsRule = <const J extends Fields, F extends Facts>(rule: JoinsRule<J, F>): JoinsRule<J, F> => rule;
export const gathersRule = <const J extends Fields, F extends Facts>(rule: GathersRule<J, F>): GathersRule<J, F> =>
  rule;
export const budgetRule = <F extends Facts>(rule: BudgetRule<F>): BudgetRule<F> => rule;

/** What the core judges: parts with quantities. */
export type JudgeInput = { part: Part; quantity: Listed['quantity'] }[];

/** What is known of the person and the place a machine is for. Whatever is absent is not asked, and not judged. */
export type JudgeBrief = {
  /** The money there is, in cents. */
  budgetCents?: number;
  /** What comes out of the wall: 230, 120, … */
  mainsVolts?: number;
  /** Where the machine will stand, for the rules on emissions. */
  usedAt?: 'home' | 'business';
  /** True when the machine is built to be sold. */
  forSale?: boolean;
  /** Hours a day it is on, and what a kilowatt-hour costs, in tenths of a cent. */
  hoursPerDay?: number;
  tariffMilliEuros?: number;
  /** The air it draws in, in degrees Celsius. */
  roomCelsius?: number;
  money?: MoneyTerms;
};

/** How the money of a list is worked out; all sums in cents, rates in tenths of a percent. */
export type MoneyTerms = {
  /** Which of a part's offers counts; the cheapest when absent. */
  shop?: string;
  /** Added to prices that are given without it. */
  salesTaxPermille?: number;
  /** What a shop that builds the machine puts on top of the parts. */
  markUpPermille?: number;
  /** Parts of the list sold together for one price. */
  packages?: readonly { id: string; parts: readonly PartId[]; priceCents: number }[];
  /** What is taken out and sold. */
  resale?: readonly { part: PartId; cents: number }[];
  /** What a shop takes off for what is handed in. */
  tradeIn?: readonly { part: PartId; cents: number }[];
};
