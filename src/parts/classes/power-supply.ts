import { z } from 'zod';
import { commonFields } from '../common.ts';
import { count, mm, slug, supplyPlug, supplyShape, watts } from '../terms.ts';

export const powerSupply = z.strictObject({
  class: z.literal('power-supply'),
  ...commonFields,
  shape: supplyShape.optional(),
  /** Into the case, without its leads. */
  lengthMm: mm.optional(),
  ratedW: watts.optional(),
  /** One entry a lead: the plugs along it, nearest the supply first, and what the whole lead carries. */
  leads: z
    .array(
      z.strictObject({
        id: slug,
        plugs: z.array(supplyPlug).min(1),
        carriesW: watts.optional(),
        /** What the sense pins of a 12V-2x6 plug announce: 150, 300, 450 or 600. */
        senseW: z.union([z.literal(150), z.literal(300), z.literal(450), z.literal(600)]).optional(),
        lengthMm: mm.optional(),
      }),
    )
    .optional(),
  hasSwitch: z.boolean().optional(),
  /** What each rail gives. */
  rails: z
    .array(z.strictObject({ id: z.enum(['3.3v', '5v', '12v', '-12v', '-5v', '5vsb']), milliamps: count }))
    .optional(),
  /** 3.3 V and 5 V together. */
  combinedLowW: watts.optional(),
  /** True when it bears the excursions of the design guide's table; false when nothing is promised beyond its rating. */
  bearsExcursions: z.boolean().optional(),
  /** Efficiency at parts of the rated load, in tenths of a percent, by load in percent. */
  efficiency: z.array(z.strictObject({ loadPercent: count, permille: z.number().int().min(1).max(1000) })).optional(),
  mains: z
    .strictObject({
      fromVolts: count,
      toVolts: count,
      /** Two ranges and a switch at the back; the range above is the upper one. */
      switchesTo: z.strictObject({ fromVolts: count, toVolts: count }).optional(),
    })
    .optional(),
  /** An outlet at the back for a monitor. */
  hasMonitorOutlet: z.boolean().optional(),
  soundDb: z.number().positive().max(100).optional(),
});
export type PowerSupply = z.infer<typeof powerSupply>;
