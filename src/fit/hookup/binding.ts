import type { Bench } from './bench.ts';
import type { Candidate, Seeker, Store } from './records.ts';

/**
 * Finds the resources that the needs could overdraw between them. A resource cannot bind when the most
 * that all needs, or all places, could put on it stays within its capacity: each need has one joint,
 * and each place takes as many as its `fill`. The places are numbered, so many of them.
 */
export function findBinding({ seekers, stores }: Bench, places: number): void {
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
  if (isDoubtful) compareByPlace(seekers, stores, places);
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

/** By doubtful resource and place, the most that one need could put on it there. */
let mostThere = new Float64Array(0);

/** Lets those off that the places could not overdraw. */
function compareByPlace(seekers: readonly Seeker[], stores: readonly Store[], places: number): void {
  let doubtful = 0;
  for (const store of stores) {
    if (!store.binds) continue;
    store.sum = 0;
    store.row = doubtful * places;
    doubtful += 1;
  }
  if (mostThere.length < doubtful * places) mostThere = new Float64Array(2 * doubtful * places);
  mostThere.fill(0, 0, doubtful * places);
  for (const { open } of seekers) for (const candidate of open) addThere(candidate);
  for (const store of stores) store.binds &&= store.sum > store.capacity;
}

function addThere({ way, stores, amounts }: Candidate): void {
  for (let index = 0; index < stores.length; index += 1) {
    const store = stores[index] as Store;
    if (!store.binds) continue;
    const at = store.row + way.spot.number;
    const amount = (amounts[index] as number) * way.fill;
    const most = mostThere[at] as number;
    if (amount <= most) continue;
    store.sum += amount - most;
    mostThere[at] = amount;
  }
}
