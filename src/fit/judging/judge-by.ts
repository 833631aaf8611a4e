/** Judging by any list of rules: lower, find the hookup, say why needs are left, run every rule, add up budgets. */

import { sortKey } from '../../units/ids.ts';
import { budgetsOf } from '../budgets/index.ts';
import { findHookup } from '../hookup/search.ts';
import { whyLeft } from '../hookup/why.ts';
import type { Severity, WhyLeft } from '../model.ts';
import { lowerAll, unitsOf } from '../needs/index.ts';
import type { Budget, Finding, FitReport, Overall } from '../report.ts';
import type { JudgeBrief, JudgeInput, Rule } from '../rule.ts';
import { hookupRules, judgeHookup } from './hookup-rules.ts';
import { kindsOf } from './kinds-of.ts';
import { judgeBudget, judgeGathers, judgeJoins, judgeJoints } from './parts-rules.ts';
import { layTable, type Table } from './table.ts';

/** Changes whenever one list may come to another report. */
export const coreVersion = '1';

/**
 * A judge that keeps to a list of rules. It never throws on parts that the schemas let through, and the order of
 * the list changes nothing.
 */
export function judgeBy(list: readonly Rule[]): (input: JudgeInput, brief?: JudgeBrief) => FitReport {
  const kinds = kindsOf(list);
  const wording = hookupRules(list, kinds);
  return (input, brief = {}) => {
    const units = unitsOf(input);
    const lowered = lowerAll(units);
    const problem = { ...lowered, kinds };
    const hookup = findHookup(problem);
    const why = hookup.left.length > 0 ? whyLeft(problem, hookup) : [];
    const table = layTable(units, lowered, hookup, why);
    const budgets = budgetsOf(units, brief);
    const findings = sortFindings([
      ...judgeHookup(wording, table),
      ...list.flatMap((rule) => judgeParts(rule, table, budgets, brief)),
    ]);
    return {
      core: coreVersion,
      units: units.map(({ id, part }) => ({ id, part: part.id, class: part.class, name: part.name })),
      joints: hookup.joints,
      left: why.map((one) => leftOver(table, one)),
      proved: hookup.proved,
      findings,
      budgets,
      overall: overallOf(findings),
    };
  };
}

function judgeParts(rule: Rule, table: Table, budgets: readonly Budget[], brief: JudgeBrief): Finding[] {
  if ('joins' in rule) return judgeJoins(rule, table);
  if ('gathers' in rule) return judgeGathers(rule, table, brief);
  if ('at' in rule) return judgeJoints(rule, table);
  if ('budget' in rule) return judgeBudget(rule, table, budgets);
  return [];
}

function leftOver(table: Table, why: WhyLeft): FitReport['left'][number] {
  const { id, part, kind, left } = table.need(why.need);
  return { need: id, part, kind, severity: left === 'spare' ? 'note' : left, why };
}

const verdicts: readonly Finding['verdict'][] = ['does-not-fit', 'cannot-tell', 'fits'];
const severities: readonly Severity[] = ['hazard', 'blocker', 'limit', 'note'];

/** Each id is padded once, not at every comparison: sorting took longer than judging. */
function sortFindings(findings: readonly Finding[]): Finding[] {
  const keyed = findings.map((finding) => {
    const grade = verdicts.indexOf(finding.verdict) * severities.length + severities.indexOf(finding.severity);
    return { finding, grade, id: sortKey(finding.id) };
  });
  // An id begins with its rule, and a space comes before every character of a rule's id.
  keyed.sort((a, b) => a.grade - b.grade || (a.id < b.id ? -1 : a.id > b.id ? 1 : 0));
  return keyed.map(({ finding }) => finding);
}

/** A list of which nothing that matters was judged is no list that fits. */
function overallOf(findings: readonly Finding[]): Overall {
  const grave = findings.filter(({ severity }) => severity === 'hazard' || severity === 'blocker');
  if (grave.some(({ verdict }) => verdict === 'does-not-fit')) return 'does-not-fit';
  return grave.length === 0 || grave.some(({ verdict }) => verdict === 'cannot-tell') ? 'cannot-tell' : 'fits';
}
