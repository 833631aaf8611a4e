/** The words of a step: plain text with placeholders, and what is looked for in them. */
import type { Nodes } from 'mdast';
import { isRemark, type Place, placeOf, type Source } from './source.ts';

/** Filled in when a card is made: the part's name, the place's, which repeat this is, and of how many. */
export const placeholders = ['part', 'place', 'n', 'of'] as const;
export type Placeholder = (typeof placeholders)[number];

/** A piece of text of a step, and where its pieces stand in the file. */
export type Prose = { text: string; at: Place; filled: { name: string; at: Place }[] };

/** The text below `node`, lines joined by spaces. Tags inside are faults: they say something that would be lost. */
export function readProse(source: Source, node: Nodes): Prose {
  const filled: Prose['filled'] = [];
  const read = (inner: Nodes): string => {
    if (isRemark(inner)) return '';
    switch (inner.type) {
      case 'text':
      case 'inlineCode':
        return inner.value;
      case 'break':
        return ' ';
      case 'mdxTextExpression':
      case 'mdxFlowExpression':
        filled.push({ name: inner.value.trim(), at: placeOf(inner) });
        return `{${inner.value.trim()}}`;
      case 'mdxJsxFlowElement':
      case 'mdxJsxTextElement':
        if (inner === node) break;
        source.fault('misplaced-tag', placeOf(inner), `<${inner.name ?? ''}> in a sentence`, 'words only');
        return '';
    }
    return 'children' in inner ? inner.children.map(read).join(hasLines(inner) ? ' ' : '') : '';
  };
  const text = read(node).replace(/\s+/g, ' ').trim();
  const first = 'children' in node ? node.children[0] : undefined;
  return { text, at: placeOf(first ?? node), filled };
}

/** True when what is inside stands in paragraphs of its own. */
const hasLines = (node: Nodes): boolean => ['mdxJsxFlowElement', 'listItem', 'list', 'blockquote'].includes(node.type);

/** The words of an attribute, whose value begins at `start`. Placeholders are found by their braces. */
export function readAttributeProse(text: string, at: Place, placeIn: (offset: number) => Place): Prose {
  const filled = [...text.matchAll(/\{([^{}]*)\}/g)].map((found) => ({
    name: (found[1] ?? '').trim(),
    at: placeIn(found.index),
  }));
  return { text: text.replace(/\s+/g, ' ').trim(), at, filled };
}

/** The longest sentence an instruction may have, in words (ASD-STE100, rule on procedural sentences). */
export const longestSentence = 20;

/** Sentences of more than `longestSentence` words, each with its number of words. */
export function longSentences(text: string): { sentence: string; words: number }[] {
  return text
    .split(/(?<=[.?!:])\s+/)
    .map((sentence) => ({
      sentence,
      words: sentence.split(/\s+/).filter((word) => /[\p{L}\p{N}{]/u.test(word)).length,
    }))
    .filter(({ words }) => words > longestSentence);
}
