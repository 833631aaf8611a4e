import type { PartOf } from '../../parts/part.ts';
import type { Lowered, Unit } from '../model.ts';

export function lower({ id, part }: Unit<PartOf<'processor'>>): Lowered {
  return {
    needs: [
      {
        id: `${id}/socket`,
        part: id,
        kind: 'processor-socket',
        left: 'blocker',
        // A socket takes processors and plug-in boards by one name; each is worded for itself.
        attrs: { socket: part.socket, boardSocket: null },
      },
      ...(part.needsCooler === false
        ? []
        : [{ id: `${id}/cooling`, part: id, kind: 'cooling', left: 'hazard', attrs: {} } as const]),
    ],
    places: [],
    resources: [],
    unrecorded: [],
  };
}
