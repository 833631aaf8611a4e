/** How much is read and judged, wherever a list comes from: an address, a logbook, an answer, an exercise. */

/** Of one part in a list. */
export const mostOfOne = 99;
/** Lines of a list. */
export const mostLines = 60;
/** Parts of a list in all. No machine has more; a longer list is a slip or a trick, and would take long to judge. */
export const mostInAll = 100;
/** Characters of an id. */
export const longestId = 120;

/** Whether a list may have so many of one part. */
export const isCount = (quantity: number): boolean =>
  Number.isInteger(quantity) && quantity >= 1 && quantity <= mostOfOne;
