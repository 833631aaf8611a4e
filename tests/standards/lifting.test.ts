// EMC-054: lifting equation, metric and US constants (basis: read). EMC-055: a worked example in US units (basis: read).
// EMC-056: the product of its multipliers (basis: computed). Another office's guide is from memory (EMC-057) and not kept.
import { describe, expect, it } from 'vitest';
import { liftingConstant, recommendedKg } from '../../src/standards/lifting.ts';

const cm = (inches: number) => inches * 2.54;
const kgPerPound = 0.45359237;

describe('lifting by one person', () => {
  it('is at most 23 kg, 51 lb, in the best position (EMC-054)', () => {
    expect(liftingConstant.kg).toBe(23);
    expect(Math.round(liftingConstant.kg / kgPerPound)).toBe(51);
    expect(recommendedKg(25, 75, 25)).toBeCloseTo(23, 9);
  });

  it('takes no part better than its best', () => {
    expect(recommendedKg(10, 75, 5)).toBe(recommendedKg(25, 75, 25));
  });

  it('comes to the worked example within 2 %: its US constants are rounded (EMC-055 18.4 lb, EMC-056 18.47 lb)', () => {
    // Hands 20 inches in front, 6 above the floor, 16 inches up; a fair grip takes 5 % off.
    const kg = (recommendedKg(cm(20), cm(6), cm(16)) ?? 0) * 0.95;
    expect(Math.abs(kg / kgPerPound / 18.47 - 1)).toBeLessThan(0.02);
  });

  it('has the printed multipliers for height and travel in metric units too: 0.82 and 0.93 (EMC-055)', () => {
    expect((recommendedKg(25, cm(6), 25) ?? 0) / 23).toBeCloseTo(0.82, 2);
    expect((recommendedKg(25, 75, cm(16)) ?? 0) / 23).toBeCloseTo(0.93, 2);
  });

  it('recommends nothing that is out of reach', () => {
    expect(recommendedKg(64, 75, 25)).toBeUndefined();
    expect(recommendedKg(25, 176, 25)).toBeUndefined();
  });
});
