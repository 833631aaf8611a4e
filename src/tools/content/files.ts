/** Finds the files of a content folder, each where its kind belongs. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Fault } from '../../wording/fault.ts';

export type ContentFile = {
  /** Path from the project's top: `content/parts/cooler/skarn-mid.yaml`. */
  file: string;
  kind: Kind;
  /** The folder between the kind's and the file: a class of part, a unit of lessons; empty when there is none. */
  folder: string;
  /** The file's name without its ending: the id of what it holds. */
  name: string;
  text: string;
};

/** What lies where: one folder for each kind, with or without folders of its own. */
const layout = {
  courses: { inFolders: false, ending: '.yaml', shape: 'content/courses/<id>.yaml' },
  sources: { inFolders: false, ending: '.yaml', shape: 'content/sources/<id>.yaml' },
  parts: { inFolders: true, ending: '.yaml', shape: 'content/parts/<class>/<id>.yaml' },
  lessons: { inFolders: true, ending: '.mdx', shape: 'content/lessons/<unit>/<name>.mdx' },
  exercises: { inFolders: true, ending: '.yaml', shape: 'content/exercises/<unit>/<id>.yaml' },
  procedures: { inFolders: false, ending: '.mdx', shape: 'content/procedures/<id>.mdx' },
  'worked-builds': { inFolders: false, ending: '.yaml', shape: 'content/worked-builds/<id>.yaml' },
} as const;
export type Kind = keyof typeof layout;

const isKind = (name: string): name is Kind => Object.hasOwn(layout, name);
const isSlug = (name: string) => /^[a-z0-9]+(-[a-z0-9]+)*$/.test(name);

/** Every file below `dir`, by path; a file that lies where nothing is read from is a fault, never passed over. */
export function findFiles(dir: string): { files: ContentFile[]; faults: Fault[] } {
  const files: ContentFile[] = [];
  const faults: Fault[] = [];
  for (const path of pathsBelow(dir, '')) {
    const file = `content/${path}`;
    const steps = path.split('/');
    const [kind = '', ...rest] = steps;
    const last = rest.at(-1) ?? '';
    const fault = (id: string, actual: string, expected: string) =>
      faults.push({ file, line: 1, column: 1, id, actual, expected });
    if (!isKind(kind) || rest.length === 0) {
      fault('file/unknown-folder', path, `a file in content/${Object.keys(layout).join(', content/')}`);
      continue;
    }
    const { inFolders, ending, shape } = layout[kind];
    if (rest.length !== (inFolders ? 2 : 1) || !last.endsWith(ending)) {
      fault('file/place', file, shape);
      continue;
    }
    const name = last.slice(0, -ending.length);
    const folder = inFolders ? (rest[0] ?? '') : '';
    if (!isSlug(name) || (inFolders && !isSlug(folder))) {
      fault('file/name', isSlug(name) ? folder : last, 'a name of small letters, figures and dashes');
      continue;
    }
    const text = readText(join(dir, path));
    if (text === undefined) fault('file/encoding', 'bytes that are not UTF-8', 'text in UTF-8');
    else files.push({ file, kind, folder, name, text });
  }
  return { files, faults };
}

/** Paths with forward slashes, in an order that no machine's language changes. Names that begin with a dot are not content. */
function pathsBelow(dir: string, below: string): string[] {
  const entries = readdirSync(join(dir, below), { withFileTypes: true })
    .filter(({ name }) => !name.startsWith('.'))
    .sort((a, b) => (a.name < b.name ? -1 : 1));
  return entries.flatMap((entry) => {
    const path = below === '' ? entry.name : `${below}/${entry.name}`;
    return entry.isDirectory() ? pathsBelow(dir, path) : [path];
  });
}

function readText(path: string): string | undefined {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(readFileSync(path));
  } catch (reason) {
    if (reason instanceof TypeError) return undefined;
    throw reason;
  }
}
