import type { Bench } from './bench.ts';
import type { Seeker, Spot, Store } from './records.ts';

/**
 * Finds the resources that the needs could overdraw between them. A resource cannot bind when the most
 * that all needs, or all places, could put on it stays within its capacity: each need has one joint,
 * and each place takes as many as its `fill`.
 */
export function findBinding({ seekers, stores }: Bench): void {
  for (const store of stores) {
    store.sum = 0;
    store.drawer = undefined;
  }
  for (const seeker of seekers) addMost(seeker);
  let isDoubtful = false;
  for (const store of stores) {
    store.binds = store.sum > store.capacity;
    isDoubtful ||= store.binds;
    store.drawer = undefined;
  }
  if (isDoubtful) compareByPlace(seekers, stores);
}

/** Adds the most that one need could put on each resource. */
function addMost(seeker: Seeker): void {
  for (const candidate of seeker.open) {
    const { stores, amounts } = candidate;
    for (let at = 0; at < stores.length; at += 1) {
      const store = stores[at] as Store;
      const amount = amounts[at] as number;
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

type ByPlace = { store: Store; spots: Spot[]; most: number[]; sum: number };

/** Lets those off that the places could not overdraw. */
function compareByPlace(seekers: readonly Seeker[], all: readonly Store[]): void {
  const sums: ByPlace[] = [];
  for (const store of all) if (store.binds) store.sum = sums.push({ store, spots: [], most: [], sum: 0 }) - 1;
  for (const { open } of seekers) {
    for (const { way, stores, amounts } of open) {
      for (let at = 0; at < stores.length; at += 1) {
        const store = stores[at] as Store;
        if (store.binds) raise(sums[store.sum] as ByPlace, way.spot, (amounts[at] as number) * way.fill);
      }
    }
  }
  for (const { store, sum } of sums) store.binds = sum > store.capacity;
}

function raise(by: ByPlace, spot: Spot, amount: number): void {
  const known = by.spots.indexOf(spot);
  const at = known < 0 ? by.spots.push(spot) - 1 : known;
  const most = by.most[at] ?? 0;
  if (amount <= most) return;
  by.sum += amount - most;
  by.most[at] = amount;
}
