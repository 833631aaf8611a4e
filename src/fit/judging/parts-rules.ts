/** Rules about parts, budgets and joints: every form but the two that word the hookup's own tests. */
import type { Part, PartClass } from '../../parts/part.ts';
import type { Joint, Unit, UnitId } from '../model.ts';
import type { Budget, Finding } from '../report.ts';
import type { AnyFacts, BudgetRule, Fields, GathersRule, JoinsRule, JointRule, JudgeBrief } from '../rule.ts';
import { findingOf } from './findings.ts';
import { byPart, groupBy, type Table } from './table.ts';

type Joins = JoinsRule<AnyFacts, AnyFacts>;
type Gathers = GathersRule<AnyFacts, AnyFacts>;

/** Only what the rule declares: reading anything else gives undefined. */
const pick = (part: Part, fields: readonly string[]): Record<string, unknown> =>
  Object.fromEntries(fields.map((field) => [field, part[field as keyof Part]]));

const declared = (fields: Fields): [PartClass, readonly string[]][] =>
  Object.entries(fields) as [PartClass, readonly string[]][];

const idsOf = (units: readonly Unit[]): UnitId[] => units.map(({ id }) => id);

/** Once for each combination of unequal parts. */
export function judgeJoins(rule: Joins, { units }: Table): Finding[] {
  let combinations: { read: Record<string, unknown>; units: Unit[] }[] = [{ read: {}, units: [] }];
  for (const [partClass, fields] of declared(rule.joins)) {
    const choices = [...byPart(units.filter(({ part }) => part.class === partClass)).values()];
    combinations = combinations.flatMap((before) =>
      choices.flatMap((equal) =>
        equal[0]
          ? [
              {
                read: { ...before.read, [partClass]: pick(equal[0].part, fields) },
                units: [...before.units, ...equal],
              },
            ]
          : [],
      ),
    );
  }
  const told = combinations.flatMap((one) =>
    // `read` holds what `joins` declares, which is what the rule was typed by.
    findingOf(rule, rule.judge(one.read as Parameters<Joins['judge']>[0]), one.units, idsOf(one.units)),
  );
  // A field that is not recorded is told once, whatever it is combined with.
  return [...groupBy(told, ({ id }) => id).values()].flatMap((group) => together(group));
}

/** Findings that say the same, as one about all their units. */
function together(group: readonly Finding[]): Finding[] {
  const [first] = group;
  if (!first) return [];
  const { missing } = first;
  return [
    {
      ...first,
      about: [...new Set(group.flatMap(({ about }) => about))],
      ...(missing ? { missing: [...new Set(group.flatMap((one) => one.missing ?? []))] } : {}),
    },
  ];
}

/** Once, when the list has a part of at least one of the classes. */
export function judgeGathers(rule: Gathers, { units, hookup, why, need }: Table, brief: JudgeBrief): Finding[] {
  const classes = declared(rule.gathers);
  const gathered = units.filter(({ part }) => classes.some(([partClass]) => partClass === part.class));
  if (gathered.length === 0) return [];
  const read = Object.fromEntries(
    classes.map(([partClass, fields]) => [
      partClass,
      gathered
        .filter(({ part }) => part.class === partClass)
        .map(({ id, part }) => ({ unit: id, name: part.name, ...pick(part, fields) })),
    ]),
  );
  const { sees = [], asks = [] } = rule;
  const judgement = rule.judge(
    read as unknown as Parameters<Gathers['judge']>[0],
    {
      joints: hookup.joints.filter(({ kind }) => sees.includes(kind)),
      left: [...why.values()].filter((left) => sees.includes(need(left.need).kind)),
    },
    Object.fromEntries(asks.map((answer) => [answer, brief[answer]])),
  );
  return findingOf(rule, judgement, gathered, idsOf(gathered));
}

/** Once for each budget of the name that something on the list limits. */
export function judgeBudget(rule: BudgetRule<AnyFacts>, { units }: Table, budgets: readonly Budget[]): Finding[] {
  if (units.length === 0) return [];
  return budgets
    .filter(({ name }) => name === rule.budget)
    .flatMap((budget) => findingOf(rule, rule.judge(budget), units, budget.about));
}

/** Once for each joint of the kind; equal parts that come to equal facts are told once. */
export function judgeJoints(rule: JointRule<AnyFacts, AnyFacts>, table: Table): Finding[] {
  const told = table.hookup.joints
    .filter(({ kind }) => kind === rule.at)
    .flatMap((joint) => {
      const need = table.unit(table.need(joint.need).part);
      const place = table.unit(table.place(joint.place).part);
      return judgeJoint(rule, table, joint, need, place).map((finding) => ({ finding, need, place }));
    });
  const groups = groupBy(told, ({ finding: { verdict, facts, missing }, need, place }) =>
    JSON.stringify([verdict, need.part.id, place.part.id, facts, missing?.length]),
  );
  return [...groups.values()].flatMap((group) => together(group.map(({ finding }) => finding)));
}

function judgeJoint(
  rule: JointRule<AnyFacts, AnyFacts>,
  table: Table,
  joint: Joint,
  need: Unit,
  place: Unit,
): Finding[] {
  const at = table.place(joint.place, joint.way);
  const lost: Record<string, number> = {};
  for (const [quantity, row] of Object.entries(at.meters ?? {})) {
    const overflows = row.flatMap((resource) => table.overflow(resource) ?? []);
    if (overflows.length > 0) lost[quantity] = overflows.reduce((sum, overflow) => sum + overflow, 0);
  }
  const judgement = rule.judge({
    joint,
    need: { unit: seen(need, rule.reads), attrs: table.need(joint.need).attrs },
    place: { unit: seen(place, rule.reads), attrs: at.attrs },
    lost,
  });
  return findingOf(rule, judgement, [need, place], [need.id, place.id], joint.id);
}

/** One end of a joint, of which a rule sees the class, the name and the fields it reads. */
const seen = ({ id, part }: Unit, reads: Fields) => ({
  id,
  // Typed by the rule's own declaration where it is defined.
  part: { class: part.class, name: part.name, ...pick(part, reads[part.class] ?? []) } as AnyFacts,
});
