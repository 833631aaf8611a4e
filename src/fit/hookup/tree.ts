import { relax } from './relax.ts';
import type { Choice, Trial } from './trial.ts';

/** Up to so many ways to decide all needs are tried one by one. */
const fewWays = 200;

export type Result = { steps: number; proved: boolean };

/**
 * Decides every need of the trial in the best way. A step is one node of the tree. At the step limit
 * the best found so far is kept, and `proved` is false.
 */
export function search(trial: Trial, stepLimit: number): Result {
  let ways = 1;
  for (const { length } of trial.choices) ways *= length;
  return ways <= fewWays ? tryEach(trial, stepLimit) : branchAndBound(trial, stepLimit);
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
  let steps = 0;
  let isStopped = false;
  let best = trial.choices.map((all) => all[all.length - 1] as Choice);
  let ceiling = best.reduce((sum, { least }) => sum + least, 0);

  // The first walk finds how good the best is; the second the first in the order of ties that is as good.
  const visit = (row: number, walk: 'how good' | 'which one'): void => {
    if (steps === stepLimit) {
      isStopped = true;
      return;
    }
    steps += 1;
    const keep = (total: number) => {
      best = trial.decided();
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
    const floor = trial.firstChoice(row);
    for (const index of order) {
      if (index < floor || bound + (prices[index] as number) >= ceiling) continue;
      trial.decide(row, all[index]);
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
