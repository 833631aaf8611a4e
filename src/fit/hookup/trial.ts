import type { Bench, Mate, Seeker, Store } from './bench.ts';
import type { Candidate } from './candidates.ts';
import { charge } from './charge.ts';
import type { Division } from './components.ts';
import { packCosts } from './cost.ts';
import { sameRecord } from './mating.ts';

/** One thing that can happen to a need: a joint, or to be left over. Costs are packed. */
export type Choice = {
  /** Null: left over. */
  mate: Mate | null;
  /** The place, counted within the component. */
  seat: number;
  /** Without loss. */
  cost: number;
  /** With the loss that it makes whatever else is joined. */
  least: number;
};

/** A component with some of its needs decided. Needs are counted by `row`, in order. */
export class Trial {
  readonly seekers: readonly Seeker[];
  /** By row, in the order in which the need would take them; left over is the last. */
  readonly choices: readonly (readonly Choice[])[];
  /** The nearest alike need before: their joints can be exchanged at no cost. -1 for none. */
  readonly twin: readonly number[];
  /** By seat. */
  readonly fill: readonly number[];
  /** By seat, of the latest `cost()`: how many are joined there, and the first of them. */
  readonly taken: Int32Array;
  readonly holder: Int32Array;

  readonly #bench: Bench;
  readonly #placed: Division['placed'];
  readonly #chosen: (Choice | undefined)[];
  readonly #stores: readonly Store[];
  readonly #used: Float64Array;
  readonly #lossWeight: number;
  readonly #isChained: boolean;
  readonly #isFilled: boolean;

  /** What is decided stands in `placed` too, which must hold the fixed needs. */
  constructor(bench: Bench, { candidates, binding, placed }: Division, component: readonly number[]) {
    this.#bench = bench;
    this.#placed = placed;
    this.seekers = component.map((index) => bench.seekers[index] as Seeker);
    const open = component.map((index) => candidates[index] as readonly Candidate[]);
    const scale = packCosts(
      this.seekers.map(({ need }) => need),
      open,
    );
    const seats = [...new Set(open.flatMap((all) => all.map(({ way }) => way.spot)))];
    const seatOf = new Map(seats.map((spot, seat) => [spot, seat]));
    this.choices = this.seekers.map(({ need }, row) => {
      const joints = (open[row] ?? []).map((candidate): Choice => {
        const cost = scale.join(need, candidate);
        const seat = seatOf.get(candidate.way.spot) ?? -1;
        return { mate: candidate, seat, cost, least: cost + scale.loss * candidate.loss };
      });
      const left = scale.left(need);
      return [...joints, { mate: null, seat: -1, cost: left, least: left }];
    });
    this.twin = this.seekers.map((one, row) =>
      this.seekers.findLastIndex((other, at) => at < row && isAlike(one, other)),
    );
    this.fill = seats.map((spot) => bench.spots[spot]?.[0]?.fill ?? 1);
    this.taken = new Int32Array(seats.length);
    this.holder = new Int32Array(seats.length);
    this.#chosen = component.map(() => undefined);
    this.#stores = [...new Set(open.flatMap((all) => all.flatMap(({ most }) => [...most.keys()])))].filter((store) =>
      binding.has(store),
    );
    this.#used = new Float64Array(bench.stores.length);
    this.#lossWeight = scale.loss;
    this.#isChained = open.some((all) => all.some(({ way }) => way.after.some((index) => component.includes(index))));
    this.#isFilled = this.fill.some((fill) => fill > 1);
  }

  get size(): number {
    return this.seekers.length;
  }

  decide(row: number, choice: Choice | undefined): void {
    this.#chosen[row] = choice;
    this.#placed[(this.seekers[row] as Seeker).index] = choice?.mate;
  }

  decided(): (Choice | undefined)[] {
    return [...this.#chosen];
  }

  /** Whether a place does not exist because a need that it waits for is left over. */
  isAbsent({ way }: Mate): boolean {
    return way.after.some((index) => this.#placed[index] === null && !this.#bench.seekers[index]?.need.stands);
  }

  /** Whether a place could take one more need, seen from the latest `cost()`. */
  hasRoom(row: number, { mate, seat }: Choice): boolean {
    const count = this.taken[seat] as number;
    if (count === 0) return true;
    const holder = this.holder[seat] as number;
    const isSameWay = this.#chosen[holder]?.mate?.way === mate?.way;
    return count < (this.fill[seat] as number) && isSameWay && this.seekers[holder]?.looks === this.seekers[row]?.looks;
  }

  /** What is decided costs this much at least, however it goes on; Infinity when it cannot be. */
  cost(): number {
    this.taken.fill(0);
    let cost = 0;
    for (const [row, choice] of this.#chosen.entries()) {
      if (!choice) continue;
      cost += choice.cost;
      if (!choice.mate) continue;
      if (this.isAbsent(choice.mate) || !this.hasRoom(row, choice)) return Infinity;
      if (this.taken[choice.seat] === 0) this.holder[choice.seat] = row;
      this.taken[choice.seat] = (this.taken[choice.seat] as number) + 1;
    }
    if (this.#isFilled && !this.#canFill()) return Infinity;
    if (this.#isChained && this.#hasLoop()) return Infinity;
    return this.#stores.length === 0 ? cost : cost + this.#lossWeight * this.#overdraw();
  }

  /** Whether the needs that are still open could fill every place that has been begun. */
  #canFill(): boolean {
    return this.taken.every((count, seat) => {
      const missing = count === 0 ? 0 : (this.fill[seat] as number) - count;
      if (missing === 0) return true;
      const looks = this.seekers[this.holder[seat] as number]?.looks;
      return this.seekers.filter((seeker, row) => seeker.looks === looks && !this.#chosen[row]).length >= missing;
    });
  }

  #hasLoop(): boolean {
    const isClear = new Map<number, boolean>();
    const loops = (index: number): boolean => {
      const known = isClear.get(index);
      if (known !== undefined) return !known;
      isClear.set(index, false);
      if (this.#placed[index]?.way.after.some(loops)) return true;
      isClear.set(index, true);
      return false;
    };
    return this.seekers.some(({ index }) => loops(index));
  }

  /** The loss so far; Infinity when a refused resource is overdrawn. */
  #overdraw(): number {
    const used = this.#used.fill(0);
    const take = ({ index }: Store, amount: number) => {
      used[index] = (used[index] as number) + amount;
    };
    for (const [row, choice] of this.#chosen.entries()) {
      if (!choice?.mate) continue;
      const { way } = choice.mate;
      charge(this.#bench, this.#placed, way, (this.seekers[row] as Seeker).draws, take);
      if (this.holder[choice.seat] === row) charge(this.#bench, this.#placed, way, way.draws, take);
    }
    let loss = 0;
    for (const { index, capacity, lost } of this.#stores) {
      const over = (used[index] as number) - capacity;
      if (over > 0 && !lost) return Infinity;
      if (over > 0) loss += over;
    }
    return loss;
  }
}

/** Alike needs on which nothing hangs can be exchanged. */
const isAlike = (a: Seeker, b: Seeker): boolean =>
  a.looks === b.looks &&
  !a.awaited &&
  !b.awaited &&
  a.need.left === b.need.left &&
  a.need.stands === b.need.stands &&
  sameRecord(a.need.draws, b.need.draws);
