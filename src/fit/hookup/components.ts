import type { Bench } from './bench.ts';
import { findBinding } from './binding.ts';
import { findCandidates } from './candidates.ts';
import { newMark } from './charge.ts';
import type { Candidate, Seeker } from './records.ts';

/**
 * Settles what needs no search and gives the independent problems that are left, each a list of needs
 * in order. A need that is fixed is joined, one without a candidate is left over, the others are open.
 */
export function divide(bench: Bench): Seeker[][] {
  const { seekers } = bench;
  findCandidates(bench);
  dropIdleSpares(seekers);
  let places = 0;
  for (const kind of bench.kinds) {
    for (const spot of kind.spots) {
      spot.number = places;
      places += 1;
      spot.wanters = 0;
      spot.latest = undefined;
    }
  }
  for (const seeker of seekers) {
    seeker.placed = seeker.open.length === 0 ? null : undefined;
    seeker.parent = seeker;
    seeker.component = -1;
    seeker.isCertain = false;
    for (const { way } of seeker.open) {
      const { spot } = way;
      if (spot.latest === seeker) continue;
      if (spot.wanters === 0) spot.first = seeker;
      spot.wanters += 1;
      spot.latest = seeker;
    }
  }
  findBinding(bench, places);

  const fixed = seekers.filter((seeker) => isFixed(seekers, seeker));
  for (const seeker of fixed) seeker.placed = seeker.open[0];
  for (const seeker of seekers) if (seeker.awaited) seeker.isCertain = isCertain(seekers, seeker);
  return group(seekers);
}

function binds({ stores }: Candidate): boolean {
  for (const store of stores) if (store.binds) return true;
  return false;
}

const bindsRefused = ({ stores }: Candidate): boolean => stores.some((store) => store.binds && !store.lost);

/** Has one place that nobody else wants and that costs nobody anything. */
function isFixed(seekers: readonly Seeker[], seeker: Seeker): boolean {
  const [only] = seeker.open;
  if (!only || seeker.open.length > 1 || seeker.need.left === 'spare') return false;
  const { spot, above, fill } = only.way;
  const isUncontested = spot.wanters === 1 && above.length === 0 && fill === 1 && !binds(only);
  return isUncontested && !couldUnseat(seekers, seeker);
}

/**
 * Whatever the others have, a place is left for it, so what waits for it need not be solved with it: a
 * best hookup joins it, or it stands. No loop runs through it, as its own places wait for nothing open.
 */
function isCertain(seekers: readonly Seeker[], { placed, open, need }: Seeker): boolean {
  if (placed !== undefined || need.left === 'spare') return false;
  const isSafe = ({ way }: Candidate) => way.fill === 1 && way.above.every((above) => above?.placed !== undefined);
  if (!open.every((candidate) => isSafe(candidate) && !bindsRefused(candidate))) return false;
  const spots = new Set(open.map(({ way }) => way.spot));
  const rivals = seekers.filter((other) => other.open.some(({ way }) => spots.has(way.spot)));
  return spots.size >= rivals.length;
}

/**
 * Needs are solved together when they want one place, when both can touch one binding resource, or
 * when one can hang on the other, unless that one is certain and passes on nothing that binds.
 */
function group(seekers: readonly Seeker[]): Seeker[][] {
  for (const seeker of seekers) {
    if (seeker.placed !== undefined) continue;
    for (const candidate of seeker.open) {
      const { way, stores, through } = candidate;
      const { first } = way.spot;
      if (first && first !== seeker) unite(first, seeker);
      for (const above of way.above) if (above && above.placed === undefined && !above.isCertain) unite(seeker, above);
      if (!binds(candidate)) continue;
      for (const above of through) if (above.placed === undefined) unite(seeker, above);
      for (const store of stores) {
        if (!store.binds) continue;
        if (store.drawer) unite(seeker, store.drawer);
        else store.drawer = seeker;
      }
    }
  }
  const components: Seeker[][] = [];
  for (const seeker of seekers) {
    if (seeker.placed !== undefined) continue;
    const root = rootOf(seeker);
    const known = components[root.component];
    if (known) known.push(seeker);
    else root.component = components.push([seeker]) - 1;
  }
  return components;
}

function rootOf(seeker: Seeker): Seeker {
  let root = seeker;
  while (root.parent !== root) root = root.parent;
  seeker.parent = root;
  return root;
}

function unite(a: Seeker, b: Seeker): void {
  rootOf(a).parent = rootOf(b);
}

/** Marks these needs and those that places in reach of them wait for, however far up. */
function markAbove(from: readonly Seeker[]): number {
  const mark = newMark();
  const queue = [...from];
  for (let seeker = queue.pop(); seeker; seeker = queue.pop()) {
    if (seeker.mark === mark) continue;
    seeker.mark = mark;
    for (const { way } of seeker.open) for (const above of way.above) if (above) queue.push(above);
  }
  return mark;
}

/** A spare on which no other need can hang, and which can help to fill no place, stays in its bag. */
function dropIdleSpares(seekers: readonly Seeker[]): void {
  if (!seekers.some(({ isIdle }) => isIdle)) return;
  const earning = seekers.filter(({ isIdle, open }) => !isIdle || open.some(({ way }) => way.fill > 1));
  const mark = markAbove(earning);
  for (const seeker of seekers) if (seeker.mark !== mark) seeker.open = [];
}

/**
 * Whether joining a need that stands and carries could cost another standing need its joint: draws
 * that went nowhere while it stood would be metered above it. Then joining it is not surely best.
 */
function couldUnseat(seekers: readonly Seeker[], { need, index }: Seeker): boolean {
  if (!need.stands || need.carries === undefined) return false;
  return seekers.some((other) => {
    if (!other.need.stands || other.index === index) return false;
    const mark = markAbove([other]);
    return seekers[index]?.mark === mark;
  });
}
