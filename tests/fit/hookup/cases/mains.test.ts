import { expect, test } from 'vitest';
import type { Place } from '../../../../src/fit/model.ts';
import { need, place, solve } from '../build.ts';

const wall = (number: number): Place => place(`wall-1/outlet-${number}`, 'mains', number, { plug: 'wall' });
const supply = need('power-supply-1/mains', 'mains', { plug: 'wall' });
/** A monitor's cord fits the wall and the outlet on the back of an older supply. */
const monitor = (number: number) =>
  need(`monitor-${number}/mains`, 'mains', { plug: ['wall', 'supply-outlet'] }, { left: 'limit' });
const outlet = place(
  'power-supply-1/outlet',
  'mains',
  9,
  { plug: 'supply-outlet' },
  { after: ['power-supply-1/mains'] },
);

test('o1: a supply and a monitor take the two outlets of the wall', () => {
  const { joined } = solve({ needs: [monitor(1), supply], places: [wall(1), wall(2)] });
  // Both alike, so by id.
  expect(joined).toEqual({
    'monitor-1/mains': 'wall-1/outlet-1',
    'power-supply-1/mains': 'wall-1/outlet-2',
  });
});

test('o2: with one outlet in the wall the monitor hangs on the supply', () => {
  const { joined } = solve({ needs: [monitor(1), supply], places: [wall(1), outlet] });
  expect(joined).toEqual({
    'monitor-1/mains': 'power-supply-1/outlet',
    'power-supply-1/mains': 'wall-1/outlet-1',
  });
});

test('o3: two outlets in the wall and one on the supply serve three', () => {
  const { joined } = solve({ needs: [monitor(1), monitor(2), supply], places: [wall(1), wall(2), outlet] });
  // The supply first, as others can hang on it; then the monitors by id, the lowest rank first.
  expect(joined).toEqual({
    'monitor-1/mains': 'wall-1/outlet-2',
    'monitor-2/mains': 'power-supply-1/outlet',
    'power-supply-1/mains': 'wall-1/outlet-1',
  });
});

test('o4: where the supply has no outlet that takes it, its own outlet is not there', () => {
  const abroad = place('wall-1/outlet-1', 'mains', 0, { plug: 'other-wall' });
  const { left, reasons } = solve({ needs: [monitor(1), supply], places: [abroad, outlet] });
  const refused = {
    why: 'refused',
    place: 'wall-1/outlet-1',
    test: 'test/plug',
    need: 'wall',
    offered: 'other-wall',
  };
  expect(left).toEqual(['monitor-1/mains', 'power-supply-1/mains']);
  expect(reasons).toEqual({
    'monitor-1/mains': [
      { ...refused, need: ['wall', 'supply-outlet'] },
      { why: 'absent', place: 'power-supply-1/outlet', waitsFor: 'power-supply-1/mains', reasons: [refused] },
    ],
    'power-supply-1/mains': [refused],
  });
});
