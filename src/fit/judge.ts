/** The core's one entry: a parts list in, a fit report out. */
import { resolveList } from '../parts/list.ts';
import type { Part, PartsList } from '../parts/part.ts';
import { byId } from '../units/ids.ts';
import { judgeBy } from './judging/judge-by.ts';
import type { FitReport, Unjudged } from './report.ts';
import type { JudgeBrief, JudgeInput } from './rule.ts';
import { rules } from './rules/index.ts';

export { coreVersion } from './judging/judge-by.ts';

/** Never throws on parts that the schemas let through; the order of the list changes nothing. */
export const judge: (input: JudgeInput, brief?: JudgeBrief) => FitReport = judgeBy(rules);

/**
 * Judges a list as somebody wrote it, by part id. Never throws on what it holds; lines that cannot be judged are in
 * `unjudged`, and a list that has some never "fits".
 */
export function judgeList(list: PartsList, parts: readonly Part[], brief: JudgeBrief = {}): FitReport {
  const { input, unknown, miscounted } = resolveList(list, parts);
  const report = judge(input, brief);
  if (unknown.length + miscounted.length === 0) return report;
  const unjudged = [
    ...report.unjudged,
    ...unknown.map((part): Unjudged => ({ part, why: 'unknown-part' })),
    ...miscounted.map((part): Unjudged => ({ part, why: 'miscounted' })),
  ].sort((a, b) => byId(a.part, b.part));
  return { ...report, unjudged, overall: report.overall === 'fits' ? 'cannot-tell' : report.overall };
}
