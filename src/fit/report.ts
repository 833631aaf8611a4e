/** The fit report: everything the core has to say of one parts list. JSON-serialisable. */
import type { PartClass, PartId } from '../parts/part.ts';
import type { Basis, Joint, JointId, KindName, NeedId, RuleId, Severity, UnitId, Verdict, WhyLeft } from './model.ts';

export type Fact = string | number | boolean | null | readonly (string | number)[];
export type Facts = Record<string, Fact>;

export type Finding = {
  /** `<rule> <what it is about>`: stable for one list. */
  id: string;
  rule: RuleId;
  verdict: Exclude<Verdict, 'does-not-apply'>;
  severity: Severity;
  basis: Basis;
  /** The units the finding is about, the one to change first. */
  about: UnitId[];
  joint?: JointId;
  /** A need left over, when that is what the finding is about. */
  need?: NeedId;
  facts: Facts;
  /** For "cannot tell": the fields that are not recorded, as `<unit>.<field>`. */
  missing?: string[];
};

export type BudgetName =
  | 'power'
  | 'sustained-power'
  | 'idle-power'
  | 'excursion'
  | 'rail'
  | 'lead'
  | 'wall-power'
  | 'running-cost'
  | 'heat'
  | 'air'
  | 'sound'
  | 'lanes'
  | 'picture'
  | 'scan'
  | 'heads'
  | 'memory'
  | 'banks'
  | 'memory-bandwidth'
  | 'money'
  | 'footprint'
  | 'weight';

/** Whole numbers of small units: no sum depends on its order. */
export type BudgetUnit =
  | 'deciwatt'
  | 'milliamp'
  | 'cent'
  | 'cent-a-year'
  | 'millikelvin'
  | 'millibel'
  | 'megabyte-a-second'
  | 'megabit-a-second'
  | 'kibibyte'
  | 'mebibyte'
  | 'hertz'
  | 'square-millimetre'
  | 'gram'
  | 'count';

/** Units of figures that a formula puts in and that no budget is counted in. */
export type FigureUnit =
  | BudgetUnit
  | 'permille'
  | 'minute-a-day'
  | 'tenth-of-a-cent-a-kilowatt-hour'
  | 'cubic-metre-an-hour'
  | 'millicelsius'
  | 'lane'
  | 'generation'
  | 'megatransfer-a-second'
  | 'pixel'
  | 'line'
  | 'kilohertz'
  | 'millihertz'
  | 'bit';

/** One line of the working: a part's share, or a figure that the formula puts in. */
export type WorkingLine = {
  /** Absent for a figure that belongs to no part. */
  unit?: UnitId;
  amount: number;
  /** What the amount counts; absent for an amount that counts towards `used`, in the budget's own unit. */
  in?: FigureUnit;
  /** Where the amount is recorded on the part, or what the figure is. */
  field: string;
};

/** One budget with its working. A list may have several of one name: a rail, a monitor, a slot each. */
export type Budget = {
  name: BudgetName;
  /** What tells it from others of its name: `12v`, `monitor-1`, `graphics-card-1`. */
  of?: string;
  unit: BudgetUnit;
  used: number;
  /** Absent when there is nothing that sets a limit, or its limit is not recorded. */
  limit?: number;
  /** Units that set the limit, or that the budget is about: what a finding about it names. */
  about: UnitId[];
  /** Units whose share is not recorded, so `used` is a floor. */
  unknown: UnitId[];
  working: WorkingLine[];
  /** A sentence: how `used` comes from the working, and what sets the limit where that is not plain. */
  formula: string;
  /** Id in `content/sources`. */
  source: string;
};

/** The verdict on the whole list: hazards and blockers only; a limit still fits. */
export type Overall = 'fits' | 'does-not-fit' | 'cannot-tell';

/**
 * A line that was not judged. `unknown-part`: no part of the catalogue has the id. `unknown-class`, `not-whole`: the part
 * is of another edition. `miscounted`: its quantity is no count. `too-many`: with it the list has more parts than are judged.
 */
export type Unjudged = {
  part: PartId;
  why: 'unknown-part' | 'unknown-class' | 'not-whole' | 'miscounted' | 'too-many';
};

/** For reading only: reports of like lists share findings. */
export type FitReport = {
  core: string;
  units: { id: UnitId; part: PartId; class: PartClass; name: string }[];
  joints: Joint[];
  left: { need: NeedId; part: UnitId; kind: KindName; severity: Severity; why: WhyLeft }[];
  proved: boolean;
  /** Worst first: does not fit before cannot tell before fits; then severity; then rule id; then id. */
  findings: Finding[];
  /** Power, heat and money, in that order, then whatever else rules read; `budgets/working.ts` gives all there are. */
  budgets: Budget[];
  /** By part id. A list of which something was not judged never fits. */
  unjudged: Unjudged[];
  overall: Overall;
};
