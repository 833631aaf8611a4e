import type { PartOf } from '../../parts/part.ts';
import type { Lowered, Unit } from '../model.ts';
import { modeMbps } from './amounts.ts';

/**
 * One need that any of its sockets serves. What its own socket of a plug cannot carry is drawn as `beyond-<plug>`,
 * so that the search prefers the socket that shows the whole mode.
 */
export function lower({ id, part }: Unit<PartOf<'monitor'>>): Lowered {
  const mbps = modeMbps(part);
  const draws: Record<string, number> = mbps === undefined ? {} : { pictureMbps: mbps };
  const best = new Map<string, number | undefined>();
  for (const { plug, megabits } of part.sockets ?? []) {
    const other = best.get(plug);
    if (!best.has(plug)) best.set(plug, megabits);
    else best.set(plug, megabits === undefined || other === undefined ? undefined : Math.max(other, megabits));
  }
  for (const [plug, megabits] of best) {
    if (mbps !== undefined && megabits !== undefined && mbps > megabits) draws[`beyond-${plug}`] = mbps - megabits;
  }
  return {
    needs: [
      {
        id: `${id}/picture`,
        part: id,
        kind: 'picture',
        left: 'blocker',
        attrs: { plugs: part.sockets && [...best.keys()], pictureMbps: mbps },
        draws,
      },
    ],
    places: [],
    resources: [],
    unrecorded: [],
  };
}
