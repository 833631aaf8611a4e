/** What each step waits for: names looked up, loops and backward order found. */
import type { Place, Source } from '../syntax/source.ts';
import type { StepId } from '../types.ts';
import type { PlacedStep } from './placed-step.ts';

/** One thing a step waits for, as written: `at` is the name in its file. Nothing written: the step above. */
export type Waits = { id: StepId; at: Place }[] | undefined;

/**
 * Fills in `after` of every step. A step that names none waits for the step above it.
 * Faults: a name that is no step; steps that wait for each other, the whole loop in order; a step that waits
 * for one further down.
 */
export function resolveOrder(
  source: Source,
  steps: readonly PlacedStep[],
  waits: ReadonlyMap<PlacedStep, Waits>,
): void {
  const place = new Map(steps.map((step, index) => [step.id, index]));
  const written = new Map<string, Place>();
  let above: PlacedStep | undefined;
  for (const step of steps) {
    const named = waits.get(step);
    if (named) {
      for (const { id, at } of named) {
        if (!place.has(id)) {
          source.fault('unknown-step', at, `the step ${id}, which is not in this procedure`, 'the id of a step');
          continue;
        }
        if (step.after.includes(id)) continue;
        step.after.push(id);
        written.set(`${step.id} ${id}`, at);
      }
    } else if (above) {
      step.after.push(above.id);
    }
    above = step;
  }

  const looped = new Set<string>();
  for (const loop of findLoops(steps)) {
    const told = loop.map((id, index) => `${id} waits for ${loop[(index + 1) % loop.length]}`);
    const [first] = loop;
    const start = steps.find((step) => step.id === first);
    for (const [index, id] of loop.entries()) looped.add(`${id} ${loop[(index + 1) % loop.length]}`);
    if (!start) continue;
    const at = written.get(`${first} ${loop[1] ?? first}`) ?? start.at;
    source.fault('order-loop', at, `a loop in the order: ${told.join(', ')}`, 'an order with a beginning');
  }

  for (const [index, step] of steps.entries()) {
    for (const id of step.after) {
      const at = written.get(`${step.id} ${id}`);
      const below = place.get(id);
      if (!at || below === undefined || below < index || looped.has(`${step.id} ${id}`)) continue;
      const other = steps[below];
      source.fault('step-below', at, `the step ${id}, which stands further down`, `a step above ${step.id}`, {
        text: `${id} stands here`,
        at: other?.at ?? at,
      });
    }
  }
}

/** For each knot of steps that wait for each other: a shortest loop through its first step, in waiting order. */
function findLoops(steps: readonly PlacedStep[]): StepId[][] {
  const byId = new Map(steps.map((step) => [step.id, step]));
  const loops: StepId[][] = [];
  const knotted = new Set<StepId>();
  for (const step of steps) {
    if (knotted.has(step.id)) continue;
    const loop = shortestLoop(step, byId);
    if (!loop) continue;
    loops.push(loop);
    const forward = waitedFor(step.id, byId);
    for (const id of forward) if (waitedFor(id, byId).has(step.id)) knotted.add(id);
  }
  return loops;
}

/** Every step that `id` waits for, however far back. */
function waitedFor(id: StepId, byId: ReadonlyMap<StepId, PlacedStep>): Set<StepId> {
  const seen = new Set<StepId>();
  const ahead = [...(byId.get(id)?.after ?? [])];
  for (let next = ahead.pop(); next !== undefined; next = ahead.pop()) {
    if (seen.has(next)) continue;
    seen.add(next);
    ahead.push(...(byId.get(next)?.after ?? []));
  }
  return seen;
}

/** Breadth first from what `start` waits for, until it comes back to `start`. */
function shortestLoop(start: PlacedStep, byId: ReadonlyMap<StepId, PlacedStep>): StepId[] | undefined {
  const paths: StepId[][] = [[start.id]];
  const seen = new Set<StepId>();
  for (let path = paths.shift(); path; path = paths.shift()) {
    for (const id of byId.get(path.at(-1) ?? start.id)?.after ?? []) {
      if (id === start.id) return path;
      if (seen.has(id)) continue;
      seen.add(id);
      paths.push([...path, id]);
    }
  }
  return undefined;
}
