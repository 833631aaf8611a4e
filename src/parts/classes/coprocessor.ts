/** A coprocessor for arithmetic, in a socket beside the processor. */
import { z } from 'zod';
import { commonFields } from '../common.ts';
import { slug } from '../terms.ts';

export const coprocessor = z.strictObject({
  class: z.literal('coprocessor'),
  ...commonFields,
  socket: slug.optional(),
  clockMhz: z.number().positive().max(1000).optional(),
});
export type Coprocessor = z.infer<typeof coprocessor>;
