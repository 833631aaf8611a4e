/** A card for a PCIe slot that is not for pictures. */
import { z } from 'zod';
import { commonFields } from '../common.ts';
import { count, mm, powerPlug, slug, watts } from '../terms.ts';
import { dataSockets } from './shared.ts';

export const expansionCard = z.strictObject({
  class: z.literal('expansion-card'),
  ...commonFields,
  role: z.enum(['network', 'storage', 'usb', 'sound', 'capture', 'modules']).optional(),
  lengthMm: mm.optional(),
  heightMm: mm.optional(),
  slotsThick: z.number().positive().max(5).multipleOf(0.5).optional(),
  lanes: count.optional(),
  generation: count.optional(),
  idleW: watts.optional(),
  sustainedW: watts.optional(),
  powerSockets: z.array(powerPlug).optional(),
  /** Sockets for drives that it adds. */
  dataSockets: dataSockets.optional(),
  /** Slots for M.2 drives that it adds. */
  moduleSlots: z
    .array(z.strictObject({ id: slug, lengthsMm: z.array(count), lanes: count, generation: count }))
    .optional(),
  /** What an operating system must bring for it; null when every system can use it as it is. */
  driver: slug.nullable().optional(),
});
export type ExpansionCard = z.infer<typeof expansionCard>;
