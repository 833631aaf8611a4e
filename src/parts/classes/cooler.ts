import { z } from 'zod';
import { commonFields } from '../common.ts';
import { count, mm, slug, watts } from '../terms.ts';

export const cooler = z.strictObject({
  class: z.literal('cooler'),
  ...commonFields,
  mountings: z.array(slug).optional(),
  heightMm: mm.optional(),
  /** Heat it carries away steadily in the maker's test. */
  ratedW: watts.optional(),
  /** The tallest module that goes under the cooler; null when it stands clear of the slots. */
  memoryHeightMm: mm.nullable().optional(),
  fan: z.strictObject({ pins: z.union([z.literal(3), z.literal(4)]), milliamps: count }).optional(),
});
export type Cooler = z.infer<typeof cooler>;
