import { expect, test } from 'vitest';
import { endLines } from '../../src/fit/end-lines.ts';
import { aPart } from '../../src/fit/examples.ts';
import { lower } from '../../src/fit/needs/index.ts';
import { type PartClass, partClasses } from '../../src/parts/part.ts';
import { content } from '../helpers/content.ts';

const linesOf = (of: PartClass) => endLines(lower({ id: `${of}-1`, part: aPart(of) }));

test('equal needs and places are counted, unequal ones are told apart', () => {
  const { needs, places } = linesOf('power-supply');
  expect(needs[0]).toEqual({ what: 'the bay for a supply', count: 1, details: 'ATX; 150 mm long' });
  expect(places.filter(({ what }) => what === 'plug for a card')).toEqual([
    { what: 'plug for a card', count: 2, details: '8-pin card plug' },
  ]);
  expect(places.find(({ what }) => what === 'plug for a drive')).toMatchObject({
    count: 3,
    details: 'SATA power plug',
  });
});

test('a measure that is not recorded says so; one without a limit says nothing', () => {
  const supply = { ...aPart('power-supply'), lengthMm: undefined };
  expect(endLines(lower({ id: 'power-supply-1', part: supply })).needs[0]?.details).toBe('ATX; length not recorded');
});

test('what a card takes from its slot is said in slots and megabytes a second', () => {
  expect(linesOf('graphics-card').needs.find(({ what }) => what === 'a slot for a card')?.details).toContain(
    '2 slots thick',
  );
});

test('nothing on the page of any part is a word of the search', () => {
  const parts = [...content.parts, ...partClasses.map((of) => aPart(of))];
  for (const part of parts) {
    const { needs, places } = endLines(lower({ id: `${part.class}-1`, part }));
    for (const { what, details } of [...needs, ...places]) {
      expect(`${what} ${details}`, part.id).not.toMatch(/undefined|null|NaN|\[object|true|false|\b[a-z]+[A-Z][a-z]/);
    }
  }
});
