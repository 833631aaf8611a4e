/** One MDX file read into a syntax tree, with the means to name a place in it. */
import type { Nodes, Root } from 'mdast';
import remarkFrontmatter from 'remark-frontmatter';
import remarkMdx from 'remark-mdx';
import remarkParse from 'remark-parse';
import { unified } from 'unified';
import type { Fault } from '../../wording/fault.ts';

/** A place in the file, both from 1. */
export type Place = { line: number; column: number };

/** A capitalised tag: `<Step …>`, alone on its line or within one. */
export type Tag = Extract<Nodes, { type: 'mdxJsxFlowElement' | 'mdxJsxTextElement' }>;
export type Expression = Extract<Nodes, { type: 'mdxFlowExpression' | 'mdxTextExpression' }>;

export const isTag = (node: Nodes): node is Tag =>
  node.type === 'mdxJsxFlowElement' || node.type === 'mdxJsxTextElement';
const isExpression = (node: Nodes): node is Expression =>
  node.type === 'mdxFlowExpression' || node.type === 'mdxTextExpression';
/** An author's own remark: braces that hold nothing but a comment. */
export const isRemark = (node: Nodes): boolean => isExpression(node) && /^\s*(\/\*[\s\S]*\*\/\s*)?$/.test(node.value);

/** A node made by the parser always has its place; one made by hand stands for the whole file. */
export const placeOf = (node: { position?: Nodes['position'] }): Place => ({
  line: node.position?.start.line ?? 1,
  column: node.position?.start.column ?? 1,
});

/** What is being read, and the faults found in it. */
export type Source = {
  file: string;
  text: string;
  faults: Fault[];
  fault(id: string, at: Place, actual: string, expected: string, other?: { text: string; at: Place }): void;
};

/** `area` begins the ids of the faults: lessons are read in the same way. */
export function openSource(file: string, text: string, area: 'procedure' | 'lesson' = 'procedure'): Source {
  const faults: Fault[] = [];
  return {
    file,
    text,
    faults,
    fault(id, at, actual, expected, other) {
      faults.push({
        file,
        line: at.line,
        column: at.column,
        id: `${area}/${id}`,
        actual,
        expected,
        ...(other ? { other: { text: other.text, file, line: other.at.line, column: other.at.column } } : {}),
      });
    },
  };
}

/** The place of the character at `offset` in the file's text. */
export function placeAt(text: string, offset: number): Place {
  const before = text.slice(0, offset);
  return { line: before.split('\n').length, column: offset - before.lastIndexOf('\n') };
}

const reader = unified().use(remarkParse).use(remarkFrontmatter).use(remarkMdx).freeze();

/** The tree, or nothing when the file is not MDX; then `source` has one fault, where reading stopped. */
export function parse(source: Source): Root | undefined {
  try {
    return reader.parse(source.text);
  } catch (thrown) {
    const { at, actual, expected, other } = readMistake(thrown);
    source.fault('syntax', at, actual, expected, other);
    return undefined;
  }
}

type Mistake = { at: Place; actual: string; expected: string; other?: { text: string; at: Place } };

/** The parser's own message in the form of a fault. Anything that is no message of the parser is thrown on. */
function readMistake(thrown: unknown): Mistake {
  if (!(thrown instanceof Error) || !('reason' in thrown) || typeof thrown.reason !== 'string') throw thrown;
  const at = readPlace('place' in thrown ? thrown.place : undefined);
  const reason = thrown.reason.replace(/ \(note: .*\)$/, '');

  const opened = /`(<[^`]*>)` \((\d+):(\d+)-/.exec(reason);
  if (opened) {
    const [, tag, line, column] = opened;
    const start = { line: Number(line), column: Number(column) };
    const closed = /^Unexpected closing tag `([^`]*)`/.exec(reason);
    const actual = closed?.[1] ?? (reason.endsWith('`paragraph`') ? 'end of the paragraph' : 'end of the file');
    return {
      at: at ?? start,
      actual,
      expected: `a closing tag for ${tag}`,
      ...(at ? { other: { text: `${tag} was opened here`, at: start } } : {}),
    };
  }

  const parted = /^Expected the closing tag `([^`]*)` either/.exec(reason);
  if (parted) {
    const actual = `${parted[1]} in another paragraph than its opening tag`;
    return { at: at ?? { line: 1, column: 1 }, actual, expected: 'both alone on their lines, or both on one' };
  }

  const [, actual, expected] = /^Unexpected ([\s\S]*?), expected ([\s\S]*)$/.exec(reason) ?? [];
  const place = at ?? { line: 1, column: 1 };
  if (actual !== undefined && expected !== undefined) return { at: place, actual, expected };
  if (/expression with acorn/.test(reason)) {
    return { at: place, actual: 'text in braces', expected: 'one placeholder, such as {part}' };
  }
  if (/import\/exports with acorn/.test(reason)) {
    return { at: place, actual: 'a line that begins with import or export', expected: 'a tag or prose' };
  }
  return { at: place, actual: `text that cannot be read (${reason})`, expected: 'MDX' };
}

function readPlace(place: unknown): Place | undefined {
  if (typeof place !== 'object' || place === null) return undefined;
  const point = 'start' in place ? place.start : place;
  if (typeof point !== 'object' || point === null || !('line' in point) || !('column' in point)) return undefined;
  if (typeof point.line !== 'number' || typeof point.column !== 'number') return undefined;
  return { line: point.line, column: point.column };
}
