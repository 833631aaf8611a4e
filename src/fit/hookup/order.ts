/**
 * The one order that decides every tie. Ids compare by code unit, runs of digits by their number:
 * `module-10` comes after `module-2`, on every machine and in every locale.
 */

/** Text that sorts as its id should. */
export const idKey = (id: string): string => id.replace(/\d+/g, (digits) => digits.padStart(12, '0'));

export const compareText = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

/** Ids that differ only in leading zeros fall back on their plain text. */
export const compareIds = (a: string, b: string): number => compareText(idKey(a), idKey(b)) || compareText(a, b);
