import { expect, test } from 'vitest';
import type { Content } from '../../../src/content-types.ts';
import { fingerprintOf, forBrowsers } from '../../../src/tools/content/bundle.ts';
import { choose, misfits, parts } from '../../exercises/bench.ts';

const content: Omit<Content, 'fingerprint'> = {
  course: {
    id: 'evenings',
    title: 'Six evenings',
    place: 'The Net Loft',
    revision: 'first',
    invented: 'All of it.',
    evenings: [],
  },
  parts: parts.map((part) => ({ ...part, trap: 'It is here to teach something.' })),
  sources: [],
  lessons: [],
  exercises: [choose, misfits],
  procedures: [
    {
      id: 'bench-build',
      title: 'A machine on the bench',
      revision: 1,
      tools: [],
      chapters: [{ id: 'inside', title: 'Inside the case' }],
      steps: [
        {
          id: 'lay',
          chapter: 'inside',
          action: 'Lay the case on its side.',
          after: [],
          tools: [],
          minutes: [1, 2, 3],
          cautions: [],
          right: 'It lies flat.',
          claim: 'Case lying',
          ifNot: [],
          drawing: 'none',
          at: { file: 'content/procedures/bench-build.mdx', line: 8, column: 13 },
        },
      ],
    },
  ],
  workedBuilds: [],
};

test('what browsers get gives away neither what a part is there to teach, nor an answer, nor where a step stands', () => {
  const text = JSON.stringify(forBrowsers(content));
  expect(text).not.toContain('It is here to teach something.');
  expect(text).not.toContain('"answer"');
  expect(text).not.toContain('bench-build.mdx');
});

test('what browsers get is otherwise the whole', () => {
  const { parts: shown, exercises, procedures, ...rest } = forBrowsers(content);
  const { parts: all, exercises: asked, procedures: built, ...same } = content;
  expect(rest).toEqual(same);
  expect(shown).toEqual(parts);
  expect(exercises.map(({ id, rubric }) => [id, rubric])).toEqual(asked.map(({ id, rubric }) => [id, rubric]));
  expect(procedures[0]?.steps[0]?.action).toBe(built[0]?.steps[0]?.action);
  expect(all[0]?.trap).toBe('It is here to teach something.');
});

test('the command line and the browser see one fingerprint, of 16 small hex figures', () => {
  expect(fingerprintOf(forBrowsers(content))).toBe(fingerprintOf(content));
  expect(fingerprintOf(content)).toMatch(/^[0-9a-f]{16}$/);
});

test('a price that changes changes the fingerprint; a trap that changes does not', () => {
  const [first, ...others] = content.parts;
  if (!first) throw new Error('the catalogue has a part');
  const dearer = { ...content, parts: [{ ...first, priceCents: 8001 }, ...others] };
  const trappier = { ...content, parts: [{ ...first, trap: 'Another thing.' }, ...others] };
  expect(fingerprintOf(dearer)).not.toBe(fingerprintOf(content));
  expect(fingerprintOf(trappier)).toBe(fingerprintOf(content));
});
