import { z } from 'zod';
import { commonFields } from '../common.ts';
import { count, mm, screw } from '../terms.ts';

export const storageDrive = z.strictObject({
  class: z.literal('storage-drive'),
  ...commonFields,
  /** How it is built: a bare module for a board's slot, or a box for a bay. */
  build: z.enum(['m2', '2.5', '3.5']),
  capacityGb: count.optional(),
  /** Only for `m2`. */
  key: z.enum(['m', 'b', 'b+m']).optional(),
  lengthMm: mm.optional(),
  link: z.enum(['pcie', 'sata']).optional(),
  lanes: count.optional(),
  generation: count.optional(),
  /** Boxes only. */
  heightMm: mm.optional(),
  /** The most it draws, in milliwatts. */
  milliwatts: count.optional(),
  idleMilliwatts: count.optional(),
  screw: screw.optional(),
  /** Bytes from one address to the next: 512 or 4096. */
  sectorBytes: z.union([z.literal(512), z.literal(4096)]).optional(),
  isSolidState: z.boolean().optional(),
});
export type StorageDrive = z.infer<typeof storageDrive>;
