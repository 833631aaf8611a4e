import { spawnSync } from 'node:child_process';
import { cpSync, existsSync, mkdtempSync, readdirSync, readFileSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';

const top = join(import.meta.dirname, '../../..');
const work = mkdtempSync(join(tmpdir(), 'import-'));
cpSync(join(top, 'content'), join(work, 'content'), { recursive: true });
for (const one of ['src', 'node_modules', 'package.json']) symlinkSync(join(top, one), join(work, one));
const fans = () => readdirSync(join(work, 'content/parts/fan')).sort();

const run = (...args: string[]) =>
  spawnSync(process.execPath, ['src/tools/import.ts', ...args], { cwd: work, encoding: 'utf8' });
function file(name: string, text: string): string {
  writeFileSync(join(work, name), text);
  return name;
}
const head = 'class,id,name,maker,source,sizeMm';

test('rows become files that the check takes in', () => {
  const good = file('good.csv', `${head}\nfan,quay-120,Quay 120,Skarn,demo-catalogue,120\n`);
  const { status, stdout } = run(good);
  expect(stdout).toBe('1 part imported:\n  content/parts/fan/quay-120.yaml\n');
  expect(status).toBe(0);
  const check = spawnSync(process.execPath, ['src/tools/check.ts'], { cwd: work, encoding: 'utf8' });
  expect(check.stdout).toContain('nothing to put right');
  // A second time the part is there already.
  const again = run(good);
  expect(again.status).toBe(1);
  expect(again.stderr).toContain('which the catalogue has');
});

test('one row that is off, and nothing is imported', () => {
  const before = fans();
  const { status, stderr } = run(
    file(
      'half.csv',
      `${head}\nfan,quay-80,Quay 80,Skarn,demo-catalogue,80\nfan,quay-92,Quay 92,Skarn,demo-catalogue,big\n`,
    ),
  );
  expect(status).toBe(1);
  expect(stderr).toContain('half.csv:3:6  part/wrong-type  Unexpected "big"');
  expect(stderr).toContain('Nothing was imported.');
  expect(fans()).toEqual(before);
});

test('a template is a file that the command reads back, and is never written over', () => {
  expect(run('--template', 'fan').stdout).toContain('fan.csv');
  const text = readFileSync(join(work, 'fan.csv'), 'utf8');
  expect(text).toContain('sizeMm');
  // One row is begun for the reader, and still lacks everything but its class.
  expect(run('fan.csv').stderr).toContain('fan.csv:3:1  part/missing-field');
  expect(run('--template', 'fan').stderr).toContain('is there already');
  expect(readFileSync(join(work, 'fan.csv'), 'utf8')).toBe(text);
});

test('words that are off exit with 2 and say the usage', () => {
  expect(run().status).toBe(2);
  expect(run('missing.csv').stderr).toContain('there is no such file');
  expect(run('content').stderr).toContain('there is no such file');
  expect(run('--template', 'coler').stderr).toContain('Unexpected class "coler", expected cooler');
  expect(existsSync(join(work, 'content/parts/fan/quay-80.yaml'))).toBe(false);
});
