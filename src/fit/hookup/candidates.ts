import type { Quantity } from '../model.ts';
import type { Bench, Draw, Mate, Seeker, Store, Way } from './bench.ts';
import { carriers, charge } from './charge.ts';

/** A mate that some hookup could use. */
export type Candidate = Mate & {
  /** Loss that this joint makes at its own place whatever else is joined. */
  loss: number;
  /** The most this joint could put on each resource, wherever the needs above it are joined. */
  most: ReadonlyMap<Store, number>;
  /** Needs that what is drawn here may pass through. */
  through: ReadonlySet<number>;
};

/**
 * By need. Left out are places that wait for a need which can be joined nowhere, and joints that
 * would overdraw a refused resource on their own.
 */
export function findCandidates(bench: Bench): Candidate[][] {
  const open = bench.seekers.map((seeker) => seeker.mates.filter((mate) => !overdraws(bench, seeker, mate)));
  const canExist = ({ way }: Mate) =>
    way.after.every((index) => bench.seekers[index]?.need.stands || (open[index]?.length ?? 0) > 0);
  for (let changed = true; changed; ) {
    changed = false;
    for (const [index, mates] of open.entries()) {
      const left = mates.filter(canExist);
      if (left.length === mates.length) continue;
      open[index] = left;
      changed = true;
    }
  }
  return bench.seekers.map((seeker, index) => (open[index] ?? []).map((mate) => weigh(bench, open, seeker, mate)));
}

/** What one joint takes at its own place. */
function takesThere(bench: Bench, { way }: Mate, draws: readonly Draw[]): Map<Store, number> {
  const taken = new Map<Store, number>();
  charge(bench, [], way, draws, (store, amount) => taken.set(store, (taken.get(store) ?? 0) + amount));
  return taken;
}

const overdraws = (bench: Bench, seeker: Seeker, mate: Mate): boolean =>
  [...takesThere(bench, mate, [...seeker.draws, ...mate.way.draws])].some(
    ([store, amount]) => !store.lost && amount > store.capacity,
  );

const nothing: ReadonlyMap<Store, number> = new Map();
const nobody: ReadonlySet<number> = new Set();

function weigh(bench: Bench, open: readonly Mate[][], seeker: Seeker, mate: Mate): Candidate {
  const { way } = mate;
  const draws = [...seeker.draws, ...way.draws];
  if (draws.length === 0) return { ...mate, loss: 0, most: nothing, through: nobody };

  const most = takesThere(bench, mate, draws);
  // What a place with `fill` draws is shared by its needs, so no single joint makes that loss.
  const own = way.fill === 1 ? most : takesThere(bench, mate, seeker.draws);
  let loss = 0;
  for (const [store, amount] of own) if (store.lost) loss += Math.max(0, amount - store.capacity);
  if (way.after.length === 0) return { ...mate, loss, most, through: nobody };

  const { through, bringers, rounding } = climb(bench, open, way, draws);
  const passing = draws.reduce((sum, [, amount]) => sum + amount, rounding);
  for (const [store, needs] of bringers) most.set(store, (most.get(store) ?? 0) + passing * needs.size);
  return { ...mate, loss, most, through };
}

/**
 * Where draws at a way could end up: the needs they may pass through, for each resource the needs
 * that could bring them to it, and how much the rounding up of shares could add.
 */
function climb(bench: Bench, open: readonly Mate[][], start: Way, draws: readonly Draw[]) {
  const through = new Set<number>();
  const bringers = new Map<Store, Set<number>>();
  /** By need, the most pieces that a draw could break into where it is joined. */
  const pieces = new Map<number, number>();
  const seen = new Set<string>();
  let isSplit = false;

  const meet = (bringer: number, way: Way, quantity: Quantity): void => {
    const row = way.rows.get(quantity) ?? [];
    if (bringer >= 0) for (const store of row) bringers.set(store, (bringers.get(store) ?? new Set()).add(bringer));
    const names = row.length > 0 ? row.map(({ local }) => local) : [quantity];
    for (const name of names) {
      const above = carriers(bench, way, name);
      isSplit ||= above.length > 1;
      pieces.set(bringer, Math.max(pieces.get(bringer) ?? 1, names.length * above.length));
      for (const { index } of above) {
        through.add(index);
        const isNew = seen.size < seen.add(`${index} ${name}`).size;
        if (isNew) for (const mate of open[index] ?? []) meet(index, mate.way, name);
      }
    }
  };

  for (const [quantity] of draws) meet(-1, start, quantity);
  const most = [...pieces.values()].reduce((product, count) => product * count, draws.length);
  return { through, bringers, rounding: isSplit ? most : 0 };
}
