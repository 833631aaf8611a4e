/** Judging by any list of rules: lower, find the hookup, say why needs are left, run every rule, add up budgets. */
import { kept } from '../../units/kept.ts';
import { budgetsOf } from '../budgets/index.ts';
import { findHookup } from '../hookup/search.ts';
import { whyLeft } from '../hookup/why.ts';
import type { Hookup, Need, Problem, Severity, Unit, UnitId, WhyLeft } from '../model.ts';
import { lowerEach, putTogether } from '../needs/index.ts';
import { type Group, sortOut } from '../needs/units.ts';
import type { Budget, Finding, FitReport, Overall } from '../report.ts';
import type { JudgeBrief, JudgeInput, Rule } from '../rule.ts';
import { openHookupRules } from './hookup-rules.ts';
import { machinesOf } from './machines.ts';
import { judgeBudgets, openJointRules, openPartsRules } from './parts-rules.ts';
import { planOf, type Told } from './plan.ts';
import { openDesk } from './table.ts';

/** Changes whenever one list may come to another report. */
export const coreVersion = '2';

/**
 * A judge that keeps to a list of rules. It never throws on parts that the schemas let through, and the order of the
 * list changes nothing.
 *
 * What is made of a part is kept as long as the part is, and a rule that is given what it was given last says again what
 * it said: none of this shows in a report. So parts and reports are for reading only.
 */
export function judgeBy(list: readonly Rule[]): (input: JudgeInput, brief?: JudgeBrief) => FitReport {
  const plan = planOf(list);
  const desk = openDesk(plan);
  const wordHookup = openHookupRules(plan);
  const judgeAtJoints = openJointRules(plan);
  const judgeParts = openPartsRules(plan);
  return (input, brief = {}) => {
    const { groups, unjudged } = sortOut(input);
    const units = groups.flatMap((group) => group.units);
    const each = lowerEach(units);
    const problem = { ...putTogether(each), kinds: plan.kinds };
    const hookup = findHookup(problem);
    const why = whyOf(problem, hookup);
    const table = desk.lay(groups, each, hookup, why);
    const budgets = budgetsOf(units, brief);

    const told: Told = new Array(plan.count);
    wordHookup(table, told);
    judgeAtJoints(table, told);
    const machines = machinesOf(table);
    judgeParts(table, machines, brief, told);
    judgeBudgets(plan, units, machines ? budgetsOfEach(units, machines, brief, budgets) : budgets, told);
    const graded = grade(told);
    return {
      core: coreVersion,
      units: groups.flatMap(rowsOf),
      joints: hookup.joints,
      left: why.map((one) => leftOver(hookup, one)),
      proved: hookup.proved,
      findings: graded.flat(),
      budgets,
      unjudged,
      overall: overallOf(graded, unjudged.length > 0 || hookup.left.some(isGrave)),
    };
  };
}

/** What a machine draws, weighs and holds is added up for it alone; what is paid, for the list. */
function budgetsOfEach(
  units: readonly Unit[],
  machines: readonly ReadonlySet<UnitId>[],
  brief: JudgeBrief,
  whole: readonly Budget[],
): Budget[] {
  const isMoney = ({ name }: Budget): boolean => name === 'money';
  const each = machines.flatMap((machine) =>
    budgetsOf(
      units.filter(({ id }) => machine.has(id)),
      brief,
    ).filter((budget) => !isMoney(budget)),
  );
  return [...whole.filter(isMoney), ...each];
}

/** Asked only when something that matters is left over. */
export const whyOf = (problem: Problem, hookup: Hookup): WhyLeft[] =>
  hookup.left.some(({ left }) => left !== 'spare') ? whyLeft(problem, hookup) : [];

const rowsOf = kept((group: Group): FitReport['units'] =>
  group.units.map(({ id, part }: Unit) => ({ id, part: part.id, class: part.class, name: part.name })),
);

function leftOver({ left }: Hookup, why: WhyLeft): FitReport['left'][number] {
  const need = left.find(({ id }) => id === why.need);
  if (!need) throw new RangeError(`${why.need} is not left over`);
  const { id, part, kind } = need;
  return { need: id, part, kind, severity: need.left === 'spare' ? 'note' : need.left, why };
}

const verdicts: Record<Finding['verdict'], number> = { 'does-not-fit': 0, 'cannot-tell': 1, fits: 2 };
const severities: Record<Severity, number> = { hazard: 0, blocker: 1, limit: 2, note: 3 };
const grades = 12;

/** Findings by grade, the worst first; within a grade as they were told, which is by rule and then by id. */
export function grade(told: Told): Finding[][] {
  const graded: Finding[][] = Array.from({ length: grades }, () => []);
  for (const findings of told) {
    if (!findings) continue;
    for (const finding of findings) {
      graded[4 * verdicts[finding.verdict] + severities[finding.severity]]?.push(finding);
    }
  }
  return graded;
}

/** Left over, such a need keeps a list from fitting, whoever puts it into words. */
export const isGrave = ({ left }: Need): boolean => left === 'hazard' || left === 'blocker';

/** A list of which nothing that matters was judged, or not all, is no list that fits. */
export function overallOf(graded: readonly (readonly Finding[])[], isPartly: boolean): Overall {
  const grave = (verdict: Finding['verdict']): boolean =>
    [0, 1].some((severity) => (graded[4 * verdicts[verdict] + severity] ?? []).length > 0);
  if (grave('does-not-fit')) return 'does-not-fit';
  return isPartly || grave('cannot-tell') || !grave('fits') ? 'cannot-tell' : 'fits';
}
