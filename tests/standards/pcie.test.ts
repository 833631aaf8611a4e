// Source of the rows: encyclopaedia article "PCI Express"; x1 as published (basis: read), other widths by
// GT/s x code rate / 8 x lanes (basis: computed). BUS-001: same article, 250 MB/s a lane (basis: read).
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cardPower, pcieGenerations, pcieMBps, slotPower } from '../../src/standards/pcie.ts';

/** generation, GT/s a lane, GB/s of x1 as published, then computed GB/s of x2, x4, x8, x16. */
const rows: readonly (readonly [number, number, number, number, number, number, number])[] = [
  [1, 2.5, 0.25, 0.5, 1, 2, 4.0],
  [2, 5, 0.5, 1, 2, 4, 8.0],
  [3, 8, 0.985, 1.9692, 3.9385, 7.8769, 15.7538],
  [4, 16, 1.969, 3.9385, 7.8769, 15.7538, 31.5077],
  [5, 32, 3.938, 7.8769, 15.7538, 31.5077, 63.0154],
  [6, 64, 7.563, 15.125, 30.25, 60.5, 121.0],
  [7, 128, 15.125, 30.25, 60.5, 121, 242.0],
];

describe('PCI Express bandwidth', () => {
  it.each(rows)(
    'generation %d at %d GT/s carries the reference rate at every width',
    (generation, gt, x1, x2, x4, x8, x16) => {
      expect(pcieGenerations[generation]?.megatransfers).toBe(gt * 1000);
      expect(Math.abs(pcieMBps(1, generation) / 1000 - x1)).toBeLessThan(0.0015);
      for (const [lanes, gigabytes] of [
        [2, x2],
        [4, x4],
        [8, x8],
        [16, x16],
      ] as const) {
        const mbps = pcieMBps(lanes, generation);
        expect(mbps).toBeLessThanOrEqual(gigabytes * 1000 + 0.05);
        expect(mbps).toBeGreaterThan(gigabytes * 1000 - 1.05);
      }
    },
  );

  it('gives 250 MB/s for one lane of the first generation (BUS-001)', () => {
    expect(pcieMBps(1, 1)).toBe(250);
  });

  it('loses a fifth to the older line code and 1.54 % to the next (BUS-002)', () => {
    const lost = ([data, wire]: readonly [number, number]) => Math.round((1 - data / wire) * 10_000) / 100;
    expect(lost(pcieGenerations[2]?.code ?? [1, 1])).toBe(20);
    expect(lost(pcieGenerations[3]?.code ?? [1, 1])).toBe(1.54);
  });

  it('gives whole numbers that grow with lanes and with generation', () => {
    const lanes = fc.constantFrom(1, 2, 4, 8, 16);
    fc.assert(
      fc.property(lanes, lanes, fc.integer({ min: 1, max: 7 }), fc.integer({ min: 1, max: 7 }), (a, b, g, h) => {
        expect(Number.isInteger(pcieMBps(a, g))).toBe(true);
        if (a <= b && g <= h) expect(pcieMBps(a, g)).toBeLessThanOrEqual(pcieMBps(b, h));
      }),
    );
  });

  it('refuses a generation that is not in the table', () => {
    expect(() => pcieMBps(4, 0)).toThrow(RangeError);
    expect(() => pcieMBps(4, 8)).toThrow('no PCI Express generation 8');
  });
});

/** id, lanes, watts at power-up, once set up, and of a card of half height. Copy of an encyclopaedia article (basis: read). */
const slots: readonly (readonly [string, 1 | 4 | 8 | 16, number, number, number])[] = [
  ['PSU-071', 1, 10, 25, 10],
  ['PSU-072', 4, 25, 25, 25],
  ['PSU-072', 8, 25, 25, 25],
  ['PSU-073 and PSU-074', 16, 25, 75, 25],
];

describe('power through the slot', () => {
  it.each(slots)(
    '%s: a card %d lanes wide is given %d W, then %d W, %d W when low',
    (_id, lanes, startW, setUpW, lowW) => {
      expect(slotPower[lanes]).toEqual({ startW, setUpW, lowW });
    },
  );

  it('is the rounded sum of what its two rails give (PSU-075, computed: 75.9 W)', () => {
    expect(Math.floor(3.3 * 3 + 12 * 5.5)).toBe(slotPower[16].setUpW);
  });

  it('ends at 600 W for one card, all sources together (PSU-066, read)', () => {
    expect(cardPower.watts).toBe(600);
  });
});
