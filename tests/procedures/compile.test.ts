import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { compileProcedure } from '../../src/procedures/compile.ts';
import { showFault } from '../../src/wording/fault.ts';

const cases = new URL('cases/', import.meta.url);
const read = (path: string) => readFileSync(new URL(path, cases), 'utf8');
const compile = (folder: string) => compileProcedure('procedure.mdx', read(`${folder}/procedure.mdx`));

const good = readdirSync(cases).filter((name) => name !== '_faults');
const bad = readdirSync(new URL('_faults/', cases));

describe('a procedure becomes the graph written beside it', () => {
  test.each(good)('%s', (name) => {
    const { procedure, faults } = compile(name);
    expect(faults.map(showFault)).toEqual([]);
    expect(JSON.parse(JSON.stringify(procedure))).toEqual(JSON.parse(read(`${name}/graph.json`)));
  });
});

describe('a procedure with faults gives the messages written beside it, and no graph', () => {
  test.each(bad)('%s', (name) => {
    const { procedure, faults } = compile(`_faults/${name}`);
    expect(faults.map(showFault).join('\n')).toBe(read(`_faults/${name}/messages.txt`).trimEnd());
    expect(procedure).toBeUndefined();
  });
});

test('the id of a procedure is the name of its file', () => {
  const { procedure } = compileProcedure('content/procedures/board-swap.mdx', read('one-step/procedure.mdx'));
  expect(procedure?.id).toBe('board-swap');
});

test('lines that end in the old way give the same graph', () => {
  const text = read('repeats/procedure.mdx');
  const { procedure } = compileProcedure('procedure.mdx', text.replaceAll('\n', '\r\n'));
  expect(procedure).toEqual(compileProcedure('procedure.mdx', text).procedure);
});

test('cutting a good procedure short anywhere gives a fault at a place in the file, never a crash', () => {
  const text = read('measure-and-hold/procedure.mdx');
  for (let length = 0; length < text.trimEnd().length; length += 1) {
    const cut = text.slice(0, length);
    const { procedure, faults } = compileProcedure('procedure.mdx', cut);
    expect(procedure).toBeUndefined();
    expect(faults.length).toBeGreaterThan(0);
    for (const fault of faults) {
      expect(fault.line).toBeLessThanOrEqual(cut.split('\n').length);
      expect(Math.min(fault.line, fault.column)).toBeGreaterThanOrEqual(1);
    }
  }
});
