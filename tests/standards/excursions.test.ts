// PSU-036 to PSU-045: ATX12VO Design Guide, revision 2.01, Table 3-3; the multi-rail guide has the same (basis: read).
// PSU-047, PSU-049, PSU-051, PSU-053: Table 3-4 (basis: read). PSU-048, PSU-050, PSU-052, PSU-054: arithmetic (computed).
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { excursionColumn, excursions, excursionW, lowW, rmsW } from '../../src/standards/excursions.ts';

/** ids, microseconds, percent for a supply above 450 W with the 16-pin plug, percent for the others, duty in percent. */
const rows: readonly (readonly [string, number, number, number, number])[] = [
  ['PSU-036 and PSU-037', 100, 200, 150, 5],
  ['PSU-038 and PSU-039', 1_000, 180, 145, 8],
  ['PSU-040 and PSU-041', 10_000, 160, 135, 12.5],
  ['PSU-042 and PSU-043', 100_000, 120, 110, 25],
];

describe('excursions', () => {
  it.each(rows)(
    '%s: for %d microseconds a supply bears %d or %d percent',
    (_ids, microseconds, full, reduced, duty) => {
      expect(excursionW(1000, 'full', microseconds)).toBe(full * 10);
      expect(excursionW(1000, 'reduced', microseconds)).toBe(reduced * 10);
      const row = excursions.find((each) => each.microseconds === microseconds);
      expect(row?.dutyPermille).toBe(duty * 10);
    },
  );

  it('beyond a tenth of a second the rating itself holds (PSU-044 and PSU-045)', () => {
    expect(excursionW(750, 'full', 100_001)).toBe(750);
    expect(excursionW(750, 'reduced', Number.POSITIVE_INFINITY)).toBe(750);
  });

  it('allows no more for a longer time: a microsecond past a row is the next row', () => {
    expect(excursionW(1000, 'full', 101)).toBe(1800);
    expect(excursionW(1000, 'full', 99)).toBe(2000);
  });

  it('takes the duty of 5 % of the guide, not the 10 % of a press summary (PSU-046 disagrees)', () => {
    expect(excursions[0].dutyPermille).toBe(50);
  });

  it('gives the full column above 450 W and with the 16-pin plug only', () => {
    expect(excursionColumn(450, true)).toBe('reduced');
    expect(excursionColumn(451, true)).toBe('full');
    expect(excursionColumn(1000, false)).toBe('reduced');
  });
});

/** ids, duty in permille, high and low watts of a 1000 W supply, their root mean square. */
const patterns: readonly (readonly [string, number, number, number, number])[] = [
  ['PSU-047 and PSU-048', 50, 2000, 918, 1000.3],
  ['PSU-049 and PSU-050', 80, 1800, 897, 999.7],
  ['PSU-051 and PSU-052', 125, 1600, 882, 1000.3],
  ['PSU-053 and PSU-054', 250, 1200, 924, 1000.2],
];

describe('the test with a load that comes and goes', () => {
  it.each(patterns)('%s: at %d permille of %d W and %d W it comes back to the rating', (_ids, duty, high, low, rms) => {
    expect(rmsW(high, low, duty)).toBeCloseTo(rms, 1);
    expect(Math.abs(rmsW(high, low, duty) - 1000)).toBeLessThan(1);
    // The guide prints whole watts that it rounded; one row is off by one.
    expect(Math.abs(lowW(1000, high, duty) - low)).toBeLessThan(1.1);
  });

  it('comes back to the rating for every supply: the low part is what the identity leaves', () => {
    fc.assert(
      fc.property(fc.integer({ min: 100, max: 3000 }), fc.constantFrom(...excursions), (rated, row) => {
        const high = (rated * row.percent.full) / 100;
        expect(rmsW(high, lowW(rated, high, row.dutyPermille), row.dutyPermille)).toBeCloseTo(rated, 6);
      }),
    );
  });

  it('leaves nothing for the low part when the high one alone is too much', () => {
    expect(lowW(100, 1000, 500)).toBe(0);
  });
});
