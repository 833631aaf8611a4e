/** A cable, adapter, splitter, frame or riser: it needs one thing and offers another. */
import { z } from 'zod';
import { commonFields } from '../common.ts';
import { mm, slug } from '../terms.ts';

/** Kinds of joint that an adapter can stand between. */
const kinds = [
  'cooler-mount',
  'expansion-slot',
  'module-slot',
  'drive-data',
  'drive-bay',
  'supply-mount',
  'fan-mount',
  'radiator-mount',
  'board-power',
  'processor-power',
  'card-power',
  'drive-power',
  'fan-header',
  'light-header',
  'front-panel',
  'picture',
  'keyboard',
  'pointer',
  'monitor-mount',
] as const;
const scalar = z.union([z.string(), z.number(), z.boolean()]);
/** A value of an attribute of the kind; null where there is no such limit. */
const attr = z.union([scalar, z.array(z.union([z.string(), z.number()])), z.null()]);
const amount = z.number().int().min(0).max(10_000_000);

export const adapter = z.strictObject({
  class: z.literal('adapter'),
  ...commonFields,
  /** What one would ask for in a shop. */
  form: z.enum(['cable', 'ribbon', 'adapter', 'splitter', 'hub', 'frame', 'riser', 'plate', 'bracket']),
  lengthMm: mm.optional(),
  /** Ends that must be joined to something. */
  ins: z
    .array(
      z.strictObject({
        id: slug,
        kind: z.enum(kinds),
        /** At the end of a picture adapter `dualMode` says whether it needs a dual-mode socket: true, or null for an active one. */
        attrs: z.record(z.string(), attr),
        /** Amounts taken for itself, in the units of the quantity's name. */
        draws: z.record(z.string(), amount).optional(),
        /** Quantities that what is joined beyond draws through this end. */
        carries: z.array(z.string()).optional(),
      }),
    )
    .optional(),
  /** Ends that something may be joined to. Two of one id and unequal `way` are two ways of using one end. */
  outs: z
    .array(
      z.strictObject({
        id: slug,
        way: slug.optional(),
        kind: z.enum(kinds),
        attrs: z.record(z.string(), attr),
        /** Ids of the `ins` without which it is dead; all of them when absent. */
        after: z.array(slug).optional(),
        /** The most of a quantity that passes here. */
        limits: z.record(z.string(), amount).optional(),
      }),
    )
    .optional(),
});
export type Adapter = z.infer<typeof adapter>;
