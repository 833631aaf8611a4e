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

export type BudgetName = 'power' | 'heat' | 'money';

/** One budget with its working. Whole numbers: deciwatts for power and heat, cents for money. */
export type Budget = {
  name: BudgetName;
  unit: 'deciwatt' | 'cent';
  used: number;
  /** Absent when there is nothing that sets a limit, or its limit is not recorded. */
  limit?: number;
  /** Units whose share is not recorded, so `used` is a floor. */
  unknown: UnitId[];
  working: { unit: UnitId; amount: number; field: string }[];
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
