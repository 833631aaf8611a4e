import type { PartOf } from '../../parts/part.ts';
import type { Lowered, Unit } from '../model.ts';

export function lower({ id, part }: Unit<PartOf<'coprocessor'>>): Lowered {
  return {
    needs: [
      { id: `${id}/socket`, part: id, kind: 'coprocessor-socket', left: 'blocker', attrs: { socket: part.socket } },
    ],
    places: [],
    resources: [],
    unrecorded: [],
  };
}
