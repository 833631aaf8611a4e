import type { PartOf } from '../../parts/part.ts';
import type { Lowered, Unit } from '../model.ts';

export function lower({ id, part }: Unit<PartOf<'processor'>>): Lowered {
  return {
    needs: [
      { id: `${id}/socket`, part: id, kind: 'processor-socket', left: 'blocker', attrs: { socket: part.socket } },
      { id: `${id}/cooling`, part: id, kind: 'cooling', left: 'hazard', attrs: {} },
    ],
    places: [],
    resources: [],
    unrecorded: [],
  };
}
