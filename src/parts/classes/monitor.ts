import { z } from 'zod';
import { commonFields } from '../common.ts';
import { count, picturePlug, slug, watts } from '../terms.ts';

export const monitor = z.strictObject({
  class: z.literal('monitor'),
  ...commonFields,
  widthPx: count.optional(),
  heightPx: count.optional(),
  refreshHz: count.optional(),
  bitsPerColour: z.union([z.literal(8), z.literal(10)]).optional(),
  sockets: z.array(z.strictObject({ id: slug, plug: picturePlug, megabits: count.optional() })).optional(),
  diagonalInch: z.number().positive().max(60).optional(),
  sustainedW: watts.optional(),
});
export type Monitor = z.infer<typeof monitor>;
