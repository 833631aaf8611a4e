import { expect, test } from 'vitest';
import { findHookup } from '../../../../src/fit/hookup/search.ts';
import { need, place, problem, solve } from '../build.ts';

const wrongCooler = {
  needs: [
    need('processor-1/cooling', 'cooling', {}, { left: 'hazard' }),
    need('cooler-1/mount', 'cooler-mount', { mountings: ['s2'] }),
  ],
  places: [
    place('motherboard-1/cooler-mount', 'cooler-mount', 0, { mountings: ['s1'] }),
    place('cooler-1/cooling', 'cooling', 0, {}, { after: ['cooler-1/mount'] }),
  ],
};

test('c1: a cooler that cannot be mounted leaves the processor without cooling, a hazard', () => {
  const { left, reasons } = solve(wrongCooler);
  const refused = {
    why: 'refused',
    place: 'motherboard-1/cooler-mount',
    test: 'test/mountings',
    need: ['s2'],
    offered: ['s1'],
  };
  expect(left).toEqual(['cooler-1/mount', 'processor-1/cooling']);
  expect(reasons).toEqual({
    'cooler-1/mount': [refused],
    'processor-1/cooling': [
      { why: 'absent', place: 'cooler-1/cooling', waitsFor: 'cooler-1/mount', reasons: [refused] },
    ],
  });
  expect(findHookup(problem(wrongCooler)).cost).toEqual([0, 1, 1, 0, 0, 0, 0, 0, 0]);
});
