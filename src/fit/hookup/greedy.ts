import type { Seeker } from './records.ts';
import type { Choice, Trial } from './trial.ts';

/**
 * Puts a plain answer in place of what is decided, if it is better: each need takes the cheapest place
 * that is to be had beside those before it, the ones that matter most first; once with the spares left
 * in their bags, and once with every spare joined, before all others, that can be.
 */
export function keepNoWorse(trial: Trial): void {
  for (const isSpared of [true, false]) {
    const best = trial.decided();
    const total = trial.cost();
    takeInTurn(trial, isSpared);
    if (trial.cost() >= total) trial.decideAll(best);
  }
}

function takeInTurn(trial: Trial, isSpared: boolean): void {
  const rows = [...trial.seekers.keys()];
  const isIdle = (row: number) => (trial.seekers[row] as Seeker).isIdle;
  const weight = (row: number) => (isIdle(row) ? Infinity : leftOf(trial, row).cost);
  rows.sort((a, b) => (weight(a) === weight(b) ? a - b : weight(b) - weight(a)));
  for (const row of rows) trial.decide(row, isSpared && isIdle(row) ? leftOf(trial, row) : undefined);
  for (const row of rows) {
    if (trial.chosen[row]) continue;
    const joints = (trial.choices[row] as readonly Choice[]).filter((choice) => isThere(trial, choice));
    for (const choice of joints.sort((a, b) => a.least - b.least)) {
      trial.decide(row, choice);
      if (trial.cost() < Infinity) break;
      trial.decide(row, undefined);
    }
    if (!trial.chosen[row]) trial.decide(row, leftOf(trial, row));
  }
}

const leftOf = ({ choices }: Trial, row: number): Choice => choices[row]?.at(-1) as Choice;

/** Whether a choice is a place that exists as far as is decided. */
function isThere({ seekers }: Trial, { mate }: Choice): boolean {
  const isOpen = (one: Seeker) => one.placed === undefined && !one.need.stands && seekers.includes(one);
  return mate !== null && !mate.way.above.some((one) => one && isOpen(one));
}
