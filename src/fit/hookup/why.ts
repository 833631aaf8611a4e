import type { Hookup, Kinds, Need, Problem, Reason, WhyLeft } from '../model.ts';
import { type Bench, isOwnOutlet, jointId, layOut, type Mate, type Seeker, type Way } from './bench.ts';
import { takeAll } from './charge.ts';
import { tryTest } from './mating.ts';
import { compareIds } from './order.ts';
import { findRivals } from './rivals.ts';

/** By number of the need. */
type Joined = readonly (Mate | null)[];

/**
 * Why each need of a hookup is left over, spares apart, in the order of `hookup.left`. `hookup` is
 * what `findHookup` gave for this problem. There is one reason for each place of the kind, in the
 * order of places. A need that is waited for is explained once; met again, its reasons are empty.
 *
 * `rivals` and `places`, by id: of the rivals one at least that is no spare stays left over, though
 * all other needs were taken away and all places stayed.
 */
export function whyLeft(problem: Problem, hookup: Hookup): WhyLeft[] {
  const bench = layOut(problem);
  const joints = new Map(hookup.joints.map((joint) => [joint.need, joint]));
  const joined = bench.seekers.map(({ need, mates }) => {
    const joint = joints.get(need.id);
    return mates.find(({ way: { place } }) => place.id === joint?.place && place.way === joint.way) ?? null;
  });
  const rivals = findRivals(bench, joined);
  const explainer = new Explainer(bench, problem.kinds, joined);
  return hookup.left.flatMap((need) => {
    const index = bench.indexOf.get(need.id);
    if (index === undefined || need.left === 'spare') return [];
    const reasons = explainer.explain(index);
    if (hookup.stopped?.includes(need.id)) reasons.push({ why: 'not-proved' });
    return [{ need: need.id, reasons, ...rivals(index) }];
  });
}

class Explainer {
  readonly #bench: Bench;
  readonly #kinds: Kinds;
  readonly #hookup: Joined;

  constructor(bench: Bench, kinds: Kinds, hookup: Joined) {
    this.#bench = bench;
    this.#kinds = kinds;
    this.#hookup = hookup;
  }

  explain(index: number): Reason[] {
    return this.#explain(index, this.#hookup, new Set([index])).reasons;
  }

  /** `joined` is the hookup with what is tried on top of it; `free` a place where nothing is in the way. */
  #explain(index: number, joined: Joined, told: Set<number>): { reasons: Reason[]; free?: Mate } {
    const { need, mates } = this.#seeker(index);
    const spots = this.#bench.spots.filter((ways) => ways[0]?.place.kind === need.kind && !isOwnOutlet(index, ways));
    if (spots.length === 0) return { reasons: [{ why: 'none-offered', kind: need.kind }] };

    const reasons: Reason[] = [];
    let free: Mate | undefined;
    for (const ways of spots) {
      const there = mates.filter(({ way }) => ways.includes(way));
      if (there.length === 0) reasons.push(this.#refusal(need, ways));
      const obstacles = there.map((mate) => this.#obstacle(index, mate, joined, told));
      free ??= there.find((_, way) => !obstacles[way]);
      if (obstacles[0] && obstacles.every(Boolean)) reasons.push(obstacles[0]);
    }
    return free ? { reasons, free } : { reasons };
  }

  #seeker(index: number): Seeker {
    return this.#bench.seekers[index] as Seeker;
  }

  #refusal(need: Need, [way]: readonly Way[]): Reason {
    const { place } = way as Way;
    const test = this.#kinds[need.kind].tests.find((one) => tryTest(one, need.attrs, place.attrs) === 'no');
    if (!test) throw new Error(`${place.id} refuses ${need.id} by no test`);
    return {
      why: 'refused',
      place: place.id,
      test: test.name,
      need: need.attrs[test.need],
      offered: place.attrs[test.place],
    };
  }

  #obstacle(index: number, mate: Mate, joined: Joined, told: Set<number>): Reason | undefined {
    const { way } = mate;
    const { fill, place } = way;
    const { looks } = this.#seeker(index);
    const seekers = this.#bench.seekers;
    const there = seekers.filter((other) => other.index !== index && joined[other.index]?.way.spot === way.spot);
    if (there.length === fill) return { why: 'taken', place: place.id, joints: this.#ids(there, joined) };

    const loop = this.#hangingOn(way, index, joined);
    if (loop) return { why: 'absent', place: place.id, waitsFor: loop.need.id, reasons: [] };

    const others = seekers.filter(
      (other) =>
        other.index !== index &&
        other.looks === looks &&
        !joined[other.index] &&
        other.mates.some((one) => one.way === way) &&
        !this.#hangingOn(way, other.index, joined),
    );
    const alike = others.length + 1;
    if (alike < fill) return { why: 'too-few-alike', place: place.id, fill, alike };

    const tried = joined.with(index, mate);
    for (const other of others.slice(0, fill - 1)) tried[other.index] = mate;
    return this.#overdraw(index, way, tried) ?? this.#absence(way, tried, told);
  }

  /** The need that a place waits for, when that need is the other or hangs on it, however far up. */
  #hangingOn(way: Way, other: number, joined: Joined): Seeker | undefined {
    const hangs = (index: number): boolean => index === other || (joined[index]?.way.after.some(hangs) ?? false);
    return this.#bench.seekers[way.after.find(hangs) ?? -1];
  }

  /** The first resource that the joint would overdraw, nearest to its place first. */
  #overdraw(index: number, { place }: Way, tried: Joined): Reason | undefined {
    const seekers = this.#bench.seekers;
    const used = takeAll(this.#bench, tried, [
      this.#seeker(index),
      ...seekers.filter((other) => other.index !== index),
    ]);
    for (const [{ id, capacity, lost }, wanted] of used) {
      if (lost || wanted <= capacity) continue;
      const drawing = seekers.filter((other) => this.#hookup[other.index] && draws(this.#bench, tried, other, id));
      return { why: 'spent', place: place.id, resource: id, capacity, wanted, joints: this.#ids(drawing) };
    }
    return undefined;
  }

  /** The first need waited for that has itself no place, those before it tried where they could be. */
  #absence({ place, after }: Way, tried: Joined, told: Set<number>): Reason | undefined {
    let here = tried;
    let missing: string | undefined;
    for (const [position, index] of after.entries()) {
      const id = place.after?.[position] ?? '';
      const above = this.#bench.seekers[index];
      if (above && (here[index] || above.need.stands)) continue;
      missing ??= id;
      const isTold = !above || told.size === told.add(index).size;
      const { reasons, free } = isTold ? { reasons: [] } : this.#explain(index, here, told);
      if (!free) return { why: 'absent', place: place.id, waitsFor: id, reasons };
      here = here.with(index, free);
    }
    return missing === undefined ? undefined : { why: 'absent', place: place.id, waitsFor: missing, reasons: [] };
  }

  #ids(seekers: readonly Seeker[], joined: Joined = this.#hookup): string[] {
    const ids = seekers.flatMap(({ index, need }) => {
      const mate = joined[index];
      return mate ? [jointId(need, mate.way.place)] : [];
    });
    return ids.sort(compareIds);
  }
}

const draws = (bench: Bench, joined: Joined, seeker: Seeker, resource: string): boolean =>
  [...takeAll(bench, joined, [seeker]).keys()].some(({ id }) => id === resource);
