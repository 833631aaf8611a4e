/** Lines of a data sheet: a name and what is recorded, in words. */
import { showNumber } from '../units/money.ts';
import { either, inWords } from './phrases.ts';
import { termName } from './terms.ts';

export type DataLine = { name: string; says: string };

export const notRecorded = 'not recorded';
export const measure = (value: number | undefined, unit: string): string =>
  value === undefined ? notRecorded : `${showNumber(value)} ${unit}`;
/** A value as one of the `show…` functions prints it. */
export const shown = <V>(value: V | undefined, show: (value: V) => string): string =>
  value === undefined ? notRecorded : show(value);
export const named = (value: string | undefined): string => (value === undefined ? notRecorded : termName(value));
export const terms = (values: readonly string[] | undefined): string => {
  if (values === undefined) return notRecorded;
  if (values.length === 0) return 'none';
  const counts = new Map<string, number>();
  for (const value of values) counts.set(termName(value), (counts.get(termName(value)) ?? 0) + 1);
  const named = [...counts].map(([name, n]) => (n === 1 ? name : `${n} × ${name}`));
  return named.join(named.some((name) => name.includes(', ')) ? '; ' : ', ');
};
/** What one place takes: "ATX or microATX". */
export const oneOf = (values: readonly (string | number)[]): string =>
  either(values.map((value) => termName(String(value))));
export const line = (name: string, says: string): DataLine => ({ name, says });
/** Whole inches and the like are recorded as text; yes and no in words. */
export const yesNo = (value: boolean | undefined): string => (value === undefined ? notRecorded : value ? 'yes' : 'no');
/** "two banks of four 30-pin sockets". */
export function banks(recorded: readonly { slots: number; pins: string }[]): string {
  const counts = new Map<string, number>();
  for (const { slots, pins } of recorded) {
    const each = `of ${inWords(slots)} ${termName(pins)} ${slots === 1 ? 'socket' : 'sockets'}`;
    counts.set(each, (counts.get(each) ?? 0) + 1);
  }
  return [...counts].map(([each, n]) => `${inWords(n)} ${n === 1 ? 'bank' : 'banks'} ${each}`).join(', ') || 'none';
}
