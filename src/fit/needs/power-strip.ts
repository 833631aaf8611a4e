import type { PartOf } from '../../parts/part.ts';
import type { Lowered, Place, Unit } from '../model.ts';
import { mainsPlugs, outletFirst } from './mains.ts';

export function lower({ id, part }: Unit<PartOf<'power-strip'>>): Lowered {
  const { sockets } = part;
  return {
    needs: [],
    places: Array.from(
      { length: Math.min(sockets ?? 0, mostSockets) },
      (_, n): Place => ({
        id: `${id}/socket-${n + 1}`,
        part: id,
        kind: 'mains',
        rank: outletFirst + n,
        attrs: { plug: mainsPlugs.wall },
      }),
    ),
    resources: [],
    unrecorded: sockets === undefined ? [{ kind: 'mains', part: id, field: `${id}.sockets`, of: 'places' }] : [],
  };
}

/** More than any bench has. */
const mostSockets = 24;
