import { z } from 'zod';
import { commonFields } from '../common.ts';
import { count, driveBaySize, formFactor, frontPlug, mm, slug, supplyShape } from '../terms.ts';

export const chassis = z.strictObject({
  class: z.literal('chassis'),
  ...commonFields,
  /** Outside measures; drawn to scale. */
  heightMm: mm.optional(),
  depthMm: mm.optional(),
  widthMm: mm.optional(),
  formFactors: z.array(formFactor).optional(),
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
  driveBays: z.array(z.strictObject({ id: slug, sizes: z.array(driveBaySize) })).optional(),
  /** Where fans go. A 120 takes 2 units of a panel, a 140 takes 3. */
  fanPanels: z
    .array(z.strictObject({ id: z.enum(['front', 'rear', 'top']), sizesMm: z.array(count), units: count }))
    .optional(),
  fittedFans: z
    .array(
      z.strictObject({
        id: slug,
        panel: z.enum(['front', 'rear', 'top']),
        sizeMm: count,
        thicknessMm: mm,
        pins: z.union([z.literal(3), z.literal(4)]),
        milliamps: count,
      }),
    )
    .optional(),
  frontLeads: z.array(frontPlug).optional(),
});
export type Chassis = z.infer<typeof chassis>;
