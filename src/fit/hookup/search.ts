import type { Hookup, Joint, Need, Problem } from '../model.ts';
import { type Bench, jointId, layOut, type Mate, type Seeker } from './bench.ts';
import { takeAll } from './charge.ts';
import { divide } from './components.ts';
import { costOf } from './cost.ts';
import { compareText } from './order.ts';
import { search } from './tree.ts';
import { Trial } from './trial.ts';

/**
 * The best hookup of a problem: the least cost, and among equals the first in order. The order of
 * needs, places and resources in the problem changes nothing.
 *
 * `stepLimit` holds for each component, 20,000 when absent. Where it is reached the hookup is one that
 * can be made, but `proved` is false, and `stopped` lists the needs left over for want of steps.
 *
 * Throws a RangeError that names the fault when a need id or a way of a place is repeated, when a
 * meter names a resource nobody declared, or when an amount is not a whole number from 0 up.
 */
export function findHookup(problem: Problem, { stepLimit = 20_000 }: { stepLimit?: number } = {}): Hookup {
  const bench = layOut(problem);
  const division = divide(bench);
  let steps = 0;
  const unproved: number[] = [];
  for (const component of division.components) {
    const result = search(new Trial(bench, division, component), stepLimit);
    steps += result.steps;
    if (!result.proved) unproved.push(...component);
  }
  const proved = unproved.length === 0;
  if (!proved) unproved.push(...undoStranded(bench, division.placed));

  const byId = bench.seekers.toSorted((a, b) => compareText(a.key, b.key) || compareText(a.need.id, b.need.id));
  const leftOf = (seekers: readonly Seeker[]) => seekers.filter(({ index }) => !division.placed[index]);
  const used = takeAll(bench, division.placed);
  return {
    joints: byId.flatMap(({ index, need }) => joint(need, division.placed[index])),
    left: leftOf(byId).map(({ need }) => need),
    cost: costOf(bench, division.placed, used),
    used: new Map([...used].map(([{ id }, amount]) => [id, amount] as const).sort(([a], [b]) => compareText(a, b))),
    steps,
    proved,
    ...(proved
      ? {}
      : { stopped: leftOf(byId.filter(({ index }) => unproved.includes(index))).map(({ need }) => need.id) }),
  };
}

function joint(need: Need, mate: Mate | null | undefined): Joint[] {
  if (!mate) return [];
  const { place } = mate.way;
  const { id, way } = place;
  return [
    {
      id: jointId(need, place),
      kind: need.kind,
      need: need.id,
      place: id,
      ...(way === undefined ? {} : { way }),
      unknown: mate.unknown,
    },
  ];
}

/**
 * A component cut short may have left over a need that others were sure to hang on. Undoes their
 * joints, whole places at a time, and returns the needs.
 */
function undoStranded({ seekers }: Bench, placed: (Mate | null | undefined)[]): number[] {
  const undone: number[] = [];
  for (let isDone = false; !isDone; ) {
    const stranded = placed.find((mate) =>
      mate?.way.after.some((index) => !placed[index] && !seekers[index]?.need.stands),
    );
    isDone = !stranded;
    for (const [index, mate] of placed.entries()) {
      if (!stranded || mate?.way !== stranded.way) continue;
      placed[index] = null;
      undone.push(index);
    }
  }
  return undone;
}
