import type { Hookup, Need } from '../model.ts';
import type { Bench, Store } from './bench.ts';
import type { Candidate } from './candidates.ts';
import type { Placed } from './charge.ts';

/** The levels of a hookup's cost, from the left. */
const level = { standing: 0, hazard: 1, blocker: 2, limit: 3, note: 4, provisional: 5, loss: 6, spare: 7, rank: 8 };
const noCost = (): number[] => Object.keys(level).map(() => 0);

/** The level at which a need left over counts; none for a spare. */
const levelLeft = ({ stands, left }: Need): number | undefined =>
  stands ? level.standing : left === 'spare' ? undefined : level[left];

const add = (cost: number[], at: number | undefined, by: number): void => {
  if (at !== undefined) cost[at] = (cost[at] ?? 0) + by;
};

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
  const reach = noCost();
  for (const [index, need] of needs.entries()) {
    const open = candidates[index] ?? [];
    const losses = open.map(({ most }) => sumOf([...most].map(([store, amount]) => (store.lost ? amount : 0))));
    add(reach, levelLeft(need), 1);
    if (need.left === 'spare') add(reach, level.spare, 1);
    if (open.some(({ unknown }) => unknown)) add(reach, level.provisional, 1);
    add(reach, level.loss, Math.max(0, ...losses));
    add(reach, level.rank, Math.max(0, ...open.map(({ way }) => way.place.rank)));
  }
  const weights = noCost();
  let room = 1;
  for (let at = weights.length - 1; at >= 0; at -= 1) {
    weights[at] = room;
    room *= 1 + (reach[at] ?? 0);
  }
  if (room > Number.MAX_SAFE_INTEGER / 4) throw new RangeError(`Costs of ${needs.length} needs do not fit one number`);

  const weight = (at: number | undefined) => (at === undefined ? 0 : (weights[at] ?? 0));
  return {
    left: (need) => weight(levelLeft(need)),
    join: (need, { unknown, way }) =>
      (unknown ? weight(level.provisional) : 0) +
      (need.left === 'spare' ? weight(level.spare) : 0) +
      way.place.rank * weight(level.rank),
    loss: weight(level.loss),
  };
}

const sumOf = (amounts: readonly number[]) => amounts.reduce((sum, amount) => sum + amount, 0);

/** The cost of a whole hookup, level by level. */
export function costOf(bench: Bench, placed: Placed, used: ReadonlyMap<Store, number>): Hookup['cost'] {
  const cost = noCost();
  for (const { index, need } of bench.seekers) {
    const joined = placed[index];
    if (!joined) {
      add(cost, levelLeft(need), 1);
      continue;
    }
    if (joined.unknown) add(cost, level.provisional, 1);
    if (need.left === 'spare') add(cost, level.spare, 1);
    add(cost, level.rank, joined.way.place.rank);
  }
  for (const [store, amount] of used) {
    if (store.lost) add(cost, level.loss, Math.max(0, amount - store.capacity));
  }
  return cost;
}
