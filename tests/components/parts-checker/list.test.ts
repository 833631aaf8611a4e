import { describe, expect, test } from 'vitest';
import {
  choose,
  countIn,
  type Drawer,
  drawerName,
  instead,
  isSame,
  shortDrawers,
  withQuantity,
} from '../../../src/components/parts-checker/list.ts';

const cases: Drawer = { position: 'case', class: 'chassis', parts: ['tower', 'cube'], from: 1, to: 1 };
const memory: Drawer = { position: 'memory', class: 'memory-module', parts: ['m8', 'm16'], from: 1, to: 4 };
const list = [
  { part: 'tower', quantity: 1 },
  { part: 'm8', quantity: 2 },
];

describe('changing a list by drawer', () => {
  test('choosing in a drawer for one puts the part in the place of the one before', () => {
    expect(choose(cases, 'cube', list)).toEqual([
      { part: 'm8', quantity: 2 },
      { part: 'cube', quantity: 1 },
    ]);
  });

  test('a drawer for several holds parts side by side, and none of a part takes it off', () => {
    const both = withQuantity('m16', 1, list);
    expect(countIn(memory, both)).toBe(3);
    expect(withQuantity('m8', 0, both)).toEqual([
      { part: 'tower', quantity: 1 },
      { part: 'm16', quantity: 1 },
    ]);
  });

  test('the list given is not changed', () => {
    withQuantity('m8', 4, list);
    choose(cases, 'cube', list);
    expect(list).toEqual([
      { part: 'tower', quantity: 1 },
      { part: 'm8', quantity: 2 },
    ]);
  });

  test('a part is tried in the same number as is chosen, or in the least the brief asks for', () => {
    expect(instead(memory, 'm16', list)).toContainEqual({ part: 'm16', quantity: 2 });
    expect(instead(memory, 'm16', [])).toEqual([{ part: 'm16', quantity: 1 }]);
    expect(instead(memory, 'm8', list)).toEqual(list);
  });

  test('a drawer is short while it holds fewer than the brief asks for', () => {
    expect(shortDrawers([cases, memory], [{ part: 'm8', quantity: 1 }])).toEqual([cases]);
    expect(shortDrawers([cases, memory], list)).toEqual([]);
  });

  test('two lists in another order are the same, and one more of a part is not', () => {
    expect(isSame(list, [...list].reverse())).toBe(true);
    expect(isSame(list, withQuantity('m8', 3, list))).toBe(false);
  });

  test('a drawer is called by its position', () => {
    expect(drawerName({ ...cases, position: 'graphics-card' })).toBe('Graphics card');
  });
});
