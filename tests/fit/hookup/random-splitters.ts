/** Small random problems of fans, headers and splitters: more is wanted than can be had, and much is alike. */
import fc from 'fast-check';
import type { Problem } from '../../../src/fit/model.ts';
import { need, place, problem } from './build.ts';

const fans = fc.array(
  fc.record({ mA: fc.constantFrom(1, 2, 2, 3, 4), left: fc.constantFrom('limit', 'limit', 'blocker', 'spare') }),
  { minLength: 2, maxLength: 3 },
);
const headers = fc.array(
  fc.record({
    capacity: fc.constantFrom(3, 4, 4, 5),
    rank: fc.constantFrom(0, 1),
    over: fc.constantFrom(undefined, undefined, undefined, 'lost'),
    isShared: fc.constantFrom(false, false, false, true),
  }),
  { minLength: 1, maxLength: 2 },
);
const splitters = fc.array(
  fc.record({
    // A name before or after that of the fans, whose turn then is another.
    name: fc.constantFrom('cable', 'splitter'),
    outlets: fc.constantFrom(1, 2, 2),
    rank: fc.constantFrom(0, 5, 5, 5),
    /** What it passes at most, by a meter of its own. */
    limit: fc.constantFrom(undefined, undefined, undefined, 3),
    draws: fc.constantFrom(undefined, undefined, undefined, 1),
    carries: fc.constantFrom(true, true, true, false),
    left: fc.constantFrom('spare', 'spare', 'spare', 'note'),
    hasSecondLead: fc.constantFrom(false, false, false, false, true),
  }),
  { minLength: 1, maxLength: 2 },
);

export const splitterProblem: fc.Arbitrary<Problem> = fc
  .record({ fans, headers, splitters })
  .map(({ fans, headers, splitters }) => {
    const units = splitters.map((splitter, n) => ({ ...splitter, unit: `${splitter.name}-${n + 1}` }));
    return problem({
      needs: [
        ...fans.map(({ mA, left }, n) => need(`fan-${n + 1}/lead`, 'fan-header', {}, { left, draws: { mA } })),
        ...units.flatMap(({ unit, left, draws, carries, hasSecondLead }) => {
          const more = { left, draws: draws === undefined ? {} : { mA: draws }, carries: carries ? ['mA'] : [] };
          const leads = hasSecondLead ? ['in-1', 'in-2'] : ['in-1'];
          return leads.map((lead) => need(`${unit}/${lead}`, 'fan-header', {}, more));
        }),
      ],
      places: [
        ...headers.map(({ rank, isShared }, n) => {
          const meter = isShared ? 'motherboard-1/mA' : `motherboard-1/header-${n + 1}/mA`;
          return place(`motherboard-1/header-${n + 1}`, 'fan-header', rank, {}, { meters: { mA: [meter] } });
        }),
        ...units.flatMap(({ unit, outlets, rank, limit, hasSecondLead }) =>
          Array.from({ length: outlets }, (_, n) =>
            place(
              `${unit}/out-${n + 1}`,
              'fan-header',
              rank + n,
              {},
              {
                after: hasSecondLead ? [`${unit}/in-1`, `${unit}/in-2`] : [`${unit}/in-1`],
                meters: limit === undefined ? {} : { mA: [`${unit}/mA`] },
              },
            ),
          ),
        ),
      ],
      resources: [
        { id: 'motherboard-1/mA', capacity: 5 },
        ...headers.map(({ capacity, over }, n) => {
          const header = { id: `motherboard-1/header-${n + 1}/mA`, capacity };
          return over ? { ...header, over: 'lost' as const } : header;
        }),
        ...units.map(({ unit, limit = 0 }) => ({ id: `${unit}/mA`, capacity: limit })),
      ],
    });
  });
