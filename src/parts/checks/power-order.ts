import type { Part } from '../part.ts';
import type { SenseCheck } from './check.ts';

/** From the least to the most a part may draw. */
const order = ['idleW', 'sustainedW', 'peakW', 'excursionW'] as const;

const wattsOf = (part: Part, field: (typeof order)[number]): number | undefined =>
  field in part ? (part as Partial<Record<typeof field, number>>)[field] : undefined;

/** A part never draws more when idle than under load, nor more under load than in a burst. */
export const powerOrder: SenseCheck = {
  id: 'power-order',
  check: (parts) =>
    parts.flatMap((part) => {
      const known = order.flatMap((field) => {
        const watts = wattsOf(part, field);
        return watts === undefined ? [] : [{ field, watts }];
      });
      return known.slice(1).flatMap(({ field, watts }, n) => {
        const before = known[n];
        if (!before || watts >= before.watts) return [];
        const expected = `${before.watts} W or more, which is its ${before.field}`;
        return [{ part: part.id, path: [field], actual: `${watts} W`, expected }];
      });
    }),
};
