import type { Quantity } from '../model.ts';
import type { Bench, Draw, Mate, Seeker, Store, Way } from './bench.ts';

/** By the number of the need: what it is joined to, null when it is left over, undefined when that is still open. */
export type Placed = readonly (Mate | null | undefined)[];
export type Take = (store: Store, amount: number) => void;

/**
 * Charges draws that meet a way. What is taken is passed on under the resource's local name, an
 * unmetered quantity under its own, through every need the way waits for that carries that name, in
 * equal shares rounded up, to whatever that need is joined to. There must be no loop among the joints.
 */
export function charge(bench: Bench, placed: Placed, way: Way, draws: readonly Draw[], take: Take): void {
  for (const [quantity, amount] of draws) {
    const row = way.rows.get(quantity);
    if (row) {
      fillRow(row, amount, (store, taken) => {
        take(store, taken);
        passOn(bench, placed, way, [store.local, passed(store, taken)], take);
      });
    } else passOn(bench, placed, way, [quantity, amount], take);
  }
}

/** A refused resource passes on what it took, a lost one at most its capacity. */
const passed = (store: Store, taken: number) => (store.lost ? Math.min(taken, store.capacity) : taken);

/** Fills each to its capacity in turn; the last takes the rest. */
function fillRow(row: readonly Store[], amount: number, take: Take): void {
  let rest = amount;
  for (const [index, store] of row.entries()) {
    const taken = index === row.length - 1 ? rest : Math.min(rest, store.capacity);
    if (taken > 0) take(store, taken);
    rest -= taken;
  }
}

function passOn(bench: Bench, placed: Placed, way: Way, [name, amount]: Draw, take: Take): void {
  const through = carriers(bench, way, name);
  const share = Math.ceil(amount / through.length);
  for (const { index } of through) {
    const above = placed[index];
    if (above) charge(bench, placed, above.way, [[name, share]], take);
  }
}

const nobody: readonly Seeker[] = [];

/** The needs through which a way passes on what is drawn under a name. */
export function carriers({ seekers }: Bench, way: Way, name: Quantity): readonly Seeker[] {
  if (way.after.length === 0) return nobody;
  return way.after.flatMap((index) => {
    const seeker = seekers[index];
    return seeker?.need.carries?.includes(name) ? [seeker] : [];
  });
}

/** What the joints of these needs take of each resource. A place's own draws are taken once. */
export function takeAll(bench: Bench, placed: Placed, seekers: readonly Seeker[] = bench.seekers): Map<Store, number> {
  const used = new Map<Store, number>();
  const take = (store: Store, amount: number) => used.set(store, (used.get(store) ?? 0) + amount);
  const spots = new Set<number>();
  for (const { index, draws } of seekers) {
    const joined = placed[index];
    if (!joined) continue;
    const isFirst = spots.size < spots.add(joined.way.spot).size;
    charge(bench, placed, joined.way, isFirst ? [...draws, ...joined.way.draws] : draws, take);
  }
  return used;
}
