import { newMark } from './charge.ts';
import { hasLoop, isAbsent, lossOf } from './joints.ts';
import type { Candidate, Seeker } from './records.ts';

/**
 * Decides a component without a search, if each need can have what is cheapest for it, needs with the
 * same choices taking the cheapest between them, in order. The total of those choices is a bound, and
 * they are the first in the order of ties to reach it; so when all can be had together, at that total,
 * nothing is better.
 */
export function settles(component: readonly Seeker[]): boolean {
  if (pickEach(component) && canAllBeHad(component)) return true;
  for (const seeker of component) seeker.placed = undefined;
  return false;
}

function pickEach(component: readonly Seeker[]): boolean {
  const mark = newMark();
  for (const seeker of component) {
    if (seeker.mark === mark) continue;
    const group = component.length === 1 ? component : component.filter((other) => isSame(seeker, other));
    for (const one of group) one.mark = mark;
    if (!pick(group, seeker)) return false;
  }
  return true;
}

/** Whether two needs have the same choices. */
function isSame(a: Seeker, b: Seeker): boolean {
  if ((a.need.left === 'spare') !== (b.need.left === 'spare') || a.isIdle !== b.isIdle) return false;
  if (a.open.length !== b.open.length) return false;
  if (a.open === b.open) return true;
  for (let at = 0; at < a.open.length; at += 1) {
    const one = a.open[at] as Candidate;
    const other = b.open[at] as Candidate;
    if (one.way !== other.way || one.unknown !== other.unknown || one.loss !== other.loss) return false;
  }
  return true;
}

/** Gives needs with the same choices the cheapest of them, in order; not when it matters which is left over. */
function pick(group: readonly Seeker[], { isIdle, open, level }: Seeker): boolean {
  const picks: number[] = [];
  if (!isIdle) {
    for (const { way } of open) way.spot.taken = 0;
    while (picks.length < group.length) {
      const at = cheapest(open);
      const one = open[at];
      if (!one) break;
      one.way.spot.taken += 1;
      picks.push(at);
    }
    if (picks.length < group.length && group.some((one) => one.level !== level)) return false;
    if (picks.length > 1) picks.sort((a, b) => a - b);
  }
  for (let index = 0; index < group.length; index += 1) {
    (group[index] as Seeker).placed = open[picks[index] ?? -1] ?? null;
  }
  return true;
}

/** The first of the cheapest where there is room; -1 for none. */
function cheapest(open: readonly Candidate[]): number {
  let best = -1;
  for (let at = 0; at < open.length; at += 1) {
    const one = open[at] as Candidate;
    if (one.way.spot.taken >= one.way.fill) continue;
    if (best < 0 || isCheaper(one, open[best] as Candidate)) best = at;
  }
  return best;
}

function isCheaper(a: Candidate, b: Candidate): boolean {
  if (a.unknown !== b.unknown) return b.unknown;
  if (a.loss !== b.loss) return a.loss < b.loss;
  return a.way.rank < b.way.rank;
}

/** Whether the joints picked can all be made, and lose no more together than each by itself. */
function canAllBeHad(component: readonly Seeker[]): boolean {
  let isWaiting = false;
  let isBound = false;
  let loss = 0;
  for (const { placed } of component) if (placed) placed.way.spot.taken = 0;
  for (const seeker of component) {
    const { placed } = seeker;
    if (!placed) continue;
    const { way } = placed;
    const { spot, above, fill } = way;
    if (above.length > 0) {
      if (isAbsent(way)) return false;
      isWaiting = true;
    }
    if (spot.taken === 0) spot.holder = seeker;
    else if (spot.taken === fill || spot.holder?.placed?.way !== way || spot.holder.look !== seeker.look) return false;
    spot.taken += 1;
    loss += placed.loss;
    for (const store of placed.stores) isBound ||= store.binds;
  }
  for (const { placed } of component) if (placed && placed.way.spot.taken < placed.way.fill) return false;
  return !(isWaiting && hasLoop(component)) && !(isBound && lossOf(component) > loss);
}
