import { assign } from './assignment.ts';
import type { Choice, Trial } from './trial.ts';

/**
 * Decides every need of the trial in the best way. A step is one node of the tree. At the step limit
 * the best found so far is kept, and `proved` is false.
 */
export function search(trial: Trial, stepLimit: number): { steps: number; proved: boolean } {
  if (settles(trial)) return { steps: 0, proved: true };

  let steps = 0;
  let isStopped = false;
  let best = trial.choices.map((all) => all.at(-1) as Choice);
  let ceiling = totalOf(best);

  // The first walk finds how good the best is; the second the first in the order of ties that is as good.
  const visit = (row: number, walk: 'how good' | 'which one', floors: readonly number[]): void => {
    if (steps === stepLimit) {
      isStopped = true;
      return;
    }
    steps += 1;
    const keep = (total: number) => {
      best = trial.decided() as Choice[];
      ceiling = walk === 'how good' ? total : -Infinity;
    };
    const cost = trial.cost();
    if (cost >= ceiling) return;
    if (row === trial.size) {
      keep(cost);
      return;
    }

    const { value, picks, prices } = relax(trial, row);
    const bound = cost + value;
    if (bound >= ceiling) return;
    const all = trial.choices[row] as readonly Choice[];
    let order = [...all.keys()];
    if (walk === 'how good') {
      for (const [index, pick] of picks.entries()) trial.decide(row + index, pick);
      const total = trial.cost();
      if (total < ceiling) keep(total);
      for (const index of picks.keys()) trial.decide(row + index, undefined);
      if (total === bound) return;
      const first = all.indexOf(picks[0] as Choice);
      order = [first, ...order.filter((index) => index !== first)];
    }
    const floor = floors[trial.twin[row] as number] ?? 0;
    for (const index of order) {
      if (index < floor || bound + (prices[index] as number) >= ceiling) continue;
      trial.decide(row, all[index]);
      visit(row + 1, walk, [...floors, index]);
      if (isStopped) break;
    }
    trial.decide(row, undefined);
  };

  visit(0, 'how good', []);
  if (!isStopped) {
    ceiling += 1;
    visit(0, 'which one', []);
  }
  for (const [row, choice] of best.entries()) trial.decide(row, choice);
  return { steps, proved: !isStopped };
}

const totalOf = (choices: readonly Choice[]) => choices.reduce((sum, { least }) => sum + least, 0);

/**
 * Decides the trial without a search, if each need can have what is cheapest for it, needs with the
 * same choices taking the cheapest between them, in order. The total of those choices is a bound, and
 * they are the first in the order of ties to reach it; so when all can be had together, at that total,
 * nothing is better.
 */
function settles(trial: Trial): boolean {
  const picks: Choice[] = [];
  for (const [row, all] of trial.choices.entries()) {
    if (picks[row]) continue;
    const rows = [...trial.choices.keys()].filter((other) => other >= row && isSame(all, trial.choices[other] ?? []));
    const choices = cheapest(all, rows.length, trial.fill);
    for (const [index, choice] of choices.entries()) picks[rows[index] as number] = choice;
  }
  for (const [row, choice] of picks.entries()) trial.decide(row, choice);
  if (trial.cost() === totalOf(picks)) return true;
  for (const row of picks.keys()) trial.decide(row, undefined);
  return false;
}

const isSame = (a: readonly Choice[], b: readonly Choice[]): boolean =>
  a.length === b.length &&
  a.every(({ mate, least }, index) => mate?.way === b[index]?.mate?.way && least === b[index]?.least);

/** The cheapest choices for so many needs that have the same, in order. */
function cheapest(all: readonly Choice[], count: number, fill: readonly number[]): Choice[] {
  const left = all.at(-1) as Choice;
  const room = [...fill];
  const picks: Choice[] = [];
  for (const choice of all.filter(({ least }) => least < left.least).sort((a, b) => a.least - b.least)) {
    while (picks.length < count && (room[choice.seat] as number) > 0) {
      picks.push(choice);
      room[choice.seat] = (room[choice.seat] as number) - 1;
    }
  }
  while (picks.length < count) picks.push(left);
  return picks.sort((a, b) => all.indexOf(a) - all.indexOf(b));
}

/**
 * What the needs from `first` on cost at least, and what each picks then, if nothing but places were
 * scarce: resources, places that wait for an open need, and `fill` as all or none are forgotten.
 * `prices`: how much more it costs at least when the first of them takes that choice.
 */
function relax(trial: Trial, first: number): { value: number; picks: Choice[]; prices: number[] } {
  const rows = trial.size - first;
  const columnOf: number[] = [];
  const seatOf: number[] = [];
  for (const [seat, fill] of trial.fill.entries()) {
    columnOf.push(seatOf.length);
    for (let free = Math.min(rows, fill - (trial.taken[seat] as number)); free > 0; free -= 1) seatOf.push(seat);
  }
  const ends = [...columnOf.slice(1), seatOf.length];
  const columns = seatOf.length + rows;
  const costs = new Float64Array(rows * columns).fill(Infinity);
  const possible = trial.choices
    .slice(first)
    .map((all, row) =>
      all.filter((choice) => !choice.mate || (trial.hasRoom(first + row, choice) && !trial.isAbsent(choice.mate))),
    );
  const columnsOf = (row: number, { mate, seat }: Choice): [number, number] =>
    mate ? [columnOf[seat] as number, ends[seat] as number] : [seatOf.length + row, seatOf.length + row + 1];
  for (const [row, all] of possible.entries()) {
    for (const choice of all) {
      const [from, to] = columnsOf(row, choice);
      for (let c = row * columns + from; c < row * columns + to; c += 1) {
        costs[c] = Math.min(costs[c] as number, choice.least);
      }
    }
  }

  const { column, value, rowPrice, columnPrice } = assign(rows, columns, costs);
  const picks = possible.map((all, row) => {
    const at = column[row] as number;
    const least = costs[row * columns + at];
    const seat = seatOf[at] ?? -1;
    return all.find((choice) => choice.seat === seat && choice.least === least) as Choice;
  });
  const prices = (trial.choices[first] as readonly Choice[]).map((choice) => {
    if (!possible[0]?.includes(choice)) return Infinity;
    const [from, to] = columnsOf(0, choice);
    return choice.least - (rowPrice[0] as number) - Math.max(...columnPrice.subarray(from, to));
  });
  return { value, picks, prices };
}
