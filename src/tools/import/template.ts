/** The table an instructor fills in: names of columns, one row of units and meanings, one row to begin with. */
import Papa from 'papaparse';
import type { PartClass } from '../../parts/part.ts';
import { inWordsOf } from '../content/shape.ts';
import { type Column, columnsOf } from './columns.ts';
import { meaningsOf } from './meanings.ts';

/** A row that begins with this is passed over when the table is read. */
export const commentMark = '#';

/** CSV with a byte order mark, so that spreadsheets read it as UTF-8. */
export function templateOf(of: PartClass): string {
  const columns = columnsOf(of);
  const meanings = meaningsOf(of);
  const says = columns.map(
    (column, n) =>
      `${n === 0 ? `${commentMark} ` : ''}${column.name === 'class' ? `always ${of}` : about(column, meanings)}`,
  );
  const first = columns.map(({ name }) => (name === 'class' ? of : ''));
  return `\uFEFF${Papa.unparse([columns.map(({ name }) => name), says, first], { newline: '\r\n' })}\r\n`;
}

/** "From the bracket to the far end (a number in millimetres; leave empty when not known)". */
function about(
  { name, schema, of, isNeeded, within, mayBeNone }: Column,
  meanings: ReadonlyMap<string, string>,
): string {
  const names = name.split('.').filter((step) => !/^\d+$/.test(step));
  const field = names.at(-1) ?? name;
  const value = inWordsOf(of ?? schema, field).replace('true or false', 'yes or no');
  const notes = [
    of === undefined ? value : `${value}; several with semicolons between; none when there are none`,
    ...(mayBeNone ? ['or none'] : []),
    !isNeeded
      ? 'leave empty when not known'
      : within === ''
        ? 'needed'
        : `needed when anything of ${within} is filled in`,
  ].join('; ');
  const meaning = meanings.get(names.join('.'))?.replace(/\.$/, '');
  return meaning === undefined ? notes : `${meaning} (${notes})`;
}
