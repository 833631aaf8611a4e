/** The core's one entry: a parts list in, a fit report out. */
import { judgeBy } from './judging/judge-by.ts';
import type { FitReport } from './report.ts';
import type { JudgeBrief, JudgeInput } from './rule.ts';
import { rules } from './rules/index.ts';

export { coreVersion } from './judging/judge-by.ts';

/** Never throws on parts that the schemas let through; the order of the list changes nothing. */
export const judge: (input: JudgeInput, brief?: JudgeBrief) => FitReport = judgeBy(rules);
