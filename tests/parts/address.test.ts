import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { listToText, textToList } from '../../src/parts/address.ts';
import type { Listed } from '../../src/parts/part.ts';

describe('a parts list in an address', () => {
  test('names each part once, by id, with how many where there is more than one', () => {
    const list = [
      { part: 'tammer-16', quantity: 2 },
      { part: 'lodden-30', quantity: 1 },
    ];
    expect(listToText(list)).toBe('lodden-30.tammer-16*2');
  });

  test('says the same however the list was written down', () => {
    const apart = [
      { part: 'b', quantity: 1 },
      { part: 'a', quantity: 1 },
      { part: 'b', quantity: 2 },
    ];
    expect(listToText(apart)).toBe('a.b*3');
  });

  test('an empty list is an empty text, both ways', () => {
    expect(listToText([])).toBe('');
    expect(textToList('')).toEqual({ list: [], unread: [] });
  });

  test('what could be read is kept and the rest is named', () => {
    expect(textToList('lodden-30.Größe.tammer-16*2.a*0.b*100.<b>.-x.marl-1tb')).toEqual({
      list: [
        { part: 'lodden-30', quantity: 1 },
        { part: 'tammer-16', quantity: 2 },
        { part: 'marl-1tb', quantity: 1 },
      ],
      unread: ['Größe', 'a*0', 'b*100', '<b>', '-x'],
    });
  });

  test('more than 99 of one part, or more than 60 parts, is not read', () => {
    expect(textToList('a*99.a').unread).toEqual(['a']);
    const many = Array.from({ length: 61 }, (_, n) => `p${n}`).join('.');
    expect(textToList(many).list).toHaveLength(60);
    expect(textToList(many).unread).toEqual(['p60']);
  });

  test('any list comes back from its text, and needs no escaping', () => {
    const slug = fc.stringMatching(/^[a-z0-9]{1,6}(-[a-z0-9]{1,6}){0,3}$/);
    const lists = fc.uniqueArray(fc.record({ part: slug, quantity: fc.integer({ min: 1, max: 99 }) }), {
      selector: ({ part }) => part,
      maxLength: 60,
    });
    const sorted = (list: readonly Listed[]) => [...list].sort((a, b) => (a.part < b.part ? -1 : 1));
    fc.assert(
      fc.property(lists, (list) => {
        const text = listToText(list);
        expect(encodeURI(text)).toBe(text);
        const back = textToList(text);
        expect(sorted(back.list)).toEqual(sorted(list));
        expect(back.unread).toEqual([]);
      }),
    );
  });

  test('any text at all is read without an accident, and what is read can be written again', () => {
    fc.assert(
      fc.property(
        fc.string({ unit: fc.constantFrom('a', '1', '0', '-', '*', '.', '<', ' ', 'é', '\u0000') }),
        (text) => {
          const { list } = textToList(text);
          expect(textToList(listToText(list)).unread).toEqual([]);
        },
      ),
    );
  });
});
