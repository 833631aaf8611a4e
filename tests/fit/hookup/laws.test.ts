import fc from 'fast-check';
import { expect, test } from 'vitest';
import { compareIds } from '../../../src/fit/hookup/order.ts';
import { findHookup } from '../../../src/fit/hookup/search.ts';
import { whyLeft } from '../../../src/fit/hookup/why.ts';
import type { Joint, Need, Problem } from '../../../src/fit/model.ts';
import { fourteenParts } from '../../bench/hookup-problem.ts';
import { canBeMade } from './oracle.ts';
import { chainedProblem, drawnProblem, randomProblem } from './random-problem.ts';
import { splitterProblem } from './random-splitters.ts';

const anyProblem = fc.oneof(randomProblem, chainedProblem, drawnProblem);
const shuffled = <T>(list: T[]) => fc.shuffledSubarray(list, { minLength: list.length });
const matters = ({ left, stands }: Need) => left !== 'spare' || stands;

test('shuffling needs, places and resources changes nothing', () => {
  const pair = anyProblem.chain((problem) =>
    fc.record({
      problem: fc.constant(problem),
      needs: shuffled(problem.needs),
      places: shuffled(problem.places),
      resources: shuffled(problem.resources),
    }),
  );
  fc.assert(
    fc.property(pair, ({ problem, ...lists }) => {
      const other = { ...problem, ...lists };
      const hookup = findHookup(problem);
      expect(findHookup(other)).toEqual(hookup);
      expect([...findHookup(other).used]).toEqual([...hookup.used]);
      expect(whyLeft(other, hookup)).toEqual(whyLeft(problem, hookup));
    }),
    { numRuns: 500, seed: 2 },
  );
}, 60_000);

test('the problem is not changed, and the same problem has the same hookup', () => {
  const before = structuredClone(fourteenParts);
  const hookup = findHookup(fourteenParts);
  expect(findHookup(fourteenParts)).toEqual(hookup);
  expect(fourteenParts).toEqual(before);
});

/** Places that could be named as a reason: all of the kind but those that wait for the need itself. */
function placesInQuestion({ places }: Problem, need: Need): string[] {
  const own = places.filter(({ after }) => after?.includes(need.id)).map(({ id }) => id);
  return [...new Set(places.filter(({ kind }) => kind === need.kind).map(({ id }) => id))].filter(
    (id) => !own.includes(id),
  );
}

test('every need left over has one reason for each place of its kind, or none is offered', () => {
  fc.assert(
    fc.property(anyProblem, (problem) => {
      const hookup = findHookup(problem);
      const whys = whyLeft(problem, hookup);
      expect(whys.map(({ need }) => need)).toEqual(
        hookup.left.filter(({ left }) => left !== 'spare').map(({ id }) => id),
      );
      for (const { need: id, reasons } of whys) {
        const need = problem.needs.find((one) => one.id === id) as Need;
        const asked = placesInQuestion(problem, need);
        const named = reasons.flatMap((reason) => ('place' in reason ? [reason.place] : []));
        expect(named.toSorted()).toEqual(asked.toSorted());
        if (asked.length === 0) expect(reasons).toEqual([{ why: 'none-offered', kind: need.kind }]);
      }
    }),
    { numRuns: 800, seed: 3 },
  );
}, 60_000);

test('keep only the rivals, with all places, and something is still left over', () => {
  fc.assert(
    fc.property(anyProblem, (problem) => {
      for (const { need, rivals, places } of whyLeft(problem, findHookup(problem))) {
        expect(rivals).toContain(need);
        const needs = problem.needs.filter(({ id }) => rivals.includes(id));
        const alone = findHookup({ ...problem, needs });
        expect(alone.left.filter(matters)).not.toEqual([]);
        for (const joint of alone.joints) expect(places).toContain(joint.place);
      }
    }),
    { numRuns: 800, seed: 4 },
  );
}, 60_000);

test('with one step for each component the hookup can still be made, and does not claim to be the best', () => {
  let stopped = 0;
  fc.assert(
    fc.property(anyProblem, (problem) => {
      const hookup = findHookup(problem, { stepLimit: 1 });
      expect(canBeMade(problem, hookup.joints)).toBe(true);
      if (hookup.proved) {
        expect(hookup).toEqual(findHookup(problem));
        return;
      }
      stopped += 1;
      for (const { need, reasons } of whyLeft(problem, hookup)) {
        const isSettled = !hookup.stopped?.includes(need);
        expect(reasons.some(({ why }) => why === 'not-proved')).toBe(!isSettled);
      }
    }),
    { numRuns: 800, seed: 5 },
  );
  expect(stopped).toBeGreaterThan(80);
}, 60_000);

/**
 * The worst to leave over first, then those that draw most, each at the lowest place where it can be joined
 * beside those before it; spares before all others, or not at all.
 */
function joinInTurn(problem: Problem, isSpareUsed: boolean): Set<string> {
  const severities: Need['left'][] = isSpareUsed ? ['spare', 'blocker', 'limit', 'note'] : ['blocker', 'limit', 'note'];
  const drawn = ({ draws }: Need) => draws?.['mA'] ?? 0;
  const inTurn = severities.flatMap((severity) =>
    problem.needs.filter(({ left }) => left === severity).sort((a, b) => drawn(b) - drawn(a) || compareIds(a.id, b.id)),
  );
  const places = problem.places.toSorted((a, b) => a.rank - b.rank || compareIds(a.id, b.id));
  let joints: Joint[] = [];
  for (const { id, kind } of inTurn) {
    const tried = places.map((place) => [
      ...joints,
      { id: `${id} → ${place.id}`, kind, need: id, place: place.id, unknown: false },
    ]);
    joints = tried.find((all) => canBeMade(problem, all)) ?? joints;
  }
  return new Set(joints.map(({ need }) => need));
}

test('where the search is cut short, it serves no worse than taking each need in turn', () => {
  let stopped = 0;
  fc.assert(
    fc.property(splitterProblem, ({ resources, ...lists }) => {
      const problem = { ...lists, resources: resources.map(({ id, capacity }) => ({ id, capacity })) };
      const { cost, proved } = findHookup(problem, { stepLimit: 2 });
      if (proved) return;
      stopped += 1;
      for (const isSpareUsed of [true, false]) {
        const joined = joinInTurn(problem, isSpareUsed);
        const missing = (severity: string) =>
          problem.needs.filter(({ id, left }) => left === severity && !joined.has(id));
        const [blockers = 0, limits = 0] = cost.slice(2, 4);
        const inTurn = [missing('blocker').length, missing('limit').length] as const;
        expect(blockers * 100 + limits).toBeLessThanOrEqual(inTurn[0] * 100 + inTurn[1]);
      }
    }),
    { numRuns: 500, seed: 6 },
  );
  expect(stopped).toBeGreaterThan(100);
}, 60_000);
