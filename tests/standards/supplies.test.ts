// PSU-001 to PSU-010: ATX12V Power Supply Design Guide v2.0, Table 2 (basis: read).
// PSU-011, PSU-012: ATX Power Supply Design Guide v0.9, Table 3 (basis: read).
// PSU-067 to PSU-069: summary of the ATX 3 Multi Rail Design Guide 2.1a, auxiliary connectors (basis: read).
// PSU-088: handbook tables 18.14 and 18.15 (basis: read); PSU-094: the same arithmetic with four contacts (basis: computed).
import { describe, expect, it } from 'vitest';
import { isWithin, plugRatings, rails, supplyShapes } from '../../src/standards/supplies.ts';

/** ids, rail, lowest and highest volts as printed, tolerance in percent. */
const printed: readonly (readonly [string, keyof typeof rails, number, number, number])[] = [
  ['PSU-001 and PSU-002', 'plus-12', 11.4, 12.6, 5],
  ['PSU-005 and PSU-006', 'plus-5', 4.75, 5.25, 5],
  ['PSU-007 and PSU-008', 'plus-3.3', 3.14, 3.47, 5],
  ['PSU-009 and PSU-010', 'standby-5', 4.75, 5.25, 5],
  ['PSU-011 and PSU-012', 'minus-12', -13.2, -10.8, 10],
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

/** id, plug, watts. */
const ratings: readonly (readonly [string, keyof typeof plugRatings, number])[] = [
  ['PSU-067', 'pcie-6', 75],
  ['PSU-068', 'pcie-8', 150],
  ['PSU-069', '12v-2x6', 600],
  ['PSU-088', 'eps-4', 192],
  ['PSU-094', 'eps-8', 384],
];

/** ids, plugs beside the slot, watts for the whole card. PSU-077 to PSU-080: expansion manual quoting card limits (basis: read). */
const cardTotals: readonly (readonly [string, readonly (keyof typeof plugRatings)[], number])[] = [
  ['PSU-077', ['pcie-6'], 150],
  ['PSU-078', ['pcie-6', 'pcie-6'], 225],
  ['PSU-079', ['pcie-8', 'pcie-6'], 300],
  ['PSU-080', ['pcie-8', 'pcie-8'], 375],
];

describe('plug ratings', () => {
  it.each(ratings)('%s: a %s plug carries %d W', (_id, plug, watts) => {
    expect(plugRatings[plug].watts).toBe(watts);
  });

  it.each(cardTotals)('%s: slot and plugs together give the published total', (_id, plugs, watts) => {
    expect(plugs.reduce((sum, plug) => sum + plugRatings[plug].watts, 75)).toBe(watts);
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
