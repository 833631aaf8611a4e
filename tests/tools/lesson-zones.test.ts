import type { Heading, Root } from 'mdast';
import { toString as textOf } from 'mdast-util-to-string';
import remarkParse from 'remark-parse';
import { unified } from 'unified';
import { expect, test } from 'vitest';
import { lessonZones } from '../../src/tools/lesson-zones.ts';

/** The top of the tree after the plugin: a zone as its letter and title with its children's types, else a type. */
function zonesOf(text: string, path = '/x/content/lessons/fit/meet.mdx'): unknown[] {
  let tree: Root = unified().use(remarkParse).parse(text);
  lessonZones.before(tree, {
    fileURL: new URL(`file://${path}`),
    textContent: (node: Readonly<Heading>) => textOf(node),
    replaceNode: (_, by) => {
      tree = by;
    },
  });
  return tree.children.map((node) =>
    node.type === 'mdxJsxFlowElement'
      ? [
          node.attributes
            .slice(0, 2)
            .map((one) => one.value)
            .join(' '),
          ...node.children.map(({ type }) => type),
        ]
      : node.type,
  );
}

test('each second-level heading and what follows it is a zone, from B on', () => {
  expect(zonesOf('## One\n\ntext\n\n### Sub\n\n## Two *and more*\n\n- a\n')).toEqual([
    ['B One', 'heading', 'paragraph', 'heading'],
    ['C Two and more', 'heading', 'list'],
  ]);
});

test('what stands before the first heading stays where it is', () => {
  expect(zonesOf('before\n\n## One\n')).toEqual(['paragraph', ['B One', 'heading']]);
});

test('a text that is no lesson is left alone', () => {
  expect(zonesOf('## One\n', '/x/content/procedures/desktop.mdx')).toEqual(['heading']);
});
