import fc from 'fast-check';
import { expect, test } from 'vitest';
import { readYaml } from '../../../src/tools/content/yaml-file.ts';

const text = `class: fan
milliamps:
panels:
  - id: front
    sizesMm: [120, 140]
`;

const read = (words: string, firstLine?: number) => {
  const { yaml } = readYaml('content/a.yaml', words, firstLine);
  if (!yaml) throw new Error('this text can be read');
  return yaml;
};

test('a value has the place where it begins', () => {
  expect(read(text).valueAt(['class'])).toEqual({ line: 1, column: 8 });
  expect(read(text).valueAt(['panels', 0])).toEqual({ line: 4, column: 5 });
  expect(read(text).valueAt(['panels', 0, 'sizesMm', 1])).toEqual({ line: 5, column: 20 });
});

test('a key has its own place', () => {
  expect(read(text).keyAt(['panels', 0, 'sizesMm'])).toEqual({ line: 5, column: 5 });
});

test('an empty value is shown by its key', () => {
  expect(read(text).valueAt(['milliamps'])).toEqual({ line: 2, column: 1 });
});

test('what is not there is shown by the nearest thing around it', () => {
  expect(read(text).valueAt(['panels', 0, 'units'])).toEqual({ line: 4, column: 5 });
  expect(read(text).valueAt(['panels', 3])).toEqual({ line: 4, column: 3 });
});

test('lines are counted from the line on which the text begins', () => {
  expect(read(text, 2).valueAt(['class'])).toEqual({ line: 2, column: 8 });
});

test('whatever is in a file, it is read or told of, and never by a place outside it', () => {
  const pieces = fc.constantFrom(
    'a',
    ':',
    ' ',
    '\n',
    '- ',
    '"',
    "'",
    '[',
    ']',
    '{',
    '}',
    '|',
    '&',
    '*',
    '!',
    '\t',
    '#',
    '? ',
    '---\n',
    '%',
    '@',
    '\r\n',
    'é',
    '0',
  );
  fc.assert(
    fc.property(
      fc.array(pieces, { maxLength: 40 }).map((all) => all.join('')),
      (words) => {
        const { yaml, faults } = readYaml('content/a.yaml', words);
        expect(yaml !== undefined || faults.length > 0).toBe(true);
        const lines = words.split('\n');
        for (const { line, column } of faults) {
          expect(line).toBeGreaterThanOrEqual(1);
          expect(line).toBeLessThanOrEqual(lines.length);
          expect(column).toBeLessThanOrEqual((lines[line - 1] ?? '').length + 1);
        }
      },
    ),
    { numRuns: 2000 },
  );
});
