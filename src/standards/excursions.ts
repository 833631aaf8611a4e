/**
 * Short excursions above its rating that a supply of the third ATX generation bears.
 * Source: `atx-3-excursions`.
 */
export const excursionSource = 'atx-3-excursions';

/**
 * For an excursion no longer than `microseconds`, the most of its rated power in percent, and the share of the time it may
 * take in the design guide's test, in permille. `full` is for supplies above 450 W that have the 16-pin plug.
 */
export const excursions = [
  { microseconds: 100, dutyPermille: 50, percent: { full: 200, reduced: 150 } },
  { microseconds: 1_000, dutyPermille: 80, percent: { full: 180, reduced: 145 } },
  { microseconds: 10_000, dutyPermille: 125, percent: { full: 160, reduced: 135 } },
  { microseconds: 100_000, dutyPermille: 250, percent: { full: 120, reduced: 110 } },
] as const;

/** Which column of the table a supply has. */
export const excursionColumn = (ratedW: number, hasSixteenPinPlug: boolean): 'full' | 'reduced' =>
  ratedW > 450 && hasSixteenPinPlug ? 'full' : 'reduced';

/** The most watts for that long; the rating itself beyond a tenth of a second. */
export function excursionW(ratedW: number, column: 'full' | 'reduced', microseconds: number): number {
  const row = excursions.find((each) => microseconds <= each.microseconds);
  return (ratedW * (row === undefined ? 100 : row.percent[column])) / 100;
}

/** Root mean square, in watts, of a load that is high for a share of the time and low for the rest. */
export const rmsW = (highW: number, lowW: number, dutyPermille: number): number =>
  Math.sqrt((highW * highW * dutyPermille + lowW * lowW * (1000 - dutyPermille)) / 1000);

/**
 * Watts that leave the root mean square at the rating while the high part takes its share; 0 when that part alone
 * is more than the rating.
 */
export const lowW = (ratedW: number, highW: number, dutyPermille: number): number =>
  Math.sqrt(Math.max(0, (ratedW * ratedW * 1000 - highW * highW * dutyPermille) / (1000 - dutyPermille)));
