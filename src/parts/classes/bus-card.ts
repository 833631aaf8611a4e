/** A card for a slot of about 1990. */
import { z } from 'zod';
import { commonFields } from '../common.ts';
import { bootDevice, bus, busLine, count, mm, slug } from '../terms.ts';
import { dataSockets, inputSockets, memoryBanks, pictureOutputs, settings } from './shared.ts';

export const busCard = z.strictObject({
  class: z.literal('bus-card'),
  ...commonFields,
  /** What it does; one card of about 1990 often does several things. */
  roles: z.array(z.enum(['display', 'disk', 'floppy', 'ports', 'sound', 'network', 'memory'])).optional(),
  /** The slots it works in. A 16-bit card that also works in a short slot lists `isa-16-short` as well. */
  buses: z.array(bus).min(1).optional(),
  lengthMm: mm.optional(),
  heightMm: mm.optional(),
  /** What it draws at 5 V and at 12 V. */
  milliamps5v: count.optional(),
  milliamps12v: count.optional(),
  outputs: pictureOutputs.optional(),
  dataSockets: dataSockets.optional(),
  inputSockets: inputSockets.optional(),
  /** Jumpers. Lines that no jumper moves stand in `lines`. */
  settings: settings.optional(),
  lines: z.array(busLine).optional(),
  memoryBanks: memoryBanks.optional(),
  /** What its own firmware lets the machine start from. */
  bootsFrom: z.array(bootDevice).optional(),
  /** What an operating system must bring for it; null when every system can use it as it is. */
  driver: slug.nullable().optional(),
});
export type BusCard = z.infer<typeof busCard>;
