import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { loadContent } from '../../../src/tools/load-content.ts';
import { showFault } from '../../../src/wording/fault.ts';

const cases = join(import.meta.dirname, '../cases');
const names = readdirSync(cases).sort();

describe('a content folder with slips in it', () => {
  test.each(names)('%s', (name) => {
    const { content, faults } = loadContent(join(cases, name, 'content'));
    expect(`${faults.map(showFault).join('\n')}\n`).toBe(readFileSync(join(cases, name, 'messages.txt'), 'utf8'));
    expect(content).toBeUndefined();
  });
});

test('every place a message names is there', () => {
  const faults = names.flatMap((name) =>
    loadContent(join(cases, name, 'content')).faults.map((fault) => ({ ...fault, name })),
  );
  const inFiles = faults.filter(({ file }) => /\.(yaml|mdx)$/.test(file));
  expect(inFiles.length).toBeGreaterThan(names.length);
  for (const { name, file, line, column } of inFiles) {
    const lines = readFileSync(join(cases, name, file), 'utf8').split('\n');
    expect(lines.length, file).toBeGreaterThanOrEqual(line);
    expect((lines[line - 1] ?? '').length + 1, `${file}:${line}`).toBeGreaterThanOrEqual(column);
  }
});
