/** The answers to a lesson's questions, read from its text: what the last page of a printed lesson says. */
import { toString as textOf } from 'mdast-util-to-string';
import { visit } from 'unist-util-visit';
import { isTag, openSource, parse, type Tag } from '../../procedures/syntax/source.ts';

export type PrintedAnswer = { asks: string; says: string; why: string };

/** `text` is the lesson in MDX, without what stands between the lines of `---`. */
export function answersOf(file: string, text: string): PrintedAnswer[] {
  const root = parse(openSource(file, text, 'lesson'));
  const answers: PrintedAnswer[] = [];
  if (!root) return answers;
  visit(root, (node) => {
    if (!isTag(node) || node.name !== 'Question') return;
    const asks = plain(node, 'asks');
    visit(node, (inner) => {
      if (
        isTag(inner) &&
        inner.name === 'Choice' &&
        inner.attributes.some((one) => 'name' in one && one.name === 'right')
      )
        answers.push({ asks, says: plain(inner, 'says'), why: textOf(inner) });
    });
  });
  return answers;
}

function plain(tag: Tag, name: string): string {
  const found = tag.attributes.find((one) => one.type === 'mdxJsxAttribute' && one.name === name);
  return typeof found?.value === 'string' ? found.value : '';
}
