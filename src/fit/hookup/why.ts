import type { Hookup, Need, Problem, Reason, WhyLeft } from '../model.ts';
import { type Bench, isOwnOutlet, jointId, matesOf } from './bench.ts';
import { charged, chargeJoints, clearCharges } from './charge.ts';
import { tryTest } from './mating.ts';
import { compareIds } from './order.ts';
import type { Candidate, Seeker, Store, Way } from './records.ts';
import { findRivals } from './rivals.ts';
import { benchOf } from './search.ts';

/** By need, what is joined: a hookup, or one with something tried on top of it. */
type Joined = ReadonlyMap<Seeker, Candidate>;

/**
 * Why each need of a hookup is left over, spares apart, in the order of `hookup.left`. `hookup` is
 * what `findHookup` gave for this problem; asked right after it, the search's set-up is used again.
 * There is one reason for each place of the kind, in the order of places. A need that is waited for is
 * explained once; met again, its reasons are empty.
 *
 * `rivals` and `places`, by id: of the rivals one at least that is no spare stays left over, though
 * all other needs were taken away and all places stayed.
 */
export function whyLeft(problem: Problem, hookup: Hookup): WhyLeft[] {
  const left = new Set(hookup.left.flatMap(({ id, left }) => (left === 'spare' ? [] : [id])));
  if (left.size === 0) return [];
  const bench = benchOf(problem, hookup);
  const joints = new Map(hookup.joints.map((joint) => [joint.need, joint]));
  const joined = new Map<Seeker, Candidate>();
  for (const seeker of bench.seekers) {
    const joint = joints.get(seeker.need.id);
    const mate =
      joint && matesOf(seeker).find(({ way: { place } }) => place.id === joint.place && place.way === joint.way);
    if (mate) joined.set(seeker, mate);
  }
  put(bench, joined);
  const rivals = findRivals(bench);
  const explainer = new Explainer(bench, joined);
  const seekerOf = new Map(bench.seekers.map((seeker) => [seeker.need.id, seeker]));
  return [...left].flatMap((need) => {
    const seeker = seekerOf.get(need);
    if (!seeker) return [];
    const reasons = explainer.explain(seeker);
    if (hookup.stopped?.includes(need)) reasons.push({ why: 'not-proved' });
    return [{ need, reasons, ...rivals(seeker) }];
  });
}

/** Makes these the joints of the bench. */
function put({ seekers }: Bench, joined: Joined): void {
  for (const seeker of seekers) seeker.placed = joined.get(seeker) ?? null;
}

class Explainer {
  readonly #bench: Bench;
  readonly #hookup: Joined;

  constructor(bench: Bench, hookup: Joined) {
    this.#bench = bench;
    this.#hookup = hookup;
  }

  explain(seeker: Seeker): Reason[] {
    return this.#explain(seeker, this.#hookup, new Set([seeker])).reasons;
  }

  /** `joined` is the hookup with what is tried on top of it; `free` a place where nothing is in the way. */
  #explain(seeker: Seeker, joined: Joined, told: Set<Seeker>): { reasons: Reason[]; free?: Candidate } {
    const { need, kind } = seeker;
    const mates = matesOf(seeker);
    const spots = kind.spots.filter(({ ways }) => !isOwnOutlet(seeker, ways[0] as Way));
    if (spots.length === 0) return { reasons: [{ why: 'none-offered', kind: need.kind }] };

    const reasons: Reason[] = [];
    let free: Candidate | undefined;
    for (const { ways } of spots) {
      const there = mates.filter(({ way }) => ways.includes(way));
      if (there.length === 0) reasons.push(refusal(need, ways[0] as Way));
      const obstacles = there.map((mate) => this.#obstacle(seeker, mate, joined, told));
      free ??= there.find((_, way) => !obstacles[way]);
      if (obstacles[0] && obstacles.every(Boolean)) reasons.push(obstacles[0]);
    }
    return free ? { reasons, free } : { reasons };
  }

  #obstacle(seeker: Seeker, mate: Candidate, joined: Joined, told: Set<Seeker>): Reason | undefined {
    const { way } = mate;
    const { fill, place } = way;
    const { seekers } = this.#bench;
    const there = seekers.filter((other) => other !== seeker && joined.get(other)?.way.spot === way.spot);
    if (there.length === fill) return { why: 'taken', place: place.id, joints: ids(there, joined) };

    const loop = hangingOn(way, seeker, joined);
    if (loop) return { why: 'absent', place: place.id, waitsFor: loop.need.id, reasons: [] };

    const others = seekers.filter(
      (other) =>
        other !== seeker &&
        other.look === seeker.look &&
        !joined.has(other) &&
        matesOf(other).some((one) => one.way === way) &&
        !hangingOn(way, other, joined),
    );
    const alike = others.length + 1;
    if (alike < fill) return { why: 'too-few-alike', place: place.id, fill, alike };

    const tried = new Map(joined).set(seeker, mate);
    for (const other of others.slice(0, fill - 1)) tried.set(other, mate);
    return this.#overdraw(seeker, way, tried) ?? this.#absence(way, tried, told);
  }

  /** The first resource that the joint would overdraw, nearest to its place first. */
  #overdraw(seeker: Seeker, { place }: Way, tried: Joined): Reason | undefined {
    const { seekers } = this.#bench;
    put(this.#bench, tried);
    chargeJoints([seeker, ...seekers.filter((other) => other !== seeker)]);
    const over = charged.find(({ lost, used, capacity }) => !lost && used > capacity);
    const wanted = over?.used ?? 0;
    clearCharges();
    if (!over) return undefined;
    const drawing = seekers.filter((other) => this.#hookup.has(other) && draws(other, over));
    const { id, capacity } = over;
    return { why: 'spent', place: place.id, resource: id, capacity, wanted, joints: ids(drawing, this.#hookup) };
  }

  /** The first need waited for that has itself no place, those before it tried where they could be. */
  #absence({ place, above }: Way, tried: Joined, told: Set<Seeker>): Reason | undefined {
    let here = tried;
    let missing: string | undefined;
    for (const [position, one] of above.entries()) {
      const id = place.after?.[position] ?? '';
      if (one && (here.has(one) || one.need.stands)) continue;
      missing ??= id;
      const isTold = !one || told.size === told.add(one).size;
      const { reasons, free } = isTold ? { reasons: [] } : this.#explain(one, here, told);
      if (!free) return { why: 'absent', place: place.id, waitsFor: id, reasons };
      here = new Map(here).set(one as Seeker, free);
    }
    return missing === undefined ? undefined : { why: 'absent', place: place.id, waitsFor: missing, reasons: [] };
  }
}

function refusal(need: Need, { place, kind }: Way): Reason {
  const test = kind.tests.find((one) => tryTest(one, need.attrs, place.attrs) === 'no');
  if (!test) throw new Error(`${place.id} refuses ${need.id} by no test`);
  return {
    why: 'refused',
    place: place.id,
    test: test.name,
    need: need.attrs[test.need],
    offered: place.attrs[test.place],
  };
}

/** The need that a place waits for, when that need is the other or hangs on it, however far up. */
function hangingOn(way: Way, other: Seeker, joined: Joined): Seeker | undefined {
  const hangs = (one: Seeker | undefined): boolean =>
    one !== undefined && (one === other || (joined.get(one)?.way.above.some(hangs) ?? false));
  return way.above.find(hangs);
}

function ids(seekers: readonly Seeker[], joined: Joined): string[] {
  const found = seekers.flatMap((seeker) => {
    const mate = joined.get(seeker);
    return mate ? [jointId(seeker.need, mate.way.place)] : [];
  });
  return found.sort(compareIds);
}

/** Whether a need, joined as tried, draws on a resource. */
function draws(seeker: Seeker, store: Store): boolean {
  chargeJoints([seeker]);
  const isDrawing = store.used > 0;
  clearCharges();
  return isDrawing;
}
