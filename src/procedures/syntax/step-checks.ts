/** What is looked for in one step by itself. */
import { joinedClasses } from '../graph/coverage.ts';
import type { Read } from './attributes.ts';
import type { FrontMatter } from './front-matter.ts';
import { longestSentence, longSentences, type Placeholder, type Prose, placeholders } from './prose.ts';
import type { Place, Source } from './source.ts';

/** Undefined when the front matter could not be read: then no tool is unknown. */
export type Tools = FrontMatter['tools'] | undefined;

export function checkTool(source: Source, tools: Tools, id: string, at: Place): void {
  if (!tools || tools.some((tool) => tool.id === id)) return;
  source.fault(
    'unknown-tool',
    at,
    `the tool ${id}, which the front matter does not list`,
    tools.length > 0 ? `one of ${tools.map((tool) => tool.id).join(', ')}` : 'a tool of the front matter',
  );
}

/** A step is repeated for one thing only, and a hold point for none: it is asked once. */
export function checkRepeats(source: Source, read: Read<'Step'>, isHold: boolean): void {
  const { joints, about, also, of } = read.values;
  const given = (['joints', 'about', 'each'] as const).filter((name) => read.raw(name) !== '');
  const [first, second] = given;
  if (first && second)
    source.fault('repeats', read.at(second), `both ${given.join(' and ')} on one step`, 'one of them');
  if (first && isHold)
    source.fault('repeats', read.at(first), `a hold point repeated by ${first}`, 'a step that stands once');
  if (also && !joints)
    source.fault('repeats', read.at('also'), 'also on a step that makes no joint', 'joints="…" beside it');
  const kind = joints ?? about;
  if (of && !kind)
    source.fault(
      'repeats',
      read.at('of'),
      'of on a step that is not repeated for joints',
      'joints="…" or about="…" beside it',
    );
  if (of && kind && !joinedClasses[kind].includes(of)) {
    const known = joinedClasses[kind].join(', ') || 'no class yet';
    source.fault(
      'unknown-class',
      read.at('of'),
      `of="${of}" for the kind ${kind}`,
      `a class that has such joints: ${known}`,
    );
  }
}

/** What can be filled in: a step repeated for joints has all four, one repeated for parts has no place. */
function fillable(read: Read<'Step'>): Placeholder[] {
  if (read.raw('joints') !== '' || read.raw('about') !== '') return [...placeholders];
  return read.raw('each') !== '' ? ['part', 'n', 'of'] : [];
}

export function checkWords(source: Source, texts: readonly Prose[], read: Read<'Step'>): void {
  const known: readonly string[] = fillable(read);
  for (const { text, at, filled } of texts) {
    for (const placeholder of filled) {
      if (known.includes(placeholder.name)) continue;
      const expected =
        known.length > 0
          ? `one of ${known.map((name) => `{${name}}`).join(', ')}`
          : 'none in a step that is not repeated';
      source.fault('unknown-placeholder', placeholder.at, `{${placeholder.name}}`, expected);
    }
    for (const { sentence, words } of longSentences(text)) {
      const opening = sentence.split(' ').slice(0, 4).join(' ');
      source.fault(
        'long-sentence',
        at,
        `a sentence of ${words} words ("${opening} …")`,
        `at most ${longestSentence} words`,
      );
    }
  }
}
