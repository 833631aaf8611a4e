import { spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { logbookToText } from '../../src/logbook/log.ts';
import { classCsv } from '../../src/register/exports.ts';
import { makeRegister } from '../../src/register/register.ts';
import { content } from '../helpers/content.ts';
import { aLogbook } from '../helpers/logbook.ts';

const top = join(import.meta.dirname, '../..');
const run = (...args: string[]) =>
  spawnSync(process.execPath, ['src/tools/register.ts', ...args], { cwd: top, encoding: 'utf8' });

const dir = mkdtempSync(join(tmpdir(), 'register-'));
const text = logbookToText(aLogbook([{ act: 'named', student: 'Bench 7' }]));
const good = join(dir, 'bench-7.json');
const bad = join(dir, 'notes.json');
writeFileSync(good, text);
writeFileSync(bad, 'nothing');

test('the command writes what the page keeps, and names what it set aside', () => {
  const out = join(dir, 'out');
  const { status, stdout, stderr } = run(good, bad, '--out', out);
  expect(status).toBe(0);
  expect(stdout).toContain('1 logbook read, 1 set aside.');
  expect(stderr).toContain('notes.json: The file is not a logbook');
  const register = makeRegister([{ name: 'bench-7.json', bytes: text.length, text }], content);
  expect(readFileSync(join(out, 'class.csv'), 'utf8')).toBe(classCsv(register));
  expect(readdirSync(join(out, 'students')).sort()).toEqual(['bench-7.csv', 'bench-7.html', 'bench-7.json']);
});

test('nothing readable is told and exits with 1', () => {
  const { status, stderr } = run(bad, join(dir, 'missing.json'), '--out', join(dir, 'none'));
  expect(status).toBe(1);
  expect(stderr).toContain('missing.json: could not be read.');
  expect(readdirSync(dir)).not.toContain('none');
});

test('words that are off exit with 2 and say the usage', () => {
  expect(run(good).status).toBe(2);
  expect(run('--out', dir).stderr).toContain('Usage: npm run register -- FILE... --out DIR');
  expect(run(good, '--aut', dir).status).toBe(2);
});
