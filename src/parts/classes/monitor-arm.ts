/** An arm that carries a monitor over the desk. */
import { z } from 'zod';
import { commonFields } from '../common.ts';
import { count } from '../terms.ts';

export const monitorArm = z.strictObject({
  class: z.literal('monitor-arm'),
  ...commonFields,
  holesMm: z.array(z.union([z.literal(75), z.literal(100), z.literal(200)])).optional(),
  carriesGrams: count.optional(),
});
export type MonitorArm = z.infer<typeof monitorArm>;
