/** Which tag stands where. */
import type { Nodes } from 'mdast';
import { isTagName, type TagName } from './attributes.ts';
import { isRemark, isTag, placeOf, type Source } from './source.ts';

/** A tag alone in a paragraph is the tag itself: `<Right …>words</Right>` on one line is read as a sentence. */
export function unwrap(nodes: readonly Nodes[]): Nodes[] {
  return nodes.flatMap((node): Nodes[] => {
    if (isRemark(node)) return [];
    if (node.type !== 'paragraph') return [node];
    const alone = node.children.filter(
      (child) => !(child.type === 'text' && child.value.trim() === '') && !isRemark(child),
    );
    return alone.length === 0 || alone.every(isTag) ? alone : [node];
  });
}

/** The tag's name when it is one of `expected`; anything else that stands there is a fault. */
export function tagName<T extends TagName>(
  source: Source,
  node: Nodes,
  inside: string,
  expected: readonly T[],
): T | undefined {
  const known = expected.map((name) => `<${name}>`).join(', ');
  if (!isTag(node)) {
    source.fault('stray-text', placeOf(node), `text outside ${inside}`, known);
    return undefined;
  }
  if (!isTagName(node.name)) {
    source.fault('unknown-tag', placeOf(node), `<${node.name ?? ''}>`, known);
    return undefined;
  }
  const name = expected.find((candidate) => candidate === node.name);
  if (!name) source.fault('misplaced-tag', placeOf(node), `<${node.name}> outside ${inside}`, known);
  return name;
}
