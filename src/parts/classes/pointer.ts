/** A mouse or another pointing device. */
import { z } from 'zod';
import { commonFields } from '../common.ts';
import { inputPlug } from '../terms.ts';

export const pointer = z.strictObject({
  class: z.literal('pointer'),
  ...commonFields,
  plug: inputPlug.optional(),
});
export type Pointer = z.infer<typeof pointer>;
