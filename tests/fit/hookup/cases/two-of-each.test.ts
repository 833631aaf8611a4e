/** Two boards, cases or supplies on one list: the search says which things go together. */
import { expect, test } from 'vitest';
import type { Need, Place } from '../../../../src/fit/model.ts';
import { need, place, solve } from '../build.ts';

const stands = { stands: true } as const;
const board = (number: number, formFactor: string): Need =>
  need(`motherboard-${number}/mount`, 'board-mount', { formFactor }, stands);
const tray = (number: number, ...formFactors: string[]): Place =>
  place(`chassis-${number}/tray`, 'board-mount', 0, { formFactors });
const memory = (number: number, generation: string): Need =>
  need(`memory-module-${number}/edge`, 'memory-slot', { generation, sizeGb: 8 });
const slot = (unit: number, name: string, rank: number, generation: string): Place =>
  place(`motherboard-${unit}/${name}`, 'memory-slot', rank, { generation, sizeGb: 32 });

test('n1: the small board leaves the large case to the large one', () => {
  const { joined } = solve({
    needs: [board(1, 'mini-itx'), board(2, 'atx')],
    places: [tray(1, 'atx', 'mini-itx'), tray(2, 'mini-itx')],
  });
  expect(joined).toEqual({
    'motherboard-1/mount': 'chassis-2/tray',
    'motherboard-2/mount': 'chassis-1/tray',
  });
});

test('n2: modules go on the board of their generation, and none crosses', () => {
  const { joined } = solve({
    needs: [memory(1, 'ddr5'), memory(2, 'ddr4'), memory(3, 'ddr5'), memory(4, 'ddr4')],
    places: [slot(1, 'a', 0, 'ddr4'), slot(1, 'b', 1, 'ddr4'), slot(2, 'a', 0, 'ddr5'), slot(2, 'b', 1, 'ddr5')],
  });
  expect(joined).toEqual({
    'memory-module-1/edge': 'motherboard-2/a',
    'memory-module-2/edge': 'motherboard-1/a',
    'memory-module-3/edge': 'motherboard-2/b',
    'memory-module-4/edge': 'motherboard-1/b',
  });
});

test('n3: a second board with no case of its own stands on the bench, and its slots serve', () => {
  const { joined, left } = solve({
    needs: [board(1, 'atx'), board(2, 'atx'), memory(1, 'ddr5'), memory(2, 'ddr5')],
    places: [tray(1, 'atx'), slot(1, 'a', 0, 'ddr5'), slot(2, 'a', 0, 'ddr5')],
  });
  expect(joined).toEqual({
    'motherboard-1/mount': 'chassis-1/tray',
    'memory-module-1/edge': 'motherboard-1/a',
    'memory-module-2/edge': 'motherboard-2/a',
  });
  expect(left).toEqual(['motherboard-2/mount']);
});

test('n4: a board that no case takes is left over, whatever the other does', () => {
  const { joined, left, reasons } = solve({
    needs: [board(1, 'e-atx'), board(2, 'atx')],
    places: [tray(1, 'atx'), tray(2, 'atx')],
  });
  const refused = (place: string) => ({
    why: 'refused',
    place,
    test: 'test/formFactor',
    need: 'e-atx',
    offered: ['atx'],
  });
  expect(joined).toEqual({ 'motherboard-2/mount': 'chassis-1/tray' });
  expect(left).toEqual(['motherboard-1/mount']);
  expect(reasons['motherboard-1/mount']).toEqual([refused('chassis-1/tray'), refused('chassis-2/tray')]);
});
