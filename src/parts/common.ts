/** What every part says of itself, whatever its class. */
import { z } from 'zod';
import { slug } from './terms.ts';

/**
 * `source` says where the numbers of the file come from (an id in `content/sources`);
 * `sources` names another source for single fields. A measure that is not known is left out:
 * never 0, never a guess.
 */
export const commonFields = {
  id: slug,
  name: z.string().min(1),
  maker: z.string().min(1),
  source: slug,
  sources: z.record(z.string(), slug).optional(),
  /** Euro cents, a whole number. */
  priceCents: z.number().int().positive().max(1_000_000).optional(),
  /** One sentence a shop assistant would say; shown in the tray. */
  says: z.string().optional(),
  /** For authors: what this part is on the shelf to teach. Never shown to a student. */
  trap: z.string().optional(),
};
