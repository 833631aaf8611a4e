import { keepNoWorse } from './greedy.ts';
import { Relaxation } from './relax.ts';
import { suppliesOf } from './shortfall.ts';
import { Symmetry } from './symmetry.ts';
import type { Choice, Trial } from './trial.ts';

/** Up to so many ways to decide all needs are tried one by one. */
const fewWays = 200;

export type Result = { steps: number; proved: boolean };

/**
 * Decides every need of the trial in the best way. A step is one node of the tree. At the step limit
 * the best found so far is kept, no worse than a plain answer, and `proved` is false.
 */
export function search(trial: Trial, stepLimit: number): Result {
  let ways = 1;
  for (const { length } of trial.choices) ways *= length;
  const result = ways <= fewWays ? tryEach(trial, stepLimit) : branchAndBound(trial, stepLimit);
  if (!result.proved) keepNoWorse(trial);
  return result;
}

/** In the order of ties, so that the first of the best is the answer. */
function tryEach(trial: Trial, stepLimit: number): Result {
  const rest = restOf(trial);
  let best = trial.choices.map((all) => all[all.length - 1] as Choice);
  let ceiling = Infinity;
  let steps = 0;
  let isStopped = false;

  const visit = (row: number): void => {
    if (steps === stepLimit) {
      isStopped = true;
      return;
    }
    steps += 1;
    const cost = trial.cost();
    if (cost + (rest[row] as number) >= ceiling) return;
    if (row === trial.size) {
      best = trial.decided();
      ceiling = cost;
      return;
    }
    const all = trial.choices[row] as readonly Choice[];
    for (let index = trial.firstChoice(row); index < all.length && !isStopped; index += 1) {
      const choice = all[index] as Choice;
      if (cost + choice.least + (rest[row + 1] as number) >= ceiling) continue;
      trial.decide(row, choice);
      visit(row + 1);
    }
    trial.decide(row, undefined);
  };

  visit(0);
  trial.decideAll(best);
  return { steps, proved: !isStopped };
}

/** By row, what that need and those after it cost at least. */
function restOf({ choices }: Trial): number[] {
  const rest = [0];
  for (const all of choices.toReversed())
    rest.unshift((rest[0] as number) + Math.min(...all.map(({ least }) => least)));
  return rest;
}

function branchAndBound(trial: Trial, stepLimit: number): Result {
  const relaxation = new Relaxation(trial);
  const supplies = suppliesOf(trial);
  const symmetry = new Symmetry(trial);
  let steps = 0;
  let isStopped = false;
  let best = trial.choices.map((all) => all[all.length - 1] as Choice);
  let ceiling = best.reduce((sum, { least }) => sum + least, 0);

  const keep = (total: number): void => {
    best = trial.decided();
    ceiling = total;
  };

  // The first walk finds how good the best is; the second the first in the order of ties that is as good.
  const visit = (row: number, walk: 'how good' | 'which one'): void => {
    if (steps === stepLimit) {
      isStopped = true;
      return;
    }
    steps += 1;
    const cost = trial.cost();
    if (cost >= ceiling) return;
    if (row === trial.size) {
      keep(walk === 'how good' ? cost : -Infinity);
      return;
    }

    const shortfalls = supplies.map((supply) => supply.shortfall(row));
    const { value, picks, values } = relaxation.solve(row, shortfalls);
    const bound = cost + value;
    if (bound >= ceiling) return;
    const floor = trial.firstChoice(row);
    const order = (trial.choices[row] as readonly Choice[]).filter(
      (choice) => choice.index >= floor && symmetry.isNeeded(row, choice),
    );
    if (walk === 'how good') {
      for (let at = 0; at < picks.length; at += 1) trial.decide(row + at, picks[at]);
      const total = trial.cost();
      if (total < ceiling) keep(total);
      for (let at = 0; at < picks.length; at += 1) trial.decide(row + at, undefined);
      if (total === bound) return;
      order.sort((a, b) => Number(b === picks[0]) - Number(a === picks[0]));
    }
    for (const choice of order) {
      if (cost + (values[choice.index] as number) >= ceiling) continue;
      trial.decide(row, choice);
      visit(row + 1, walk);
      if (isStopped) break;
    }
    trial.decide(row, undefined);
  };

  visit(0, 'how good');
  if (!isStopped) {
    ceiling += 1;
    visit(0, 'which one');
  }
  trial.decideAll(best);
  return { steps, proved: !isStopped };
}
