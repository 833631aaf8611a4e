import { readdirSync, readFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { describe, expect, test } from 'vitest';

const src = join(import.meta.dirname, '../../src');

/** Which rooms a room may import, besides itself. Lowest first; `content-types.ts` stands beside the rooms and holds types only. */
const mayImport: Record<string, string[]> = {
  units: [],
  standards: [],
  wording: ['units', 'standards', 'parts'],
  sources: ['units'],
  parts: ['units', 'standards', 'wording'],
  fit: ['units', 'standards', 'wording', 'parts'],
  exercises: ['units', 'wording', 'parts', 'fit'],
  procedures: ['units', 'wording', 'parts', 'fit'],
  logbook: ['units', 'parts', 'exercises'],
  register: ['units', 'wording', 'parts', 'fit', 'exercises', 'procedures', 'logbook'],
  drawings: ['units', 'standards', 'wording', 'parts', 'fit'],
};

/** What a pure room never touches: each entry says what it stands for. */
const impure: [RegExp, string][] = [
  [
    /\b(window|navigator|localStorage|indexedDB|location)\.[a-z]|\bdocument\.(body|create|querySel|getEl|cookie|active)/,
    'the browser',
  ],
  [/\bfetch\(/, 'the network'],
  [/from 'node:|\bprocess\./, 'files and the machine'],
  [/Date\.now\(|new Date\(\)/, 'the clock'],
  [/Math\.random\(/, 'chance'],
  [/\.toLocale|\bIntl\.|localeCompare/, 'the locale'],
];

const files = readdirSync(src, { recursive: true, withFileTypes: true })
  .filter((entry) => entry.isFile() && /\.tsx?$/.test(entry.name))
  .map((entry) => relative(src, join(entry.parentPath, entry.name)));
const roomOf = (path: string) => path.split('/')[0] ?? '';

/** Paths inside src that a file imports, types too. */
function importsOf(file: string): string[] {
  const text = readFileSync(join(src, file), 'utf8');
  const paths = [...text.matchAll(/(?:from|import)\s+'(\.[^']+)'/g)].map((match) => match[1] ?? '');
  return paths.map((path) => relative(src, join(src, file, '..', path)));
}

describe('the import wall', () => {
  for (const [room, allowed] of Object.entries(mayImport)) {
    test(`${room} imports only ${allowed.join(', ') || 'itself'}`, () => {
      const strangers = files
        .filter((file) => roomOf(file) === room)
        .flatMap((file) => importsOf(file).map((path) => [file, path] as const))
        .filter(([, path]) => ![room, ...allowed, 'content-types.ts'].includes(roomOf(path)))
        .map(([file, path]) => `${file} imports ${path}: lower rooms never import higher ones`);
      expect(strangers).toEqual([]);
    });
  }

  test('the pure rooms touch neither browser, files, clock, network, chance nor locale', () => {
    const touched = files
      .filter((file) => roomOf(file) in mayImport)
      .flatMap((file) => {
        const text = readFileSync(join(src, file), 'utf8').replace(/\/\*[\s\S]*?\*\/|\/\/.*$/gm, '');
        return impure.filter(([pattern]) => pattern.test(text)).map(([, what]) => `${file} touches ${what}`);
      });
    expect(touched).toEqual([]);
  });

  test('every file of the wall is looked at', () => {
    for (const room of ['units', 'parts', 'fit', 'logbook', 'register']) {
      expect(files.filter((file) => roomOf(file) === room).length, room).toBeGreaterThan(0);
    }
  });
});
