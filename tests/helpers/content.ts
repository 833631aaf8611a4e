/** The course as it stands in `content/`, read once. */
import { join } from 'node:path';
import type { Content } from '../../src/content-types.ts';
import type { ChooseExercise } from '../../src/exercises/types.ts';
import { loadContent } from '../../src/tools/load-content.ts';
import { showFault } from '../../src/wording/fault.ts';

const read = loadContent(join(import.meta.dirname, '../../content'));
if (!read.content) throw new Error(read.faults.map(showFault).join('\n'));
export const content: Content = read.content;

/** The first exercise of the choosing kind, whose `answer` is proved to earn full marks by the content check. */
export const choosing = content.exercises.find(
  (exercise): exercise is ChooseExercise & { answer: NonNullable<ChooseExercise['answer']> } =>
    exercise.kind === 'choose' && exercise.answer !== undefined,
) as ChooseExercise & { answer: NonNullable<ChooseExercise['answer']> };
