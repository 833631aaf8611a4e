import { expect, test } from 'vitest';
import { nearest } from '../../../src/tools/content/nearest.ts';

test('two letters that changed places are seen through', () => {
  expect(nearest('skarn-rigde', ['ebbe-flat', 'skarn-ridge', 'skarn-slope'])).toBe('skarn-ridge');
});

test('capitals make no difference', () => {
  expect(nearest('SocketCount', ['socketcount'])).toBe('socketcount');
});

test('a word that nothing is like has no nearest', () => {
  expect(nearest('weight', ['heightMm', 'ratedW'])).toBeUndefined();
  expect(nearest('anything', [])).toBeUndefined();
});

test('of two that are equally near, the first is taken', () => {
  expect(nearest('ratedV', ['ratedW', 'ratedA'])).toBe('ratedW');
});
