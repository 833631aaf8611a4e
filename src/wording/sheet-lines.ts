/** Lines of a data sheet: a name and what is recorded, in words. */
import { showNumber } from '../units/money.ts';
import { termName } from './terms.ts';

export type DataLine = { name: string; says: string };

export const notRecorded = 'not recorded';
export const measure = (value: number | undefined, unit: string): string =>
  value === undefined ? notRecorded : `${showNumber(value)} ${unit}`;
export const named = (value: string | undefined): string => (value === undefined ? notRecorded : termName(value));
export const terms = (values: readonly string[] | undefined): string => {
  if (values === undefined) return notRecorded;
  if (values.length === 0) return 'none';
  const counts = new Map<string, number>();
  for (const value of values) counts.set(termName(value), (counts.get(termName(value)) ?? 0) + 1);
  return [...counts].map(([name, n]) => (n === 1 ? name : `${n} × ${name}`)).join(', ');
};
export const line = (name: string, says: string): DataLine => ({ name, says });
/** Whole inches and the like are recorded as text; yes and no in words. */
export const yesNo = (value: boolean | undefined): string => (value === undefined ? notRecorded : value ? 'yes' : 'no');
