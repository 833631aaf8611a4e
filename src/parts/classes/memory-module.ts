import { z } from 'zod';
import { commonFields } from '../common.ts';
import { count, memoryGeneration, mm } from '../terms.ts';

export const memoryModule = z.strictObject({
  class: z.literal('memory-module'),
  ...commonFields,
  generation: memoryGeneration.optional(),
  capacityGb: count.optional(),
  /** Millions of transfers a second, as sold. */
  speedMts: count.optional(),
  heightMm: mm.optional(),
  registered: z.boolean().optional(),
  hasErrorCorrection: z.boolean().optional(),
  millivolts: count.optional(),
});
export type MemoryModule = z.infer<typeof memoryModule>;
