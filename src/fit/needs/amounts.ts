/** Recorded measures as whole amounts of the small units that resources count in; undefined stays undefined. */
import type { PartOf } from '../../parts/part.ts';
import { pcieGenerations, pcieMBps } from '../../standards/pcie.ts';
import { pictureMbps } from '../../standards/picture.ts';

/** Watts, with tenths, as deciwatts rounded up. */
export const deciwatts = (watts: number): number => Math.ceil(Math.round(watts * 10_000) / 1000);

/** Whole and within reach, or undefined: a mode or link beyond the tables has no figure to judge by. */
const known = (amount: number): number | undefined =>
  Number.isSafeInteger(amount) && amount >= 0 ? amount : undefined;

/** Megabytes a second of a link. */
export function linkMBps(lanes: number | undefined, generation: number | undefined): number | undefined {
  if (lanes === undefined || generation === undefined || !(generation in pcieGenerations)) return undefined;
  return known(pcieMBps(lanes, generation));
}

/** Megabits a second that a monitor's picture takes at its own size and rate. */
export function modeMbps({ widthPx, heightPx, refreshHz, bitsPerColour }: PartOf<'monitor'>): number | undefined {
  if (widthPx === undefined || heightPx === undefined || refreshHz === undefined || bitsPerColour === undefined)
    return undefined;
  return known(pictureMbps({ widthPx, heightPx, refreshHz, bitsPerColour }));
}

/** Units of 60 mm along a fan panel: a 120 takes 2, a 140 takes 3. */
export const panelUnits = (sizeMm: number): number => Math.ceil(sizeMm / 60);

/** Half slots from slots: 2.5 is 5. */
export const halfSlots = (slotsThick: number): number => Math.round(slotsThick * 2);

/** `{ milliamps: 180 }`, or nothing when the amount is not recorded. */
export const drawing = (quantity: string, amount: number | undefined): { draws?: Record<string, number> } =>
  amount === undefined ? {} : { draws: { [quantity]: amount } };
