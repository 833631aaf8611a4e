import type { PartOf } from '../../parts/part.ts';
import type { Lowered, Unit } from '../model.ts';

export function lower({ id, part }: Unit<PartOf<'pointer'>>): Lowered {
  return {
    needs: [{ id: `${id}/lead`, part: id, kind: 'pointer', left: 'limit', attrs: { plug: part.plug } }],
    places: [],
    resources: [],
    unrecorded: [],
  };
}
