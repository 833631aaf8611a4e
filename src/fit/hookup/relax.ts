import { assign } from './assignment.ts';
import { isAbsent } from './joints.ts';
import type { Choice, Trial } from './trial.ts';

/**
 * What the needs from `first` on cost at least, and what each picks then, if nothing but places were
 * scarce: resources, places that wait for an open need, and `fill` as all or none are forgotten.
 * `prices`: how much more it costs at least when the first of them takes that choice.
 */
export function relax(trial: Trial, first: number): { value: number; picks: Choice[]; prices: number[] } {
  const rows = trial.size - first;
  const columnOf: number[] = [];
  const seatOf: number[] = [];
  for (const [seat, { fill }] of trial.spots.entries()) {
    columnOf.push(seatOf.length);
    for (let free = Math.min(rows, fill - (trial.taken[seat] as number)); free > 0; free -= 1) seatOf.push(seat);
  }
  const ends = [...columnOf.slice(1), seatOf.length];
  const columns = seatOf.length + rows;
  const costs = new Float64Array(rows * columns).fill(Infinity);
  const possible = trial.choices
    .slice(first)
    .map((all, row) =>
      all.filter((choice) => !choice.mate || (trial.hasRoom(first + row, choice) && !isAbsent(choice.mate.way))),
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
