/**
 * Everything on the table while one list is judged.
 *
 * A desk remembers the table before. What is on it again is the same object again (the groups of a class, the needs and
 * places of a kind, its joints), so that whoever worked on it can tell by identity that nothing has changed.
 */
import { partClasses } from '../../parts/part.ts';
import { kept } from '../../units/kept.ts';
import { ordinal } from '../../wording/ordinals.ts';
import { list } from '../../wording/phrases.ts';
import type {
  Hookup,
  Joint,
  JointId,
  Lowered,
  Need,
  NeedId,
  Place,
  PlaceId,
  Resource,
  ResourceId,
  Unit,
  UnitId,
  Unrecorded,
  WhyLeft,
} from '../model.ts';
import type { Group } from '../needs/units.ts';
import { kindNames, kindNumber, type Plan } from './plan.ts';

/** What one unit has of one kind. */
type Share = { kind: number; needs: Need[]; places: Place[]; unrecorded: Unrecorded[] };

/** All needs and places of one kind. */
export type KindView = {
  readonly shares: readonly Share[];
  readonly needs: readonly Need[];
  /** One record for each place, whatever its ways. */
  readonly places: readonly Place[];
  readonly unrecorded: readonly Unrecorded[];
  readonly need: ReadonlyMap<NeedId, Need>;
  readonly ways: ReadonlyMap<PlaceId, readonly Place[]>;
};

/** All parts of one class. */
export type ClassView = { readonly groups: readonly Group[]; readonly units: readonly Unit[] };

/** A joint with both ends; `place` is the way in use. */
export type JointAt = {
  readonly joint: Joint;
  readonly need: Need;
  readonly place: Place;
  /** What was wanted beyond what can pass there, by quantity. Left out for kinds at which no rule looks. */
  readonly lost: Readonly<Record<string, number>>;
};

export type Table = {
  readonly hookup: Hookup;
  readonly groups: readonly Group[];
  /** By place of the class in `partClasses`. */
  readonly classes: readonly ClassView[];
  /** By number of the kind, as are `joints` and `left`. */
  readonly views: readonly KindView[];
  readonly joints: readonly (readonly JointAt[])[];
  readonly left: readonly (readonly WhyLeft[])[];
  /** A unit, and the equal ones it stands with. */
  seat(id: UnitId): { readonly unit: Unit; readonly group: Group };
  jointOf(id: JointId): Joint | undefined;
};

const none: readonly never[] = [];
const noLoss = {};
export const noClass: ClassView = { groups: none, units: none };
const noView: KindView = {
  shares: none,
  needs: none,
  places: none,
  unrecorded: none,
  need: new Map(),
  ways: new Map(),
};

export type Desk = {
  lay(groups: readonly Group[], each: readonly Lowered[], hookup: Hookup, why: readonly WhyLeft[]): Table;
};

export function openDesk(plan: Plan): Desk {
  let classes: ClassView[] = partClasses.map(() => noClass);
  let views: KindView[] = kindNames.map(() => noView);
  let joints: (readonly JointAt[])[] = kindNames.map(() => none);

  return {
    lay(groups, each, hookup, why) {
      classes = classesOf(groups, classes);
      const now = viewsOf(each, views);
      const changed = now.map((view, kind) => view !== views[kind]);
      views = now;
      joints = jointsOf(plan, views, changed, overflowsOf(each, hookup), hookup, joints);
      const left = why.length === 0 ? noneLeft : leftOf(hookup, why);
      let seats: Map<UnitId, { unit: Unit; group: Group }> | undefined;
      let byId: Map<JointId, Joint> | undefined;
      return {
        hookup,
        groups,
        classes,
        views,
        joints,
        left,
        seat(id) {
          seats ??= new Map(groups.flatMap((group) => group.units.map((unit) => [unit.id, { unit, group }] as const)));
          const seat = seats.get(id);
          if (!seat) throw new RangeError(`${id} is not on the table`);
          return seat;
        },
        jointOf(id) {
          byId ??= new Map(hookup.joints.map((joint) => [joint.id, joint]));
          return byId.get(id);
        },
      };
    },
  };
}

const noneLeft: readonly (readonly WhyLeft[])[] = kindNames.map(() => none);

function leftOf(hookup: Hookup, why: readonly WhyLeft[]): (readonly WhyLeft[])[] {
  const left: WhyLeft[][] = kindNames.map(() => []);
  const kindOf = new Map(hookup.left.map(({ id, kind }) => [id, kind]));
  for (const one of why) {
    const kind = kindOf.get(one.need);
    if (kind !== undefined) left[kindNumber(kind)]?.push(one);
  }
  return left;
}

/** `last` when it holds the same. */
function keep<T>(made: readonly T[], last: readonly T[]): readonly T[] {
  if (made.length !== last.length) return made;
  for (let at = 0; at < made.length; at += 1) if (made[at] !== last[at]) return made;
  return last;
}

function classesOf(groups: readonly Group[], before: readonly ClassView[]): ClassView[] {
  const classes: ClassView[] = partClasses.map(() => noClass);
  for (let from = 0; from < groups.length; ) {
    const { ofClass } = groups[from] as Group;
    let to = from + 1;
    while (groups[to]?.ofClass === ofClass) to += 1;
    const of = groups.slice(from, to);
    const last = before[ofClass] ?? noClass;
    classes[ofClass] = keep(of, last.groups) === last.groups ? last : classOf(of);
    from = to;
  }
  return classes;
}

export const classOf = (groups: readonly Group[]): ClassView => ({
  groups,
  units: groups.flatMap(({ units }) => units),
});

/** What a unit has, by kind, and what it offers that may be overdrawn at a loss. */
const digestOf = kept((lowered: Lowered): { shares: Share[]; lossy: Resource[] } => {
  const shares = new Map<number, Share>();
  const share = (at: number): Share => {
    const made = shares.get(at) ?? { kind: at, needs: [], places: [], unrecorded: [] };
    shares.set(at, made);
    return made;
  };
  for (const need of lowered.needs) share(kindNumber(need.kind)).needs.push(need);
  for (const place of lowered.places) share(kindNumber(place.kind)).places.push(place);
  for (const open of lowered.unrecorded) share(kindNumber(open.kind)).unrecorded.push(open);
  const lossy = lowered.resources.filter(({ over, even }) => over === 'lost' && even === undefined);
  return { shares: [...shares.values()], lossy };
});

function viewsOf(each: readonly Lowered[], before: readonly KindView[]): KindView[] {
  const shares: (Share[] | undefined)[] = new Array(before.length).fill(undefined);
  for (const lowered of each) {
    for (const share of digestOf(lowered).shares) {
      const known = shares[share.kind];
      if (known) known.push(share);
      else shares[share.kind] = [share];
    }
  }
  return before.map((last, at) => {
    const of = shares[at] ?? none;
    return keep(of, last.shares) === last.shares ? last : viewOf(of);
  });
}

function viewOf(shares: readonly Share[]): KindView {
  if (shares.length === 0) return noView;
  const needs = shares.flatMap((share) => share.needs);
  const places: Place[] = [];
  const ways = new Map<PlaceId, Place[]>();
  for (const share of shares) {
    for (const place of share.places) {
      const known = ways.get(place.id);
      if (known) known.push(place);
      else {
        ways.set(place.id, [place]);
        places.push(place);
      }
    }
  }
  const unrecorded = shares.flatMap((share) => share.unrecorded);
  return { shares, needs, places, unrecorded, need: new Map(needs.map((need) => [need.id, need])), ways };
}

/** What was wanted beyond what can pass, for each resource that counts loss. Of one declared twice the smaller holds. */
function overflowsOf(each: readonly Lowered[], { used }: Hookup): Map<ResourceId, number> {
  const overflows = new Map<ResourceId, number>();
  for (const lowered of each) {
    for (const { id, capacity } of digestOf(lowered).lossy) {
      const overflow = Math.max(0, (used.get(id) ?? 0) - capacity);
      overflows.set(id, Math.max(overflow, overflows.get(id) ?? 0));
    }
  }
  return overflows;
}

function jointsOf(
  { byKind }: Plan,
  views: readonly KindView[],
  changed: readonly boolean[],
  overflows: ReadonlyMap<ResourceId, number>,
  hookup: Hookup,
  before: readonly (readonly JointAt[])[],
): (readonly JointAt[])[] {
  const joints: (JointAt[] | undefined)[] = new Array(before.length).fill(undefined);
  for (const joint of hookup.joints) {
    const kind = kindNumber(joint.kind);
    joints[kind] ??= [];
    const of = joints[kind];
    const last = changed[kind] ? undefined : before[kind]?.[of.length];
    const isAsked = (byKind[kind]?.at.length ?? 0) > 0;
    if (last && isSameJoint(last.joint, joint) && (!isAsked || isLost(last, overflows))) of.push(last);
    else {
      const view = views[kind] ?? noView;
      const need = found(view.need.get(joint.need), joint.need);
      const ways = view.ways.get(joint.place) ?? none;
      const place = found(joint.way === undefined ? ways[0] : ways.find(({ way }) => way === joint.way), joint.place);
      of.push({ joint, need, place, lost: isAsked ? lostAt(place, overflows) : noLoss });
    }
  }
  return before.map((last, kind) => keep(joints[kind] ?? none, last));
}

/** Of the same needs and places, so that whether all of it is recorded is the same too. */
const isSameJoint = (a: Joint, b: Joint): boolean => a.need === b.need && a.place === b.place && a.way === b.way;

/** Whether as much is lost at the place of a joint as was lost there before. */
function isLost({ place: { meters }, lost }: JointAt, overflows: ReadonlyMap<ResourceId, number>): boolean {
  for (const quantity in meters) if (lossOf(meters[quantity] ?? none, overflows) !== lost[quantity]) return false;
  return true;
}

function lostAt({ meters }: Place, overflows: ReadonlyMap<ResourceId, number>): Record<string, number> {
  const lost: Record<string, number> = {};
  for (const quantity in meters) {
    const loss = lossOf(meters[quantity] ?? none, overflows);
    if (loss !== undefined) lost[quantity] = loss;
  }
  return lost;
}

/** Undefined when nothing in the row counts loss. */
function lossOf(row: readonly ResourceId[], overflows: ReadonlyMap<ResourceId, number>): number | undefined {
  let loss: number | undefined;
  for (const resource of row) {
    const overflow = overflows.get(resource);
    if (overflow !== undefined) loss = (loss ?? 0) + overflow;
  }
  return loss;
}

function found<T>(value: T | undefined, id: string): T {
  if (value === undefined) throw new RangeError(`${id} is not on the table`);
  return value;
}

/** "Tammer 16", or "Tammer 16 (2nd)" when the list has more of them than these. All are units of one part. */
export function nameOf({ seat }: Table, units: readonly UnitId[]): string {
  const { part, ids } = seat(units[0] ?? '').group;
  if (ids.every((id) => units.includes(id))) return part.name;
  const ordinals = ids.flatMap((id, index) => (units.includes(id) ? [ordinal(index + 1)] : []));
  return `${part.name} (${list(ordinals)})`;
}
