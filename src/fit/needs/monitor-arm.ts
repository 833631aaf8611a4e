import type { PartOf } from '../../parts/part.ts';
import type { Lowered, Unit } from '../model.ts';

/** The arm needs a monitor to carry. */
export function lower({ id, part }: Unit<PartOf<'monitor-arm'>>): Lowered {
  const { holesMm, carriesGrams } = part;
  return {
    needs: [{ id: `${id}/plate`, part: id, kind: 'monitor-mount', left: 'limit', attrs: { holesMm, carriesGrams } }],
    places: [],
    resources: [],
    unrecorded: [],
  };
}
