/**
 * The fit model: what a part is lowered to, and what the hookup search gives back.
 *
 * A part becomes needs (what it must be joined to), places (what others may be joined to)
 * and resources (what places share). All amounts are whole numbers in small units
 * (milliamps, deciwatts, megabits a second, half slots), so that sums never depend on order.
 */
import type { Part } from '../parts/part.ts';

/** `<class>-<n>`, n counted over the list sorted by class and part id: `memory-module-2`. */
export type UnitId = string;
/** `<unit>/<name>`: `motherboard-1/memory-slot-b2`. */
export type NeedId = string;
export type PlaceId = string;
export type ResourceId = string;
export type GroupId = string;
/** `<need> → <place>`, without the way. */
export type JointId = string;
export type RuleId = string;
export type Attr = string;
export type Quantity = string;

/** undefined: not recorded, so "cannot tell". null: no such limit, so it always passes. */
export type Value = string | number | boolean | readonly (string | number)[] | null | undefined;

/** What happens when a thing is not right, mildest last. `spare` is for needs only: a cable left in its bag. */
export type Severity = 'hazard' | 'blocker' | 'limit' | 'note';
export type Verdict = 'fits' | 'does-not-fit' | 'cannot-tell' | 'does-not-apply';
export type Basis = 'standard' | 'maker' | 'practice';

export type KindName =
  | 'processor-socket'
  | 'cooler-mount'
  | 'cooling'
  | 'memory-slot'
  | 'memory-bank'
  | 'expansion-slot'
  | 'module-slot'
  | 'drive-data'
  | 'drive-bay'
  | 'board-mount'
  | 'supply-mount'
  | 'fan-mount'
  | 'radiator-mount'
  | 'board-power'
  | 'processor-power'
  | 'card-power'
  | 'drive-power'
  | 'fan-header'
  | 'front-panel'
  | 'picture'
  | 'keyboard'
  | 'pointer'
  | 'mains'
  | 'setting'
  | 'coprocessor-socket'
  | 'light-header'
  | 'monitor-mount';

export type Need = {
  id: NeedId;
  part: UnitId;
  kind: KindName;
  left: Severity | 'spare';
  attrs: Record<Attr, Value>;
  /** What it takes from wherever it is joined. */
  draws?: Record<Quantity, number>;
  /** What is drawn beyond it passes through it. */
  carries?: Quantity[];
  /** Its part works on the bench without this joint. */
  stands?: true;
};

export type Place = {
  id: PlaceId;
  /** Two records with one id are two ways of using one place; one way is in use at a time. */
  way?: string;
  part: UnitId;
  kind: KindName;
  /** The maker's order: the lowest is used first. */
  rank: number;
  attrs: Record<Attr, Value>;
  /** Takes this many alike needs, or none. 1 when absent. */
  fill?: number;
  /** Taken whenever this place is used this way. */
  draws?: Record<Quantity, number>;
  /** A row of resources for each quantity, filled in turn; the last takes the rest. */
  meters?: Record<Quantity, ResourceId[]>;
  /** Needs of its own part that must be joined before this place exists. */
  after?: NeedId[];
};

export type Resource = {
  id: ResourceId;
  capacity: number;
  /** `lost`: may be overdrawn, and the overflow counts as loss. Absent: an overdraw is refused. */
  over?: 'lost';
  /** Members of a group share evenly: each gets ceil(sum of all possible draws / members). */
  even?: GroupId;
};

/** A test looks at one joint. Its name is the id of the rule that words it. */
export type Test = { name: RuleId; op: 'shares' | 'atMost' | 'atLeast'; need: Attr; place: Attr };
export type Kind = { tests: Test[]; hungry?: Quantity };
export type Kinds = Record<KindName, Kind>;

export type Problem = { needs: Need[]; places: Place[]; resources: Resource[]; kinds: Kinds };

export type Joint = { id: JointId; kind: KindName; need: NeedId; place: PlaceId; way?: string; unknown: boolean };

export type Hookup = {
  /** Sorted by joint id. */
  joints: Joint[];
  left: Need[];
  /**
   * Compared from the left, least is best: standing left, hazards left, blockers left, limits left,
   * notes left, provisional joints, loss, spares joined, rank.
   */
  cost: number[];
  used: Map<ResourceId, number>;
  steps: number;
  /** False when the step limit was reached: the best found, not proved best. */
  proved: boolean;
  /** When not proved: needs left over where the search stopped. They are "cannot tell", never "does not fit". */
  stopped?: NeedId[];
};

/** One reason per place of the need's kind, or one `none-offered`. */
export type Reason =
  | { why: 'none-offered'; kind: KindName }
  | { why: 'refused'; place: PlaceId; test: RuleId; need: Value; offered: Value }
  | { why: 'taken'; place: PlaceId; joints: JointId[] }
  | { why: 'spent'; place: PlaceId; resource: ResourceId; capacity: number; wanted: number; joints: JointId[] }
  | { why: 'absent'; place: PlaceId; waitsFor: NeedId; reasons: Reason[] }
  | { why: 'too-few-alike'; place: PlaceId; fill: number; alike: number }
  | { why: 'not-proved' };

/** Why a need of the chosen hookup found no place; `rivals` cannot all be served by `places`. */
export type WhyLeft = { need: NeedId; reasons: Reason[]; rivals: NeedId[]; places: PlaceId[] };

/** One thing on the bench: the nth of its class. */
export type Unit<P extends Part = Part> = { id: UnitId; part: P };

/**
 * What a part does not record that no attribute can hold: how many needs or places of a kind it has, what its needs
 * of the kind draw, or what limits every place of the kind.
 */
export type Unrecorded = {
  kind: KindName;
  part: UnitId;
  /** `<unit>.<field>`. */
  field: string;
  of: 'needs' | 'places' | 'draws' | 'limits';
};

/** What one part is lowered to. */
export type Lowered = { needs: Need[]; places: Place[]; resources: Resource[]; unrecorded: Unrecorded[] };
