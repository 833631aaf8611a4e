import { describe, expect, it } from 'vitest';
import { showAmps, showDeciwatts, showGbitps, showMm, showMts, showWatts, tidy } from '../../src/units/amounts.ts';

describe('amounts', () => {
  it('take off what binary fractions add', () => {
    expect(33.3 - 31.25).not.toBe(2.05);
    expect(tidy(33.3 - 31.25)).toBe(2.05);
  });

  it('are printed with their unit, in threes, and with no needless decimals', () => {
    expect(showMm(31.25)).toBe('31.25 mm');
    expect(showMm(24)).toBe('24 mm');
    expect(showWatts(1200)).toBe('1,200 W');
    expect(showDeciwatts(541)).toBe('54.1 W');
    expect(showMts(5600)).toBe('5,600 MT/s');
  });

  it('keep the last thousandth that the core counts, so a difference of one never reads as nothing', () => {
    expect(showAmps(1)).toBe('0.001 A');
    expect(showAmps(1400)).toBe('1.4 A');
    expect(showGbitps(1)).toBe('0.001 Gbit/s');
    expect(showGbitps(14079)).toBe('14.079 Gbit/s');
  });
});
