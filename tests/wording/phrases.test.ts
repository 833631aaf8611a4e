import { describe, expect, it } from 'vitest';
import { capital, count, either, inWords, list, spelled, withArticle } from '../../src/wording/phrases.ts';

describe('lists', () => {
  it('read as a person would say them', () => {
    expect(list([])).toBe('');
    expect(list(['a'])).toBe('a');
    expect(list(['a', 'b'])).toBe('a and b');
    expect(list(['a', 'b', 'c'])).toBe('a, b and c');
    expect(either(['a', 'b', 'c'])).toBe('a, b or c');
  });
});

describe('counts', () => {
  it('are figures in headlines and words in sentences', () => {
    expect(count(1, 'plug', 'plugs')).toBe('1 plug');
    expect(count(0, 'plug', 'plugs')).toBe('no plugs');
    expect(spelled(1, 'plug', 'plugs')).toBe('one plug');
    expect(spelled(0, 'plug', 'plugs')).toBe('no plugs');
    expect(spelled(12, 'plug', 'plugs')).toBe('twelve plugs');
    expect(inWords(13)).toBe('13');
  });

  it('take a capital at the front of a sentence', () => {
    expect(capital('two drives')).toBe('Two drives');
    expect(capital('')).toBe('');
  });
});

describe('articles', () => {
  it.each([
    ['8-pin plug', 'an 8-pin plug'],
    ['80 mm fan', 'an 80 mm fan'],
    ['24-pin plug', 'a 24-pin plug'],
    ['110 mm drive', 'a 110 mm drive'],
    ['ATX board', 'an ATX board'],
    ['SFX supply', 'an SFX supply'],
    ['SATA plug', 'a SATA plug'],
    ['microATX board', 'a microATX board'],
    ['USB 3 lead', 'a USB 3 lead'],
    ['x16 card', 'an x16 card'],
  ])('go by how %s is said', (phrase, said) => {
    expect(withArticle(phrase)).toBe(said);
  });
});
