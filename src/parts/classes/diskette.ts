/** A box of diskettes: what somebody's files are on, or must be put on. */
import { z } from 'zod';
import { commonFields } from '../common.ts';
import { diskette } from '../terms.ts';

export const diskettePart = z.strictObject({
  class: z.literal('diskette'),
  ...commonFields,
  format: diskette.optional(),
});
export type Diskette = z.infer<typeof diskettePart>;
