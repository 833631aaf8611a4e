import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';

const top = join(import.meta.dirname, '../..');
const tracked = execFileSync('git', ['ls-files'], { cwd: top, encoding: 'utf8' }).trim().split('\n');

test('the top level holds what it is agreed to hold and nothing else', () => {
  const agreed = [
    'package.json',
    'package-lock.json',
    'tsconfig.json',
    'astro.config.mjs',
    'README.md',
    'DEVELOPERS.md',
    'content',
    'src',
    'tests',
    'public',
  ];
  const names = new Set(tracked.map((path) => path.split('/')[0] ?? ''));
  expect([...names].filter((name) => !name.startsWith('.') && !agreed.includes(name))).toEqual([]);
});

test('no test reads the design folder beside the project', () => {
  const readers = tracked
    .filter((path) => path.startsWith('tests/') && /\.[cm]?tsx?$/.test(path) && !path.endsWith('layout.test.ts'))
    .filter((path) => /\.\.\/shared|\/shared\/(reference|design|style)/.test(readFileSync(join(top, path), 'utf8')));
  expect(readers).toEqual([]);
});

test('file names are kebab-case, but for components', () => {
  const odd = tracked
    .filter((path) => /^(src|tests|content)\//.test(path))
    .filter((path) => !/^src\/(components|layouts|drawings)\//.test(path))
    .filter((path) =>
      path.split('/').some((name) => !/^(\[\.{0,3}[a-z]+\]|_?[a-z0-9]+([-.][a-z0-9]+)*)(\.[a-z0-9]+)*$/.test(name)),
    );
  expect(odd).toEqual([]);
});

test('the lock file names no registry', () => {
  expect(readFileSync(join(top, 'package-lock.json'), 'utf8')).not.toMatch(/"resolved"/);
});
