/** A fixed disk of about 1990. */
import { z } from 'zod';
import { commonFields } from '../common.ts';
import { count, diskEncoding } from '../terms.ts';

export const fixedDisk = z.strictObject({
  class: z.literal('fixed-disk'),
  ...commonFields,
  size: z.enum(['3.5', '5.25', '5.25-full']).optional(),
  plug: z.enum(['ata-40', 'st506']).optional(),
  /** Millions of bytes. */
  capacityMb: count.optional(),
  cylinders: count.optional(),
  heads: count.optional(),
  sectorsPerTrack: count.optional(),
  encoding: diskEncoding.optional(),
  milliwatts: count.optional(),
  /** What it draws while it starts to turn. */
  spinUpMilliwatts: count.optional(),
});
export type FixedDisk = z.infer<typeof fixedDisk>;
