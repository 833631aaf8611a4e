import { execFileSync, spawnSync } from 'node:child_process';
import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { loadContent } from '../../../src/tools/load-content.ts';
import { showFault } from '../../../src/wording/fault.ts';

const top = join(import.meta.dirname, '../../..');
const check = join(top, 'src/tools/check.ts');

/** A copy of the course's own content, to be spoilt. */
let dir = '';
const file = (path: string) => join(dir, 'content', path);
const load = () => loadContent(join(dir, 'content'));

beforeEach(() => {
  dir = mkdtempSync(join(tmpdir(), 'benchbook-'));
  cpSync(join(top, 'content'), join(dir, 'content'), { recursive: true });
});
afterEach(() => rmSync(dir, { recursive: true }));

test('the content of the course has nothing amiss, and every file of it is taken in', () => {
  const { content, faults } = load();
  expect(faults.map(showFault)).toEqual([]);
  const filesIn = (kind: string) =>
    readdirSync(file(kind), { recursive: true }).filter((name) => /\.(yaml|mdx)$/.test(String(name))).length;
  expect(content?.parts).toHaveLength(filesIn('parts'));
  expect(content?.sources).toHaveLength(filesIn('sources'));
  expect(content?.lessons).toHaveLength(filesIn('lessons'));
  expect(content?.exercises).toHaveLength(filesIn('exercises'));
  expect(content?.procedures).toHaveLength(filesIn('procedures'));
  expect(content?.workedBuilds).toHaveLength(filesIn('worked-builds'));
});

test('lessons come in the order of their sheets, with the right choices of their questions', () => {
  const lessons = load().content?.lessons ?? [];
  const sheets = lessons.map(({ sheet }) => sheet.split('.').map(Number));
  expect(sheets).toEqual([...sheets].sort(([a = 0, b = 0], [c = 0, d = 0]) => a - c || b - d));
  const meeting = lessons.find(({ id }) => id === 'fit/how-parts-meet');
  // The second of three choices is the right one in both.
  expect(meeting?.questions.slice(0, 2)).toEqual([
    { id: 'splitter', right: 1 },
    { id: 'stiff', right: 1 },
  ]);
  expect(meeting?.exercises).toEqual(['the-loft-list']);
});

test('bytes that are not UTF-8 are told, and the other files are read on', () => {
  writeFileSync(file('sources/latin.yaml'), Buffer.from([0x69, 0x64, 0x3a, 0x20, 0xe9, 0x0a]));
  writeFileSync(file('parts/fan/skarn-new.yaml'), 'class: fan\nid: skarn-new\n');
  expect(load().faults.map(showFault)).toEqual([
    'content/parts/fan/skarn-new.yaml:1:1  part/missing-field  Unexpected fan without name, expected name: some words',
    'content/parts/fan/skarn-new.yaml:1:1  part/missing-field  Unexpected fan without maker, expected maker: some words',
    'content/parts/fan/skarn-new.yaml:1:1  part/missing-field  Unexpected fan without source, expected source: small letters, figures and dashes',
    'content/sources/latin.yaml:1:1  file/encoding  Unexpected bytes that are not UTF-8, expected text in UTF-8',
  ]);
});

test('a folder that is not there is told', () => {
  expect(loadContent(join(dir, 'nowhere')).faults).toHaveLength(1);
});

test('a slip in a part does not spread to the exercises that name it', () => {
  writeFileSync(
    file('parts/cooler/skarn-mid.yaml'),
    readFileSync(file('parts/cooler/skarn-mid.yaml'), 'utf8').replace('heightMm', 'height'),
  );
  expect(load().faults.map(({ file: path, id }) => [path, id])).toEqual([
    ['content/parts/cooler/skarn-mid.yaml', 'part/unknown-field'],
  ]);
});

test('an exercise whose answer no longer fits is told so, with the measures', () => {
  writeFileSync(
    file('parts/cooler/skarn-mid.yaml'),
    readFileSync(file('parts/cooler/skarn-mid.yaml'), 'utf8').replace(/heightMm: .*/, 'heightMm: 171'),
  );
  const told = load().faults.filter(({ id }) => id === 'exercise/answer-not-full-marks');
  expect(told).toHaveLength(1);
  expect(told[0]?.file).toBe('content/exercises/fit/harbour-museum.yaml');
  expect(told[0]?.actual).toMatch(/"fits" \(The cooler is 171 mm tall/);
});

test('a file cut off anywhere is told or read, and its neighbours are read on', { timeout: 60_000 }, () => {
  rmSync(join(dir, 'content'), { recursive: true });
  for (const name of ['an-unknown-part-in-an-exercise', 'a-loop-in-a-procedure']) {
    cpSync(join(import.meta.dirname, '../cases', name, 'content'), join(dir, 'content'), { recursive: true });
  }
  const paths = readdirSync(join(dir, 'content'), { recursive: true, encoding: 'utf8' });
  const slips = load().faults;
  for (const path of paths.filter((one) => /\.(yaml|mdx)$/.test(one))) {
    const whole = readFileSync(file(path), 'utf8');
    const elsewhere = slips.filter((fault) => fault.file !== `content/${path}`);
    for (let end = 0; end < whole.length; end += 9) {
      writeFileSync(file(path), whole.slice(0, end));
      expect(load().faults, `${path} cut off at ${end}`).toEqual(expect.arrayContaining(elsewhere));
    }
    writeFileSync(file(path), whole);
  }
});

test('the check ends with what the course holds, and exit code 0', { timeout: 60_000 }, () => {
  const said = execFileSync(process.execPath, [check], { cwd: dir, encoding: 'utf8' });
  expect(said).toMatch(/^\d+ parts, \d+ exercises?, \d+ steps: nothing to put right\n$/);
});

test('the check prints every fault, how many there are, and ends with exit code 1', { timeout: 60_000 }, () => {
  const slips = join(import.meta.dirname, '../cases/slips-in-two-files');
  const { status, stdout } = spawnSync(process.execPath, [check], { cwd: slips, encoding: 'utf8' });
  expect(status).toBe(1);
  expect(stdout).toBe(`${readFileSync(join(slips, 'messages.txt'), 'utf8')}3 things to put right in 2 files\n`);
});
