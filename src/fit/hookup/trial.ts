import { packCosts } from './cost.ts';
import { hasLoop, isAbsent, lossOf } from './joints.ts';
import type { Candidate, Seeker, Spot } from './records.ts';

/** One thing that can happen to a need: a joint, or to be left over. Costs are packed. */
export type Choice = {
  /** Null: left over. */
  readonly mate: Candidate | null;
  /** Where it stands among the choices of its need. */
  readonly index: number;
  /** The place, counted within the component; -1 for none. */
  readonly seat: number;
  /** Without loss. */
  readonly cost: number;
  /** With the loss that it makes whatever else is joined. */
  readonly least: number;
};

/** A component with some of its needs decided. Needs are counted by `row`, in order. */
export class Trial {
  readonly seekers: readonly Seeker[];
  readonly size: number;
  /** By row, in the order in which the need would take them; left over is the last. */
  readonly choices: readonly (readonly Choice[])[];
  /** The nearest alike need before: their joints can be exchanged at no cost. -1 for none. */
  readonly twin: readonly number[];
  /** By seat. */
  readonly spots: readonly Spot[];
  /** By seat, of the latest `cost()`: how many are joined there, and the first of them. */
  readonly taken: number[];
  readonly holder: number[];
  /** By row. */
  readonly chosen: (Choice | undefined)[];

  readonly #lossWeight: number;
  readonly #isBound: boolean;
  readonly #isWaiting: boolean;
  readonly #isFilled: boolean;

  /** What is decided stands in `placed` of its needs too. */
  constructor(seekers: readonly Seeker[]) {
    this.seekers = seekers;
    this.size = seekers.length;
    const scale = packCosts(seekers);
    const spots: Spot[] = [];
    let isBound = false;
    let isWaiting = false;
    for (const { open } of seekers) {
      for (const { way, stores } of open) {
        if (spots[way.spot.seat] !== way.spot) way.spot.seat = spots.push(way.spot) - 1;
        isBound ||= stores.some((store) => store.binds);
        isWaiting ||= way.above.some((above) => above && seekers.includes(above));
      }
    }
    this.choices = seekers.map((seeker) => {
      const all: Choice[] = seeker.open.map((mate, index) => {
        const cost = scale.join(seeker, mate);
        return { mate, index, seat: mate.way.spot.seat, cost, least: cost + scale.loss * mate.loss };
      });
      const left = scale.left(seeker);
      all.push({ mate: null, index: all.length, seat: -1, cost: left, least: left });
      return all;
    });
    this.twin = seekers.map((one, row) => seekers.findLastIndex((other, at) => at < row && isAlike(one, other)));
    this.spots = spots;
    this.taken = spots.map(() => 0);
    this.holder = spots.map(() => -1);
    this.chosen = seekers.map(() => undefined);
    this.#lossWeight = scale.loss;
    this.#isBound = isBound;
    this.#isWaiting = isWaiting;
    this.#isFilled = spots.some(({ fill }) => fill > 1);
  }

  decide(row: number, choice: Choice | undefined): void {
    this.chosen[row] = choice;
    (this.seekers[row] as Seeker).placed = choice?.mate;
  }

  decided(): Choice[] {
    return this.chosen.filter((choice) => choice !== undefined);
  }

  decideAll(choices: readonly Choice[]): void {
    for (const [row, choice] of choices.entries()) this.decide(row, choice);
  }

  /** Alike needs take their choices in order: a need none before that of its twin. */
  firstChoice(row: number): number {
    return this.chosen[this.twin[row] as number]?.index ?? 0;
  }

  /** Whether a place could take one more need, seen from the latest `cost()`. */
  hasRoom(row: number, { mate, seat }: Choice): boolean {
    const count = this.taken[seat] as number;
    if (count === 0) return true;
    const holder = this.holder[seat] as number;
    return (
      count < (this.spots[seat] as Spot).fill &&
      this.chosen[holder]?.mate?.way === mate?.way &&
      this.seekers[holder]?.look === this.seekers[row]?.look
    );
  }

  /** What is decided costs this much at least, however it goes on; Infinity when it cannot be. */
  cost(): number {
    this.taken.fill(0);
    let cost = 0;
    for (let row = 0; row < this.size; row += 1) {
      const choice = this.chosen[row];
      if (!choice) continue;
      cost += choice.cost;
      if (!choice.mate) continue;
      if (isAbsent(choice.mate.way) || !this.hasRoom(row, choice)) return Infinity;
      if (this.taken[choice.seat] === 0) this.holder[choice.seat] = row;
      this.taken[choice.seat] = (this.taken[choice.seat] as number) + 1;
    }
    if (this.#isFilled && !this.#canFill()) return Infinity;
    if (this.#isWaiting && hasLoop(this.seekers)) return Infinity;
    // No loss and no weight would make Infinity times 0.
    const loss = this.#isBound ? lossOf(this.seekers) : 0;
    return loss === Infinity ? Infinity : cost + this.#lossWeight * loss;
  }

  /** Whether the needs that are still open could fill every place that has been begun. */
  #canFill(): boolean {
    return this.taken.every((count, seat) => {
      const missing = count === 0 ? 0 : (this.spots[seat] as Spot).fill - count;
      if (missing === 0) return true;
      const look = this.seekers[this.holder[seat] as number]?.look;
      return this.seekers.filter((seeker, row) => seeker.look === look && !this.chosen[row]).length >= missing;
    });
  }
}

/** Alike needs on which nothing hangs can be exchanged. */
const isAlike = (a: Seeker, b: Seeker): boolean =>
  a.look === b.look &&
  !a.awaited &&
  !b.awaited &&
  a.need.left === b.need.left &&
  a.need.stands === b.need.stands &&
  a.drawn === b.drawn;
