/**
 * Heat carried off by air, fans, and sound. Air moves so many joules a kilogram a kelvin: what it takes away is its mass
 * times that times how much warmer it gets.
 */

/** Of a warm room, 300 K, at sea level. */
export const air = { gramsPerM3: 1177, joulesPerKgK: 1005, source: 'heat-textbook' } as const;

/** Of air at 20 °C at sea level, and of the standard atmosphere at 1,500 m, where a fan carries a seventh less heat. */
export const airGramsPerM3 = { room: 1204, 'at-1500-m': 1058, source: 'standard-atmosphere' } as const;

/** Kilograms of air a second that take away so many watts while getting so many kelvins warmer. */
export const massFlowKgS = (watts: number, riseK: number): number => watts / (air.joulesPerKgK * riseK);

/** Cubic metres of air an hour for the same. */
export const airflowM3h = (watts: number, riseK: number, gramsPerM3: number = airGramsPerM3.room): number =>
  (massFlowKgS(watts, riseK) * 3600 * 1000) / gramsPerM3;

/** How many kelvins warmer the air leaves than it came, all watts carried by it. */
export const airRiseK = (watts: number, m3PerHour: number, gramsPerM3: number = airGramsPerM3.room): number =>
  (watts * 3600 * 1000) / (m3PerHour * gramsPerM3 * air.joulesPerKgK);

/** One cubic foot a minute, in cubic metres an hour: (0.3048 m)³ × 60. */
export const m3hPerCfm = 1.699010795;

/** The same fan in the same case at another speed. */
export type FanDuty = { flow: number; pressure: number; power: number };

/** Flow goes with the speed, pressure with its square, power with its cube. Source: `fan-laws`. */
export const fanAtSpeed = ({ flow, pressure, power }: FanDuty, speedRatio: number): FanDuty => ({
  flow: flow * speedRatio,
  pressure: pressure * speedRatio ** 2,
  power: power * speedRatio ** 3,
});

/** A fan of the same shape and speed and another diameter. Source: `fan-laws`. */
export const fanAtDiameter = ({ flow, pressure, power }: FanDuty, diameterRatio: number): FanDuty => ({
  flow: flow * diameterRatio ** 3,
  pressure: pressure * diameterRatio ** 2,
  power: power * diameterRatio ** 5,
});

/** The level of sources heard together, in decibels; no sources, no level. Source: `adding-decibels`. */
export const soundSumDb = (levelsDb: readonly number[]): number | undefined =>
  levelsDb.length === 0 ? undefined : 10 * Math.log10(levelsDb.reduce((sum, level) => sum + 10 ** (level / 10), 0));

/** Degrees of a chip: the air's, and the watts times the resistance of everything between. */
export const chipCelsius = (airCelsius: number, watts: number, kelvinPerWatt: number): number =>
  airCelsius + watts * kelvinPerWatt;
