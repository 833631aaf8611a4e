/** Makes each second-level heading of a lesson, with all that follows it, a zone of the sheet: B, C, D … */
import type { Heading, Root, RootContent } from 'mdast';
import type { MdxJsxFlowElement } from 'mdast-util-mdx-jsx';

/** The part of the Markdown processor's context that is used here. */
type Context = {
  readonly fileURL: URL | undefined;
  textContent(node: Readonly<Heading>): string;
  replaceNode(node: Readonly<Root>, by: Root): void;
};

const isZoneHeading = (node: Readonly<RootContent>): node is Heading => node.type === 'heading' && node.depth === 2;
const attribute = (name: string, value: string) => ({ type: 'mdxJsxAttribute' as const, name, value });

/** A plugin for Astro's Markdown processor. Zone A is the sheet's head, which the page itself draws. */
export const lessonZones = {
  name: 'lesson-zones',
  before(root: Readonly<Root>, context: Context): void {
    if (!context.fileURL?.pathname.includes('/content/lessons/')) return;
    const children: RootContent[] = [];
    let zone: MdxJsxFlowElement | undefined;
    let letter = 'A'.charCodeAt(0);
    for (const node of root.children) {
      if (isZoneHeading(node)) {
        letter += 1;
        zone = {
          type: 'mdxJsxFlowElement',
          name: 'LessonZone',
          attributes: [
            attribute('letter', String.fromCharCode(letter)),
            attribute('title', context.textContent(node)),
            attribute('class', 'prose'),
          ],
          children: [],
        };
        children.push(zone);
      }
      if (zone) zone.children.push(node as MdxJsxFlowElement['children'][number]);
      else children.push(node);
    }
    context.replaceNode(root, { type: 'root', children });
  },
};
