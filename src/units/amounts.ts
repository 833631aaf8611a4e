/** How amounts are printed: figures in threes, no more decimals than were counted, and always with their unit. */
import { showNumber } from './money.ts';

/** Takes off what binary fractions add: 33.3 less 31.25 is 2.05. Nothing is 0, never −0, which JSON does not keep. */
export const tidy = (value: number): number => Math.round(value * 100) / 100 + 0;

const show = (value: number, unit: string): string => `${showNumber(tidy(value))} ${unit}`;
/** A whole number of thousandths. */
const showThousandths = (thousandths: number, unit: string): string =>
  `${showNumber(Math.round(thousandths) / 1000)} ${unit}`;

export const showMm = (mm: number): string => show(mm, 'mm');
export const showWatts = (watts: number): string => show(watts, 'W');
export const showDeciwatts = (deciwatts: number): string => show(deciwatts / 10, 'W');
export const showGb = (gigabytes: number): string => show(gigabytes, 'GB');
export const showMts = (megatransfers: number): string => show(megatransfers, 'MT/s');
export const showMBps = (megabytes: number): string => show(megabytes, 'MB/s');
/** From megabits a second, the unit the core counts in. */
export const showGbitps = (megabits: number): string => showThousandths(megabits, 'Gbit/s');
/** From milliamps, the unit the core counts in. */
export const showAmps = (milliamps: number): string => showThousandths(milliamps, 'A');
/** From grams. */
export const showKg = (grams: number): string => showThousandths(grams, 'kg');
/** From millivolts, the unit files count in. */
export const showVolts = (millivolts: number): string => showThousandths(millivolts, 'V');

/** The largest unit that the amount is a whole number of, or the smallest there is. */
const showWhole = (amount: number, step: number, units: readonly string[]): string => {
  const [unit = '', ...larger] = units;
  return amount > 0 && amount % step === 0 && larger.length > 0
    ? showWhole(amount / step, step, larger)
    : show(amount, unit);
};
/** Memory, from kibibytes: "16 GB", "640 kB". Memory is sold in powers of two under these names. */
export const showMemory = (kibibytes: number): string => showWhole(kibibytes, 1024, ['kB', 'MB', 'GB']);
/** Room on a drive, from megabytes of 10^6 bytes: "120 MB", "64 GB". */
export const showRoom = (megabytes: number): string => showWhole(megabytes, 1000, ['MB', 'GB', 'TB']);
