/** What goes to browsers, and the fingerprint of it. */
import type { Content } from '../../content-types.ts';
import { coreVersion } from '../../fit/judge.ts';
import { digestOf } from '../../units/digest.ts';

type Unsigned = Omit<Content, 'fingerprint'>;

/**
 * The content without what only authors and the check need: what a part is there to teach, the answer that
 * proves an exercise, and where steps stand in their files. Students can read all that their browser gets.
 */
export function forBrowsers<C extends Unsigned>(content: C): C {
  return {
    ...content,
    parts: content.parts.map(({ trap: _, ...part }) => part),
    exercises: content.exercises.map((exercise) => {
      if (exercise.kind !== 'choose') return exercise;
      const { answer: _, ...asked } = exercise;
      return asked;
    }),
    procedures: content.procedures.map((procedure) => ({
      ...procedure,
      steps: procedure.steps.map(({ at: _, ...step }) => step),
    })),
  };
}

/** The same for the whole content and for what browsers get of it, so that logbooks from either side match. */
export const fingerprintOf = (content: Unsigned): string =>
  digestOf({ content: forBrowsers(content), core: coreVersion }).slice(0, 16);
