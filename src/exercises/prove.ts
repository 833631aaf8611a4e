/**
 * Whether an exercise makes sense and can be done. One that nobody can solve, or in which every answer is
 * the same, teaches nothing; it is refused before a student meets it.
 */
import type { Part } from '../parts/part.ts';
import { list } from '../wording/phrases.ts';
import { mark } from './grade.ts';
import { findingFor, reportOf } from './mark-verdicts.ts';
import type { ChooseExercise, Exercise, MisfitsExercise } from './types.ts';

/** A slip in an exercise: `path` leads to the key or value in its file that shows it. */
export type Slip = { path: readonly (string | number)[]; id: string; actual: string; expected: string };

/** Slips that the exercise shows by itself, without a catalogue. Ids its rubric names are looked up where the file is read. */
export function senseSlips(exercise: Exercise): Slip[] {
  return [
    ...doubledIds('rubric', exercise.rubric),
    ...(exercise.kind === 'choose' ? chooseSense(exercise) : misfitsSense(exercise)),
  ];
}

function doubledIds(name: string, entries: readonly { id: string }[], path: Slip['path'] = [name]): Slip[] {
  return entries.flatMap(({ id }, index) =>
    entries.findIndex((one) => one.id === id) === index
      ? []
      : [
          {
            path: [...path, index, 'id'],
            id: 'exercise/doubled-id',
            actual: `"${id}" a second time`,
            expected: `an id of its own in ${name}`,
          },
        ],
  );
}

function chooseSense({ rubric, brief, shelf, answer = [] }: ChooseExercise): Slip[] {
  const slips = doubledIds('demands', brief.demands, ['brief', 'demands']);
  for (const [index, line] of rubric.entries()) {
    if (line.for !== 'budget' || brief.budgetCents !== undefined) continue;
    slips.push({
      path: ['rubric', index, 'for'],
      id: 'exercise/rubric-about-nothing',
      actual: 'budget',
      expected: 'a brief with budgetCents',
    });
  }
  const unsure = rubric.findIndex((line) => line.for === 'fits' || line.for === 'safe');
  if (unsure >= 0 && !rubric.some((line) => line.for === 'known')) {
    slips.push({
      path: ['rubric', unsure, 'for'],
      id: 'exercise/rubric-without-known',
      actual: `${rubric[unsure]?.for} without a line for known`,
      expected: 'both, so that a size nobody knows never passes for one that fits',
    });
  }
  for (const [index, position] of shelf.entries()) {
    if (shelf.findIndex((one) => one.position === position.position) !== index) {
      slips.push({
        path: ['shelf', index, 'position'],
        id: 'exercise/doubled-id',
        actual: `"${position.position}" a second time`,
        expected: 'a name of its own for each place of the shelf',
      });
    }
    if (position.from > position.to) {
      slips.push({
        path: ['shelf', index, 'from'],
        id: 'exercise/from-above-to',
        actual: `${position.from}`,
        expected: `${position.to} or less, as \`to\` says`,
      });
    }
    for (const [n, part] of position.parts.entries()) {
      const before = shelf.slice(0, index + 1).flatMap((one, at) => (at < index ? one.parts : one.parts.slice(0, n)));
      if (!before.includes(part)) continue;
      slips.push({
        path: ['shelf', index, 'parts', n],
        id: 'exercise/doubled-part',
        actual: `"${part}" a second time`,
        expected: 'each part once on the shelf',
      });
    }
  }
  for (const [index, { part }] of answer.entries()) {
    if (answer.findIndex((one) => one.part === part) === index) continue;
    slips.push({
      path: ['answer', index, 'part'],
      id: 'exercise/doubled-part',
      actual: `"${part}" a second time`,
      expected: 'one line for each part, with its quantity',
    });
  }
  return slips;
}

function misfitsSense({ rubric, statements }: MisfitsExercise): Slip[] {
  const slips = doubledIds('statements', statements);
  for (const [index, line] of rubric.entries()) {
    if (typeof line.for !== 'string' || line.for === 'complete') continue;
    slips.push({
      path: ['rubric', index, 'for'],
      id: 'exercise/rubric-about-nothing',
      actual: line.for,
      expected: 'complete, or a statement: the list is given and nothing is chosen',
    });
  }
  return slips;
}

/**
 * Slips that only the core can show. To be asked when the exercise makes sense and every part it names is in `parts`.
 */
export function proofSlips(exercise: Exercise, parts: readonly Part[]): Slip[] {
  return exercise.kind === 'choose' ? chooseProof(exercise, parts) : misfitsProof(exercise, parts);
}

function chooseProof(exercise: ChooseExercise, parts: readonly Part[]): Slip[] {
  const { answer = [], shelf } = exercise;
  const slips: Slip[] = [];
  const onShelf = shelf.flatMap((position) => position.parts);
  for (const [index, { part }] of answer.entries()) {
    if (onShelf.includes(part)) continue;
    slips.push({
      path: ['answer', index, 'part'],
      id: 'exercise/answer-off-shelf',
      actual: `"${part}"`,
      expected: 'a part on the shelf of this exercise',
    });
  }
  for (const { position, parts: ids, from, to } of shelf) {
    const holds = answer.filter(({ part }) => ids.includes(part)).reduce((sum, { quantity }) => sum + quantity, 0);
    if (holds >= from && holds <= to) continue;
    slips.push({
      path: ['answer'],
      id: 'exercise/answer-not-complete',
      actual: `an answer with ${holds} for "${position}"`,
      expected: from === to ? `${from}` : `${from} to ${to}`,
    });
  }
  if (slips.length > 0) return slips;
  for (const line of mark(exercise, { kind: 'choose', list: answer }, parts).lines) {
    if (line.marks === line.of) continue;
    slips.push({
      path: ['answer'],
      id: 'exercise/answer-not-full-marks',
      actual: `an answer that earns ${line.marks} of ${line.of} in "${line.line}" (${line.why})`,
      expected: 'all of them',
    });
  }
  return slips;
}

function misfitsProof(exercise: MisfitsExercise, parts: readonly Part[]): Slip[] {
  const report = reportOf(exercise, parts);
  if (!report) return [];
  const findings = exercise.statements.map((statement) => findingFor(statement, report));
  const slips = exercise.statements.flatMap(({ rule, of }, index): Slip[] => {
    if (findings[index]) return [];
    const about = of === undefined ? '' : ` about a ${of}`;
    return [
      {
        path: ['statements', index, 'rule'],
        id: 'exercise/statement-without-finding',
        actual: `${rule}${about}`,
        expected: 'a rule that has something to say of this list',
      },
    ];
  });
  const verdicts = [...new Set(findings.map((finding) => finding?.verdict))];
  if (slips.length === 0 && verdicts.length === 1) {
    slips.push({
      path: ['statements'],
      id: 'exercise/statements-all-alike',
      actual: `statements whose verdict is always ${list(verdicts.map(String))}`,
      expected: 'at least two different verdicts',
    });
  }
  return slips;
}
