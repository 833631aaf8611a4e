/** A keyboard. */
import { z } from 'zod';
import { commonFields } from '../common.ts';
import { inputPlug } from '../terms.ts';

export const keyboard = z.strictObject({
  class: z.literal('keyboard'),
  ...commonFields,
  plug: inputPlug.optional(),
});
export type Keyboard = z.infer<typeof keyboard>;
