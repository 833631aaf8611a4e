import { z } from 'zod';
import { commonFields } from '../common.ts';
import { count, fanPins, lightPlug, mm } from '../terms.ts';

export const fan = z.strictObject({
  class: z.literal('fan'),
  ...commonFields,
  sizeMm: count.optional(),
  thicknessMm: mm.optional(),
  pins: fanPins.optional(),
  milliamps: count.optional(),
  /** Cubic metres an hour with nothing in the way. */
  airflowM3h: count.optional(),
  /** At full speed, at one metre. */
  soundDb: z.number().positive().max(100).optional(),
  light: z.strictObject({ plug: lightPlug, milliamps: count }).optional(),
});
export type Fan = z.infer<typeof fan>;
