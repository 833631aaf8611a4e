import type { Bench } from './bench.ts';
import type { Spot, Store, Way } from './records.ts';

/**
 * Finds the resources that the needs could overdraw between them. A resource cannot bind when the most
 * that all needs, or all places, could put on it stays within its capacity: each need has one joint,
 * and each place takes as many as its `fill`.
 */
export function findBinding({ seekers, stores }: Bench): void {
  for (const store of stores) {
    store.binds = false;
    store.sum = 0;
    store.drawer = undefined;
    store.ways.length = 0;
    store.amounts.length = 0;
  }
  for (const seeker of seekers) {
    for (const candidate of seeker.open) {
      for (let at = 0; at < candidate.stores.length; at += 1) {
        const store = candidate.stores[at] as Store;
        const amount = candidate.amounts[at] as number;
        store.ways.push(candidate.way);
        store.amounts.push(amount);
        if (store.drawer !== seeker) {
          store.drawer = seeker;
          store.most = 0;
        }
        if (amount <= store.most) continue;
        store.sum += amount - store.most;
        store.most = amount;
      }
    }
  }
  for (const store of stores) {
    store.binds = store.sum > store.capacity && mostByPlace(store) > store.capacity;
    store.drawer = undefined;
  }
}

function mostByPlace({ ways, amounts }: Store): number {
  const spots: Spot[] = [];
  const most: number[] = [];
  let sum = 0;
  for (let index = 0; index < ways.length; index += 1) {
    const { spot, fill } = ways[index] as Way;
    const amount = (amounts[index] as number) * fill;
    let at = spots.indexOf(spot);
    if (at < 0) {
      at = spots.push(spot) - 1;
      most.push(0);
    }
    const more = amount - (most[at] as number);
    if (more <= 0) continue;
    sum += more;
    most[at] = amount;
  }
  return sum;
}
