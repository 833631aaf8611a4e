// 01-sense-pins: encyclopaedia article on the 16-pin connector (basis: read), one row of the table a line.
import { describe, expect, it } from 'vitest';
import { type SenseState, senseCodingOf, sensePins, sensePower } from '../../src/standards/sense-pins.ts';

/** sense 0, sense 1, then initial and largest watts by the first publication, by its engineering change, and of 12V-2x6. */
const rows: readonly (readonly [
  SenseState,
  SenseState,
  [number, number] | undefined,
  [number, number] | undefined,
  [number, number],
])[] = [
  ['open', 'open', [225, 450], [100, 150], [0, 0]],
  ['together', 'together', undefined, undefined, [100, 150]],
  ['ground', 'open', [375, 600], [150, 300], [150, 300]],
  ['open', 'ground', [225, 450], [225, 450], [225, 450]],
  ['ground', 'ground', [375, 600], [375, 600], [375, 600]],
];

const power = (row: [number, number] | undefined) =>
  row === undefined ? undefined : { initialW: row[0], maxW: row[1] };

describe('sense pins of the 16-pin plug', () => {
  it.each(rows)('%s and %s announce what each edition says', (sense0, sense1, first, revised, latest) => {
    expect(sensePower('first', sense0, sense1)).toEqual(power(first));
    expect(sensePower('revised', sense0, sense1)).toEqual(power(revised));
    expect(sensePower('12v-2x6', sense0, sense1)).toEqual(power(latest));
  });

  it('has no row beyond the published ones', () => {
    expect(sensePins).toHaveLength(rows.length);
  });

  it('gives nothing with both pins open on 12V-2x6, and 600 W only with both on ground', () => {
    expect(sensePower('12v-2x6', 'open', 'open')?.maxW).toBe(0);
    expect(sensePins.filter((row) => row['12v-2x6'].maxW === 600)).toHaveLength(1);
  });

  it('finds the coding of each power that a lead may announce, and of no other', () => {
    expect([150, 300, 450, 600].map((watts) => senseCodingOf(watts)?.['12v-2x6'].maxW)).toEqual([150, 300, 450, 600]);
    expect([0, 375, 500].map(senseCodingOf)).toEqual([undefined, undefined, undefined]);
  });

  it('has no coding of a pin joined to the other while the other is not', () => {
    expect(sensePower('12v-2x6', 'together', 'ground')).toBeUndefined();
  });
});
