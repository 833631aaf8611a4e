import { z } from 'zod';
import { commonFields } from '../common.ts';
import {
  bootDevice,
  bootMode,
  bus,
  busLine,
  count,
  diskAddressing,
  fanPins,
  formFactor,
  frontPlug,
  lightPlug,
  memoryGeneration,
  mm,
  mountingHole,
  picturePlug,
  powerPlug,
  slug,
  watts,
} from '../terms.ts';
import { dataSockets, inputSockets, memoryBanks, pictureModes } from './shared.ts';

export const motherboard = z.strictObject({
  class: z.literal('motherboard'),
  ...commonFields,
  formFactor: formFactor.optional(),
  /** From the edge with the ports towards the front of the case. Drawn; never judged. */
  depthMm: mm.optional(),
  /** Along the edge with the ports. Drawn; never judged. */
  heightMm: mm.optional(),
  /** Only where they differ from the holes of its form factor. */
  holes: z.array(mountingHole).optional(),
  /** What shows at the back: a row of sockets behind a plate of its own, or one keyboard socket. */
  rearPanel: z.enum(['plate', 'keyboard-hole']).optional(),
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
      bootModes: z.array(bootMode).optional(),
      bootsFrom: z.array(bootDevice).optional(),
      addressing: diskAddressing.optional(),
      /** True when it has a security module of version 2. */
      hasSecurityModule: z.boolean().optional(),
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
      /** True when the board passes on error correction. */
      errorCorrection: z.boolean().optional(),
      millivolts: count.optional(),
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
        /** The slot it shares its lanes with, and how many lanes this one has while that one is used. */
        shares: z.strictObject({ slot: slug, lanes: z.number().int().min(0).max(16) }).optional(),
      }),
    )
    .optional(),
  /** Slots for cards of about 1990, from the supply outwards; `position` counts case cut-outs. */
  busSlots: z.array(z.strictObject({ id: slug, position: count, buses: z.array(bus).min(1) })).optional(),
  /** Lines of the bus that the board keeps for itself. */
  takenLines: z.array(busLine).optional(),
  memoryBanks: memoryBanks.optional(),
  /** All memory that the board can use, in kilobytes. */
  memoryTotalKb: count.optional(),
  /** True when the board stops unless every module has its parity bit. */
  wantsParity: z.boolean().optional(),
  dataBusBits: z.union([z.literal(8), z.literal(16), z.literal(32), z.literal(64)]).optional(),
  /** The socket beside the processor; null when there is none. */
  coprocessorSocket: slug.nullable().optional(),
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
  fanHeaders: z.array(z.strictObject({ id: slug, pins: fanPins, milliamps: count })).optional(),
  /** Sockets for data other than SATA, such as the two for ribbons on a later board. */
  dataSockets: dataSockets.optional(),
  inputSockets: inputSockets.optional(),
  lightPins: z.array(z.strictObject({ id: slug, plug: lightPlug, milliamps: count })).optional(),
  idleW: watts.optional(),
  frontPins: z.array(frontPlug).optional(),
  pictureSockets: z
    .array(
      z.strictObject({
        id: slug,
        plug: picturePlug,
        megabits: count.optional(),
        isDualMode: z.boolean().optional(),
        /** With a picture chip of about 1990: lines a second and pictures a second of every picture it sends. */
        modes: pictureModes.optional(),
      }),
    )
    .optional(),
  /** True when a chip on the board draws the picture, one at a time, whatever the processor. None when absent. */
  hasPictureChip: z.boolean().optional(),
});
export type Motherboard = z.infer<typeof motherboard>;
