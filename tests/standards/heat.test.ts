// THM-001 to THM-006: a thermodynamics textbook, solution 6-108, and a heat-transfer textbook, chapter 8 (basis: read;
// THM-003, THM-005: computed). THM-007: a university case study (basis: read). THM-008: a page on forced air (basis: read).
// THM-011 to THM-020: arithmetic (basis: computed). THM-021 to THM-028: pages on fan laws (basis: read).
// THM-030 to THM-042: pages on adding decibels (basis: read). THM-043 to THM-045: arithmetic (basis: computed).
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  air,
  airflowM3h,
  airGramsPerM3,
  airRiseK,
  chipCelsius,
  fanAtDiameter,
  fanAtSpeed,
  m3hPerCfm,
  massFlowKgS,
  soundSumDb,
} from '../../src/standards/heat.ts';

/** Air of 1.20 kg/m³, which the constants of the trade are made with. */
const ofTrade = 1200;
const cfm = (watts: number, riseK: number, gramsPerM3: number) => airflowM3h(watts, riseK, gramsPerM3) / m3hPerCfm;

describe('the textbook computer: eight boards of 10 W, a fan of 25 W, air 10 K warmer', () => {
  it('needs 0.0104 kg of air a second (THM-001; 0.010448 by THM-003, 0.01045 by THM-004)', () => {
    expect(massFlowKgS(8 * 10 + 25, 10)).toBeCloseTo(0.0104, 4);
    expect(massFlowKgS(105, 10)).toBeCloseTo(0.010448, 6);
    expect(Math.abs(massFlowKgS(105, 10) / 0.01045 - 1)).toBeLessThan(0.01);
  });

  it('owes 24 % of the rise to the fan, 2.4 of 10 K (THM-002)', () => {
    const fanRise = 25 / (0.0104 * air.joulesPerKgK);
    expect(fanRise).toBeCloseTo(2.4, 1);
    expect(Math.round((fanRise / 10) * 100)).toBe(24);
  });

  it('is 0.5326 m³ a minute, 18.81 CFM (THM-005, density 1.177)', () => {
    expect(airflowM3h(105, 10, air.gramsPerM3) / 60).toBeCloseTo(0.5326, 4);
    expect(cfm(105, 10, air.gramsPerM3)).toBeCloseTo(18.81, 2);
  });

  it('needs 0.008955 kg a second with a fan of 10 W, as another edition has it (THM-006)', () => {
    expect(massFlowKgS(90, 10)).toBeCloseTo(0.008955, 6);
  });
});

describe('heat in air', () => {
  it('leaves room for four boards of 10 W beside 80 W at 0.01 kg/s and 12 K (THM-007)', () => {
    const carried = 80 / massFlowKgS(80, 12);
    expect(Math.floor((0.01 * carried - 80) / 10)).toBe(4);
  });

  it('needs 0.2653 kg/s for 800 W and 3 K (THM-008)', () => {
    expect(massFlowKgS(800, 3)).toBeCloseTo(0.2653, 4);
  });

  it('needs 1.757 CFM a watt a kelvin, 3.163 a degree Fahrenheit (THM-011, THM-012)', () => {
    expect(cfm(1, 1, ofTrade)).toBeCloseTo(1.757, 3);
    expect(cfm(1, 1 / 1.8, ofTrade)).toBeCloseTo(3.163, 3);
  });

  it('agrees with the 3160 of the trade within two in a thousand (THM-009, THM-010)', () => {
    expect(Math.abs(cfm(1000, 1 / 1.8, ofTrade) / 3160 - 1)).toBeLessThan(0.002);
  });

  it('needs 89.55 m³/h for 300 W and 10 K, 52.71 CFM (THM-013)', () => {
    expect(airflowM3h(300, 10, ofTrade)).toBeCloseTo(89.55, 2);
    expect(cfm(300, 10, ofTrade)).toBeCloseTo(52.71, 2);
  });

  it('needs 58.56 CFM for 500 W and 15 K (THM-014), and not the published 30.86 (THM-015 is a published error; THM-016: 58.5)', () => {
    expect(cfm(500, 15, ofTrade)).toBeCloseTo(58.56, 2);
    expect(Math.abs(cfm(500, 15, airGramsPerM3.room) - 58.5)).toBeLessThan(0.3);
    expect(cfm(500, 15, ofTrade)).toBeGreaterThan(1.8 * 30.86);
  });

  it('has air of 1.204 kg/m³ at 20 °C and 1.177 at 300 K, 1005 J a kilogram a kelvin (THM-017 to THM-019)', () => {
    expect(airGramsPerM3.room / 1000).toBeCloseTo(101325 / (287.05 * 293.15), 3);
    expect(air).toMatchObject({ gramsPerM3: 1177, joulesPerKgK: 1005 });
  });

  it('has 1.058 kg/m³ at 1,500 m, where the flow must be 1.16 times that at sea level (THM-020)', () => {
    expect(airGramsPerM3['at-1500-m']).toBe(1058);
    expect(1225 / airGramsPerM3['at-1500-m']).toBeCloseTo(1.16, 2);
  });

  it('gets as warm as the flow was worked out for', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 2000 }), fc.integer({ min: 1, max: 60 }), (watts, riseK) => {
        expect(airRiseK(watts, airflowM3h(watts, riseK))).toBeCloseTo(riseK, 9);
      }),
    );
  });
});

describe('fan laws', () => {
  it('turn 1200 into 1500 a minute: 10000, 2.0 and 5 become 12500, 3.13 and 9.77 (THM-024)', () => {
    const faster = fanAtSpeed({ flow: 10000, pressure: 2, power: 5 }, 1500 / 1200);
    expect(faster.flow).toBeCloseTo(12500, 6);
    expect(Math.abs(faster.pressure - 3.13)).toBeLessThan(0.006);
    expect(faster.power).toBeCloseTo(9.77, 2);
  });

  it('leave 51.2 % of the power at 80 % of the speed (THM-025)', () => {
    expect(fanAtSpeed({ flow: 100, pressure: 100, power: 100 }, 0.8).power).toBeCloseTo(51.2, 6);
  });

  it('add 10, 21 and 33 % for 10 % more speed (THM-026)', () => {
    const { flow, pressure, power } = fanAtSpeed({ flow: 100, pressure: 100, power: 100 }, 1.1);
    expect([flow, pressure, power].map(Math.round)).toEqual([110, 121, 133]);
  });

  it('go with the third, second and fifth power of the diameter (THM-027)', () => {
    expect(fanAtDiameter({ flow: 1, pressure: 1, power: 1 }, 2)).toEqual({ flow: 8, pressure: 4, power: 32 });
  });

  it('give 72.8 % more flow for a fifth more diameter, not the published 44 % (THM-028 disagrees)', () => {
    expect(fanAtDiameter({ flow: 100, pressure: 1, power: 1 }, 1.2).flow).toBeCloseTo(172.8, 6);
  });
});

/** id, equal sources, decibels that they add. */
const equals: readonly (readonly [string, number, number])[] = [
  ['THM-031', 2, 3],
  ['THM-032', 3, 4.8],
  ['THM-033', 4, 6],
  ['THM-034', 5, 7],
  ['THM-035', 10, 10],
  ['THM-036', 15, 11.8],
  ['THM-037', 20, 13],
];

/** id, levels, the level of all together, and how far a printed figure is rounded. */
const sums: readonly (readonly [string, readonly number[], number, number])[] = [
  ['THM-030', [120, 120], 123, 0.05],
  ['THM-038', [90, 90], 93, 0.05],
  ['THM-039', [90, 96], 97, 0.05],
  ['THM-040', [75, 80], 81.2, 0.05],
  ['THM-041', [62, 73], 73.3, 0.05],
  ['THM-042', [65, 65], 68, 0.05],
  ['THM-043', [90, 96], 96.9732, 0.0001],
  ['THM-043', [75, 80], 81.1933, 0.0001],
  ['THM-043', [62, 73], 73.332, 0.0001],
  ['THM-043', [90, 90], 93.0103, 0.0001],
  ['THM-044', [25, 25, 25, 32], 34.04, 0.005],
];

describe('sound', () => {
  it.each(equals)('%s: %d equal sources add %d dB', (_id, count, added) => {
    expect(Math.abs((soundSumDb(Array<number>(count).fill(30)) ?? 0) - 30 - added)).toBeLessThan(0.05);
  });

  it.each(sums)('%s: %j together are %d dB', (_id, levels, together, within) => {
    expect(Math.abs((soundSumDb(levels) ?? 0) - together)).toBeLessThanOrEqual(within);
  });

  it('is the level itself for one source', () => {
    expect(soundSumDb([32])).toBeCloseTo(32, 10);
  });

  it('has no level of nothing', () => {
    expect(soundSumDb([])).toBeUndefined();
  });
});

describe('the chip', () => {
  it('is at 46.25 °C with 65 W through 0.25 K/W into air of 30 °C (THM-045)', () => {
    expect(chipCelsius(30, 65, 0.25)).toBeCloseTo(46.25, 10);
  });
});
