/** A row of mains sockets at a bench. */
import { z } from 'zod';
import { commonFields } from '../common.ts';
import { count } from '../terms.ts';

export const powerStrip = z.strictObject({
  class: z.literal('power-strip'),
  ...commonFields,
  sockets: count.optional(),
  /** The most that may be drawn through it. */
  ratedW: count.optional(),
});
export type PowerStrip = z.infer<typeof powerStrip>;
