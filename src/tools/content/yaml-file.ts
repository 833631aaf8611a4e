/** Reads YAML so that every key and value keeps its place in the file. */

import type { YAMLError } from 'yaml';
import {
  isAlias,
  isCollection,
  isMap,
  isScalar,
  isSeq,
  LineCounter,
  type Node,
  type Pair,
  parseDocument,
  visit,
} from 'yaml';
import type { Fault } from '../../wording/fault.ts';

export type Path = readonly (string | number)[];
export type Place = { line: number; column: number };
export type YamlFile = {
  file: string;
  data: unknown;
  /** Where the value at the path stands; the key when the value is empty; the nearest thing around it when it is not there. */
  valueAt(path: Path): Place;
  /** Where the last key of the path stands. */
  keyAt(path: Path): Place;
};

/**
 * @param firstLine the line of the file on which `text` begins.
 * Of the slips in writing only the first is told: those after it mostly follow from it.
 */
export function readYaml(file: string, text: string, firstLine = 1): { yaml?: YamlFile; faults: Fault[] } {
  const lines = new LineCounter();
  const document = parseDocument(text, { lineCounter: lines, prettyErrors: false });
  const place = (offset: number): Place => {
    const { line, col } = lines.linePos(offset);
    return { line: line + firstLine - 1, column: col };
  };
  const fault = (offset: number, id: string, actual: string, expected: string): Fault => ({
    file,
    ...place(offset),
    id,
    actual,
    expected,
  });

  const faults: Fault[] = [];
  const doubled = document.errors.filter(({ code }) => code === 'DUPLICATE_KEY');
  for (const { pos } of doubled) {
    faults.push(fault(pos[0], 'yaml/doubled-key', `${word(text, pos[0])} a second time`, 'each field once'));
  }
  const slip = [...document.errors, ...document.warnings].find((error) => !doubled.includes(error));
  if (slip) {
    const opened = openedBefore(document.contents, slip);
    faults.push(
      opened === undefined
        ? fault(slip.pos[0], 'yaml/syntax', ...inWords(slip, text))
        : fault(opened, 'yaml/syntax', `${text[opened]} that is never closed`, `a closing ${closing(text[opened])}`),
    );
    return { faults };
  }
  const beyond: Fault[] = [];
  visit(document, {
    Alias: (_, { range, source }) => {
      beyond.push(fault(range?.[0] ?? 0, 'yaml/alias', `*${source}`, 'the value itself, written out'));
    },
    Pair: (_, { key }) => {
      if (!isCollection(key)) return;
      beyond.push(fault(key.range?.[0] ?? 0, 'yaml/key', 'a group where a field is named', 'the name of a field'));
    },
  });
  if (beyond.length > 0) return { faults: [...faults, ...beyond] };

  const root = document.contents;
  const find = (path: Path): { key?: Node; value: Node | null } => {
    let found: { key?: Node; value: Node | null } = { value: root };
    for (const step of path) {
      const inside = childOf(found.value, step);
      if (!inside) break;
      found = inside;
    }
    return found;
  };
  const start = (node: Node | null | undefined) => node?.range?.[0] ?? 0;
  return {
    faults,
    yaml: {
      file,
      data: document.toJS(),
      valueAt(path) {
        const { key, value } = find(path);
        return place(start(isEmpty(value) ? (key ?? value) : value));
      },
      keyAt(path) {
        const { key, value } = find(path);
        return place(start(key ?? value));
      },
    },
  };
}

const isEmpty = (node: Node | null) => node === null || (isScalar(node) && node.value === null && !node.source);

function childOf(node: Node | null, step: string | number): { key?: Node; value: Node | null } | undefined {
  if (isSeq(node) && typeof step === 'number') {
    const item = node.items[step] as Node | undefined;
    return item && { value: item };
  }
  if (!isMap(node)) return undefined;
  const pair = (node.items as Pair<Node, Node | null>[]).find(
    ({ key }) => isScalar(key) && String(key.value) === String(step),
  );
  return pair && { key: pair.key, value: pair.value };
}

/** Where the quote or bracket opens that the slip is about. */
function openedBefore(contents: Node | null, { code, message, pos }: YAMLError): number | undefined {
  const isQuote = code === 'MISSING_CHAR' && message.includes('quote');
  const isBracket = code === 'BAD_INDENT' && /[\]}]$/.test(message);
  if (!isQuote && !isBracket) return undefined;
  let opened: number | undefined;
  visit(contents, (_, node) => {
    if (isAlias(node) || !(isScalar(node) || isCollection(node)) || !node.range || node.range[0] > pos[0]) return;
    const fits = isQuote ? isScalar(node) && node.type?.startsWith('QUOTE') : isCollection(node) && node.flow;
    if (fits && node.range[1] >= pos[0]) opened = node.range[0];
  });
  return opened;
}

const closing = (open: string | undefined) => (open === '[' ? ']' : open === '{' ? '}' : (open ?? ''));

/** The word that begins at the offset, or the rest of a short line. */
function word(text: string, offset: number): string {
  const line = text.slice(offset).split(/\r?\n/, 1)[0] ?? '';
  return /^[\w-]+/.exec(line)?.[0] ?? line.trim().slice(0, 40);
}

/** What stands there, and what should. */
function inWords({ code, message, pos }: YAMLError, text: string): [string, string] {
  const there = text.slice(pos[0]).trim() === '' ? 'end of the file' : word(text, pos[0]) || 'end of the line';
  switch (code) {
    case 'TAB_AS_INDENT':
      return ['a tab', 'spaces at the beginning of a line'];
    case 'MISSING_CHAR':
    case 'MULTILINE_IMPLICIT_KEY':
      return [there, 'the name of a field, a colon and its value'];
    case 'BLOCK_AS_IMPLICIT_KEY':
      return [there, 'one value after a colon, in quotes when it holds a colon, and lines of one group equally far in'];
    case 'BAD_INDENT':
      return [there, 'lines of one group equally far in'];
    case 'MULTIPLE_DOCS':
      return [there, 'one document in a file'];
    case 'BAD_DQ_ESCAPE':
      return [text.slice(pos[0], pos[0] + 2), 'single quotes round words that hold a backslash'];
    case 'BAD_SCALAR_START':
      return [text.slice(pos[0], pos[0] + 1), 'quotes round words that begin with it'];
    case 'TAG_RESOLVE_FAILED':
      return [text.slice(pos[0], pos[1]), 'a value without a tag'];
    case 'UNEXPECTED_TOKEN':
      return [there, 'the next field on a line of its own'];
    default:
      return [there, `YAML (${message})`];
  }
}
