/** A memory module of about 1990, put in by whole banks. */
import { z } from 'zod';
import { commonFields } from '../common.ts';
import { count } from '../terms.ts';

export const bankModule = z.strictObject({
  class: z.literal('bank-module'),
  ...commonFields,
  pins: z.enum(['30', '72', 'sipp-30']).optional(),
  capacityKb: count.optional(),
  /** Width of its data, in bits, without parity: 8 or 32. */
  dataBits: z.union([z.literal(8), z.literal(32)]).optional(),
  hasParity: z.boolean().optional(),
  /** Access time. */
  nanoseconds: count.optional(),
});
export type BankModule = z.infer<typeof bankModule>;
