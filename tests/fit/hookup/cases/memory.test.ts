import { expect, test } from 'vitest';
import type { Place, Resource } from '../../../../src/fit/model.ts';
import { need, place, solve } from '../build.ts';

const slot = (name: string, rank: number, channel: string): Place =>
  place(
    `motherboard-1/slot-${name}`,
    'memory-slot',
    rank,
    { generation: 'ddr5', sizeGb: 64 },
    { meters: { channelMib: [`motherboard-1/channel-${channel}`] } },
  );

/** The maker's order: a2, b2, a1, b1. */
const fourSlots = [slot('a1', 2, 'a'), slot('a2', 0, 'a'), slot('b1', 3, 'b'), slot('b2', 1, 'b')];
const twoChannels: Resource[] = [
  { id: 'motherboard-1/channel-a', capacity: 0, over: 'lost', even: 'motherboard-1/channels' },
  { id: 'motherboard-1/channel-b', capacity: 0, over: 'lost', even: 'motherboard-1/channels' },
];
const eight = { generation: 'ddr5', sizeGb: 8 };
const sixteen = { generation: 'ddr5', sizeGb: 16 };

test('m1: two modules go where the maker says two should go', () => {
  const { joined, loss } = solve({
    needs: [
      need('memory-module-1/edge', 'memory-slot', eight, { draws: { channelMib: 8192 } }),
      need('memory-module-2/edge', 'memory-slot', eight, { draws: { channelMib: 8192 } }),
    ],
    places: fourSlots,
    resources: twoChannels,
  });
  expect(joined).toEqual({
    'memory-module-1/edge': 'motherboard-1/slot-a2',
    'memory-module-2/edge': 'motherboard-1/slot-b2',
  });
  expect(loss).toBe(0);
});

test('m2: one big and two small modules balance the channels', () => {
  const { joined, loss } = solve({
    needs: [
      need('memory-module-1/edge', 'memory-slot', sixteen, { draws: { channelMib: 16_384 } }),
      need('memory-module-2/edge', 'memory-slot', eight, { draws: { channelMib: 8192 } }),
      need('memory-module-3/edge', 'memory-slot', eight, { draws: { channelMib: 8192 } }),
    ],
    places: fourSlots,
    resources: twoChannels,
  });
  expect(joined).toEqual({
    'memory-module-1/edge': 'motherboard-1/slot-b2',
    'memory-module-2/edge': 'motherboard-1/slot-a2',
    'memory-module-3/edge': 'motherboard-1/slot-a1',
  });
  expect(loss).toBe(0);
});

test('m3: among equals the bigger modules choose first', () => {
  const { joined, loss } = solve({
    needs: [
      need('memory-module-1/edge', 'memory-slot', eight, { draws: { channelMib: 8192 } }),
      need('memory-module-2/edge', 'memory-slot', eight, { draws: { channelMib: 8192 } }),
      need('memory-module-3/edge', 'memory-slot', sixteen, { draws: { channelMib: 16_384 } }),
      need('memory-module-4/edge', 'memory-slot', sixteen, { draws: { channelMib: 16_384 } }),
    ],
    places: fourSlots,
    resources: twoChannels,
  });
  expect(joined).toEqual({
    'memory-module-1/edge': 'motherboard-1/slot-a1',
    'memory-module-2/edge': 'motherboard-1/slot-b1',
    'memory-module-3/edge': 'motherboard-1/slot-a2',
    'memory-module-4/edge': 'motherboard-1/slot-b2',
  });
  expect(loss).toBe(0);
});

test('m4: of five modules and four slots the last by number is left over', () => {
  const { left, reasons } = solve({
    needs: [
      need('memory-module-10/edge', 'memory-slot', eight),
      need('memory-module-2/edge', 'memory-slot', eight),
      need('memory-module-7/edge', 'memory-slot', eight),
      need('memory-module-8/edge', 'memory-slot', eight),
      need('memory-module-9/edge', 'memory-slot', eight),
    ],
    places: fourSlots,
    resources: twoChannels,
  });
  expect(left).toEqual(['memory-module-10/edge']);
  expect(reasons['memory-module-10/edge']).toEqual([
    { why: 'taken', place: 'motherboard-1/slot-a2', joints: ['memory-module-2/edge → motherboard-1/slot-a2'] },
    { why: 'taken', place: 'motherboard-1/slot-b2', joints: ['memory-module-7/edge → motherboard-1/slot-b2'] },
    { why: 'taken', place: 'motherboard-1/slot-a1', joints: ['memory-module-8/edge → motherboard-1/slot-a1'] },
    { why: 'taken', place: 'motherboard-1/slot-b1', joints: ['memory-module-9/edge → motherboard-1/slot-b1'] },
  ]);
});

test('m6: a module of unknown size is joined, and the joint is provisional', () => {
  const { joined, unknown } = solve({
    needs: [need('memory-module-1/edge', 'memory-slot', { generation: 'ddr5', sizeGb: undefined })],
    places: fourSlots,
    resources: twoChannels,
  });
  expect(joined).toEqual({ 'memory-module-1/edge': 'motherboard-1/slot-a2' });
  expect(unknown).toEqual(['memory-module-1/edge']);
});

const oneMegabyte = { pins: 30, sizeMb: 1 };
const fourMegabytes = { pins: 30, sizeMb: 4 };
const anyBank = { pins: 30, sizeMb: 16 };

test('m7: six alike modules fill one bank of four, and two are too few for the other', () => {
  const { joined, left, reasons } = solve({
    needs: [
      need('bank-module-1/edge', 'memory-bank', oneMegabyte),
      need('bank-module-2/edge', 'memory-bank', oneMegabyte),
      need('bank-module-3/edge', 'memory-bank', oneMegabyte),
      need('bank-module-4/edge', 'memory-bank', oneMegabyte),
      need('bank-module-5/edge', 'memory-bank', oneMegabyte),
      need('bank-module-6/edge', 'memory-bank', oneMegabyte),
    ],
    places: [
      place('motherboard-1/bank-0', 'memory-bank', 0, anyBank, { fill: 4 }),
      place('motherboard-1/bank-1', 'memory-bank', 1, anyBank, { fill: 4 }),
    ],
  });
  expect(joined).toEqual({
    'bank-module-1/edge': 'motherboard-1/bank-0',
    'bank-module-2/edge': 'motherboard-1/bank-0',
    'bank-module-3/edge': 'motherboard-1/bank-0',
    'bank-module-4/edge': 'motherboard-1/bank-0',
  });
  expect(left).toEqual(['bank-module-5/edge', 'bank-module-6/edge']);
  expect(reasons['bank-module-6/edge']).toContainEqual({
    why: 'too-few-alike',
    place: 'motherboard-1/bank-1',
    fill: 4,
    alike: 2,
  });
});

test('m8: two kinds of module never share a bank', () => {
  const { joined, left } = solve({
    needs: [
      need('bank-module-1/edge', 'memory-bank', oneMegabyte),
      need('bank-module-2/edge', 'memory-bank', oneMegabyte),
      need('bank-module-3/edge', 'memory-bank', oneMegabyte),
      need('bank-module-4/edge', 'memory-bank', fourMegabytes),
      need('bank-module-5/edge', 'memory-bank', fourMegabytes),
    ],
    places: [
      place('motherboard-1/bank-0', 'memory-bank', 0, anyBank, { fill: 2 }),
      place('motherboard-1/bank-1', 'memory-bank', 1, anyBank, { fill: 2 }),
    ],
  });
  expect(left).toEqual(['bank-module-3/edge']);
  expect(joined).toMatchObject({
    'bank-module-4/edge': 'motherboard-1/bank-1',
    'bank-module-5/edge': 'motherboard-1/bank-1',
  });
});

test('m9: the small modules give up the first bank, the only one that takes the big ones', () => {
  const { joined } = solve({
    needs: [
      need('bank-module-1/edge', 'memory-bank', oneMegabyte),
      need('bank-module-2/edge', 'memory-bank', oneMegabyte),
      need('bank-module-3/edge', 'memory-bank', fourMegabytes),
      need('bank-module-4/edge', 'memory-bank', fourMegabytes),
    ],
    places: [
      place('motherboard-1/bank-0', 'memory-bank', 0, anyBank, { fill: 2 }),
      place('motherboard-1/bank-1', 'memory-bank', 1, { pins: 30, sizeMb: 1 }, { fill: 2 }),
    ],
  });
  expect(joined).toEqual({
    'bank-module-1/edge': 'motherboard-1/bank-1',
    'bank-module-2/edge': 'motherboard-1/bank-1',
    'bank-module-3/edge': 'motherboard-1/bank-0',
    'bank-module-4/edge': 'motherboard-1/bank-0',
  });
});
