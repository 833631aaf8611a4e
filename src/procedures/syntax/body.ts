/** Chapters and their steps, read from the tree. */
import type { Root } from 'mdast';
import type { Waits } from '../graph/order.ts';
import type { PlacedStep } from '../graph/placed-step.ts';
import type { Chapter } from '../types.ts';
import { type Read, readAttributes } from './attributes.ts';
import { readAttributeProse } from './prose.ts';
import { isTag, type Place, placeOf, type Source, type Tag } from './source.ts';
import { checkRepeats, checkTool, checkWords, type Tools } from './step-checks.ts';
import { readParts } from './step-parts.ts';
import { tagName, unwrap } from './tags.ts';

export type Body = {
  chapters: Chapter[];
  steps: PlacedStep[];
  waits: Map<PlacedStep, Waits>;
  /** Where each id was first named: `Step fit-memory`, `Chapter mat`. */
  first: Map<string, Place>;
  tools: Tools;
};

export function readBody(source: Source, root: Root, tools: Tools): Body {
  const body: Body = { chapters: [], steps: [], waits: new Map(), first: new Map(), tools };
  for (const node of unwrap(root.children)) {
    if (node.type === 'yaml') continue;
    const name = tagName(source, node, 'a chapter', ['Chapter']);
    if (name && isTag(node)) readChapter(source, body, node);
  }
  return body;
}

/** False, with a fault, when the id was named before by a tag of the same name. */
function isFirst(source: Source, body: Body, what: 'Chapter' | 'Step', id: string, at: Place): boolean {
  const before = body.first.get(`${what} ${id}`);
  if (!before) {
    body.first.set(`${what} ${id}`, at);
    return true;
  }
  const noun = what.toLowerCase();
  source.fault('repeated-id', at, `a second ${noun} named ${id}`, 'an id used once', {
    text: `the ${noun} was first named here`,
    at: before,
  });
  return false;
}

function readChapter(source: Source, body: Body, tag: Tag): void {
  const { values, at } = readAttributes(source, tag, 'Chapter');
  const { id = '', title = '' } = values;
  if (id && isFirst(source, body, 'Chapter', id, at('id'))) body.chapters.push({ id, title });
  for (const node of unwrap(tag.children)) {
    const name = tagName(source, node, 'a step', ['Step']);
    if (name && isTag(node)) readStep(source, body, node, id);
  }
}

/** A step with faults still takes its place in the order, so that one slip is told once. */
function readStep(source: Source, body: Body, tag: Tag, chapter: string): void {
  const read = readAttributes(source, tag, 'Step');
  const {
    id,
    action = '',
    joints,
    about,
    also,
    of,
    each,
    tools = [],
    minutes = [0, 0, 0],
    drawing = 'none',
  } = read.values;
  const parts = readParts(source, body.tools, tag);
  const actionWords = readAttributeProse(action, read.at('action'), (offset) => read.within('action', offset));
  checkWords(source, [actionWords, ...parts.prose], read);
  checkRepeats(source, read, parts.hold !== undefined);
  for (const { word, at } of wordsOf(read, 'tools')) checkTool(source, body.tools, word, at);
  if (!parts.right)
    source.fault('missing-right', placeOf(tag), 'a step without <Right>', 'what it must look like when right');
  if (!id || !isFirst(source, body, 'Step', id, read.at('id'))) return;

  const step: PlacedStep = {
    id,
    chapter,
    action,
    ...(joints ? { joints } : {}),
    ...(about ? { about } : {}),
    ...(also ? { also } : {}),
    ...(of ? { of } : {}),
    ...(each ? { each } : {}),
    after: [],
    tools: [...new Set([...tools, ...(parts.instrument ? [parts.instrument] : [])])],
    minutes,
    cautions: parts.cautions,
    right: parts.right?.right ?? '',
    claim: parts.right?.claim ?? '',
    ifNot: parts.ifNot,
    drawing,
    ...(parts.measure ? { measure: parts.measure } : {}),
    ...(parts.hold ? { hold: parts.hold } : {}),
    at: { file: source.file, ...read.at('id') },
  };
  body.steps.push(step);
  body.waits.set(step, waitsOf(read));
}

/** The ids in `after`, each with its own place. Undefined when there is no such attribute. */
function waitsOf(read: Read<'Step'>): Waits {
  return read.values.after && wordsOf(read, 'after').map(({ word, at }) => ({ id: word, at }));
}

const wordsOf = (read: Read<'Step'>, attribute: string): { word: string; at: Place }[] =>
  [...read.raw(attribute).matchAll(/\S+/g)].map((found) => ({
    word: found[0],
    at: read.within(attribute, found.index),
  }));
