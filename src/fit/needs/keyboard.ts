import type { PartOf } from '../../parts/part.ts';
import type { Lowered, Unit } from '../model.ts';

export function lower({ id, part }: Unit<PartOf<'keyboard'>>): Lowered {
  return {
    needs: [{ id: `${id}/lead`, part: id, kind: 'keyboard', left: 'blocker', attrs: { plug: part.plug } }],
    places: [],
    resources: [],
    unrecorded: [],
  };
}
