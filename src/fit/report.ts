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
  | 'wall-power'
  | 'running-cost'
  | 'heat'
  | 'air'
  | 'sound'
  | 'lanes'
  | 'picture'
  | 'memory'
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
  | 'decilitre-a-second'
  | 'millibel'
  | 'megabyte-a-second'
  | 'megabit-a-second'
  | 'mebibyte'
  | 'square-millimetre'
  | 'gram';

/** One line of the working: a part's share, or a figure that the formula puts in. */
export type WorkingLine = {
  /** Absent for a figure that belongs to no part. */
  unit?: UnitId;
  amount: number;
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
  formula: string;
  source: string;
};

/** The verdict on the whole list: hazards and blockers only; a limit still fits. */
export type Overall = 'fits' | 'does-not-fit' | 'cannot-tell';

export type FitReport = {
  core: string;
  units: { id: UnitId; part: PartId; class: PartClass; name: string }[];
  joints: Joint[];
  left: { need: NeedId; part: UnitId; kind: KindName; severity: Severity; why: WhyLeft }[];
  proved: boolean;
  /** Worst first: does not fit before cannot tell before fits; then severity; then rule id; then id. */
  findings: Finding[];
  budgets: Budget[];
  overall: Overall;
};
