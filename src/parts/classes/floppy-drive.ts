/** A drive for diskettes. */
import { z } from 'zod';
import { commonFields } from '../common.ts';
import { count, diskette } from '../terms.ts';

export const floppyDrive = z.strictObject({
  class: z.literal('floppy-drive'),
  ...commonFields,
  size: z.enum(['3.5', '5.25']).optional(),
  /** The format it is made for; what else it reads and writes follows from this. */
  format: diskette.optional(),
  plug: z.enum(['floppy-pins', 'floppy-edge']).optional(),
  powerPlug: z.enum(['peripheral-4', 'floppy-4']).optional(),
  milliwatts: count.optional(),
});
export type FloppyDrive = z.infer<typeof floppyDrive>;
