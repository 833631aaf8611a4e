/** Marks what a student said of each statement about a given list. */
import { judgeList } from '../fit/judge.ts';
import type { Finding, FitReport } from '../fit/report.ts';
import { sayFinding } from '../fit/say.ts';
import type { Part } from '../parts/part.ts';
import { count } from '../wording/phrases.ts';
import { aboutNothing, type Judged, marked } from './marking.ts';
import type { Answer, MarkedLine, MisfitsExercise } from './types.ts';

type Statement = MisfitsExercise['statements'][number];
type Verdicts = Extract<Answer, { kind: 'misfits' }>['verdicts'];

const inWords: Record<Finding['verdict'], string> = {
  fits: '“fits”',
  'does-not-fit': '“does not fit”',
  'cannot-tell': '“cannot tell”',
};

/** The fit report of the exercise's list; undefined when not all of it can be judged. */
export function reportOf(exercise: MisfitsExercise, parts: readonly Part[]): FitReport | undefined {
  const report = judgeList(exercise.list, parts);
  return report.unjudged.length > 0 ? undefined : report;
}

/** What the core finds for a statement: the worst finding of its rule, about the first unit of its class when it names one. */
export function findingFor(statement: Statement, report: FitReport): Finding | undefined {
  const unit = statement.of === undefined ? undefined : report.units.find((one) => one.class === statement.of)?.id;
  if (statement.of !== undefined && unit === undefined) return undefined;
  return report.findings.find(
    ({ rule, about }) => rule === statement.rule && (unit === undefined || about.includes(unit)),
  );
}

export function markVerdicts(exercise: MisfitsExercise, verdicts: Verdicts, parts: readonly Part[]): MarkedLine[] {
  const report = reportOf(exercise, parts);
  return exercise.rubric.map((line) => {
    if (line.for === 'complete') return marked(line, complete(exercise, verdicts));
    if (typeof line.for === 'string' || 'demand' in line.for) return marked(line, aboutNothing);
    const id = line.for.statement;
    const statement = exercise.statements.find((one) => one.id === id);
    const finding = statement && report && findingFor(statement, report);
    return marked(line, finding ? markStatement(finding, given(verdicts, id)) : aboutNothing);
  });
}

const given = (verdicts: Verdicts, id: string) => (Object.hasOwn(verdicts, id) ? verdicts[id] : undefined);

function complete({ statements }: MisfitsExercise, verdicts: Verdicts): Judged {
  const open = statements.filter(({ id }) => given(verdicts, id) === undefined).length;
  if (open === 0) return { why: `All ${count(statements.length, 'statement', 'statements')} are judged.` };
  return {
    why: `${statements.length - open} of ${count(statements.length, 'statement', 'statements')} are judged.`,
    more: `Judge the other ${open} as well.`,
  };
}

function markStatement(finding: Finding, said: Finding['verdict'] | undefined): Judged {
  const { what, remedy } = sayFinding(finding);
  const findings = [finding.id];
  if (said === undefined) {
    return {
      why: 'There is no verdict on this statement.',
      more: 'Compare the two figures in the data sheets, then say whether it fits, does not fit or cannot be told.',
      findings,
    };
  }
  if (said === finding.verdict) return { why: `${inWords[said]} is right. ${what}`, findings };
  const findOut = finding.verdict === 'cannot-tell' ? ` ${remedy}` : '';
  return {
    why: `You said ${inWords[said]}. ${what}`,
    more: `${inWords[finding.verdict]} earns this line.${findOut}`,
    findings,
  };
}
