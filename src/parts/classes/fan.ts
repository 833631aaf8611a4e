import { z } from 'zod';
import { commonFields } from '../common.ts';
import { count, mm } from '../terms.ts';

export const fan = z.strictObject({
  class: z.literal('fan'),
  ...commonFields,
  sizeMm: count.optional(),
  thicknessMm: mm.optional(),
  pins: z.union([z.literal(3), z.literal(4)]).optional(),
  milliamps: count.optional(),
  /** Cubic metres an hour with nothing in the way. */
  airflowM3h: count.optional(),
});
export type Fan = z.infer<typeof fan>;
