/**
 * How much radio noise a machine may give off: class A is for workplaces, class B for homes. Dated; check the rules
 * where you live.
 */
export type EmissionClass = 'a' | 'b';

type RadiatedBand = { fromMHz: number; toMHz: number; microvoltsPerM: number };

/** Field strength by frequency, class A measured at 10 m and class B at 3 m; a band's upper edge belongs to the lower limit. */
export const radiatedLimits = {
  a: {
    atM: 10,
    bands: [
      { fromMHz: 30, toMHz: 88, microvoltsPerM: 90 },
      { fromMHz: 88, toMHz: 216, microvoltsPerM: 150 },
      { fromMHz: 216, toMHz: 960, microvoltsPerM: 210 },
      { fromMHz: 960, toMHz: Number.POSITIVE_INFINITY, microvoltsPerM: 300 },
    ],
    source: 'cfr-47-15',
  },
  b: {
    atM: 3,
    bands: [
      { fromMHz: 30, toMHz: 88, microvoltsPerM: 100 },
      { fromMHz: 88, toMHz: 216, microvoltsPerM: 150 },
      { fromMHz: 216, toMHz: 960, microvoltsPerM: 200 },
      { fromMHz: 960, toMHz: Number.POSITIVE_INFINITY, microvoltsPerM: 500 },
    ],
    source: 'cfr-47-15',
  },
} as const satisfies Record<EmissionClass, { atM: number; bands: readonly RadiatedBand[]; source: string }>;

/** Decibels above one microvolt (a metre). */
export const decibels = (microvolts: number): number => 20 * Math.log10(microvolts);

/** Microvolts a metre at another distance: the field falls as the distance grows. */
export const atDistance = (microvoltsPerM: number, fromM: number, toM: number): number =>
  (microvoltsPerM * fromM) / toM;

/** Microvolts a metre at the class's own distance; undefined below 30 MHz. */
export const radiatedLimit = (emission: EmissionClass, megahertz: number): number | undefined =>
  radiatedLimits[emission].bands.find(({ fromMHz, toMHz }) => megahertz >= fromMHz && megahertz <= toMHz)
    ?.microvoltsPerM;

/** Field strength by the European standard, class B at 10 m, in decibels above a microvolt a metre. */
export const europeanRadiatedLimits = {
  atM: 10,
  bands: [
    { fromMHz: 30, toMHz: 230, decibels: 30 },
    { fromMHz: 230, toMHz: 1000, decibels: 37 },
  ],
  source: 'en-55022',
} as const;

/** Noise on the mains lead, in decibels above a microvolt; class B falls with the logarithm of frequency up to 0.5 MHz. */
export const conductedLimits = {
  a: {
    bands: [
      { fromMHz: 0.15, toMHz: 0.5, quasiPeak: [79, 79], average: [66, 66] },
      { fromMHz: 0.5, toMHz: 5, quasiPeak: [73, 73], average: [60, 60] },
      { fromMHz: 5, toMHz: 30, quasiPeak: [73, 73], average: [60, 60] },
    ],
    source: 'en-55022',
  },
  b: {
    bands: [
      { fromMHz: 0.15, toMHz: 0.5, quasiPeak: [66, 56], average: [56, 46] },
      { fromMHz: 0.5, toMHz: 5, quasiPeak: [56, 56], average: [46, 46] },
      { fromMHz: 5, toMHz: 30, quasiPeak: [60, 60], average: [50, 50] },
    ],
    source: 'en-55022',
  },
} as const;

/** Decibels above a microvolt; undefined outside 0.15 to 30 MHz. At a band's edge the lower of the two. */
export function conductedLimit(
  emission: EmissionClass,
  detector: 'quasiPeak' | 'average',
  megahertz: number,
): number | undefined {
  const found = conductedLimits[emission].bands
    .filter(({ fromMHz, toMHz }) => megahertz >= fromMHz && megahertz <= toMHz)
    .map(({ fromMHz, toMHz, [detector]: [first, last] }) => {
      const share = Math.log(megahertz / fromMHz) / Math.log(toMHz / fromMHz);
      return first + (last - first) * share;
    });
  return found.length === 0 ? undefined : Math.min(...found);
}

/** Noise on the mains lead before 2002, in microvolts, by class, up to 30 MHz. Class B from 0.45 MHz without a step. */
export const olderConductedLimits = {
  a: [
    { fromMHz: 0.45, toMHz: 1.705, microvolts: 1000 },
    { fromMHz: 1.705, toMHz: 30, microvolts: 3000 },
  ],
  b: [{ fromMHz: 0.45, toMHz: 30, microvolts: 250 }],
  source: 'cfr-47-15-2001',
} as const;

/** Machines that one person may build for their own use without an authorisation, when none is sold and none is a kit. */
export const homeBuilt = { machines: 5, source: 'cfr-47-15' } as const;
