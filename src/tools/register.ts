/**
 * `npm run register -- FILE... --out DIR`: logbooks in; the class table and each student's JSON, table and page out.
 * Exit code 0 when at least one logbook was read, 1 when none was, 2 when the command's words are off.
 */
import { mkdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { parseArgs } from 'node:util';
import { largestFile } from '../logbook/read.ts';
import { classCsv, fileNames, progressPage, studentCsv, studentJson } from '../register/exports.ts';
import { makeRegister } from '../register/register.ts';
import type { LogbookFile, Register } from '../register/types.ts';
import { showFault } from '../wording/fault.ts';
import { capital, count } from '../wording/phrases.ts';
import { loadContent } from './load-content.ts';

const usage = 'Usage: npm run register -- FILE... --out DIR';

function stop(code: number, ...lines: string[]): never {
  for (const line of lines) console.error(line);
  process.exit(code);
}

function readArguments(): { files: string[]; out: string } {
  try {
    const { values, positionals } = parseArgs({ allowPositionals: true, options: { out: { type: 'string' } } });
    if (!values.out) stop(2, 'Unexpected end, expected --out DIR.', usage);
    if (positionals.length === 0) stop(2, 'Unexpected end, expected at least one logbook file.', usage);
    return { files: positionals, out: values.out };
  } catch (reason) {
    return stop(2, reason instanceof Error ? reason.message : String(reason), usage);
  }
}

/** Files that are too large are told by their size and never opened. */
function open(path: string): LogbookFile | undefined {
  try {
    const { size } = statSync(path);
    const file = { name: basename(path), bytes: size };
    return size > largestFile ? file : { ...file, text: readFileSync(path, 'utf8') };
  } catch {
    console.error(`${path}: could not be read.`);
    return undefined;
  }
}

function write(register: Register, course: string, out: string): void {
  const students = join(out, 'students');
  mkdirSync(students, { recursive: true });
  writeFileSync(join(out, 'class.csv'), classCsv(register));
  const names = fileNames(register);
  for (const row of register.rows) {
    const path = join(students, names.get(row.key) ?? row.key);
    writeFileSync(`${path}.json`, studentJson(row, register.content));
    writeFileSync(`${path}.csv`, studentCsv(row));
    writeFileSync(`${path}.html`, progressPage(row, course, register.content));
  }
}

const { files, out } = readArguments();
const { content, faults } = loadContent('content');
if (!content) stop(1, ...faults.map(showFault), 'The course itself has faults, so nothing can be marked with it.');
const register = makeRegister(
  files.map(open).filter((file) => file !== undefined),
  content,
);
for (const { file, remarks } of register.aside) for (const { says } of remarks) console.error(`${file}: ${says}`);
for (const row of register.rows) for (const { says } of row.remarks) console.error(`${row.files[0]}: ${says}`);
if (register.rows.length === 0) stop(1, 'No logbook could be read, so nothing was written.');
write(register, content.course.title, out);
console.log(
  `${capital(count(register.rows.length, 'logbook', 'logbooks'))} read, ${register.aside.length} set aside. Written to ${out}.`,
);
