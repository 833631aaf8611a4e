import type { Hookup, Need } from '../model.ts';
import { charged } from './charge.ts';
import type { Candidate, Seeker } from './records.ts';

/** The levels of a hookup's cost, from the left. */
const level = { standing: 0, hazard: 1, blocker: 2, limit: 3, note: 4, provisional: 5, loss: 6, spare: 7, rank: 8 };
const noCost = (): number[] => [0, 0, 0, 0, 0, 0, 0, 0, 0];

/** The level at which a need left over counts; -1 for a spare. */
export const levelLeft = ({ stands, left }: Need): number =>
  stands ? level.standing : left === 'spare' ? -1 : level[left];

function add(cost: number[], at: number, by: number): void {
  if (at >= 0) cost[at] = (cost[at] as number) + by;
}

/** Costs of one component packed into one number each, the vector's order kept. */
export type Scale = {
  left(seeker: Seeker): number;
  /** Without loss. */
  join(seeker: Seeker, candidate: Candidate): number;
  loss: number;
};

/**
 * Each level gets as much room as the component could reach. Throws a RangeError when that is more
 * than whole numbers hold; the bounds of the search need sums of four packed costs.
 */
export function packCosts(seekers: readonly Seeker[]): Scale {
  const reach = noCost();
  for (const seeker of seekers) {
    let loss = 0;
    let rank = 0;
    let unknown = 0;
    for (const candidate of seeker.open) {
      loss = Math.max(loss, lossReach(candidate));
      rank = Math.max(rank, candidate.way.rank);
      if (candidate.unknown) unknown = 1;
    }
    add(reach, seeker.level, 1);
    if (seeker.need.left === 'spare') add(reach, level.spare, 1);
    add(reach, level.provisional, unknown);
    add(reach, level.loss, loss);
    add(reach, level.rank, rank);
  }
  const weights = noCost();
  let room = 1;
  for (let at = weights.length - 1; at >= 0; at -= 1) {
    weights[at] = room;
    room *= 1 + (reach[at] as number);
  }
  if (room > Number.MAX_SAFE_INTEGER / 4)
    throw new RangeError(`Costs of ${seekers.length} needs do not fit one number`);

  const weight = (at: number): number => weights[at] ?? 0;
  return {
    left: (seeker) => weight(seeker.level),
    join: ({ need }, { unknown, way }) =>
      (unknown ? weight(level.provisional) : 0) +
      (need.left === 'spare' ? weight(level.spare) : 0) +
      way.rank * weight(level.rank),
    loss: weight(level.loss),
  };
}

function lossReach({ stores, amounts }: Candidate): number {
  let sum = 0;
  for (let at = 0; at < stores.length; at += 1) if (stores[at]?.lost) sum += amounts[at] as number;
  return sum;
}

/** The cost of a whole hookup, level by level; its joints must stand charged. */
export function costOf(seekers: readonly Seeker[]): Hookup['cost'] {
  const cost = noCost();
  for (const { placed, level: levelOf, need } of seekers) {
    if (!placed) {
      add(cost, levelOf, 1);
      continue;
    }
    if (placed.unknown) add(cost, level.provisional, 1);
    if (need.left === 'spare') add(cost, level.spare, 1);
    add(cost, level.rank, placed.way.rank);
  }
  for (const { lost, used, capacity } of charged) {
    if (lost && used > capacity) add(cost, level.loss, used - capacity);
  }
  return cost;
}
