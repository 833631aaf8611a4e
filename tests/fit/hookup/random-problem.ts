/** Small random problems that use every feature of the model, far denser than any real list. */
import fc from 'fast-check';
import type { KindName, Kinds, Need, Place, Problem, Quantity, Resource } from '../../../src/fit/model.ts';
import { kinds } from './kinds.ts';

const theirKinds: Kinds = {
  ...kinds,
  'fan-header': { tests: [{ name: 'test/plug', op: 'shares', need: 'plug', place: 'plugs' }], hungry: 'mA' },
  'expansion-slot': { tests: [{ name: 'test/length', op: 'atMost', need: 'size', place: 'size' }], hungry: 'busMBps' },
  'memory-bank': {
    tests: [
      { name: 'test/plug', op: 'shares', need: 'plug', place: 'plugs' },
      { name: 'test/size', op: 'atLeast', need: 'size', place: 'size' },
    ],
  },
};

const often = <T>(common: T, other: fc.Arbitrary<T>) => fc.oneof({ weight: 3, arbitrary: fc.constant(common) }, other);
const someNeeds = fc.uniqueArray(fc.integer({ min: 0, max: 6 }), { minLength: 1, maxLength: 2 });

/** Ids reach 11, so that text order and number order differ. */
const id = (index: number) => (index % 2 === 0 ? index + 2 : index + 8);

type Mixture = {
  kindNames: KindName[];
  names: Quantity[];
  resourceIds: string[];
  lefts: Need['left'][];
  /** How many places wait for needs, to 3 that do not. */
  waiting: number;
  /** How many needs stand, to 6 that do not. */
  standing: number;
};

function problems({ kindNames, names, resourceIds, lefts, waiting, standing }: Mixture): fc.Arbitrary<Problem> {
  const draws = fc.dictionary(fc.constantFrom(...names), fc.integer({ min: 0, max: 4 }), { maxKeys: 2 });
  const meters = fc.dictionary(
    fc.constantFrom(...names),
    fc.uniqueArray(fc.constantFrom(...resourceIds), { minLength: 1, maxLength: 3 }),
    { maxKeys: 2 },
  );

  const aNeed = fc.record({
    kind: fc.constantFrom(...kindNames),
    left: fc.constantFrom(...lefts),
    plug: fc.constantFrom('x', 'x', 'y', ['x', 'y'], null, undefined),
    size: fc.constantFrom(1, 2, undefined),
    draws,
    carries: fc.oneof(fc.subarray(names), fc.constant(names)),
    stands: fc.oneof({ weight: 6, arbitrary: fc.constant(false) }, { weight: standing, arbitrary: fc.constant(true) }),
  });
  const aWay = fc.record({
    rank: fc.integer({ min: 0, max: 2 }),
    plugs: fc.constantFrom('x', ['x', 'y'], 'y', null, undefined),
    size: fc.constantFrom(1, 2, 2, null, undefined),
    draws: often({}, draws),
    meters,
    after: fc.oneof({ weight: 3, arbitrary: fc.constant<number[]>([]) }, { weight: waiting, arbitrary: someNeeds }),
  });
  const aPlace = fc.record({
    kind: fc.constantFrom(...kindNames),
    fill: often(1, fc.integer({ min: 1, max: 3 })),
    ways: fc.oneof({ weight: 3, arbitrary: fc.tuple(aWay) }, fc.tuple(aWay, aWay)),
  });
  const capacity = fc.integer({ min: 0, max: 7 });
  const over = fc.constant('lost' as const);
  const aResource = (id: string): fc.Arbitrary<Resource> =>
    fc.oneof(
      {
        weight: 5,
        arbitrary: fc.record({ id: fc.constant(id), capacity, over }, { requiredKeys: ['id', 'capacity'] }),
      },
      fc.record(
        { id: fc.constant(id), capacity, over, even: fc.constant('g') },
        { requiredKeys: ['id', 'capacity', 'even'] },
      ),
    );

  return fc
    .record({
      needs: fc.array(aNeed, { minLength: 1, maxLength: 6 }),
      places: fc.array(aPlace, { minLength: 1, maxLength: 6 }),
      resources: fc.tuple(...resourceIds.map(aResource)),
      again: fc.array(fc.record({ id: fc.constantFrom(...resourceIds), capacity }), { maxLength: 1 }),
    })
    .map(({ needs, places, resources, again }) => ({
      needs: needs.map(
        ({ kind, left, plug, size, draws, carries, stands }, index): Need => ({
          id: `part-${id(index)}/need`,
          part: `part-${id(index)}`,
          kind,
          left,
          attrs: { plug, size },
          draws,
          carries,
          ...(stands ? { stands } : {}),
        }),
      ),
      places: places.flatMap(({ kind, fill, ways }, index) =>
        ways.map(
          ({ plugs, size, rank, draws, meters, after }, way): Place => ({
            id: `board-1/place-${id(index)}`,
            ...(ways.length > 1 ? { way: `x${way === 0 ? 16 : 8}` } : {}),
            part: 'board-1',
            kind,
            rank,
            attrs: { plugs, size },
            fill,
            draws,
            meters,
            after: after.map((need) => `part-${id(need)}/need`),
          }),
        ),
      ),
      resources: [...resources, ...again],
      kinds: theirKinds,
    }));
}

export const randomProblem = problems({
  kindNames: ['fan-header', 'expansion-slot', 'memory-bank'],
  names: ['mA', 'busMBps', 'row-2', 'row-10'],
  resourceIds: ['a-1/mA', 'a-1/busMBps', 'b-1/mA', 'b-1/busMBps', 'c-1/row-2', 'c-1/row-10'],
  lefts: ['hazard', 'blocker', 'blocker', 'limit', 'note', 'spare', 'spare'],
  waiting: 1,
  standing: 1,
});
/** Mostly cables, splitters and adapters hanging on each other. */
export const chainedProblem = problems({
  kindNames: ['fan-header', 'fan-header', 'fan-header', 'memory-bank'],
  names: ['mA', 'busMBps', 'row-2', 'row-10'],
  resourceIds: ['a-1/mA', 'a-1/busMBps', 'b-1/mA', 'b-1/busMBps', 'c-1/row-2', 'c-1/row-10'],
  lefts: ['hazard', 'blocker', 'blocker', 'limit', 'note', 'spare', 'spare'],
  waiting: 6,
  standing: 1,
});
/** Few kinds of loss and one quantity, so that most of what is drawn goes far and meets a limit. */
export const drawnProblem = problems({
  kindNames: ['fan-header', 'expansion-slot'],
  names: ['mA'],
  resourceIds: ['a-1/mA', 'b-1/mA', 'c-1/mA'],
  lefts: ['blocker', 'blocker', 'spare'],
  waiting: 3,
  standing: 4,
});
