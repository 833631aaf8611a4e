import { Assignment } from './assignment.ts';
import { isAbsent } from './joints.ts';
import type { Shortfall } from './shortfall.ts';
import type { Choice, Trial } from './trial.ts';

/** What the needs that are open cost at least, and what each picks then. */
export type Relaxed = {
  value: number;
  /** From the first open need on. */
  picks: readonly Choice[];
  /** What they cost at least when the first of them takes that choice; Infinity when it cannot. */
  values: readonly number[];
};

/**
 * What is left of a trial when nothing but places is scarce: resources, places that wait for an open
 * need, and `fill` as all or none are forgotten. Then each open need takes one free place or is left.
 */
export class Relaxation {
  readonly #trial: Trial;
  readonly #assignment: Assignment;
  /** By seat, its first column; by column of a place, its seat. */
  readonly #columnOf: number[] = [];
  readonly #seatOf: number[] = [];

  constructor(trial: Trial) {
    this.#trial = trial;
    let seats = 0;
    for (const { fill } of trial.spots) seats += Math.min(fill, trial.size);
    this.#assignment = new Assignment(trial.size, seats + trial.size);
  }

  /**
   * From the need `first` on, `trial.cost()` having been asked. Of the needs among each shortfall so
   * many at least will be left over.
   */
  solve(first: number, shortfalls: readonly Shortfall[]): Relaxed {
    const rows = this.#trial.size - first;
    const columns = this.#layColumns(rows) + rows;
    const possible = this.#price(first, columns);
    const found = this.#assignment.solve(rows, columns);
    const more = Math.max(0, ...shortfalls.map((shortfall) => this.#leaving(first, columns, shortfall)));
    const value = found + more;
    return {
      value,
      picks: possible.map((choices, row) => this.#pickOf(choices, row)),
      // A need left over may be one of those that there must be, so its price is not added to theirs.
      values: this.#prices(first, columns, possible[0] as readonly Choice[]).map((price, index, { length }) =>
        index === length - 1 ? Math.max(value, found + price) : value + price,
      ),
    };
  }

  /** A column for each need that a place could still take; how many that is. */
  #layColumns(rows: number): number {
    const { spots, taken } = this.#trial;
    this.#seatOf.length = 0;
    for (let seat = 0; seat < spots.length; seat += 1) {
      this.#columnOf[seat] = this.#seatOf.length;
      const free = Math.min(rows, (spots[seat]?.fill as number) - (taken[seat] as number));
      for (let at = 0; at < free; at += 1) this.#seatOf.push(seat);
    }
    this.#columnOf[spots.length] = this.#seatOf.length;
    return this.#seatOf.length;
  }

  /** Fills in the costs; by row, the choices that are possible. */
  #price(first: number, columns: number): Choice[][] {
    const { size, choices } = this.#trial;
    const { costs } = this.#assignment;
    costs.fill(Infinity, 0, (size - first) * columns);
    const possible: Choice[][] = [];
    for (let row = first; row < size; row += 1) {
      const open: Choice[] = [];
      for (const choice of choices[row] as readonly Choice[]) {
        const { mate } = choice;
        if (mate && (!this.#trial.hasRoom(row, choice) || isAbsent(mate.way))) continue;
        open.push(choice);
        const start = (row - first) * columns;
        const to = start + this.#endOf(row - first, choice);
        for (let at = start + this.#startOf(row - first, choice); at < to; at += 1) {
          if (choice.least < (costs[at] as number)) costs[at] = choice.least;
        }
      }
      possible.push(open);
    }
    return possible;
  }

  #startOf(row: number, { seat }: Choice): number {
    return seat < 0 ? this.#seatOf.length + row : (this.#columnOf[seat] as number);
  }

  #endOf(row: number, { seat }: Choice): number {
    return seat < 0 ? this.#seatOf.length + row + 1 : (this.#columnOf[seat + 1] as number);
  }

  #pickOf(choices: readonly Choice[], row: number): Choice {
    const seat = this.#seatOf[this.#assignment.column[row] as number] ?? -1;
    let pick: Choice | undefined;
    for (const choice of choices) if (choice.seat === seat && (!pick || choice.least < pick.least)) pick = choice;
    return pick as Choice;
  }

  /** How much more than the assignment it costs at least when the first need takes that choice. */
  #prices(first: number, columns: number, possible: readonly Choice[]): number[] {
    const { rowPrice, columnPrice } = this.#assignment;
    const all = this.#trial.choices[first] as readonly Choice[];
    const prices = all.map(() => Infinity);
    for (const choice of possible) {
      let most = -Infinity;
      const to = Math.min(columns, this.#endOf(0, choice));
      for (let at = this.#startOf(0, choice); at < to; at += 1) most = Math.max(most, columnPrice[at] as number);
      prices[choice.index] = choice.least - (rowPrice[0] as number) - most;
    }
    return prices;
  }

  /**
   * What it costs more that needs are left over for want of a resource. A hookup costs the value of the
   * assignment, and the price of each joint and each need left over that is not in it, and what each
   * place that stays free was worth; so at least the smallest of those that there must be.
   */
  #leaving(first: number, columns: number, { count, among }: Shortfall): number {
    if (count === 0) return 0;
    const { costs, rowPrice, columnPrice } = this.#assignment;
    const seats = this.#seatOf.length;
    const rows = this.#trial.size - first;
    const left = among.map((row) => {
      const column = seats + row - first;
      const cost = costs[(row - first) * columns + column] as number;
      return cost - (rowPrice[row - first] as number) - (columnPrice[column] as number);
    });
    const worth = Array.from(columnPrice.subarray(0, seats), (price) => -price);
    return sumOfLeast(left, count) + sumOfLeast(worth, seats - rows + count);
  }
}

function sumOfLeast(amounts: number[], count: number): number {
  amounts.sort((a, b) => a - b);
  let sum = 0;
  for (let at = 0; at < count; at += 1) sum += amounts[at] ?? 0;
  return sum;
}
