/** Shapes of the files that no room of the core has a schema for. */
import { z } from 'zod';
import { slug } from '../../parts/terms.ts';

const words = z.string().min(1);

export const source = z.strictObject({
  id: slug,
  title: words,
  publisher: words,
  kind: z.enum(['standard', 'maker', 'practice', 'invented']),
  where: words.exactOptional(),
});

export const course = z.strictObject({
  id: slug,
  title: words,
  place: words,
  revision: words,
  invented: words,
  evenings: z
    .array(
      z.strictObject({
        n: z.number().int().positive(),
        title: words,
        date: z.iso.date(),
        does: words,
        elevation: z.enum(['monitor', 'drawers', 'board', 'case', 'meter', 'desk']),
        lessons: z.array(words),
        procedure: slug.exactOptional(),
        until: slug.exactOptional(),
      }),
    )
    .min(1),
});

/** What a lesson says of itself before its text begins. */
export const lessonFront = z.strictObject({
  title: words,
  sheet: z
    .string()
    .regex(/^\d+\.\d+$/)
    .describe('a sheet number in quotes, such as "2.1"'),
  lead: words,
  minutes: z.number().int().positive(),
});

/** A parts list with a name, which lessons, job cards and tests point at. */
export const workedBuild = z.strictObject({
  id: slug,
  title: words,
  says: words,
  list: z.array(z.strictObject({ part: slug, quantity: z.number().int().positive().max(99) })).min(1),
});
