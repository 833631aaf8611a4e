/** A CSV file as rows of cells, each with its place. */
import Papa from 'papaparse';
import type { Fault } from '../../wording/fault.ts';
import { commentMark } from './template.ts';

/** `row` counts from 1, as a spreadsheet does. */
export type Row = { row: number; cells: readonly string[] };
export type Table = { file: string; names: readonly string[]; rows: Row[]; faults: Fault[] };

const mostRows = 2000;

/** Faults name a row and a column of the sheet, both from 1. Rows that are empty or begin with # are passed over. */
export function readTable(file: string, text: string): Table {
  const parsed = Papa.parse<string[]>(text.replace(/^\uFEFF/, ''), { delimitersToGuess: [',', ';', '\t'] });
  const faults: Fault[] = [];
  const fault = (line: number, column: number, id: string, actual: string, expected: string) =>
    faults.push({ file, line, column, id: `import/${id}`, actual, expected });
  for (const { type, code, row } of parsed.errors) {
    if (type === 'Delimiter') continue;
    const actual =
      code === 'MissingQuotes' ? 'a quotation mark that is never closed' : 'a quotation mark inside a cell';
    fault((row ?? 0) + 1, 1, 'quotes', actual, 'cells quoted from end to end, as spreadsheets write them');
  }
  const [head = [], ...body] = parsed.data;
  const names = head.map((name) => name.trim());
  if (names.every((name) => name === '')) {
    fault(1, 1, 'no-columns', 'an empty first row', 'the names of the columns, as in the template of a class');
    return { file, names: [], rows: [], faults };
  }
  if (body.length > mostRows) {
    fault(mostRows + 2, 1, 'too-many-rows', `${body.length} rows`, `${mostRows} rows or fewer in one file`);
    return { file, names, rows: [], faults };
  }
  for (const [column, name] of names.entries()) {
    if (name !== '' && names.indexOf(name) !== column) {
      fault(1, column + 1, 'doubled-column', `${name} a second time`, 'each column once');
    }
  }
  const rows = body.flatMap((cells, index): Row[] => {
    const row = index + 2;
    const trimmed = cells.map((cell) => cell.trim());
    if (trimmed.every((cell) => cell === '') || trimmed[0]?.startsWith(commentMark)) return [];
    const beyond = trimmed.findIndex((cell, column) => cell !== '' && (names[column] ?? '') === '');
    if (beyond >= 0)
      fault(row, beyond + 1, 'no-column', `"${trimmed[beyond]}"`, 'a name for this column in the first row');
    return [{ row, cells: trimmed }];
  });
  return { file, names, rows, faults };
}
