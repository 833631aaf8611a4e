/** Links and outlines of storage drives. */

/** Line rate and payload of SATA by generation, in megabits and megabytes a second: a tenth of the line rate in bytes. */
export const sataGenerations = {
  1: { megabits: 1500, megabytes: 150, source: 'sata' },
  2: { megabits: 3000, megabytes: 300, source: 'sata' },
  3: { megabits: 6000, megabytes: 600, source: 'sata' },
} as const;

/** M.2 modules for drives are 22 mm wide; these are the lengths there are, in millimetres. */
export const moduleWidthMm = 22;
export const moduleLengthsMm = [16, 26, 30, 38, 42, 60, 80, 110] as const;
export const moduleSource = 'm2';

/** The number printed on a module and beside its screw: width then length, `2280`. */
export const moduleCode = (lengthMm: number): string => `${moduleWidthMm}${lengthMm}`;

/** Which notch of a module goes over which key, and how many lanes come through it. */
export const moduleKeys = {
  b: { pins: [12, 19], lanes: 2, source: 'm2' },
  m: { pins: [59, 66], lanes: 4, source: 'm2' },
} as const;
