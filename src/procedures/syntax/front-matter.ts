/** The head of a procedure's file: title, revision, tools. */
import type { Root } from 'mdast';
import { isMap, isScalar, LineCounter, parseDocument } from 'yaml';
import { z } from 'zod';
import { slug } from '../../parts/terms.ts';
import { type Place, placeOf, type Source } from './source.ts';

const frontMatter = z.strictObject({
  title: z.string('a title').trim().min(1, 'a title'),
  revision: z.int('a whole number, counted up at each change').positive('a whole number, counted up at each change'),
  /** True when it builds a whole machine, so that every kind of joint has to be made in it. */
  wholeMachine: z.boolean('true or false').optional(),
  tools: z.array(
    z.strictObject({ id: slug, name: z.string('a name').min(1, 'a name') }),
    'a list of tools, each with id and name',
  ),
});

export type FrontMatter = z.infer<typeof frontMatter> & {
  /** Where `wholeMachine` stands, when it is true. */
  whole?: Place;
};

export function readFrontMatter(source: Source, root: Root): FrontMatter | undefined {
  const node = root.children.find((child) => child.type === 'yaml');
  if (!node) {
    source.fault(
      'front-matter',
      { line: 1, column: 1 },
      'a file that begins without title, revision and tools',
      'them between two lines of ---',
    );
    return undefined;
  }
  const lines = new LineCounter();
  const document = parseDocument(node.value, { lineCounter: lines });
  const first = placeOf(node).line;
  const placeIn = (offset: number): Place => {
    const { line, col } = lines.linePos(offset);
    return { line: first + Math.max(line, 1), column: Math.max(col, 1) };
  };
  const placeOfPath = (path: readonly PropertyKey[]): Place => {
    for (let length = path.length; length > 0; length -= 1) {
      const found: unknown = document.getIn(path.slice(0, length), true);
      const range = typeof found === 'object' && found !== null && 'range' in found ? found.range : undefined;
      if (Array.isArray(range) && typeof range[0] === 'number') return placeIn(range[0]);
    }
    return placeOf(node);
  };

  const placeOfKey = (path: readonly PropertyKey[]): Place => {
    const owner: unknown = path.length > 1 ? document.getIn(path.slice(0, -1), true) : document.contents;
    const pair = isMap(owner) ? owner.items.find(({ key }) => isScalar(key) && key.value === path.at(-1)) : undefined;
    return pair && isScalar(pair.key) && pair.key.range ? placeIn(pair.key.range[0]) : placeOfPath(path);
  };

  if (document.errors.length > 0) {
    for (const error of document.errors) {
      const reason = error.message.split('\n')[0]?.replace(/ at line \d+, column \d+:?$/, '');
      source.fault('front-matter', placeIn(error.pos[0]), `text that is not YAML (${reason})`, 'YAML');
    }
    return undefined;
  }

  const checked = frontMatter.safeParse(document.toJS() ?? {});
  if (!checked.success) {
    for (const issue of checked.error.issues) {
      const path = issue.path.join('.');
      if (issue.code === 'unrecognized_keys') {
        const known = issue.path.length === 0 ? Object.keys(frontMatter.shape).join(', ') : 'id, name';
        for (const key of issue.keys) {
          const at = placeOfKey([...issue.path, key]);
          source.fault('front-matter', at, `${key} in the front matter`, `one of ${known}`);
        }
      } else if (document.hasIn(issue.path)) {
        const actual = `${path}: ${JSON.stringify(document.getIn(issue.path))}`;
        source.fault('front-matter', placeOfPath(issue.path), actual, issue.message.replace(/^expected /, ''));
      } else {
        const at = placeOfPath(issue.path.slice(0, -1));
        source.fault('front-matter', at, `no ${path} in the front matter`, issue.message);
      }
    }
    return undefined;
  }

  const seen = new Map<string, Place>();
  for (const [index, tool] of checked.data.tools.entries()) {
    const at = placeOfPath(['tools', index, 'id']);
    const before = seen.get(tool.id);
    if (before) {
      const other = { text: 'the tool was first named here', at: before };
      source.fault('repeated-id', at, `a second tool named ${tool.id}`, 'an id used once', other);
    } else seen.set(tool.id, at);
  }
  return { ...checked.data, ...(checked.data.wholeMachine ? { whole: placeOfPath(['wholeMachine']) } : {}) };
}
