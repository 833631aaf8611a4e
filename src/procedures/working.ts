/** Where somebody stands on a job card: what may be done next, and what hangs on what. */
import type { CardStep, JobCard } from './types.ts';

/** True when everything before the step is done. */
export const mayBeDone = (step: CardStep, done: ReadonlySet<string>): boolean =>
  step.after.every((before) => done.has(before));

/** The first step in the order of the card that is not done; undefined when all are. */
export function nextStep(card: JobCard, done: ReadonlySet<string>): CardStep | undefined {
  return card.steps.find((step) => !done.has(step.key));
}

/** Keys of done steps that rest on `key`, however far on, in the order of the card. Taking `key` back takes them back too. */
export function restingOn(card: JobCard, key: string, done: ReadonlySet<string>): string[] {
  const gone = new Set([key]);
  // `after` only names steps above, so one pass in order finds all.
  for (const step of card.steps) if (step.after.some((before) => gone.has(before))) gone.add(step.key);
  return card.steps.filter((step) => step.key !== key && gone.has(step.key) && done.has(step.key)).map((s) => s.key);
}

/** Usual minutes of the steps not done. */
export function minutesLeft(card: JobCard, done: ReadonlySet<string>): number {
  return card.steps.filter((step) => !done.has(step.key)).reduce((sum, step) => sum + step.minutes[1], 0);
}
