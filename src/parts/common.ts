/** What every part says of itself, whatever its class. */
import { z } from 'zod';
import { count, emissionClass, slug } from './terms.ts';

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
  /** What shops ask, where more than one does. `priceCents` is what a list is reckoned with when no shop is named. */
  offers: z
    .array(
      z.strictObject({
        /** Invented, like every shop here. */
        shop: slug,
        /** The day the price was read. */
        date: z.iso.date(),
        priceCents: z.number().int().positive().max(1_000_000),
        /** For one order from this shop, however many parts. */
        shippingCents: z.number().int().min(0).max(100_000).optional(),
        /** The price holds from so many of the part. 1 when absent. */
        from: count.optional(),
        /** True when sales tax is still to be added. */
        withoutTax: z.boolean().optional(),
      }),
    )
    .optional(),
  /** Of the part alone, without its box. */
  grams: z.number().int().positive().max(100_000).optional(),
  /** Class of the equipment for radio emissions, as its label says. */
  emissionClass: emissionClass.optional(),
  /** True when the part bears an authorisation mark of its own. */
  isAuthorised: z.boolean().optional(),
  /** One sentence a shop assistant would say; shown in the tray. */
  says: z.string().optional(),
  /** For authors: what this part is on the shelf to teach. Never shown to a student. */
  trap: z.string().optional(),
};
