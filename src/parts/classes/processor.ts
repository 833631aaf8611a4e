import { z } from 'zod';
import { commonFields } from '../common.ts';
import { count, slug, watts } from '../terms.ts';

export const processor = z.strictObject({
  class: z.literal('processor'),
  ...commonFields,
  socket: slug.optional(),
  /** The family a board's firmware must know, such as `quellin-2`. */
  family: slug.optional(),
  cores: count.optional(),
  /** Heat and power under steady load. */
  sustainedW: watts.optional(),
  /** Power in a burst of seconds. */
  peakW: watts.optional(),
  hasGraphics: z.boolean().optional(),
  /** The class's own trial: how much work in a minute. Compared only with other processors. */
  processingPoints: count.optional(),
});
export type Processor = z.infer<typeof processor>;
