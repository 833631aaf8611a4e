import { expect, test } from 'vitest';
import type { Need, Place } from '../../../../src/fit/model.ts';
import { need, place, solve } from '../build.ts';

const buses = {
  short: ['isa-8'],
  long: ['isa-8', 'isa-16'],
  eisa: ['isa-8', 'isa-16', 'eisa'],
  vlb: ['isa-8', 'isa-16', 'vlb'],
};
const slot = (number: number, bus: keyof typeof buses): Place =>
  place(`motherboard-1/slot-${number}`, 'expansion-slot', number, { bus: buses[bus], lengthLanes: null });
const card = (number: number, ...bus: string[]): Need =>
  need(`bus-card-${number}/edge`, 'expansion-slot', { bus, lanes: null });

test('e1: a VLB card takes the one VLB slot though it is ranked last', () => {
  const { joined } = solve({
    needs: [card(1, 'vlb')],
    places: [slot(1, 'short'), slot(2, 'long'), slot(3, 'vlb')],
  });
  expect(joined).toEqual({ 'bus-card-1/edge': 'motherboard-1/slot-3' });
});

test('e2: 16-bit cards leave the VLB slot to the card that needs it, though it is ranked first', () => {
  const { joined } = solve({
    needs: [card(1, 'isa-16'), card(2, 'isa-16'), card(3, 'vlb')],
    places: [slot(1, 'vlb'), slot(2, 'long'), slot(3, 'long')],
  });
  expect(joined).toEqual({
    'bus-card-1/edge': 'motherboard-1/slot-2',
    'bus-card-2/edge': 'motherboard-1/slot-3',
    'bus-card-3/edge': 'motherboard-1/slot-1',
  });
});

test('e3: each card has one slot left, and they are found together', () => {
  const { joined } = solve({
    needs: [card(1, 'isa-8'), card(2, 'isa-16'), card(3, 'eisa')],
    places: [slot(1, 'eisa'), slot(2, 'eisa'), slot(3, 'short')],
  });
  // The 16-bit and the EISA card have the EISA slots between them, in order; the 8-bit card the short one.
  expect(joined).toEqual({
    'bus-card-1/edge': 'motherboard-1/slot-3',
    'bus-card-2/edge': 'motherboard-1/slot-1',
    'bus-card-3/edge': 'motherboard-1/slot-2',
  });
});

test('e4: EISA and VLB cards are refused by each other’s slots', () => {
  const { left, reasons } = solve({
    needs: [card(1, 'eisa'), card(2, 'vlb')],
    places: [slot(1, 'vlb')],
  });
  expect(left).toEqual(['bus-card-1/edge']);
  expect(reasons['bus-card-1/edge']).toEqual([
    { why: 'refused', place: 'motherboard-1/slot-1', test: 'test/bus', need: ['eisa'], offered: buses.vlb },
  ]);
});

test('e5: of two 16-bit cards the one that also works short gives up the long slot', () => {
  const { joined } = solve({
    needs: [card(1, 'isa-16', 'isa-8'), card(2, 'isa-16')],
    places: [slot(1, 'long'), slot(2, 'short')],
  });
  expect(joined).toEqual({
    'bus-card-1/edge': 'motherboard-1/slot-2',
    'bus-card-2/edge': 'motherboard-1/slot-1',
  });
});
