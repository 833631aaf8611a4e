import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { replaceSite } from '../../src/tools/replace-site.ts';

let top = '';
const page = () => readFileSync(join(top, 'dist/index.html'), 'utf8');

/** Writes a site of one page, and something that only this site has. */
function write(dir: string, words: string): void {
  mkdirSync(dir, { recursive: true });
  writeFileSync(join(dir, 'index.html'), words);
  writeFileSync(join(dir, `${words}.html`), words);
}

beforeEach(() => {
  top = mkdtempSync(join(tmpdir(), 'benchbook-'));
  write(join(top, 'dist'), 'last');
});
afterEach(() => rmSync(top, { recursive: true }));

test('a build that goes well takes the place of the last site, whole', async () => {
  const code = await replaceSite(top, async (dir) => {
    expect(page()).toBe('last');
    write(dir, 'next');
    return 0;
  });
  expect(code).toBe(0);
  expect(readdirSync(join(top, 'dist')).sort()).toEqual(['index.html', 'next.html']);
  expect(readdirSync(top)).toEqual(['dist']);
});

test('a build that fails half-way leaves the last site as it was, and passes its exit code on', async () => {
  const code = await replaceSite(top, async (dir) => {
    write(dir, 'half');
    return 3;
  });
  expect(code).toBe(3);
  expect(readdirSync(join(top, 'dist')).sort()).toEqual(['index.html', 'last.html']);
  expect(readdirSync(top)).toEqual(['dist']);
});

test('a build that cannot be started leaves the last site as it was', async () => {
  await expect(replaceSite(top, () => Promise.reject(new Error('no builder')))).rejects.toThrow('no builder');
  expect(page()).toBe('last');
  expect(readdirSync(top)).toEqual(['dist']);
});

test('a build that reports success and wrote nothing has failed', async () => {
  expect(await replaceSite(top, () => Promise.resolve(0))).toBe(1);
  expect(page()).toBe('last');
});

test('the first build needs no site before it', async () => {
  rmSync(join(top, 'dist'), { recursive: true });
  await replaceSite(top, async (dir) => {
    write(dir, 'first');
    return 0;
  });
  expect(page()).toBe('first');
});

test('what an earlier run left half-built does not come into the next site', async () => {
  write(join(top, '.dist-next'), 'stale');
  await replaceSite(top, async (dir) => {
    write(dir, 'next');
    return 0;
  });
  expect(readdirSync(join(top, 'dist')).sort()).toEqual(['index.html', 'next.html']);
});

test('a run that was cut off between two names gives the last site back', async () => {
  renameSync(join(top, 'dist'), join(top, '.dist-last'));
  expect(await replaceSite(top, () => Promise.resolve(1))).toBe(1);
  expect(page()).toBe('last');
  expect(existsSync(join(top, '.dist-last'))).toBe(false);
});
