import type { Bench, Mate, Seeker, Store, Way } from './bench.ts';
import { type Candidate, findCandidates } from './candidates.ts';

/** What is settled before any search, and the independent problems that are left. */
export type Division = {
  /** By need; empty for a spare that could serve nobody. */
  candidates: readonly (readonly Candidate[])[];
  /** Resources that the needs could overdraw between them. */
  binding: ReadonlySet<Store>;
  /** Fixed needs are joined, those without a candidate are null, the others undefined. */
  placed: (Mate | null | undefined)[];
  /** Numbers of needs, each list in order. */
  components: readonly (readonly number[])[];
};

type Draft = Omit<Division, 'components'> & {
  bench: Bench;
  /** By spot, the needs that have a candidate there. */
  wanters: readonly ReadonlySet<number>[];
};

export function divide(bench: Bench): Division {
  const candidates = withoutIdleSpares(bench, findCandidates(bench));
  const wanters = bench.spots.map(() => new Set<number>());
  for (const [index, open] of candidates.entries()) for (const { way } of open) wanters[way.spot]?.add(index);
  const binding = findBinding(bench, candidates);
  const placed: Division['placed'] = candidates.map((open) => (open.length === 0 ? null : undefined));
  const draft: Draft = { bench, candidates, binding, placed, wanters };

  const fixed = candidates.map((open, index) => (isFixed(draft, index) ? open[0] : undefined));
  for (const [index, candidate] of fixed.entries()) if (candidate) placed[index] = candidate;
  const certain = candidates.map((_, index) => isCertain(draft, index));
  return { candidates, binding, placed, components: group(draft, certain) };
}

const binds = ({ binding }: Draft, { most }: Candidate, isRefused?: 'refused'): boolean =>
  [...most.keys()].some((store) => binding.has(store) && !(isRefused && store.lost));

const isOpen = ({ placed }: Draft, index: number): boolean => placed[index] === undefined;

/** Has one place that nobody else wants and that costs nobody anything. */
function isFixed(draft: Draft, index: number): boolean {
  const { bench, candidates, wanters } = draft;
  const [only, another] = candidates[index] ?? [];
  if (!only || another || bench.seekers[index]?.need.left === 'spare') return false;
  const { spot, after, fill } = only.way;
  const isUncontested = wanters[spot]?.size === 1 && after.length === 0 && fill === 1 && !binds(draft, only);
  return isUncontested && !couldUnseat(bench, candidates, index);
}

/**
 * Whatever the others have, a place is left for it, so what waits for it need not be solved with it: a
 * best hookup joins it, or it stands. No loop runs through it, as its own places wait for nothing open.
 */
function isCertain(draft: Draft, index: number): boolean {
  const { bench, candidates, wanters } = draft;
  if (!isOpen(draft, index) || bench.seekers[index]?.need.left === 'spare') return false;
  const open = candidates[index] ?? [];
  const isSafe = ({ fill, after }: Way) => fill === 1 && !after.some((above) => isOpen(draft, above));
  if (!open.every((candidate) => isSafe(candidate.way) && !binds(draft, candidate, 'refused'))) return false;
  const spots = new Set(open.map(({ way }) => way.spot));
  const rivals = new Set([...spots].flatMap((spot) => [...(wanters[spot] ?? [])]));
  return spots.size >= rivals.size;
}

/**
 * Needs are solved together when they want one place, when both can touch one binding resource, or
 * when one can hang on the other, unless that one is certain and passes on nothing that binds.
 */
function group(draft: Draft, certain: readonly boolean[]): number[][] {
  const { bench, candidates, binding, wanters } = draft;
  const groups = new Groups(bench.seekers.length);
  for (const [first, ...others] of wanters.map((set) => [...set])) {
    for (const other of others) if (first !== undefined) groups.join(first, other);
  }
  const drawers = new Map<Store, number>();
  for (const [index, open] of candidates.entries()) {
    if (!isOpen(draft, index)) continue;
    for (const candidate of open) {
      for (const above of candidate.way.after) {
        if (isOpen(draft, above) && !certain[above]) groups.join(index, above);
      }
      if (!binds(draft, candidate)) continue;
      for (const above of candidate.through) if (isOpen(draft, above)) groups.join(index, above);
      for (const store of candidate.most.keys()) {
        if (!binding.has(store)) continue;
        groups.join(index, drawers.get(store) ?? index);
        drawers.set(store, index);
      }
    }
  }
  return groups.list((index) => isOpen(draft, index));
}

/** The needs that places in reach of these needs wait for, however far up. */
function above(candidates: readonly (readonly Candidate[])[], from: Iterable<number>): Set<number> {
  const found = new Set<number>();
  const queue = [...from];
  for (let index = queue.pop(); index !== undefined; index = queue.pop()) {
    for (const { way } of candidates[index] ?? []) {
      for (const next of way.after) if (found.size < found.add(next).size) queue.push(next);
    }
  }
  return found;
}

/** A spare on which no other need can hang, and which can help to fill no place, stays in its bag. */
function withoutIdleSpares({ seekers }: Bench, candidates: readonly Candidate[][]): Candidate[][] {
  const isSpare = ({ need }: Seeker) => need.left === 'spare' && !need.stands;
  if (!seekers.some(isSpare)) return [...candidates];
  const earning = seekers.filter((one) => !isSpare(one) || candidates[one.index]?.some(({ way }) => way.fill > 1));
  const numbers = earning.map(({ index }) => index);
  const useful = new Set([...numbers, ...above(candidates, numbers)]);
  return candidates.map((open, index) => (useful.has(index) ? open : []));
}

/**
 * Whether joining a need that stands and carries could cost another standing need its joint: draws
 * that went nowhere while it stood would be metered above it. Then joining it is not surely best.
 */
function couldUnseat({ seekers }: Bench, candidates: readonly (readonly Candidate[])[], index: number): boolean {
  const need = seekers[index]?.need;
  if (!need?.stands || !need.carries) return false;
  return seekers.some(
    (other) => other.need.stands && other.index !== index && above(candidates, [other.index]).has(index),
  );
}

/**
 * A resource cannot bind when the most that all needs, or all places, could put on it stays within
 * its capacity: each need has one joint, and each place takes as many as its `fill`.
 */
function findBinding({ seekers, spots, stores }: Bench, candidates: readonly (readonly Candidate[])[]): Set<Store> {
  const byNeed = sumOfMost(stores, seekers.length);
  const bySpot = sumOfMost(stores, spots.length);
  for (const [index, open] of candidates.entries()) {
    for (const { way, most } of open) {
      for (const [store, amount] of most) {
        byNeed.raise(index, store, amount);
        bySpot.raise(way.spot, store, amount * way.fill);
      }
    }
  }
  return new Set(stores.filter((store) => Math.min(byNeed.sum(store), bySpot.sum(store)) > store.capacity));
}

/** Sums, by resource, the most that each of several could put on it. */
function sumOfMost(stores: readonly Store[], count: number) {
  const most = new Float64Array(stores.length * count);
  const sums = new Float64Array(stores.length);
  return {
    raise(one: number, { index }: Store, amount: number): void {
      const at = index * count + one;
      const more = amount - (most[at] as number);
      if (more <= 0) return;
      most[at] = amount;
      sums[index] = (sums[index] as number) + more;
    },
    sum: ({ index }: Store): number => sums[index] as number,
  };
}

/** Numbers in groups that can be joined. */
class Groups {
  readonly #parent: number[];

  constructor(count: number) {
    this.#parent = Array.from({ length: count }, (_, index) => index);
  }

  #root(index: number): number {
    let root = index;
    for (let up = this.#parent[root]; up !== undefined && up !== root; up = this.#parent[root]) root = up;
    this.#parent[index] = root;
    return root;
  }

  join(a: number, b: number): void {
    this.#parent[this.#root(a)] = this.#root(b);
  }

  /** The groups of the numbers that pass, each in order, by their first number. */
  list(passes: (index: number) => boolean): number[][] {
    const groups = new Map<number, number[]>();
    for (const index of this.#parent.keys()) {
      if (!passes(index)) continue;
      const root = this.#root(index);
      const group = groups.get(root);
      if (group) group.push(index);
      else groups.set(root, [index]);
    }
    return [...groups.values()];
  }
}
