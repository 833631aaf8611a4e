import { z } from 'zod';
import { commonFields } from '../common.ts';
import { count, slug, watts } from '../terms.ts';

export const processor = z.strictObject({
  class: z.literal('processor'),
  ...commonFields,
  socket: slug.optional(),
  /** The family a board's firmware must know, such as `quellin-2`. */
  family: slug.optional(),
  cores: count.optional(),
  idleW: watts.optional(),
  /** Heat and power under steady load. */
  sustainedW: watts.optional(),
  /** Power in a burst of seconds. */
  peakW: watts.optional(),
  /** False when it stays cool enough by itself; absent and true both mean that it needs a cooler. */
  needsCooler: z.boolean().optional(),
  /** Width of the data bus at its pins. */
  dataBusBits: z.union([z.literal(8), z.literal(16), z.literal(32), z.literal(64)]).optional(),
  clockMhz: z.number().positive().max(10_000).optional(),
  /** Instruction levels it runs, such as `x86-16`, `x86-32`, `x86-64`, `x86-64-v3`. */
  levels: z.array(slug).optional(),
  /** True when it has a coprocessor of its own. */
  hasCoprocessor: z.boolean().optional(),
  /** True when it can correct errors in memory. */
  correctsMemory: z.boolean().optional(),
  hasGraphics: z.boolean().optional(),
  /** Monitors that its graphics drive at once, whatever number of sockets the board has. */
  heads: count.optional(),
  /** The class's own trial: how much work in a minute. Compared only with other processors. */
  processingPoints: count.optional(),
});
export type Processor = z.infer<typeof processor>;
