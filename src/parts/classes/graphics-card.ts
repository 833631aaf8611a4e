import { z } from 'zod';
import { commonFields } from '../common.ts';
import { count, mm, picturePlug, powerPlug, signal, slug, watts } from '../terms.ts';

export const graphicsCard = z.strictObject({
  class: z.literal('graphics-card'),
  ...commonFields,
  /** From the bracket to the far end. */
  lengthMm: mm.optional(),
  /** From the slot's edge of the board outwards, without the bend of the leads. */
  heightMm: mm.optional(),
  /** How many cut-outs' width it takes, in halves: 2, 2.5, 3. */
  slotsThick: z.number().positive().max(5).multipleOf(0.5).optional(),
  lanes: count.optional(),
  generation: count.optional(),
  idleW: watts.optional(),
  sustainedW: watts.optional(),
  /** In a burst of milliseconds. */
  peakW: watts.optional(),
  /** In an excursion of 100 microseconds. */
  excursionW: watts.optional(),
  powerSockets: z.array(powerPlug).optional(),
  /** A DisplayPort socket that is dual-mode also drives a passive adapter to HDMI or DVI. */
  outputs: z
    .array(
      z.strictObject({
        id: slug,
        plug: picturePlug,
        megabits: count.optional(),
        signal: signal.optional(),
        isDualMode: z.boolean().optional(),
      }),
    )
    .optional(),
  /** Monitors that it drives at once, whatever number of sockets it has. */
  heads: count.optional(),
  memoryGb: count.optional(),
  /** The class's own trial: how much drawing in a minute. Compared only with other cards. */
  graphicsPoints: count.optional(),
});
export type GraphicsCard = z.infer<typeof graphicsCard>;
