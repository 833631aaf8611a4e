import type { WhyLeft } from '../model.ts';
import type { Bench, Mate, Store } from './bench.ts';
import { takeAll } from './charge.ts';
import { divide } from './components.ts';
import { compareIds } from './order.ts';

/**
 * For a need left over, the needs that cannot all be served and the places they could have. Whatever
 * a rival could take, the needs that have it or draw on it are rivals too, and so are those that hang
 * on a rival: were there a way to serve all of them, it could be put in place of what they have.
 */
export function findRivals(bench: Bench, joined: readonly (Mate | null)[]) {
  const { seekers, spots } = bench;
  const { candidates, binding } = divide(bench);
  const sitting = new Map<number, number[]>();
  const hanging = new Map<number, number[]>();
  const drawing = new Map<Store, number[]>();
  const note = <K>(notes: Map<K, number[]>, key: K, index: number) =>
    notes.set(key, [...(notes.get(key) ?? []), index]);
  for (const seeker of seekers) {
    const mate = joined[seeker.index];
    if (!mate) continue;
    note(sitting, mate.way.spot, seeker.index);
    for (const above of mate.way.after) note(hanging, above, seeker.index);
    for (const store of takeAll(bench, joined, [seeker]).keys()) note(drawing, store, seeker.index);
  }

  return (first: number): Pick<WhyLeft, 'rivals' | 'places'> => {
    const rivals = new Set<number>();
    const places = new Set<number>();
    const queue = [first];
    for (let index = queue.pop(); index !== undefined; index = queue.pop()) {
      const seeker = seekers[index];
      if (!seeker || rivals.has(index)) continue;
      rivals.add(index);
      queue.push(...(hanging.get(index) ?? []));
      for (const { way } of seeker.mates) {
        places.add(way.spot);
        queue.push(...way.after, ...(sitting.get(way.spot) ?? []));
      }
      for (const { most } of candidates[index] ?? []) {
        for (const store of most.keys()) {
          queue.push(...store.sharers);
          if (binding.has(store) && !store.lost) queue.push(...(drawing.get(store) ?? []));
        }
      }
    }
    return {
      rivals: [...rivals].map((index) => seekers[index]?.need.id ?? '').sort(compareIds),
      places: [...places].map((spot) => spots[spot]?.[0]?.place.id ?? '').sort(compareIds),
    };
  };
}
