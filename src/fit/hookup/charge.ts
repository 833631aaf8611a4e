import type { Draw, Row, Seeker, Store, Way } from './records.ts';

/**
 * What is charged stands in the `used` of each store, and the stores charged in `charged`, in the
 * order in which they were met, until `clearCharges`.
 */
export const charged: Store[] = [];

export function clearCharges(): void {
  for (let store = charged.pop(); store; store = charged.pop()) store.used = 0;
}

export function rowOf({ rows }: Way, quantity: number): Row | undefined {
  for (const row of rows) if (row.quantity === quantity) return row;
  return undefined;
}

function take(store: Store, amount: number): void {
  if (store.used === 0) charged.push(store);
  store.used += amount;
}

/** A refused resource passes on what it took, a lost one at most its capacity. */
const passed = (store: Store, taken: number) => (store.lost && taken > store.capacity ? store.capacity : taken);

/**
 * Charges draws that meet a way. A row fills each resource to its capacity in turn; the last takes the
 * rest. What is taken is passed on under the resource's local name, an unmetered quantity under its
 * own, through every need the way waits for that carries that name, in equal shares rounded up, to
 * whatever that need is joined to. There must be no loop among the joints.
 */
export function charge(way: Way, draws: readonly Draw[]): void {
  for (const { quantity, amount } of draws) flow(way, quantity, amount, true);
}

/** Charges draws that meet a way at that way alone. */
export function chargeThere(way: Way, draws: readonly Draw[]): void {
  for (const { quantity, amount } of draws) flow(way, quantity, amount, false);
}

function flow(way: Way, quantity: number, amount: number, isPassedOn: boolean): void {
  const row = rowOf(way, quantity);
  const goesOn = isPassedOn && way.above.length > 0;
  if (!row) {
    if (goesOn) passOn(way, quantity, amount);
    return;
  }
  const { stores } = row;
  const last = stores.length - 1;
  let rest = amount;
  for (let at = 0; at <= last && rest > 0; at += 1) {
    const store = stores[at] as Store;
    const taken = at === last || rest < store.capacity ? rest : store.capacity;
    if (taken === 0) continue;
    take(store, taken);
    rest -= taken;
    if (goesOn) passOn(way, store.local, passed(store, taken));
  }
}

function passOn(way: Way, name: number, amount: number): void {
  let count = 0;
  for (const above of way.above) if (above?.carries.includes(name)) count += 1;
  if (count === 0) return;
  const share = Math.ceil(amount / count);
  for (const above of way.above) {
    if (above?.placed && above.carries.includes(name)) flow(above.placed.way, name, share, true);
  }
}

let walk = 0;

/** A new mark, for one walk over needs or places. */
export function newMark(): number {
  walk += 1;
  return walk;
}

/** Charges the joints of these needs. A place's own draws are charged once. */
export function chargeJoints(seekers: readonly Seeker[]): void {
  const mark = newMark();
  for (const { placed, draws } of seekers) {
    if (!placed) continue;
    const { way } = placed;
    if (draws.length > 0) charge(way, draws);
    if (way.draws.length > 0 && way.spot.mark !== mark) {
      way.spot.mark = mark;
      charge(way, way.draws);
    }
  }
}
