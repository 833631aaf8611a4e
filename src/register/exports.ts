/** What leaves the register: one table for the class, and per student a JSON file, a table and a page to print. */
import Papa from 'papaparse';
import { byId } from '../units/ids.ts';
import { filePiece } from '../wording/file-name.ts';
import { showMarks, showTime } from '../wording/progress.ts';
import type { Register, Row } from './types.ts';

type Cell = string | number;

/**
 * RFC 4180 text in UTF-8 with a byte-order mark, so that spreadsheets read it as what it is.
 * A cell that a spreadsheet would run as a formula gets an apostrophe before it.
 */
function toCsv(fields: string[], data: Cell[][]): string {
  return `\uFEFF${Papa.unparse({ fields, data }, { escapeFormulae: true, newline: '\r\n' })}\r\n`;
}

const remarksOf = (row: Row) => row.remarks.map((one) => one.says).join(' ');
const whereNow = (row: Row) => {
  if (!row.card) return 'no job card yet';
  if (!row.card.now) return 'all steps done';
  return row.card.now.hold ? `hold point at step ${row.card.now.n}` : `step ${row.card.now.n}`;
};

/** One row a student, one block of columns an exercise; the same columns for every class of one course. */
export function classCsv(register: Register): string {
  const exercises = register.rows[0]?.exercises ?? [];
  const fields = [
    'student',
    'lessons read',
    'lessons',
    ...exercises.flatMap(({ exercise }) => [`${exercise} marks`, `${exercise} of`, `${exercise} attempts`]),
    'steps done',
    'steps',
    'now',
    'hold points passed',
    'hold points',
    'last entry',
    'remarks',
    'logbook',
    'file',
  ];
  const data = register.rows.map((row): Cell[] => [
    row.student,
    row.lessons.filter((lesson) => lesson.read).length,
    row.lessons.length,
    ...row.exercises.flatMap((one): Cell[] => [one.best ? one.best.marks : '', one.of, one.attempts]),
    row.card?.done ?? '',
    row.card?.of ?? '',
    whereNow(row),
    row.card ? row.card.holds.filter((hold) => hold.passed).length : '',
    row.card?.holds.length ?? '',
    row.lastAt ?? '',
    remarksOf(row),
    row.key,
    row.files[0] ?? '',
  ]);
  return toCsv(fields, data);
}

/** Everything the register knows of one student. `content` is the fingerprint of what marked it. */
export function studentJson(row: Row, content: string): string {
  return `${JSON.stringify({ format: 'benchbook-progress', version: 1, content, ...row }, undefined, 2)}\n`;
}

/** One line for each lesson, rubric line, hold point and measured value of one student. */
export function studentCsv(row: Row): string {
  const lessons = row.lessons.map((one): Cell[] => [
    'lesson',
    one.lesson,
    one.title,
    one.read ? 'read' : one.opened ? 'opened' : 'not opened',
    one.right,
    one.of,
    '',
    '',
  ]);
  const exercises = row.exercises.flatMap((one): Cell[][] => {
    if (!one.best) return [['exercise', one.exercise, one.title, 'not handed in', '', one.of, '', '']];
    const { best } = one;
    return best.lines.map((line): Cell[] => [
      'exercise',
      `${one.exercise}/${line.line}`,
      line.says,
      `best of ${one.attempts}`,
      line.marks,
      line.of,
      [line.why, line.more].filter(Boolean).join(' '),
      best.at,
    ]);
  });
  const card = row.card;
  const steps: Cell[][] = card
    ? [
        ['job card', card.card, card.title, whereNow(row), card.done, card.of, '', ''],
        ...card.holds.map((hold): Cell[] => [
          'hold point',
          `${card.card}/${hold.n}`,
          hold.action,
          hold.passed ? passedBy(hold.passed) : 'not passed',
          '',
          '',
          '',
          hold.passed?.at ?? '',
        ]),
        ...card.measured.map((one): Cell[] => [
          'measured',
          `${card.card}/${one.n}`,
          `${one.quantity}, ${one.unit}`,
          one.within ? 'within tolerance' : 'out of tolerance',
          one.value,
          '',
          '',
          '',
        ]),
      ]
    : [];
  const remarks = row.remarks.map((one): Cell[] => ['remark', one.id, '', '', '', '', one.says, '']);
  return toCsv(
    ['what', 'id', 'title', 'state', 'value', 'of', 'why', 'time'],
    [...lessons, ...exercises, ...steps, ...remarks],
  );
}

const passedBy = (passed: { by: 'initials' | 'self'; initials?: string }) =>
  passed.by === 'self' ? 'answered by the student' : `initials ${passed.initials ?? ''}`.trim();

const escapes: Record<string, string> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;', "'": '&#39;' };
const html = (text: string) => text.replace(/[&<>"']/g, (one) => escapes[one] ?? one);

/**
 * The progress page's style. The site's content policy names its digest: a page opened from the register is held to
 * the policy of the register.
 */
export const progressStyle = `
@page { margin: 15mm }
body { font: 12pt/1.4 "Atkinson Hyperlegible Next", "DejaVu Sans", sans-serif; color: #000; background: #fff; max-width: 180mm; margin: 8mm auto; padding: 0 4mm }
h1 { font-size: 20pt; margin: 0 0 2mm } h2 { font-size: 15pt; margin: 7mm 0 2mm; border-top: .5mm solid; padding-top: 2mm } h3 { font-size: 12pt; margin: 5mm 0 1mm }
table { border-collapse: collapse; width: 100% } th, td { border-bottom: .18mm solid #666; padding: 1.2mm 2mm 1.2mm 0; text-align: left; vertical-align: top; overflow-wrap: anywhere }
tr, h2, h3 { break-inside: avoid } h2, h3 { break-after: avoid } p { margin: 1mm 0 }
th, .lines td:nth-child(2) { white-space: nowrap } .lines td:first-child { width: 38% } .holds td:last-child { width: 42% } h3 + p { margin-bottom: 2mm }
dl { display: grid; grid-template-columns: repeat(4, 1fr); border: .5mm solid; margin: 8mm 0 0 } dl div { padding: 1.5mm 3mm; border-right: .18mm solid; overflow-wrap: anywhere } div:last-child { border: 0 } dt { font-size: 10pt } dd { margin: 0; font-weight: 700 }
`;

/** A progress page for one student: a whole HTML document without script, made to be printed on A4 or US Letter. */
export function progressPage(row: Row, course: string, content: string): string {
  const lessons = row.lessons.map(
    (one) =>
      `<tr><td>${html(one.sheet)}</td><td>${html(one.title)}</td><td>${one.read ? 'read' : one.opened ? 'opened' : 'not opened'}</td><td>${one.right} of ${one.of} right</td></tr>`,
  );
  const exercises = row.exercises.map((one) => {
    const head = `<h3>${html(one.title)}: ${one.best ? showMarks(one.best.marks, one.of) : `not handed in, of ${one.of}`}</h3>`;
    if (!one.best) return head;
    const lines = one.best.lines.map(
      (line) =>
        `<tr><td>${html(line.says)}</td><td>${showMarks(line.marks, line.of)}</td><td>${html([line.why, line.more].filter(Boolean).join(' '))}</td></tr>`,
    );
    const noted = one.noted.map(({ what, value, unit }) => `${html(what)} ${value} ${unit}`).join(', ');
    return `${head}<p>Best of ${one.attempts}, handed in ${showTime(one.best.at)}.${noted ? ` Measured by the student: ${noted}.` : ''}</p>
<table class="lines"><thead><tr><th>For</th><th>Marks</th><th>Why</th></tr></thead><tbody>${lines.join('\n')}</tbody></table>`;
  });
  const card = row.card
    ? `<p>${html(row.card.title)}, revision ${row.card.revision}: ${row.card.done} of ${row.card.of} steps done. Now: ${html(whereNow(row))}${row.card.now ? `, “${html(row.card.now.action)}”` : ''}.</p>
<table class="holds"><thead><tr><th>Hold point</th><th>What</th><th>Passed</th></tr></thead><tbody>${row.card.holds
        .map(
          (hold) =>
            `<tr><td>${hold.n}</td><td>${html(hold.action)}</td><td>${hold.passed ? `${html(passedBy(hold.passed))}, ${showTime(hold.passed.at)}` : 'not yet'}</td></tr>`,
        )
        .join('\n')}</tbody></table>
${row.card.measured.map((one) => `<p>Measured at step ${one.n}: ${html(one.quantity)} ${one.value} ${html(one.unit)}, ${one.within ? 'within tolerance' : 'out of tolerance'}.</p>`).join('\n')}`
    : '<p>No job card opened yet.</p>';
  const remarks = row.remarks.length
    ? `<h2>Remarks</h2><ul>${row.remarks.map((one) => `<li>${html(one.says)}</li>`).join('\n')}</ul>`
    : '';
  return `<!doctype html>
<html lang="en-GB"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'">
<title>Progress: ${html(row.student)}</title>
<style>${progressStyle}</style></head><body>
<h1>Progress: ${html(row.student)}</h1>
<p>${row.lastAt ? `Logbook up to ${showTime(row.lastAt)}.` : 'The logbook has no entries.'}</p>
<h2>Lessons</h2>
<table><thead><tr><th>Sheet</th><th>Lesson</th><th>State</th><th>Questions</th></tr></thead><tbody>${lessons.join('\n')}</tbody></table>
<h2>Exercises</h2>
${exercises.join('\n')}
<h2>Job card</h2>
${card}
${remarks}
<dl><div><dt>Course</dt><dd>${html(course)}</dd></div><div><dt>Student</dt><dd>${html(row.student)}</dd></div><div><dt>Logbook</dt><dd>${html(row.key)}</dd></div><div><dt>Marked with</dt><dd>${html(content)}</dd></div></dl>
</body></html>
`;
}

/** File names for each row, without an ending: `bench-7`, and `bench-7-2` when two rows would have the same. */
export function fileNames(register: Register): Map<string, string> {
  const names = new Map<string, string>();
  const used = new Map<string, number>();
  for (const row of [...register.rows].sort((a, b) => byId(a.key, b.key))) {
    const plain = filePiece(row.student, 'student');
    const count = (used.get(plain) ?? 0) + 1;
    used.set(plain, count);
    names.set(row.key, count === 1 ? plain : `${plain}-${count}`);
  }
  return names;
}
