import fc from 'fast-check';
import Papa from 'papaparse';
import { describe, expect, test } from 'vitest';
import { logbookToText } from '../../src/logbook/log.ts';
import type { Act } from '../../src/logbook/types.ts';
import { classCsv, fileNames, progressPage, studentCsv, studentJson } from '../../src/register/exports.ts';
import { makeRegister } from '../../src/register/register.ts';
import type { Register, Row } from '../../src/register/types.ts';
import { choosing, content } from '../helpers/content.ts';
import { aLogbook } from '../helpers/logbook.ts';

const right: Act = { act: 'handed-in', exercise: choosing.id, answer: { kind: 'choose', list: choosing.answer } };

/** A register of one logbook for each name. */
function registerOf(...names: string[]): Register {
  const files = names.map((student, n) => {
    const text = logbookToText(aLogbook([{ act: 'named', student }, right], `logbook${String(n).padStart(4, '0')}`));
    return { name: `file-${n}.json`, bytes: text.length, text };
  });
  return makeRegister(files, content);
}
const first = (register: Register): Row => register.rows[0] as Row;
const readCsv = (text: string) => Papa.parse<string[]>(text.replace(/^\uFEFF/, '').trimEnd()).data;

/** Names that would run in a spreadsheet or in a page, were they let. */
const harmful = [
  '=1+1',
  '+49',
  '-2',
  '@SUM(A1)',
  '\tx',
  '=HYPERLINK("http://example.invalid")',
  '<img src=x onerror=alert(1)>',
];

describe('the class table', () => {
  test('has one line a student and the same number of cells in each', () => {
    const [head, ...rows] = readCsv(classCsv(registerOf('Bench 1', 'Bench 2')));
    expect(rows.map((row) => row[0])).toEqual(['Bench 1', 'Bench 2']);
    expect(rows.every((row) => row.length === head?.length)).toBe(true);
  });

  test('has no cell that a spreadsheet would run', () => {
    const cells = readCsv(classCsv(registerOf(...harmful))).flat();
    expect(cells.filter((cell) => /^[=+\-@\t\r]/.test(cell))).toEqual([]);
    expect(cells).toContain("'=1+1");
  });

  test('keeps names with quotes, commas and line ends whole', () => {
    const name = 'Wen, "the second"\nbench 2';
    expect(readCsv(classCsv(registerOf(name)))[1]?.[0]).toBe(name);
  });

  test('is the same to the byte when made again', () => {
    expect(classCsv(registerOf('Bench 1', 'Bench 2'))).toBe(classCsv(registerOf('Bench 1', 'Bench 2')));
  });
});

describe("a student's table", () => {
  test('has no cell that a spreadsheet would run, whatever the student typed', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 40 }), (student) => {
        const cells = readCsv(studentCsv(first(registerOf(student)))).flat();
        expect(cells.filter((cell) => /^[=+\-@\t\r]/.test(cell))).toEqual([]);
      }),
      { seed: 17, numRuns: 30 },
    );
  });
  test('has a line for every lesson and every rubric line', () => {
    const rows = readCsv(studentCsv(first(registerOf('Bench 1'))));
    expect(rows.filter((row) => row[0] === 'lesson').length).toBe(content.lessons.length);
    expect(rows.filter((row) => row[1]?.startsWith(`${choosing.id}/`)).length).toBe(choosing.rubric.length);
  });
});

test("a student's JSON reads back to the row it was made from", () => {
  const register = registerOf('Bench 1');
  const { format, version, content: fingerprint, ...row } = JSON.parse(studentJson(first(register), register.content));
  expect({ format, version, fingerprint }).toEqual({
    format: 'benchbook-progress',
    version: 1,
    fingerprint: content.fingerprint,
  });
  expect(row).toEqual(first(register));
});

describe('the progress page', () => {
  test('never carries markup that a student typed', () => {
    const page = progressPage(first(registerOf('<script>alert("x")</script>')), 'Course', 'f');
    expect(page).not.toContain('<script');
    expect(page).toContain('&lt;script&gt;');
  });
  test('says the marks with their reasons', () => {
    const row = first(registerOf('Bench 1'));
    const page = progressPage(row, 'Course', 'f');
    const line = row.exercises.find((one) => one.best)?.best?.lines[0];
    expect(page).toContain(`${line?.marks} of ${line?.of}`);
    expect(page).toContain(`Progress: Bench 1`);
  });
});

test('file names are plain, and two students of one name do not share one', () => {
  const names = [...fileNames(registerOf('Bench 7', 'Bench 7', '../../etc', '???')).values()];
  expect(names.sort()).toEqual(['bench-7', 'bench-7-2', 'etc', 'student']);
});
