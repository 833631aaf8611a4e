/** Lists and counts in sentences. */
import { showNumber } from '../units/money.ts';

const joined = (items: readonly string[], last: string): string =>
  items.length < 2 ? (items[0] ?? '') : `${items.slice(0, -1).join(', ')} ${last} ${items.at(-1)}`;

/** "a, b and c". */
export const list = (items: readonly string[]): string => joined(items, 'and');

/** "a, b or c". */
export const either = (items: readonly string[]): string => joined(items, 'or');

const words = 'no one two three four five six seven eight nine ten eleven twelve'.split(' ');

/** "one", "twelve", "13": how a count is read inside a sentence. */
export const inWords = (n: number): string => words[n] ?? showNumber(n);

/** "one plug", "three plugs", "no plugs": for sentences. */
export const spelled = (n: number, one: string, many: string): string => `${inWords(n)} ${n === 1 ? one : many}`;

/** "an ATX board", "a 24-pin plug": the article by how the next word is said. */
export const withArticle = (phrase: string): string =>
  `${/^(8|11\b|18\b|[AEIOaeio]|un|x\d|SFX|HDMI)/.test(phrase) ? 'an' : 'a'} ${phrase}`;

/** "1 plug", "3 plugs", "no plugs": for headlines, where figures are looked for. */
export const count = (n: number, one: string, many: string): string =>
  n === 0 ? `no ${many}` : `${showNumber(n)} ${n === 1 ? one : many}`;

/** The same sentence with a capital at its front. */
export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
