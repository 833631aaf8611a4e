import { z } from 'zod';
import { commonFields } from '../common.ts';
import { count, formFactor, frontPlug, memoryGeneration, mm, picturePlug, powerPlug, slug, watts } from '../terms.ts';

export const motherboard = z.strictObject({
  class: z.literal('motherboard'),
  ...commonFields,
  formFactor: formFactor.optional(),
  /** From the edge with the ports towards the front of the case. Drawn; never judged. */
  depthMm: mm.optional(),
  /** Along the edge with the ports. Drawn; never judged. */
  heightMm: mm.optional(),
  socket: slug.optional(),
  coolerMountings: z.array(slug).optional(),
  /** The most a processor may draw steadily through this board's power stage. */
  processorPowerW: watts.optional(),
  firmware: z
    .strictObject({
      /** Version on the board as sold. */
      shipped: count,
      /** Families of processor it can start, each with the first version that knows it. */
      knows: z.array(z.strictObject({ family: slug, from: count })),
      /** True when firmware can be written without a processor in the socket. */
      updatesWithoutProcessor: z.boolean().optional(),
    })
    .optional(),
  memory: z
    .strictObject({
      generation: memoryGeneration.optional(),
      /** In the maker's order of filling: the first is filled first. */
      slots: z.array(z.strictObject({ id: slug, channel: slug })),
      moduleGb: count.optional(),
      totalGb: count.optional(),
      speedMts: count.optional(),
      registered: z.boolean().optional(),
    })
    .optional(),
  /** From the processor outwards; `position` counts case cut-outs, 1 at the top. */
  expansionSlots: z
    .array(
      z.strictObject({
        id: slug,
        position: count,
        /** How wide a card goes in, in lanes. */
        lengthLanes: count,
        /** How many lanes are wired. */
        lanes: count,
        generation: count,
      }),
    )
    .optional(),
  moduleSlots: z
    .array(
      z.strictObject({
        id: slug,
        key: z.enum(['m', 'b']),
        lengthsMm: z.array(count),
        links: z.array(z.enum(['pcie', 'sata'])),
        lanes: count,
        generation: count,
        /** Data ports that go dead while this slot is used, such as `sata-4`. */
        switchesOff: z.array(slug).optional(),
      }),
    )
    .optional(),
  /** Numbered from 1: `sata-1`, `sata-2`, … */
  sataPorts: z.number().int().min(0).max(16).optional(),
  /** Sockets for power leads; the first processor socket must be used, the second is spare for heavy loads. */
  powerSockets: z.array(powerPlug).optional(),
  /** The first is the one marked for the processor's cooler. */
  fanHeaders: z
    .array(z.strictObject({ id: slug, pins: z.union([z.literal(3), z.literal(4)]), milliamps: count }))
    .optional(),
  frontPins: z.array(frontPlug).optional(),
  pictureSockets: z.array(z.strictObject({ id: slug, plug: picturePlug, megabits: count.optional() })).optional(),
});
export type Motherboard = z.infer<typeof motherboard>;
