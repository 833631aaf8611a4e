import { z } from 'zod';
import { commonFields } from '../common.ts';
import {
  count,
  driveBaySize,
  fanPins,
  formFactor,
  frontPlug,
  lightPlug,
  mm,
  mountingHole,
  screw,
  slug,
  supplyShape,
} from '../terms.ts';

export const chassis = z.strictObject({
  class: z.literal('chassis'),
  ...commonFields,
  /** Outside measures; drawn to scale. */
  heightMm: mm.optional(),
  depthMm: mm.optional(),
  widthMm: mm.optional(),
  formFactors: z.array(formFactor).optional(),
  /** Standoffs that are in the tray as sold. */
  standoffs: z.array(mountingHole).optional(),
  /** True when every standoff can be taken out or moved. */
  standoffsMove: z.boolean().optional(),
  /** Thread of the screws that go into the standoffs. */
  standoffScrew: screw.optional(),
  /** The opening at the back for the board's own sockets: the plate that comes with a board, or one round hole. */
  rearPanel: z.enum(['plate', 'keyboard-hole']).optional(),
  /** Cut-outs at the back for cards. */
  cutOuts: count.optional(),
  /** From the board to the side panel. */
  coolerHeightMm: mm.optional(),
  /** From the rear bracket to whatever comes first, with no fan at the front. */
  cardLengthMm: mm.optional(),
  /** From the board to the side panel as far as a card may rise. */
  cardHeightMm: mm.optional(),
  /** True when a fan at the front stands in the card's way and takes its thickness off the room. */
  frontFansTakeCardRoom: z.boolean().optional(),
  supplyShape: supplyShape.optional(),
  supplyLengthMm: mm.optional(),
  supplyPlace: z.enum(['bottom', 'top']).optional(),
  driveBays: z
    .array(
      z.strictObject({
        id: slug,
        sizes: z.array(driveBaySize),
        /** The tallest and longest drive it takes. */
        heightMm: mm.optional(),
        depthMm: mm.optional(),
        /** With a drive in it, a supply may be no longer than this. */
        supplyLengthMm: mm.optional(),
        screw: screw.optional(),
      }),
    )
    .optional(),
  /** Where fans go. A 120 takes 2 units of a panel, a 140 takes 3. */
  fanPanels: z
    .array(
      z.strictObject({
        id: z.enum(['front', 'rear', 'top']),
        sizesMm: z.array(count),
        units: count,
        /** Lengths of radiator it takes: 240, 280. None when absent. */
        radiatorsMm: z.array(count).optional(),
        /** From the panel inwards to whatever comes first: a radiator and its fans stand in this. */
        depthMm: mm.optional(),
        /** Over a panel at the top, how tall memory may be beside the stack. */
        memoryHeightMm: mm.optional(),
      }),
    )
    .optional(),
  fittedFans: z
    .array(
      z.strictObject({
        id: slug,
        panel: z.enum(['front', 'rear', 'top']),
        sizeMm: count,
        thicknessMm: mm,
        pins: fanPins,
        milliamps: count,
        airflowM3h: count.optional(),
        soundDb: z.number().positive().max(100).optional(),
      }),
    )
    .optional(),
  frontLeads: z.array(frontPlug).optional(),
  lights: z.array(z.strictObject({ id: slug, plug: lightPlug, milliamps: count })).optional(),
});
export type Chassis = z.infer<typeof chassis>;
