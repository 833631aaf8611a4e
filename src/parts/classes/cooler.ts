import { z } from 'zod';
import { commonFields } from '../common.ts';
import { count, fanPins, lightPlug, mm, slug, watts } from '../terms.ts';

export const cooler = z.strictObject({
  class: z.literal('cooler'),
  ...commonFields,
  mountings: z.array(slug).optional(),
  /** Mountings it fits only with a bracket that is sold apart. */
  bracketsApart: z.array(slug).optional(),
  heightMm: mm.optional(),
  /** Heat it carries away steadily in the maker's test. */
  ratedW: watts.optional(),
  /** The tallest module that goes under the cooler; null when it stands clear of the slots. */
  memoryHeightMm: mm.nullable().optional(),
  fan: z.strictObject({ pins: fanPins, milliamps: count, airflowM3h: count.optional() }).optional(),
  /** True when it has no fan and relies on the air that case fans move. */
  isPassive: z.boolean().optional(),
  soundDb: z.number().positive().max(100).optional(),
  /** With a radiator, the height above is that of the block on the processor. */
  radiator: z
    .strictObject({ lengthMm: count, thicknessMm: mm, fanThicknessMm: mm, fanSizeMm: count, fans: count.max(9) })
    .optional(),
  light: z.strictObject({ plug: lightPlug, milliamps: count }).optional(),
});
export type Cooler = z.infer<typeof cooler>;
