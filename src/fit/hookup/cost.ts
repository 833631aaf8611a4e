import type { Hookup, Need } from '../model.ts';
import type { Bench, Store } from './bench.ts';
import type { Candidate } from './candidates.ts';
import type { Placed } from './charge.ts';

/** The levels of a hookup's cost, from the left. */
export const levels = [
  'standing left',
  'hazards left',
  'blockers left',
  'limits left',
  'notes left',
  'provisional joints',
  'loss',
  'spares joined',
  'rank',
] as const;
const [provisional, loss, spares, rank] = [5, 6, 7, 8] as const;

/** The level at which a need left over counts; none for a spare. */
function levelLeft({ stands, left }: Need): number | undefined {
  if (stands) return 0;
  return { hazard: 1, blocker: 2, limit: 3, note: 4, spare: undefined }[left];
}

/** Costs of one component packed into one number each, the vector's order kept. */
export type Scale = {
  left(need: Need): number;
  /** Without loss. */
  join(need: Need, candidate: Candidate): number;
  loss: number;
};

/**
 * Each level gets as much room as the component could reach. Throws a RangeError when that is more
 * than whole numbers hold; the bounds of the search need sums of four packed costs.
 */
export function packCosts(needs: readonly Need[], candidates: readonly (readonly Candidate[])[]): Scale {
  const reach = levels.map(() => 0);
  const raise = (level: number | undefined, by: number) => {
    if (level !== undefined) reach[level] = (reach[level] ?? 0) + by;
  };
  for (const [index, need] of needs.entries()) {
    const open = candidates[index] ?? [];
    raise(levelLeft(need), 1);
    if (need.left === 'spare') raise(spares, 1);
    if (open.some(({ unknown }) => unknown)) raise(provisional, 1);
    raise(rank, Math.max(0, ...open.map(({ way }) => way.place.rank)));
    raise(loss, Math.max(0, ...open.map(({ most }) => sumOf([...most].map(([store, n]) => (store.lost ? n : 0))))));
  }
  const weights = levels.map(() => 0);
  let room = 1;
  for (let level = levels.length - 1; level >= 0; level -= 1) {
    weights[level] = room;
    room *= 1 + (reach[level] ?? 0);
  }
  if (room > Number.MAX_SAFE_INTEGER / 4) throw new RangeError(`Costs of ${needs.length} needs do not fit one number`);

  const weight = (level: number | undefined) => (level === undefined ? 0 : (weights[level] ?? 0));
  return {
    left: (need) => weight(levelLeft(need)),
    join: (need, { unknown, way }) =>
      (unknown ? weight(provisional) : 0) + (need.left === 'spare' ? weight(spares) : 0) + way.place.rank,
    loss: weight(loss),
  };
}

const sumOf = (amounts: readonly number[]) => amounts.reduce((sum, amount) => sum + amount, 0);

/** The cost of a whole hookup, level by level. */
export function costOf(bench: Bench, placed: Placed, used: ReadonlyMap<Store, number>): Hookup['cost'] {
  const cost = levels.map(() => 0);
  const add = (level: number | undefined, by: number) => {
    if (level !== undefined) cost[level] = (cost[level] ?? 0) + by;
  };
  for (const { index, need } of bench.seekers) {
    const joined = placed[index];
    if (!joined) add(levelLeft(need), 1);
    else {
      if (joined.unknown) add(provisional, 1);
      if (need.left === 'spare') add(spares, 1);
      add(rank, joined.way.place.rank);
    }
  }
  for (const [store, amount] of used) if (store.lost) add(loss, Math.max(0, amount - store.capacity));
  return cost;
}
