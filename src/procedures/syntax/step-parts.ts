/** What stands inside a step: cautions, what is right, what to do if not, a measure, a hold point. */
import type { Measure, SignalWord, Step } from '../types.ts';
import { type Read, readAttributes, type TagName } from './attributes.ts';
import { type Prose, readAttributeProse, readProse } from './prose.ts';
import { isTag, type Place, placeOf, type Source, type Tag } from './source.ts';
import { checkTool, type Tools } from './step-checks.ts';
import { tagName, unwrap } from './tags.ts';

export type Parts = {
  cautions: Step['cautions'];
  right?: { claim: string; right: string };
  ifNot: Step['ifNot'];
  measure?: Measure;
  /** The tool a value is read from. */
  instrument?: string;
  hold?: string[];
  /** Every text among them, for the checks on words. */
  prose: Prose[];
};

const partNames = ['Danger', 'Warning', 'Caution', 'Notice', 'Right', 'IfNot', 'Measure', 'Hold'] as const;

export function readParts(source: Source, tools: Tools, tag: Tag): Parts {
  const parts: Parts = { cautions: [], ifNot: [], prose: [] };
  const first = new Map<string, Place>();
  for (const node of unwrap(tag.children)) {
    const name = tagName(source, node, 'the parts of a step', partNames);
    if (!name || !isTag(node)) continue;
    if (name === 'Right' || name === 'Measure' || name === 'Hold') {
      const before = first.get(name);
      if (before) {
        source.fault('repeated-tag', placeOf(node), `a second <${name}> in one step`, 'one', {
          text: 'the first stands here',
          at: before,
        });
        continue;
      }
      first.set(name, placeOf(node));
    }
    readPart(source, tools, parts, node, name);
  }
  return parts;
}

function readPart(source: Source, tools: Tools, parts: Parts, tag: Tag, name: (typeof partNames)[number]): void {
  const said = (): string => {
    const prose = readProse(source, tag);
    if (prose.text === '') source.fault('no-words', placeOf(tag), `<${name}> without words`, 'words between its tags');
    parts.prose.push(prose);
    return prose.text;
  };
  const phrase = (read: Read<TagName>, attribute: string): string => {
    const prose = readAttributeProse(read.raw(attribute), read.at(attribute), (offset) =>
      read.within(attribute, offset),
    );
    parts.prose.push(prose);
    return prose.text;
  };

  switch (name) {
    case 'Danger':
    case 'Warning':
    case 'Caution':
    case 'Notice':
      readAttributes(source, tag, name);
      parts.cautions.push({ signal: name.toLowerCase() as SignalWord, text: said() });
      return;
    case 'Right': {
      const read = readAttributes(source, tag, name);
      parts.right = { claim: phrase(read, 'claim'), right: said() };
      return;
    }
    case 'IfNot': {
      const read = readAttributes(source, tag, name);
      parts.ifNot.push({ sees: phrase(read, 'sees'), does: said() });
      return;
    }
    case 'Measure': {
      const { values, at } = readAttributes(source, tag, name);
      checkLimits(source, values, at('nominal'));
      const { quantity = '', unit = '', nominal = 0, low = 0, high = 0, instrument = '', source: cited = '' } = values;
      if (instrument) checkTool(source, tools, instrument, at('instrument'));
      parts.instrument = instrument;
      const named = tools?.find((tool) => tool.id === instrument)?.name ?? instrument;
      parts.measure = { quantity, unit, nominal, low, high, instrument: named, source: cited, ifOut: said() };
      return;
    }
    case 'Hold':
      readAttributes(source, tag, name);
      parts.hold = readHold(source, tag, parts);
      return;
  }
}

function checkLimits(source: Source, { nominal, low, high }: Read<'Measure'>['values'], at: Place): void {
  if (nominal === undefined || low === undefined || high === undefined) return;
  if (low <= nominal && nominal <= high) return;
  source.fault(
    'measure-limits',
    at,
    `nominal="${nominal}", low="${low}", high="${high}"`,
    'low, nominal, high in rising order',
  );
}

/** A list, one thing to look at in each line. */
function readHold(source: Source, tag: Tag, parts: Parts): string[] {
  const looked: string[] = [];
  for (const node of unwrap(tag.children)) {
    if (node.type !== 'list') {
      source.fault('stray-text', placeOf(node), 'text outside the list of a <Hold>', 'a line that begins with a dash');
      continue;
    }
    for (const item of node.children) {
      const prose = readProse(source, item);
      parts.prose.push(prose);
      looked.push(prose.text);
    }
  }
  if (looked.length === 0)
    source.fault('no-words', placeOf(tag), '<Hold> without a list', 'what the instructor looks at, a line each');
  return looked;
}
