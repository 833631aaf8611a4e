import type { PartOf } from '../../parts/part.ts';
import type { Lowered, Place, Unit } from '../model.ts';
import { deciwatts } from './amounts.ts';
import { mainsPlugs, outletFirst } from './mains.ts';

/** What is plugged in adds up; beyond the rating it counts as lost, so the search spreads it over several strips. */
export function lower({ id, part }: Unit<PartOf<'power-strip'>>): Lowered {
  const { sockets, ratedW } = part;
  const load = `${id}/load`;
  return {
    needs: [],
    places: Array.from(
      { length: Math.min(sockets ?? 0, mostSockets) },
      (_, n): Place => ({
        id: n === 0 ? firstSocket(id) : `${id}/socket-${n + 1}`,
        part: id,
        kind: 'mains',
        rank: outletFirst + n,
        attrs: { plug: mainsPlugs.wall },
        ...(ratedW === undefined ? {} : { meters: { wallDeciwatts: [load] } }),
      }),
    ),
    resources: ratedW === undefined ? [] : [{ id: load, capacity: deciwatts(ratedW), over: 'lost' }],
    unrecorded: sockets === undefined ? [{ kind: 'mains', part: id, field: `${id}.sockets`, of: 'places' }] : [],
  };
}

/** It is used before the others of its strip. */
export const firstSocket = (id: string): string => `${id}/socket-1`;

/** More than any bench has. */
const mostSockets = 24;
