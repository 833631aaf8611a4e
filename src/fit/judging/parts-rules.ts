/** Rules about parts, budgets and joints: every form but the two that word the hookup's own tests. */
import type { Part } from '../../parts/part.ts';
import type { Joint, Unit, UnitId, WhyLeft } from '../model.ts';
import { unitOf } from '../needs/names.ts';
import type { Group } from '../needs/units.ts';
import type { Budget, Facts, Finding } from '../report.ts';
import type { JudgeBrief, Judgement } from '../rule.ts';
import { findingOf, sameFacts, settle, together } from './findings.ts';
import type { Machines } from './machines.ts';
import { type AtJoint, type ClassRead, type Gathers, type Joins, kindNumber, type Plan, type Told } from './plan.ts';
import { type ClassView, classOf, type JointAt, noClass, type Table } from './table.ts';

/** What a rule was last given, and what it then said. Rules are pure: given the same again, they say the same. */
type Said = { given: readonly unknown[]; told: readonly Finding[] };

/** The parts of one machine, by place of the class in `partClasses`; of the hookup, what is between them. */
type Machine = {
  classes: readonly ClassView[];
  joints: readonly Joint[];
  /** By number of the kind. */
  left: readonly (readonly WhyLeft[])[];
};

const none: readonly never[] = [];

/** Only what the rule declares: reading anything else gives undefined. */
function pick(part: Part, fields: readonly (keyof Part)[], into: Record<string, unknown>): Record<string, unknown> {
  for (const field of fields) into[field] = part[field];
  return into;
}

/**
 * Runs the rules that join classes and those that gather. On a list with more than one board or case they run once for
 * each machine, so that no rule mixes the parts of two.
 */
export function openPartsRules({
  joins,
  gathers,
}: Plan): (table: Table, machines: Machines, brief: JudgeBrief, told: Told) => void {
  const saidOfJoins: (Said | undefined)[] = joins.map(() => undefined);
  const saidOfGathers: (Said | undefined)[] = gathers.map(() => undefined);
  return (table, machines, brief, told) => {
    if (machines) {
      const each = machines.map((units) => machineOf(table, units));
      for (const rule of joins) told[rule.turn] = settle(each.flatMap((machine) => judgeJoins(rule, machine)));
      for (const rule of gathers) {
        told[rule.turn] = settle(each.flatMap((machine) => judgeGathers(rule, machine, brief)));
      }
      return;
    }
    const { classes, left } = table;
    const machine: Machine = { classes, joints: table.hookup.joints, left };
    for (const [at, rule] of joins.entries()) {
      if (!rule.classes.every(({ at: of }) => isThere(classes, of))) continue;
      const given = saidOfJoins[at]?.given;
      if (!given || !rule.classes.every((read, index) => given[index] === classes[read.at])) {
        saidOfJoins[at] = {
          given: rule.classes.map((read) => classes[read.at]),
          told: settle(judgeJoins(rule, machine)),
        };
      }
      told[rule.turn] = saidOfJoins[at]?.told;
    }
    for (const [at, rule] of gathers.entries()) {
      if (!rule.classes.some(({ at: of }) => isThere(classes, of))) continue;
      const last = saidOfGathers[at];
      const given = givenTo(rule, table, brief);
      if (!last || !given.every((one, index) => one === last.given[index])) {
        saidOfGathers[at] = { given, told: settle(judgeGathers(rule, machine, brief)) };
      }
      told[rule.turn] = saidOfGathers[at]?.told;
    }
  };
}

const isThere = (classes: Machine['classes'], at: number): boolean => classes[at] !== noClass;

/** All that a rule that gathers reads, one by one. What is left over is new each time. */
function givenTo({ classes, kinds, asks }: Gathers, table: Table, brief: JudgeBrief): unknown[] {
  const given: unknown[] = [];
  for (const { at } of classes) given.push(table.classes[at]);
  for (const kind of kinds) given.push(table.joints[kind], table.left[kind]);
  for (const answer of asks) given.push(brief[answer]);
  return given;
}

function machineOf({ classes, hookup, left }: Table, members: ReadonlySet<UnitId>): Machine {
  const isIn = (id: string): boolean => members.has(unitOf(id));
  return {
    classes: classes.map(({ groups }) =>
      classOf(
        groups.flatMap((group) => {
          const units = group.units.filter(({ id }) => members.has(id));
          if (units.length === group.units.length) return [group];
          return units.length === 0 ? [] : [{ ...group, units, ids: units.map(({ id }) => id) }];
        }),
      ),
    ),
    joints: hookup.joints.filter(({ need, place }) => isIn(need) && isIn(place)),
    left: left.map((of) => of.filter(({ need }) => isIn(need))),
  };
}

/** Once for each combination of unequal parts. */
function judgeJoins({ rule, classes }: Joins, machine: Machine): Finding[] {
  const findings: Finding[] = [];
  const read: Record<string, unknown> = {};
  const chosen: Group[] = [];
  const choose = (index: number): void => {
    const of = classes[index];
    if (!of) {
      // `read` holds what `joins` declares, which is what the rule was typed by.
      const judgement = rule.judge({ ...read } as Parameters<typeof rule.judge>[0]);
      const told = findingOf(
        rule,
        judgement,
        chosen.flatMap(({ units }) => units),
        chosen.flatMap(({ ids }) => ids),
      );
      if (told) findings.push(told);
      return;
    }
    for (const group of machine.classes[of.at]?.groups ?? none) {
      read[of.of] = pick(group.part, of.fields, {});
      chosen[index] = group;
      choose(index + 1);
    }
  };
  choose(0);
  return findings;
}

const unitsIn = ({ classes }: Machine, { at }: ClassRead): readonly Unit[] => classes[at]?.units ?? none;

/** Once, when there is a part of at least one of the classes. */
function judgeGathers({ rule, classes, asks }: Gathers, machine: Machine, brief: JudgeBrief): Finding[] {
  const read: Record<string, unknown> = {};
  let count = 0;
  for (const of of classes) {
    const units = unitsIn(machine, of);
    count += units.length;
    read[of.of] = units.map(({ id, part }) => pick(part, of.fields, { unit: id, name: part.name }));
  }
  if (count === 0) return [];
  const { sees = none } = rule;
  const answers: Record<string, unknown> = {};
  for (const answer of asks) answers[answer] = brief[answer];
  const judgement: Judgement<Facts> = rule.judge(
    read as unknown as Parameters<typeof rule.judge>[0],
    {
      joints: machine.joints.filter(({ kind }) => sees.includes(kind)),
      left: sees.flatMap((kind) => machine.left[kindNumber(kind)] ?? none),
    },
    answers as JudgeBrief,
  );
  if (judgement.verdict === 'does-not-apply') return [];
  const units = classes.flatMap((of) => unitsIn(machine, of));
  const told = findingOf(
    rule,
    judgement,
    units,
    units.map(({ id }) => id),
  );
  return told ? [told] : [];
}

/** Once for each budget of the name that something on the list limits. */
export function judgeBudgets(
  { budgets: rules }: Plan,
  units: readonly Unit[],
  budgets: readonly Budget[],
  told: Told,
): void {
  const found = new Map<number, Finding[]>();
  for (const budget of budgets) {
    for (const { rule, turn } of rules.get(budget.name) ?? none) {
      const one = findingOf(rule, rule.judge(budget), units, budget.about);
      if (!one) continue;
      // What is not recorded is told once, whatever it was wanted for.
      if (budget.of !== undefined && one.verdict !== 'cannot-tell') one.id = `${one.id} ${budget.of}`;
      const known = found.get(turn);
      if (known) known.push(one);
      else found.set(turn, [one]);
    }
  }
  for (const [turn, findings] of found) told[turn] = settle(findings);
}

/** Runs the rules at joints. Joints that were on the table before are not judged again. */
export function openJointRules({ byKind }: Plan): (table: Table, told: Told) => void {
  const said: (Said | undefined)[][] = byKind.map(({ at }) => at.map(() => undefined));
  return (table, told) => {
    for (const [kind, { at }] of byKind.entries()) {
      const joints = table.joints[kind] ?? none;
      if (at.length === 0 || joints.length === 0) continue;
      for (const [index, rule] of at.entries()) {
        const last = said[kind]?.[index];
        const now = last?.given === joints ? last : { given: joints, told: judgeJoints(rule, joints, table) };
        if (said[kind]) said[kind][index] = now;
        told[rule.turn] = now.told;
      }
    }
  };
}

/** Once for each joint of the kind; equal parts that come to equal facts are told once. */
function judgeJoints(rule: AtJoint, joints: readonly JointAt[], { seat }: Table): readonly Finding[] {
  const groups: { told: [Finding, ...Finding[]]; need: Group; place: Group }[] = [];
  for (const joint of joints) {
    const [need, place] = [seat(joint.need.part), seat(joint.place.part)];
    const told = judgeJoint(rule, joint, need.unit, place.unit);
    if (!told) continue;
    const alike = groups.find(
      (one) => one.need === need.group && one.place === place.group && saysSame(one.told[0], told),
    );
    if (alike) alike.told.push(told);
    else groups.push({ told: [told], need: need.group, place: place.group });
  }
  return settle(groups.map(({ told }) => together(told)));
}

const saysSame = (a: Finding, b: Finding): boolean =>
  a.verdict === b.verdict && a.missing?.length === b.missing?.length && sameFacts(a.facts, b.facts);

function judgeJoint({ rule, fields }: AtJoint, joint: JointAt, need: Unit, place: Unit): Finding | undefined {
  // Typed by the rule's own declaration where it is defined.
  const seen = ({ id, part }: Unit) => ({
    id,
    part: pick(part, fields[part.class] ?? none, { class: part.class, name: part.name }),
  });
  const ends = {
    joint: joint.joint,
    need: { unit: seen(need), attrs: joint.need.attrs },
    place: { unit: seen(place), attrs: joint.place.attrs },
    lost: joint.lost,
  };
  const judgement = rule.judge(ends as unknown as Parameters<typeof rule.judge>[0]);
  return findingOf(rule, judgement, [need, place], [need.id, place.id], joint.joint.id);
}
