import type { Hookup, Joint, Problem } from '../model.ts';
import { type Bench, jointId, layOut } from './bench.ts';
import { charged, chargeJoints, clearCharges } from './charge.ts';
import { divide } from './components.ts';
import { costOf } from './cost.ts';
import { isAbsent } from './joints.ts';
import { sortInPlace } from './order.ts';
import type { Candidate, Seeker } from './records.ts';
import { settles } from './settle.ts';
import { search } from './tree.ts';
import { Trial } from './trial.ts';

/** What was laid out last, and the hookup found for it. */
let latest: { hookup: Hookup; bench: Bench } | undefined;

/**
 * The best hookup of a problem: the least cost, and among equals the first in order. The order of
 * needs, places and resources in the problem changes nothing.
 *
 * What is read from a need, place or resource is kept for as long as that object is: the same objects
 * are found again quickly, and must not change. Joints may be the same objects from hookup to hookup, and
 * must not change either.
 *
 * `stepLimit` holds for each component, 20,000 when absent. Where it is reached the hookup is one that
 * can be made, but `proved` is false, and `stopped` lists the needs left over for want of steps.
 *
 * Throws a RangeError that names the fault when a need id or a way of a place is repeated, when a
 * meter names a resource nobody declared, or when an amount is not a whole number from 0 up.
 */
export function findHookup(problem: Problem, { stepLimit = 20_000 }: { stepLimit?: number } = {}): Hookup {
  latest = undefined;
  const bench = layOut(problem);
  const { seekers } = bench;
  const unproved: Seeker[] = [];
  let steps = 0;
  for (const component of divide(bench)) {
    if (settles(component)) continue;
    const result = search(new Trial(component), stepLimit);
    steps += result.steps;
    if (!result.proved) unproved.push(...component);
  }
  const proved = unproved.length === 0;
  if (!proved) unproved.push(...undoStranded(seekers));

  const byId = [...seekers];
  sortInPlace(byId, (a, b) => a.turn.at < b.turn.at);
  const joints: Joint[] = [];
  const left: Seeker[] = [];
  for (const seeker of byId) {
    if (seeker.placed) joints.push(joint(seeker, seeker.placed));
    else left.push(seeker);
  }
  chargeJoints(seekers);
  const cost = costOf(seekers);
  const used = usedOf();
  clearCharges();
  const hookup: Hookup = { joints, left: left.map(({ need }) => need), cost, used, steps, proved };
  if (!proved) hookup.stopped = left.filter((one) => unproved.includes(one)).map(({ need }) => need.id);
  latest = { hookup, bench };
  return hookup;
}

/** The bench of a hookup, laid out and divided: the latest if that is it. */
export function benchOf(problem: Problem, hookup: Hookup): Bench {
  if (latest?.hookup === hookup) return latest.bench;
  latest = undefined;
  const bench = layOut(problem);
  divide(bench);
  latest = { hookup, bench };
  return bench;
}

/** A need that is joined where it was last has the same joint, so that its id is made once. */
function joint(seeker: Seeker, { way: { place }, unknown }: Candidate): Joint {
  const { need, joint: last } = seeker;
  const { id, way } = place;
  if (last && last.place === id && last.way === way && last.unknown === unknown) return last;
  const made = { id: jointId(need, place), kind: need.kind, need: need.id, place: id, unknown };
  seeker.joint = way === undefined ? made : { ...made, way };
  return seeker.joint;
}

/** By resource, in the order of ids. */
function usedOf(): Hookup['used'] {
  const stores = [...charged];
  sortInPlace(stores, (a, b) => a.turn.at < b.turn.at);
  const used: Hookup['used'] = new Map();
  for (const store of stores) used.set(store.id, store.used);
  return used;
}

/**
 * A component cut short may have left over a need that others were sure to hang on. Undoes their
 * joints, whole places at a time, and returns the needs.
 */
function undoStranded(seekers: readonly Seeker[]): Seeker[] {
  const undone: Seeker[] = [];
  for (let isDone = false; !isDone; ) {
    const stranded = seekers.find(({ placed }) => placed && isAbsent(placed.way))?.placed;
    isDone = !stranded;
    for (const seeker of seekers) {
      if (!stranded || seeker.placed?.way !== stranded.way) continue;
      seeker.placed = null;
      undone.push(seeker);
    }
  }
  return undone;
}
