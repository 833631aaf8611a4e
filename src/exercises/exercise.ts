/** The shape of exercises and what a student hands in. */
import { z } from 'zod';
import { mostOfOne } from '../parts/limits.ts';
import { partClasses } from '../parts/part.ts';
import { slug } from '../parts/terms.ts';

const partClass = z.enum(partClasses as [string, ...string[]]);
const listed = z.strictObject({ part: slug, quantity: z.number().int().positive().max(mostOfOne) });
const marks = z.number().int().positive().max(100);

/**
 * What the person the machine is for asks, about one class of part: the sum of `field` over the parts
 * of the class (for `sum`), or each of them (for `each`), is at least so much.
 */
export const demand = z.strictObject({
  id: slug,
  /** As the person says it: "Room for 40,000 pictures". */
  says: z.string().min(1),
  class: partClass,
  field: z.string().min(1),
  over: z.enum(['sum', 'each']),
  atLeast: z.number().positive(),
  unit: z.string().min(1),
});

export const brief = z.strictObject({
  /** Who it is for, invented: "the harbour museum". */
  for: z.string().min(1),
  /** Two to five sentences: what the machine is for. */
  says: z.string().min(1),
  budgetCents: z.number().int().positive().optional(),
  demands: z.array(demand),
});

export const rubricLine = z.strictObject({
  id: slug,
  says: z.string().min(1),
  marks,
  /** What earns it: no blocker; no hazard; every size known; a demand met; the budget kept; one statement judged right. */
  for: z.union([
    z.enum(['complete', 'fits', 'safe', 'known', 'budget']),
    z.strictObject({ demand: slug }),
    z.strictObject({ statement: slug }),
  ]),
});

const commonExercise = {
  id: slug,
  title: z.string().min(1),
  lesson: z.string().min(1),
  minutes: z.number().int().positive(),
  rubric: z.array(rubricLine).min(1),
};

/** Choose a machine for a brief. `answer` is one list that earns full marks: the proof that it can be done. */
export const chooseExercise = z.strictObject({
  kind: z.literal('choose'),
  ...commonExercise,
  brief,
  /** The procedure that builds what was chosen. */
  procedure: slug,
  shelf: z
    .array(
      z.strictObject({
        position: slug,
        class: partClass,
        parts: z.array(slug).min(1),
        from: z.number().int().min(0),
        to: z.number().int().positive(),
      }),
    )
    .min(1),
  answer: z.array(listed).min(1),
});

/** Find what does not fit in a given list: each statement is judged fits, does not fit or cannot tell. */
export const misfitsExercise = z.strictObject({
  kind: z.literal('misfits'),
  ...commonExercise,
  says: z.string().min(1),
  list: z.array(listed).min(1),
  /** The core's finding for `rule` (about the first unit of class `of`, when given) is the right answer. */
  statements: z
    .array(z.strictObject({ id: slug, says: z.string().min(1), rule: z.string().min(1), of: partClass.optional() }))
    .min(2),
});

export const exercise = z.discriminatedUnion('kind', [chooseExercise, misfitsExercise]);
