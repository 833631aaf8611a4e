// EMC-004 to EMC-019: 47 CFR 15.109, edition of 2010 (basis: read), and 20 log10 (basis: computed). EMC-020: inverse
// distance (basis: computed). EMC-021: a mailing list that gives the same in decibels (basis: read). EMC-022 to EMC-027, EMC-033:
// EN 55022, training page and handbook that agree (basis: read). EMC-029 to EMC-032: the slope (basis: computed).
// EMC-034 to EMC-037: 47 CFR 15.107, edition of 2001 (basis: read; decibels computed). EMC-038: 47 CFR 15.23 (basis: read).
import { describe, expect, it } from 'vitest';
import {
  atDistance,
  conductedLimit,
  conductedLimits,
  decibels,
  type EmissionClass,
  europeanRadiatedLimits,
  homeBuilt,
  olderConductedLimits,
  radiatedLimit,
  radiatedLimits,
} from '../../src/standards/emissions.ts';

/** ids, class, a frequency inside the band, µV/m, dBµV/m. */
const radiated: readonly (readonly [string, EmissionClass, number, number, number])[] = [
  ['EMC-004 and EMC-005', 'b', 50, 100, 40.0],
  ['EMC-006 and EMC-007', 'b', 100, 150, 43.52],
  ['EMC-008 and EMC-009', 'b', 500, 200, 46.02],
  ['EMC-010 and EMC-011', 'b', 1500, 500, 53.98],
  ['EMC-012 and EMC-013', 'a', 50, 90, 39.08],
  ['EMC-014 and EMC-015', 'a', 100, 150, 43.52],
  ['EMC-016 and EMC-017', 'a', 500, 210, 46.44],
  ['EMC-018 and EMC-019', 'a', 1500, 300, 49.54],
];

/** class, edge in MHz, the limit there: the tighter of the two bands. */
const edges: readonly (readonly [EmissionClass, number, number])[] = [
  ['b', 88, 100],
  ['b', 216, 150],
  ['b', 960, 200],
  ['a', 88, 90],
  ['a', 216, 150],
  ['a', 960, 210],
];

describe('radiated limits', () => {
  it.each(radiated)('%s: class %s at %d MHz is %d µV/m', (_ids, emission, megahertz, microvolts, level) => {
    expect(radiatedLimit(emission, megahertz)).toBe(microvolts);
    expect(decibels(microvolts)).toBeCloseTo(level, 2);
  });

  it.each(edges)('class %s at the edge of %d MHz is the tighter %d µV/m', (emission, megahertz, microvolts) => {
    expect(radiatedLimit(emission, megahertz)).toBe(microvolts);
  });

  it.each(['a', 'b'] as const)(
    'class %s has bands that meet at 88, 216 and 960 MHz, from 30 upwards (15.109)',
    (emission) => {
      const { bands } = radiatedLimits[emission];
      expect(bands.map((band) => band.fromMHz)).toEqual([30, 88, 216, 960]);
      expect(bands.map((band) => band.toMHz)).toEqual([88, 216, 960, Number.POSITIVE_INFINITY]);
    },
  );

  it('are measured at 3 m for class B and at 10 m for class A, and begin at 30 MHz', () => {
    expect([radiatedLimits.b.atM, radiatedLimits.a.atM]).toEqual([3, 10]);
    expect(radiatedLimit('b', 29.9)).toBeUndefined();
  });

  it('let class A give off 300 µV/m at 3 m, three times class B (EMC-020)', () => {
    expect(atDistance(90, 10, 3)).toBeCloseTo(300, 9);
    expect(decibels(atDistance(90, 10, 3))).toBeCloseTo(49.54, 2);
  });

  it('are 30 and 37 dB for class B at 10 m by the European standard (EMC-033)', () => {
    expect(europeanRadiatedLimits.atM).toBe(10);
    expect(europeanRadiatedLimits.bands.map((band) => [band.fromMHz, band.toMHz, band.decibels])).toEqual([
      [30, 230, 30],
      [230, 1000, 37],
    ]);
  });

  it('are 49.5 and 54 dB above 960 MHz (EMC-021)', () => {
    expect(decibels(radiatedLimit('a', 1000) ?? 0)).toBeCloseTo(49.5, 1);
    expect(decibels(radiatedLimit('b', 1000) ?? 0)).toBeCloseTo(54, 1);
  });
});

/** id, class, MHz, quasi-peak and average in dBµV. */
const conducted: readonly (readonly [string, EmissionClass, number, number, number])[] = [
  ['EMC-022', 'b', 0.15, 66, 56],
  ['EMC-022', 'b', 0.5, 56, 46],
  ['EMC-023', 'a', 0.15, 79, 66],
  ['EMC-023', 'a', 0.3, 79, 66],
  ['EMC-024', 'b', 1, 56, 46],
  ['EMC-025', 'a', 1, 73, 60],
  ['EMC-026', 'b', 10, 60, 50],
  ['EMC-027', 'a', 10, 73, 60],
];

/** id, MHz, dBµV of class B. */
const slope: readonly (readonly [string, number, number])[] = [
  ['EMC-029', 0.15, 66.0],
  ['EMC-030', 0.2, 63.61],
  ['EMC-031', 0.3, 60.24],
  ['EMC-032', 0.5, 56.0],
];

describe('conducted limits', () => {
  it.each(conducted)('%s: class %s at %d MHz is %d and %d dB', (_id, emission, megahertz, quasiPeak, average) => {
    expect(conductedLimit(emission, 'quasiPeak', megahertz)).toBeCloseTo(quasiPeak, 9);
    expect(conductedLimit(emission, 'average', megahertz)).toBeCloseTo(average, 9);
  });

  it.each(slope)('%s: class B at %d MHz is %d dB', (_id, megahertz, level) => {
    expect(conductedLimit('b', 'quasiPeak', megahertz)).toBeCloseTo(level, 2);
  });

  it.each(['a', 'b'] as const)('class %s has bands that meet at 0.5 and 5 MHz (EMC-022 to EMC-027)', (emission) => {
    const { bands } = conductedLimits[emission];
    expect(bands.map((band) => [band.fromMHz, band.toMHz])).toEqual([
      [0.15, 0.5],
      [0.5, 5],
      [5, 30],
    ]);
  });

  it('began at 450 kHz and stepped at 1.705 MHz before 2002 (EMC-034, EMC-036)', () => {
    expect(olderConductedLimits.a.map((band) => [band.fromMHz, band.toMHz])).toEqual([
      [0.45, 1.705],
      [1.705, 30],
    ]);
    expect(olderConductedLimits.b.map((band) => [band.fromMHz, band.toMHz])).toEqual([[0.45, 30]]);
  });

  it('are asked from 0.15 to 30 MHz', () => {
    expect(conductedLimit('b', 'quasiPeak', 0.14)).toBeUndefined();
    expect(conductedLimit('b', 'quasiPeak', 31)).toBeUndefined();
  });

  it('were 250 µV for class B, 1000 and 3000 µV for class A before 2002 (EMC-034 to EMC-037)', () => {
    expect(olderConductedLimits.b.map(({ microvolts }) => microvolts)).toEqual([250]);
    expect(olderConductedLimits.a.map(({ microvolts }) => microvolts)).toEqual([1000, 3000]);
    expect(decibels(250)).toBeCloseTo(47.96, 2);
    expect(decibels(1000)).toBeCloseTo(60, 2);
    expect(decibels(3000)).toBeCloseTo(69.54, 2);
  });
});

describe('home-built machines', () => {
  it('are up to five for personal use (EMC-038)', () => {
    expect(homeBuilt.machines).toBe(5);
  });
});
