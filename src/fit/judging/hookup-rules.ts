/** Rules that word the hookup itself: what each test said of each joint, and why a need found no place. */
import { mate, tryTest } from '../hookup/mating.ts';
import type { Need, Place, PlaceId, Reason, Severity, Test, UnitId, Value, WhyLeft } from '../model.ts';
import { fieldOf } from '../needs/fields.ts';
import { unitOf } from '../needs/names.ts';
import type { Finding } from '../report.ts';
import type { LeftFacts, LeftRule, MatingFacts, RefusesRule, Rule } from '../rule.ts';
import { finding, isSame, settle } from './findings.ts';
import { type KindPlan, kindNames, type Plan, type Told, type Turn } from './plan.ts';
import { type JointAt, type KindView, nameOf, type Table } from './table.ts';

/** A reason of which the facts tell more than its name. */
type Telling = Extract<Reason, { why: 'spent' | 'absent' | 'too-few-alike' }>;

/** What one need comes to under one rule. */
type One = { words: Turn<RefusesRule | LeftRule>; need: Need; joint?: JointAt; place?: Place } & (
  | { how: 'mates' | 'refused'; place: Place; wanted: Value; offered: Value }
  | { how: 'not-recorded'; missing: readonly string[] }
  | { how: 'joined' }
  | { how: 'left'; reason: LeftFacts['reason']; why?: Telling }
);

type Kind = { plan: KindPlan; view: KindView; left: readonly WhyLeft[]; table: Table };
type Said = { view: KindView; joints: readonly JointAt[]; told: ReadonlyMap<number, readonly Finding[]> };

/** Words kinds of joints. A kind of which everything is joined as it was on the table before is not worded again. */
export function openHookupRules({ byKind }: Plan): (table: Table, told: Told) => void {
  const said: (Said | undefined)[] = kindNames.map(() => undefined);
  return (table, told) => {
    for (const [at, plan] of byKind.entries()) {
      const view = table.views[at] as KindView;
      if (view.shares.length === 0) continue;
      const joints = table.joints[at] ?? [];
      const left = table.left[at] ?? [];
      const last = said[at];
      if (last?.view === view && last.joints === joints) {
        for (const [turn, findings] of last.told) told[turn] = findings;
        continue;
      }
      const found = wordKind({ plan, view, left, table }, joints);
      for (const [turn, findings] of found) told[turn] = findings;
      // Why a need is left over depends on more than its own kind.
      said[at] = left.length === 0 ? { view, joints, told: found } : undefined;
    }
  };
}

function wordKind(kind: Kind, joints: readonly JointAt[]): Map<number, readonly Finding[]> {
  const { plan, view, left } = kind;
  const ones: One[] = [];
  const jointOf = new Map(joints.map((joint) => [joint.need, joint]));
  for (const need of view.needs) {
    const joint = jointOf.get(need);
    if (joint) tellJoint(kind, joint, ones);
    else if (need.left !== 'spare')
      tellLeft(
        kind,
        need,
        left.find((why) => why.need === need.id),
        ones,
      );
  }
  const found = new Map<number, Finding[]>();
  const add = (turn: number, one: Finding): void => {
    const known = found.get(turn);
    if (known) known.push(one);
    else found.set(turn, [one]);
  };
  for (const group of groupUp(kind, ones)) add(group[0].words.turn, word(kind, group));
  if (plan.left) for (const one of countsNotRecorded(kind, plan.left.rule)) add(plan.left.turn, one);
  return new Map([...found].map(([turn, findings]) => [turn, settle(findings)]));
}

/** A part that does not record how many needs of a kind it has. */
function countsNotRecorded({ view, table }: Kind, rule: LeftRule): Finding[] {
  const groups = new Map<object, { about: UnitId[]; missing: string[] }>();
  for (const { of, part, field } of view.unrecorded) {
    if (of !== 'needs') continue;
    const { group } = table.seat(part);
    const known = groups.get(group) ?? { about: [], missing: [] };
    known.about.push(part);
    known.missing.push(field);
    groups.set(group, known);
  }
  return [...groups.values()].map(({ about, missing }) =>
    finding(rule, { verdict: 'cannot-tell', about, facts: {}, missing }),
  );
}

/** Needs of equal parts of which a rule has the same to say are told together. */
function groupUp({ table }: Kind, ones: readonly One[]): [One, ...One[]][] {
  const groups: [One, ...One[]][] = [];
  for (const one of ones) {
    const group = groups.find(([first]) => isAlike(table, first, one));
    if (group) group.push(one);
    else groups.push([one]);
  }
  return groups;
}

function isAlike({ seat }: Table, a: One, b: One): boolean {
  if (a.words.rule !== b.words.rule || a.how !== b.how || a.need.left !== b.need.left) return false;
  if (seat(a.need.part).group !== seat(b.need.part).group || plugOf(a.need) !== plugOf(b.need)) return false;
  if (a.place?.part !== b.place?.part) {
    if (!a.place || !b.place || seat(a.place.part).group !== seat(b.place.part).group) return false;
  }
  if (a.how === 'left' && b.how === 'left') {
    return a.reason === b.reason && JSON.stringify(a.why) === JSON.stringify(b.why);
  }
  if ((a.how === 'mates' || a.how === 'refused') && a.how === b.how) {
    return isSame(a.wanted, b.wanted) && isSame(a.offered, b.offered);
  }
  return true;
}

function tellJoint({ plan, view, table }: Kind, joint: JointAt, ones: One[]): void {
  const { need, place } = joint;
  const missing = view.unrecorded
    .filter(({ of, part }) => of === 'limits' || (of === 'draws' && part === need.part))
    .map(({ field }) => field);
  for (const { test, words } of plan.tests) {
    // A need that has no such limit has nothing to be told of it.
    if (need.attrs[test.need] === null) continue;
    const fields = fieldsMissing(table, need, place, test);
    if (!words) missing.push(...fields);
    else if (fields.length > 0) ones.push({ words, need, joint, place, how: 'not-recorded', missing: fields });
    else {
      const [wanted, offered] = [need.attrs[test.need], place.attrs[test.place]];
      ones.push({ words, need, joint, place, how: 'mates', wanted, offered });
    }
  }
  if (!plan.left) return;
  if (missing.length > 0) ones.push({ words: plan.left, need, joint, how: 'not-recorded', missing });
  else ones.push({ words: plan.left, need, joint, how: 'joined' });
}

const nothing: readonly string[] = [];

/** `cooler-1.mountings`, when the test could not be made for want of it. */
function fieldsMissing(table: Table, need: Need, place: Place, test: Test): readonly string[] {
  if (tryTest(test, need.attrs, place.attrs) !== 'unknown') return nothing;
  const field = (unit: UnitId, attr: string) =>
    `${unit}.${fieldOf(table.seat(unit).group.part.class, need.kind, attr)}`;
  return [
    ...(need.attrs[test.need] === undefined ? [field(need.part, test.need)] : []),
    ...(place.attrs[test.place] === undefined ? [field(place.part, test.place)] : []),
  ];
}

/**
 * One fault, one message: of all the places a need did not get, the one at which it got furthest is told. A joint that
 * hands could force is told before that.
 */
function tellLeft({ plan, view, table }: Kind, need: Need, left: WhyLeft | undefined, ones: One[]): void {
  const reasons = outOfBags(view, table, left?.reasons ?? []);
  const words = plan.left;
  const open = view.unrecorded.filter(({ of }) => of === 'places').map(({ field }) => field);
  if (open.length > 0 || reasons.some(({ why }) => why === 'not-proved')) {
    // Nothing missing says that the search stopped.
    if (words) ones.push({ words, need, how: 'not-recorded', missing: open });
    return;
  }
  const furthest = reasons.find((reason) => isHazard(plan, reason)) ?? furthestOf(plan, reasons);
  if (!furthest || furthest.why === 'not-proved') return;
  if (furthest.why === 'refused') {
    const test = plan.tests.find((one) => one.test.name === furthest.test)?.words;
    const place = view.ways.get(furthest.place)?.[0];
    if (test && place) {
      ones.push({ words: test, need, place, how: 'refused', wanted: furthest.need, offered: furthest.offered });
      return;
    }
  }
  if (!words) return;
  // What waits for its own part is told where that part is.
  if (furthest.why === 'absent' && unitOf(furthest.waitsFor) === need.part) return;
  if (furthest.why === 'spent' || furthest.why === 'absent' || furthest.why === 'too-few-alike') {
    ones.push({ words, need, how: 'left', reason: furthest.why, why: furthest });
  } else ones.push({ words, need, how: 'left', reason: furthest.why });
}

/** What an adapter that stays in its bag refuses is no reason: it gives nothing, and nothing hangs on it. */
function outOfBags({ ways }: KindView, { hookup }: Table, reasons: readonly Reason[]): readonly Reason[] {
  const isBagged = (id: PlaceId): boolean =>
    hookup.left.some((need) => need.left === 'spare' && ways.get(id)?.[0]?.after?.includes(need.id));
  const [first] = reasons;
  const outside = reasons.filter((reason) => reason.why !== 'refused' || !isBagged(reason.place));
  if (outside.length > 0 || first?.why !== 'refused') return outside;
  const kind = ways.get(first.place)?.[0]?.kind;
  return kind ? [{ why: 'none-offered', kind }] : reasons;
}

const isHazard = ({ tests }: KindPlan, reason: Reason): boolean =>
  reason.why === 'refused' && tests.find(({ test }) => test.name === reason.test)?.words?.rule.severity === 'hazard';

/** How far a need got, nearest to a joint last. */
const steps: readonly Reason['why'][] = ['none-offered', 'refused', 'absent', 'taken', 'too-few-alike', 'spent'];

/** A test further down the row was got to by passing those before it; then the nearest miss; then the first place. */
function furthestOf({ tests }: KindPlan, reasons: readonly Reason[]): Reason | undefined {
  const rank = (reason: Reason): [number, number, number] => {
    const step = steps.indexOf(reason.why);
    if (reason.why !== 'refused') return [step, 0, 0];
    const test = tests.findIndex((one) => one.test.name === reason.test);
    return [step, test, -(apart(reason.need, reason.offered) ?? 0)];
  };
  let best: { reason: Reason; rank: number[] } | undefined;
  for (const reason of reasons) {
    const ranked = rank(reason);
    if (!best || isAbove(ranked, best.rank)) best = { reason, rank: ranked };
  }
  return best?.reason;
}

function isAbove(a: readonly number[], b: readonly number[]): boolean {
  const at = a.findIndex((value, index) => value !== b[index]);
  return at >= 0 && (a[at] ?? 0) > (b[at] ?? 0);
}

const apart = (a: Value, b: Value): number | null =>
  typeof a === 'number' && typeof b === 'number' ? Math.abs(a - b) : null;

/** One finding for needs that come to the same. */
function word(kind: Kind, group: readonly [One, ...One[]]): Finding {
  const { table } = kind;
  const [first] = group;
  const { words, need, joint } = first;
  const needers = unique(group.map((one) => one.need.part));
  const givers = unique(group.flatMap((one) => one.place?.part ?? one.joint?.place.part ?? []));
  const told = {
    severity: severityOf(words.rule, need),
    about: unique([...needers, ...givers]),
    ...(joint ? { joint: joint.joint.id } : { need: need.id }),
  };
  switch (first.how) {
    case 'not-recorded': {
      const missing = unique(group.flatMap((one) => (one.how === 'not-recorded' ? one.missing : [])));
      return finding(words.rule, { ...told, verdict: 'cannot-tell', facts: {}, missing });
    }
    case 'mates':
    case 'refused': {
      const { wanted, offered } = first;
      const facts: MatingFacts = {
        part: nameOf(table, needers),
        on: nameOf(table, givers),
        need: factOf(wanted),
        offered: factOf(offered),
        difference: differenceOf(wanted, offered),
      };
      return finding(words.rule, { ...told, verdict: first.how === 'mates' ? 'fits' : 'does-not-fit', facts });
    }
    case 'joined':
      return finding(words.rule, { ...told, verdict: 'fits', facts: leftFacts(kind, need, needers, 'joined') });
    case 'left':
      return finding(words.rule, {
        ...told,
        verdict: 'does-not-fit',
        facts: leftFacts(kind, need, needers, first.reason, first.why),
      });
  }
}

const unique = <T>(items: readonly T[]): T[] => (items.length === 1 ? [...items] : [...new Set(items)]);

/** A joint that hands can force, to the harm of somebody or something, is a hazard whatever its need is worth. */
const severityOf = (rule: Rule, { left }: Need): Severity =>
  left === 'spare' || ('refuses' in rule && rule.severity === 'hazard') ? rule.severity : left;

const factOf = (value: Value): MatingFacts['need'] => value ?? null;

/** Never negative; tenths and hundredths as they were meant. */
function differenceOf(wanted: Value, offered: Value): number | null {
  const difference = apart(wanted, offered);
  return difference === null ? null : Math.round(difference * 100) / 100;
}

const plugOf = ({ attrs }: Need): string | undefined => (typeof attrs['plug'] === 'string' ? attrs['plug'] : undefined);

function leftFacts(
  { plan, view, left, table }: Kind,
  need: Need,
  needers: readonly UnitId[],
  reason: LeftFacts['reason'],
  why?: Telling,
): LeftFacts {
  const plug = plugOf(need);
  const tests = plan.tests.map(({ test }) => test);
  const reasons = left.find((one) => one.need === need.id)?.reasons ?? [];
  return {
    part: nameOf(table, needers),
    needName: plug ?? need.id.slice(need.part.length + 1),
    reason,
    places: view.places.length,
    mating: view.places.filter((place) => mate(tests, need.attrs, place.attrs) !== 'no').length,
    wanting: view.needs.filter((other) => other.left !== 'spare' && plugOf(other) === plug).length,
    capacity: why?.why === 'spent' ? why.capacity : null,
    wanted: why?.why === 'spent' ? why.wanted : null,
    resource: why?.why === 'spent' ? why.resource.slice(why.resource.lastIndexOf('/') + 1) : null,
    fill: why?.why === 'too-few-alike' ? why.fill : null,
    alike: why?.why === 'too-few-alike' ? why.alike : null,
    holders: holdersOf(table, why?.why === 'spent' ? [why] : reasons),
    waitsFor: why?.why === 'absent' ? nameOf(table, [unitOf(why.waitsFor)]) : null,
  };
}

/** Names of the parts in the way, each once; equal parts together. */
function holdersOf(table: Table, reasons: readonly Reason[]): string[] {
  const joints = reasons.flatMap((reason) => ('joints' in reason ? reason.joints : []));
  const units = unique(joints.flatMap((id) => table.jointOf(id)?.need ?? []).map(unitOf));
  const together = new Map<object, UnitId[]>();
  for (const unit of units) {
    const { group } = table.seat(unit);
    const known = together.get(group);
    if (known) known.push(unit);
    else together.set(group, [unit]);
  }
  return [...together.values()].map((equal) => nameOf(table, equal));
}
