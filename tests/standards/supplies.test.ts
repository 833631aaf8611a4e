// PSU-001 to PSU-010: ATX12V Power Supply Design Guide v2.0, Table 2 (basis: read).
// PSU-011 to PSU-014: ATX Power Supply Design Guide v0.9, Table 3 (basis: read).
import { describe, expect, it } from 'vitest';
import { isWithin, olderRails, rails, supplyShapes, thirdGenerationPlus12 } from '../../src/standards/supplies.ts';

/** ids, rail, lowest and highest volts as printed, tolerance in percent. */
const printed: readonly (readonly [string, keyof typeof rails, number, number, number])[] = [
  ['PSU-001 and PSU-002', 'plus-12', 11.4, 12.6, 5],
  ['PSU-005 and PSU-006', 'plus-5', 4.75, 5.25, 5],
  ['PSU-007 and PSU-008', 'plus-3.3', 3.14, 3.47, 5],
  ['PSU-009 and PSU-010', 'standby-5', 4.75, 5.25, 5],
  ['PSU-011 and PSU-012', 'minus-12', -13.2, -10.8, 10],
  ['PSU-013 and PSU-014', 'minus-5', -5.5, -4.5, 10],
];

describe('rails of a supply', () => {
  it.each(printed)('%s: %s lies between the printed limits', (_ids, rail, lowest, highest, percent) => {
    expect(rails[rail].percent).toBe(percent);
    // Printed to two decimals: 3.135 and 3.465 appear as 3.14 and 3.47.
    expect(Math.abs(rails[rail].lowest / 1000 - lowest)).toBeLessThanOrEqual(0.0051);
    expect(Math.abs(rails[rail].highest / 1000 - highest)).toBeLessThanOrEqual(0.0051);
  });

  it('takes a reading exactly at a limit and refuses one a millivolt beyond', () => {
    expect(isWithin('plus-12', 11400)).toBe(true);
    expect(isWithin('plus-12', 11399)).toBe(false);
    expect(isWithin('plus-12', 12600)).toBe(true);
    expect(isWithin('plus-12', 12601)).toBe(false);
    expect(isWithin('minus-12', -13200)).toBe(true);
    expect(isWithin('minus-12', -13201)).toBe(false);
  });

  it('keeps ±5 % on 3.3 V and not the ±4 % of one handbook table (PSU-016 disagrees)', () => {
    expect(isWithin('plus-3.3', 3140)).toBe(true);
    expect(isWithin('plus-3.3', 3460)).toBe(true);
  });

  it('counts in whole millivolts', () => {
    for (const rail of Object.values(rails)) {
      expect(Number.isInteger(rail.lowest)).toBe(true);
      expect(Number.isInteger(rail.highest)).toBe(true);
    }
  });
});

/** ids, where the reading is taken, lowest and highest volts. PSU-017, PSU-018: press summary; PSU-019 to PSU-021: arithmetic. */
const thirdGeneration: readonly (readonly [string, keyof typeof thirdGenerationPlus12, number, number])[] = [
  ['PSU-017, PSU-020 and PSU-021', 'card-plug', 11.04, 12.6],
  ['PSU-018, PSU-019 and PSU-021', 'other-plug', 11.16, 12.6],
];

describe('the wider band of the third generation', () => {
  it.each(thirdGeneration)('%s: +12 V at a %s lies between %d and %d V', (_ids, plug, lowest, highest) => {
    expect(thirdGenerationPlus12[plug].lowest / 1000).toBe(lowest);
    expect(thirdGenerationPlus12[plug].highest / 1000).toBe(highest);
  });

  it('passes a reading of 11.2 V that the older band refuses (01-power-supply, worked example)', () => {
    expect(isWithin('plus-12', 11200)).toBe(false);
    expect(thirdGenerationPlus12['other-plug'].lowest).toBeLessThan(11200);
  });
});

describe('the older two-plug supply', () => {
  it('gives +5, +12, −5 and −12 V, and neither 3.3 V nor standby (PSU-104: article on supplies by form factor, read)', () => {
    expect(olderRails.rails.map((id) => rails[id].nominal).toSorted((a, b) => a - b)).toEqual([
      -12000, -5000, 5000, 12000,
    ]);
  });
});

describe('outlines of supplies', () => {
  it('has the published ATX outline of 150 x 86 x 140 mm (public list of supply outlines, read)', () => {
    expect([supplyShapes.atx.widthMm, supplyShapes.atx.heightMm, supplyShapes.atx.shortestMm]).toEqual([150, 86, 140]);
  });

  it('has SFX at 63.5 mm, not the low variant of 51.5 mm that one list prints for every SFX', () => {
    expect(supplyShapes.sfx.heightMm).toBe(63.5);
  });
});
