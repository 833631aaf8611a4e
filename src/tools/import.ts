/**
 * `npm run import -- parts.csv`: rows of a spreadsheet become part files in `content/parts`, all of them or none.
 * `npm run import -- --template CLASS`: writes the table to fill in for one class, `CLASS.csv`.
 * Exit code 0 when every row became a file, 1 when something is to be put right, 2 when the command's words are off.
 */
import { existsSync, mkdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { parseArgs } from 'node:util';
import { type PartClass, partClasses } from '../parts/part.ts';
import { type Fault, showFault, sortFaults } from '../wording/fault.ts';
import { capital, count } from '../wording/phrases.ts';
import { nearest } from './content/nearest.ts';
import { readTable } from './import/read-table.ts';
import { readRows } from './import/rows.ts';
import { templateOf } from './import/template.ts';
import { loadContent } from './load-content.ts';

const usage = 'Usage: npm run import -- FILE.csv, or npm run import -- --template CLASS';
const largestFile = 5_000_000;

function stop(code: number, ...lines: string[]): never {
  for (const line of lines) console.error(line);
  process.exit(code);
}

function readArguments(): { template?: PartClass; file?: string } {
  try {
    const { values, positionals } = parseArgs({ allowPositionals: true, options: { template: { type: 'string' } } });
    const { template } = values;
    if (template === undefined) {
      const [file, ...more] = positionals;
      if (file === undefined || more.length > 0) return stop(2, 'Expected one CSV file.', usage);
      return { file };
    }
    const known = partClasses.find((partClass) => partClass === template);
    if (known) return { template: known };
    const expected = nearest(template, partClasses) ?? `one of ${partClasses.join(', ')}`;
    return stop(2, `Unexpected class "${template}", expected ${expected}.`, usage);
  } catch (reason) {
    return stop(2, reason instanceof Error ? reason.message : String(reason), usage);
  }
}

function readFile(file: string): string {
  const found = statSync(file, { throwIfNoEntry: false });
  if (!found?.isFile()) return stop(2, `${file}: there is no such file.`, usage);
  const { size } = found;
  if (size > largestFile) return stop(1, `${file}: ${size} bytes, expected ${largestFile} or fewer.`);
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(readFileSync(file));
  } catch {
    return stop(1, `${file}: bytes that are not UTF-8. Save the sheet as "CSV UTF-8".`);
  }
}

/** Written one by one, and taken away again when one of them cannot be. */
function writeAll(files: readonly { path: string; text: string }[]): void {
  const written: string[] = [];
  try {
    for (const { path, text } of files) {
      mkdirSync(dirname(path), { recursive: true });
      writeFileSync(path, text, { flag: 'wx' });
      written.push(path);
    }
  } catch (reason) {
    for (const path of written) rmSync(path);
    stop(1, `${reason instanceof Error ? reason.message : reason}. Nothing was imported.`);
  }
}

/** Never over a file that somebody may have filled in. */
function writeTemplate(of: PartClass): void {
  const path = `${of}.csv`;
  if (existsSync(path)) stop(1, `${path} is there already. Move it away, or give it another name.`);
  writeFileSync(path, templateOf(of), { flag: 'wx' });
  console.log(`${path}: fill in a row for each part, then npm run import -- ${path}`);
}

const { template, file } = readArguments();
if (template) writeTemplate(template);
else if (file) {
  const text = readFile(file);
  const { content, faults: before } = loadContent('content');
  if (!content) stop(1, ...before.map(showFault), 'The content has faults of its own; put those right first.');
  const table = readTable(file, text);
  const rows = readRows(table, content);
  const taken: Fault[] = rows.parts.flatMap(({ path, at }) =>
    existsSync(path)
      ? [
          {
            ...at,
            id: 'import/taken',
            actual: `a part whose file ${path} is there already`,
            expected: 'an id of its own',
          },
        ]
      : [],
  );
  const faults = sortFaults([...table.faults, ...rows.faults, ...taken]);
  if (faults.length > 0) {
    stop(
      1,
      ...faults.map(showFault),
      `${capital(count(faults.length, 'thing', 'things'))} to put right. Nothing was imported.`,
    );
  }
  if (rows.parts.length === 0) stop(1, `${file}: no rows to import.`);
  writeAll(rows.parts.map(({ path, text }) => ({ path: join('.', path), text })));
  console.log(`${capital(count(rows.parts.length, 'part', 'parts'))} imported:`);
  for (const { path } of rows.parts) console.log(`  ${path}`);
}
