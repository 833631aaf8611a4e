/** An operating system, and what it asks of the machine. */
import { z } from 'zod';
import { commonFields } from '../common.ts';
import { bootMode, count, diskette, slug } from '../terms.ts';

export const operatingSystem = z.strictObject({
  class: z.literal('operating-system'),
  ...commonFields,
  bootModes: z.array(bootMode).optional(),
  /** The instruction level it is built for. */
  level: slug.optional(),
  memoryMb: count.optional(),
  storageMb: count.optional(),
  needsSecurityModule: z.boolean().optional(),
  /** What it comes on, when that is diskettes. */
  comesOn: diskette.optional(),
  /** Drivers that it brings. */
  drivers: z.array(slug).optional(),
  /** The largest disk it can divide up, in gigabytes; absent when there is none that matters. */
  largestDiskGb: count.optional(),
});
export type OperatingSystem = z.infer<typeof operatingSystem>;
