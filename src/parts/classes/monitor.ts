import { z } from 'zod';
import { commonFields } from '../common.ts';
import { count, mm, picturePlug, signal, slug, watts } from '../terms.ts';

export const monitor = z.strictObject({
  class: z.literal('monitor'),
  ...commonFields,
  widthPx: count.optional(),
  heightPx: count.optional(),
  refreshHz: count.optional(),
  bitsPerColour: z.union([z.literal(8), z.literal(10)]).optional(),
  sockets: z
    .array(z.strictObject({ id: slug, plug: picturePlug, megabits: count.optional(), signal: signal.optional() }))
    .optional(),
  /** A picture passed on to a second monitor. */
  passesOn: z.strictObject({ plug: picturePlug, megabits: count.optional() }).optional(),
  /** Lines a second, in kilohertz, that its deflection follows: the same twice when it is fixed. */
  horizontalKhz: z.tuple([z.number().positive().max(300), z.number().positive().max(300)]).optional(),
  verticalHz: z.tuple([z.number().positive().max(400), z.number().positive().max(400)]).optional(),
  /** Holes for an arm at the back: 75 or 100 mm apart. */
  armHolesMm: z.array(z.union([z.literal(75), z.literal(100), z.literal(200)])).optional(),
  footWidthMm: mm.optional(),
  footDepthMm: mm.optional(),
  /** The mains it runs on. */
  mains: z.strictObject({ fromVolts: count, toVolts: count }).optional(),
  /** True when its mains lead goes into the outlet of an older supply as well as into the wall. */
  fitsSupplyOutlet: z.boolean().optional(),
  diagonalInch: z.number().positive().max(60).optional(),
  sustainedW: watts.optional(),
});
export type Monitor = z.infer<typeof monitor>;
