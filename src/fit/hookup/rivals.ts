import type { WhyLeft } from '../model.ts';
import { type Bench, matesOf } from './bench.ts';
import { charged, chargeJoints, clearCharges } from './charge.ts';
import { compareIds } from './order.ts';
import type { Seeker, Spot, Store } from './records.ts';

/**
 * For a need left over, the needs that cannot all be served and the places they could have. Whatever
 * a rival could take, the needs that have it or draw on it are rivals too, and so are those that hang
 * on a rival: were there a way to serve all of them, it could be put in place of what they have.
 * `placed` of the needs must be the hookup.
 */
export function findRivals({ seekers }: Bench) {
  const sitting = new Map<Spot, Seeker[]>();
  const hanging = new Map<Seeker, Seeker[]>();
  const drawing = new Map<Store, Seeker[]>();
  const note = <K>(notes: Map<K, Seeker[]>, key: K, seeker: Seeker) => {
    const known = notes.get(key);
    if (known) known.push(seeker);
    else notes.set(key, [seeker]);
  };
  for (const seeker of seekers) {
    if (!seeker.placed) continue;
    const { way } = seeker.placed;
    note(sitting, way.spot, seeker);
    for (const above of way.above) if (above) note(hanging, above, seeker);
    chargeJoints([seeker]);
    for (const store of charged) note(drawing, store, seeker);
    clearCharges();
  }

  return (first: Seeker): Pick<WhyLeft, 'rivals' | 'places'> => {
    const rivals = new Set<Seeker>();
    const places = new Set<Spot>();
    const queue: (Seeker | undefined)[] = [first];
    while (queue.length > 0) {
      const seeker = queue.pop();
      if (!seeker || rivals.has(seeker)) continue;
      rivals.add(seeker);
      queue.push(...(hanging.get(seeker) ?? []));
      for (const { way } of matesOf(seeker)) {
        places.add(way.spot);
        queue.push(...way.above, ...(sitting.get(way.spot) ?? []));
      }
      for (const { stores } of seeker.open) {
        for (const store of stores) {
          queue.push(...store.sharers);
          if (store.binds && !store.lost) queue.push(...(drawing.get(store) ?? []));
        }
      }
    }
    return {
      rivals: [...rivals].map(({ need }) => need.id).sort(compareIds),
      places: [...places].map(({ ways }) => ways[0]?.place.id ?? '').sort(compareIds),
    };
  };
}
