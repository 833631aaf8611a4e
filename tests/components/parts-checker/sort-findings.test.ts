import { describe, expect, test } from 'vitest';
import { tryParts } from '../../../src/components/parts-checker/counts.ts';
import { type Drawer, shortDrawers } from '../../../src/components/parts-checker/list.ts';
import { isFault, sayWhole, sortFindings } from '../../../src/components/parts-checker/sort-findings.ts';
import { aPart } from '../../../src/fit/examples.ts';
import { judge } from '../../../src/fit/judge.ts';
import { resolveList } from '../../../src/parts/list.ts';
import type { Part, PartsList } from '../../../src/parts/part.ts';

const tower: Part = { ...aPart('chassis'), id: 'tower', cardLengthMm: 300, fittedFans: [] };
const roomy: Part = { ...aPart('chassis'), id: 'roomy', cardLengthMm: 400, fittedFans: [] };
const vague: Part = { ...aPart('chassis'), id: 'vague', cardLengthMm: undefined, fittedFans: [] };
const short: Part = { ...aPart('graphics-card'), id: 'short', lengthMm: 250 };
const long: Part = { ...aPart('graphics-card'), id: 'long', lengthMm: 340 };
const others = (
  ['motherboard', 'processor', 'cooler', 'memory-module', 'storage-drive', 'power-supply', 'monitor'] as const
).map((of): Part => ({ ...aPart(of), id: of }));
const parts = [tower, roomy, vague, short, long, ...others];
const judgeList = (list: PartsList) => judge(resolveList(list, parts).input);

const drawer = (of: Part['class'], ids: string[], from = 1): Drawer => ({
  position: of,
  class: of,
  parts: ids,
  from,
  to: 1,
});
const cases = drawer('chassis', ['tower', 'roomy', 'vague']);
const cards = drawer('graphics-card', ['short', 'long'], 0);
const drawers = [cases, cards, ...others.map((part) => drawer(part.class, [part.id]))];
const listOf = (...ids: string[]) => ids.map((part) => ({ part, quantity: 1 }));
const whole = (chassis: string, card: string) => listOf(chassis, card, ...others.map(({ id }) => id));
const missing = (list: PartsList) => new Set(shortDrawers(drawers, list).map((one) => one.class));

describe('what becomes a note', () => {
  test('a need that waits for a part still to be chosen is no fault', () => {
    const list = listOf('processor');
    const { notes, toChoose } = sortFindings(judgeList(list), missing(list));
    expect(notes.filter(isFault)).toEqual([]);
    expect(toChoose.length).toBeGreaterThan(0);
  });

  test('the same need is a fault when nothing is left to choose', () => {
    const { notes, toChoose } = sortFindings(judgeList(listOf('processor')), new Set());
    expect(notes.filter(isFault).length).toBeGreaterThan(0);
    expect(toChoose).toEqual([]);
  });

  test('a card too long is a fault however much is still to be chosen', () => {
    const list = listOf('tower', 'long');
    const { notes } = sortFindings(judgeList(list), missing(list));
    expect(notes.filter(isFault).map(({ rule }) => rule)).toEqual(['clearance/card-length']);
  });

  test('what does not fit comes first, then what nobody can tell, then what works with less', () => {
    const report = judgeList(whole('vague', 'short'));
    const order = sortFindings(report, new Set()).notes.map(({ verdict }) => verdict);
    const [first] = order;
    expect(first).toBe('cannot-tell');
    expect(order.slice(order.lastIndexOf('cannot-tell') + 1).every((verdict) => verdict === 'does-not-fit')).toBe(true);
  });
});

describe('the list as a whole in words', () => {
  const say = (list: PartsList, over?: string) =>
    sayWhole(sortFindings(judgeList(list), missing(list)), list.length, shortDrawers(drawers, list).length, over);

  test('nothing chosen', () => {
    expect(say([])).toEqual({ verdict: 'empty', says: 'Nothing chosen yet. Open any drawer to begin.' });
  });

  test('drawers still empty, and what does not fit so far', () => {
    expect(say(listOf('roomy'))).toEqual({ verdict: 'short', says: '7 drawers still empty' });
    expect(say(listOf('tower', 'long'))).toEqual({
      verdict: 'does-not-fit',
      says: '7 drawers still empty, 1 does not fit',
    });
  });

  test('a whole list that does not fit, cannot be told, or costs too much', () => {
    expect(say(whole('tower', 'long')).says).toBe('Not ready to order: 1 does not fit');
    expect(say(whole('vague', 'long'))).toEqual({ verdict: 'cannot-tell', says: 'Not ready to order: 1 cannot tell' });
    expect(say(whole('roomy', 'long'), '€12').says).toBe('Not ready to order: €12 over the money');
  });

  test('a whole list that fits', () => {
    expect(say(whole('roomy', 'long')).verdict).toBe('fits');
    expect(say(whole('roomy', 'long')).says).toMatch(/^Ready to order/);
  });
});

describe('how many of a drawer fit', () => {
  const tried = (of: Drawer, list: PartsList) =>
    Object.fromEntries([...tryParts(of, drawers, list, judgeList)].map(([part, { verdict }]) => [part, verdict]));

  test('cases are tried with the card that is chosen', () => {
    expect(tried(cases, whole('tower', 'long'))).toEqual({
      tower: 'does-not-fit',
      roomy: 'fits',
      vague: 'cannot-tell',
    });
  });

  test('cards are tried with the case that is chosen', () => {
    expect(tried(cards, whole('tower', 'long'))).toEqual({ short: 'fits', long: 'does-not-fit' });
  });

  test('a fault between two other drawers is held against neither part of this one', () => {
    const memory = drawer('memory-module', ['memory-module']);
    expect(tried(memory, whole('tower', 'long'))).toEqual({ 'memory-module': 'fits' });
  });

  test('what is still to be chosen is held against no part', () => {
    expect(tried(cases, listOf('processor'))).toEqual({ tower: 'fits', roomy: 'fits', vague: 'fits' });
  });

  test('says what stands in the way', () => {
    const [because] = tryParts(cards, drawers, whole('tower', 'long'), judgeList).get('long')?.because ?? [];
    expect(because?.rule).toBe('clearance/card-length');
  });
});
