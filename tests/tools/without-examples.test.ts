import { readFileSync } from 'node:fs';
import { stripTypeScriptTypes } from 'node:module';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { rules } from '../../src/fit/rules/index.ts';
import { dropExamples } from '../../src/tools/without-examples.ts';

const sourceOf = (id: string) => readFileSync(join(import.meta.dirname, `../../src/fit/rules/${id}.ts`), 'utf8');

test('every rule loses its examples and nothing else', () => {
  for (const { id } of rules) {
    const source = sourceOf(id);
    const left = dropExamples(source);
    expect(left.match(/^ {2}examples: .*$/gm), id).toEqual(['  examples: [],']);
    const [before = '', after = ''] = left.split('\n  examples: [],');
    expect(source.startsWith(before) && source.endsWith(after), id).toBe(true);
    expect(before, id).toContain('\n  say: ');
    expect(() => stripTypeScriptTypes(left), id).not.toThrow();
  }
});

test('what is no rule is left as it is', () => {
  const source = sourceOf('words');
  expect(dropExamples(source)).toBe(source);
});
