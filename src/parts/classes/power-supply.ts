import { z } from 'zod';
import { commonFields } from '../common.ts';
import { mm, powerPlug, slug, supplyShape, watts } from '../terms.ts';

export const powerSupply = z.strictObject({
  class: z.literal('power-supply'),
  ...commonFields,
  shape: supplyShape.optional(),
  /** Into the case, without its leads. */
  lengthMm: mm.optional(),
  ratedW: watts.optional(),
  /** One entry a lead: the plugs along it, nearest the supply first, and what the whole lead carries. */
  leads: z.array(z.strictObject({ id: slug, plugs: z.array(powerPlug).min(1), carriesW: watts.optional() })).optional(),
  hasSwitch: z.boolean().optional(),
});
export type PowerSupply = z.infer<typeof powerSupply>;
