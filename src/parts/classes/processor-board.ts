/** A processor on a small board of its own, plugged in to make an older machine faster. */
import { z } from 'zod';
import { commonFields } from '../common.ts';
import { count, mm, slug, watts } from '../terms.ts';

export const processorBoard = z.strictObject({
  class: z.literal('processor-board'),
  ...commonFields,
  /** The processor socket it is plugged into, in place of the processor. */
  socket: slug.optional(),
  /** The family that the board's firmware meets. */
  family: slug.optional(),
  /** Room above the board. */
  heightMm: mm.optional(),
  sustainedW: watts.optional(),
  clockMhz: z.number().positive().max(1000).optional(),
  levels: z.array(slug).optional(),
  /** True when the old processor stays in another socket and is switched off. */
  leavesProcessorIn: z.boolean().optional(),
  processingPoints: count.optional(),
});
export type ProcessorBoard = z.infer<typeof processorBoard>;
