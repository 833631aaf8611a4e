/** Rules that word the hookup itself: what each test said of each joint, and why a need found no place. */
import { mate, tryTest } from '../hookup/mating.ts';
import type { Joint, KindName, Kinds, Need, Place, Reason, Severity, Test, UnitId, Value } from '../model.ts';
import { fieldOf } from '../needs/fields.ts';
import type { Finding } from '../report.ts';
import type { LeftFacts, LeftRule, MatingFacts, RefusesRule, Rule } from '../rule.ts';
import { finding } from './findings.ts';
import { groupBy, type Table } from './table.ts';

/** The rules of a list that word the hookup, by what they word. */
export type HookupRules = {
  kinds: Kinds;
  refuses: ReadonlyMap<string, RefusesRule>;
  left: ReadonlyMap<KindName, LeftRule>;
};

export function hookupRules(list: readonly Rule[], kinds: Kinds): HookupRules {
  const refuses = list.filter((rule) => 'refuses' in rule);
  const left = list.filter((rule) => 'left' in rule);
  return {
    kinds,
    refuses: new Map(refuses.map((rule) => [rule.id, rule])),
    left: new Map(left.map((rule) => [rule.left, rule])),
  };
}

/** What one need comes to under one rule, before needs that come to the same are told together. */
type Told = { rule: RefusesRule | LeftRule; need: Need; joint?: Joint } & (
  | { how: 'mates' | 'refused'; place: Place; wanted: Value; offered: Value }
  | { how: 'not-recorded'; place?: Place; missing: string[] }
  | { how: 'joined' }
  | { how: 'left'; reason: LeftFacts['reason']; why?: Extract<Reason, { why: 'spent' | 'absent' }> }
);

export function judgeHookup(rules: HookupRules, table: Table): Finding[] {
  const joints = new Map(table.hookup.joints.map((joint) => [joint.need, joint]));
  const told = table.lowered.needs.flatMap((need): Told[] => {
    const joint = joints.get(need.id);
    if (joint) return tellJoint(rules, table, need, joint);
    return need.left === 'spare' ? [] : tellLeft(rules, table, need);
  });
  const together = groupBy(told, (one) => keyOf(table, one));
  return [...[...together.values()].map((group) => word(rules, table, group)), ...countsNotRecorded(rules, table)];
}

/** A part that does not record how many needs of a kind it has. */
function countsNotRecorded({ left }: HookupRules, table: Table): Finding[] {
  const counts = table.lowered.unrecorded.filter(({ of }) => of === 'needs');
  const together = groupBy(counts, ({ kind, part }) => `${kind} ${table.unit(part).part.id}`);
  return [...together.values()].flatMap((group) => {
    const rule = group[0] && left.get(group[0].kind);
    if (!rule) return [];
    const about = group.map(({ part }) => part);
    return finding(rule, { verdict: 'cannot-tell', about, facts: {}, missing: group.map(({ field }) => field) });
  });
}

/** Equal for needs of equal parts of which a rule has the same to say. Made for every need, so kept cheap. */
function keyOf(table: Table, one: Told): string {
  const { rule, need, how } = one;
  const place = 'place' in one && one.place ? table.unit(one.place.part).part.id : '';
  const said =
    how === 'mates' || how === 'refused'
      ? `${one.wanted} ${one.offered}`
      : how === 'left'
        ? `${one.reason} ${JSON.stringify(one.why)}`
        : '';
  return `${rule.id} ${how} ${need.left} ${table.unit(need.part).part.id} ${plugOf(need)} ${place} ${said}`;
}

function tellJoint({ kinds, refuses, left }: HookupRules, table: Table, need: Need, joint: Joint): Told[] {
  const place = table.place(joint.place, joint.way);
  const told: Told[] = [];
  const missing = table.lowered.unrecorded
    .filter(({ kind, of, part }) => kind === need.kind && (of === 'limits' || (of === 'draws' && part === need.part)))
    .map(({ field }) => field);
  for (const test of kinds[need.kind].tests) {
    const rule = refuses.get(test.name);
    const fields = fieldsMissing(table, need, place, test);
    if (!rule) missing.push(...fields);
    else if (fields.length > 0) told.push({ rule, need, joint, how: 'not-recorded', place, missing: fields });
    else told.push({ rule, need, joint, how: 'mates', place, ...values(test, need, place) });
  }
  const rule = left.get(need.kind);
  if (!rule) return told;
  if (missing.length > 0) told.push({ rule, need, joint, how: 'not-recorded', missing });
  else told.push({ rule, need, joint, how: 'joined' });
  return told;
}

const values = (test: Test, need: Need, place: Place) => ({
  wanted: need.attrs[test.need],
  offered: place.attrs[test.place],
});

/** `cooler-1.mountings`, when the test could not be made for want of it. */
function fieldsMissing(table: Table, need: Need, place: Place, test: Test): string[] {
  if (tryTest(test, need.attrs, place.attrs) !== 'unknown') return [];
  const field = (unit: UnitId, attr: string) => `${unit}.${fieldOf(table.unit(unit).part.class, need.kind, attr)}`;
  return [
    ...(need.attrs[test.need] === undefined ? [field(need.part, test.need)] : []),
    ...(place.attrs[test.place] === undefined ? [field(place.part, test.place)] : []),
  ];
}

/** One fault, one message: of all the places a need did not get, the one at which it got furthest is told. */
function tellLeft(rules: HookupRules, table: Table, need: Need): Told[] {
  const { refuses, left } = rules;
  const reasons = table.why.get(need.id)?.reasons ?? [];
  const rule = left.get(need.kind);
  const open = table.lowered.unrecorded
    .filter(({ kind, of }) => kind === need.kind && of === 'places')
    .map(({ field }) => field);
  if (open.length > 0 || reasons.some(({ why }) => why === 'not-proved')) {
    return rule ? [{ rule, need, how: 'not-recorded', missing: open }] : [];
  }
  const furthest = furthestOf(rules, need, reasons);
  if (!furthest || furthest.why === 'not-proved') return [];
  if (furthest.why === 'refused') {
    const test = refuses.get(furthest.test);
    if (test) {
      const place = table.place(furthest.place);
      return [{ rule: test, need, how: 'refused', place, wanted: furthest.need, offered: furthest.offered }];
    }
  }
  if (!rule) return [];
  const why = furthest.why === 'spent' || furthest.why === 'absent' ? { why: furthest } : {};
  return [{ rule, need, how: 'left', reason: furthest.why, ...why }];
}

/** How far a need got, nearest to a joint last. */
const steps: readonly Reason['why'][] = ['none-offered', 'refused', 'absent', 'too-few-alike', 'taken', 'spent'];

/** A test further down the row was got to by passing those before it; then the nearest miss; then the first place. */
function furthestOf({ kinds }: HookupRules, need: Need, reasons: readonly Reason[]): Reason | undefined {
  const { tests } = kinds[need.kind];
  const rank = (reason: Reason): [number, number, number] => {
    const step = steps.indexOf(reason.why);
    if (reason.why !== 'refused') return [step, 0, 0];
    const test = tests.findIndex(({ name }) => name === reason.test);
    return [step, test, -(apart(reason.need, reason.offered) ?? 0)];
  };
  return reasons
    .map((reason) => ({ reason, rank: rank(reason) }))
    .reduce<{ reason: Reason; rank: number[] } | undefined>(
      (best, one) => (best && !isAbove(one.rank, best.rank) ? best : one),
      undefined,
    )?.reason;
}

function isAbove(a: readonly number[], b: readonly number[]): boolean {
  const at = a.findIndex((value, index) => value !== b[index]);
  return at >= 0 && (a[at] ?? 0) > (b[at] ?? 0);
}

const apart = (a: Value, b: Value): number | null =>
  typeof a === 'number' && typeof b === 'number' ? Math.abs(a - b) : null;

/** One finding for needs that come to the same. */
function word({ kinds }: HookupRules, table: Table, group: readonly Told[]): Finding {
  const [first] = group as readonly [Told];
  const { rule, need, joint } = first;
  const needers = unique(group.map((one) => one.need.part));
  const givers = unique(
    group.flatMap((one) => {
      if ('place' in one && one.place) return [one.place.part];
      return one.joint ? [table.place(one.joint.place).part] : [];
    }),
  );
  const told = {
    severity: severityOf(rule, need),
    about: unique([...needers, ...givers]),
    ...(joint ? { joint: joint.id } : { need: need.id }),
  };
  const part = table.nameOf(needers);
  switch (first.how) {
    case 'not-recorded': {
      const missing = unique(group.flatMap((one) => (one.how === 'not-recorded' ? one.missing : [])));
      return finding(rule, { ...told, verdict: 'cannot-tell', facts: {}, missing });
    }
    case 'mates':
    case 'refused': {
      const { wanted, offered } = first;
      const facts: MatingFacts = {
        part,
        on: table.nameOf(givers),
        need: factOf(wanted),
        offered: factOf(offered),
        difference: differenceOf(wanted, offered),
      };
      return finding(rule, { ...told, verdict: first.how === 'mates' ? 'fits' : 'does-not-fit', facts });
    }
    case 'joined':
      return finding(rule, { ...told, verdict: 'fits', facts: leftFacts(kinds, table, need, part, 'joined') });
    case 'left':
      return finding(rule, {
        ...told,
        verdict: 'does-not-fit',
        facts: leftFacts(kinds, table, need, part, first.reason, first.why),
      });
  }
}

const unique = <T>(items: readonly T[]): T[] => [...new Set(items)];

const severityOf = (rule: Rule, { left }: Need): Severity => (left === 'spare' ? rule.severity : left);

const factOf = (value: Value): MatingFacts['need'] => value ?? null;

/** Never negative; tenths and hundredths as they were meant. */
function differenceOf(wanted: Value, offered: Value): number | null {
  const difference = apart(wanted, offered);
  return difference === null ? null : Math.round(difference * 100) / 100;
}

const plugOf = ({ attrs }: Need): string | undefined => (typeof attrs['plug'] === 'string' ? attrs['plug'] : undefined);

function leftFacts(
  kinds: Kinds,
  table: Table,
  need: Need,
  part: string,
  reason: LeftFacts['reason'],
  why?: Extract<Reason, { why: 'spent' | 'absent' }>,
): LeftFacts {
  const places = table.placesOf(need.kind);
  const plug = plugOf(need);
  const wanting = table.needsOf(need.kind).filter((other) => plugOf(other) === plug);
  const reasons = table.why.get(need.id)?.reasons ?? [];
  return {
    part,
    needName: plug ?? need.id.slice(need.part.length + 1),
    reason,
    places: places.length,
    mating: places.filter((place) => mate(kinds[need.kind].tests, need.attrs, place.attrs) !== 'no').length,
    wanting: wanting.length,
    capacity: why?.why === 'spent' ? why.capacity : null,
    wanted: why?.why === 'spent' ? why.wanted : null,
    holders: holdersOf(table, why?.why === 'spent' ? [why] : reasons),
    waitsFor: why?.why === 'absent' ? table.nameOf([table.need(why.waitsFor).part]) : null,
  };
}

/** Names of the parts in the way, each once; equal parts together. */
function holdersOf(table: Table, reasons: readonly Reason[]): string[] {
  const joints = reasons.flatMap((reason) => ('joints' in reason ? reason.joints : []));
  const units = unique(joints.flatMap((id) => table.joint(id)?.need ?? []).map((need) => table.need(need).part));
  const together = groupBy(units, (unit) => table.unit(unit).part.id);
  return [...together.values()].map((equal) => table.nameOf(equal));
}
