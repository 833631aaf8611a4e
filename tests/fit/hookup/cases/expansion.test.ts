import { expect, test } from 'vitest';
import type { Place, Resource } from '../../../../src/fit/model.ts';
import { need, place, solve } from '../build.ts';

// Bandwidths: a fourth-generation lane passes 1969 MB/s, a third-generation one 985 MB/s.
const lost = (id: string, capacity: number): Resource => ({ id, capacity, over: 'lost' });
const longSlot = { bus: 'pcie', lengthLanes: 16 };
const display = { bus: 'pcie', lanes: 16 };

/** Slots 1 and 2 share 16 lanes: 16 and none, or 8 and 8. */
const sharedSlots: Place[] = [
  place('motherboard-1/slot-1', 'expansion-slot', 0, longSlot, {
    way: 'x16',
    draws: { lanes: 16 },
    meters: { lanes: ['motherboard-1/lanes'], busMBps: ['motherboard-1/slot-1-x16'] },
  }),
  place('motherboard-1/slot-1', 'expansion-slot', 0, longSlot, {
    way: 'x8',
    draws: { lanes: 8 },
    meters: { lanes: ['motherboard-1/lanes'], busMBps: ['motherboard-1/slot-1-x8'] },
  }),
  place('motherboard-1/slot-2', 'expansion-slot', 1, longSlot, {
    way: 'x8',
    draws: { lanes: 8 },
    meters: { lanes: ['motherboard-1/lanes'], busMBps: ['motherboard-1/slot-2-x8'] },
  }),
];
const sharedLanes: Resource[] = [
  { id: 'motherboard-1/lanes', capacity: 16 },
  lost('motherboard-1/slot-1-x16', 31_504),
  lost('motherboard-1/slot-1-x8', 15_752),
  lost('motherboard-1/slot-2-x8', 15_752),
];

test('x1: a display card alone has all sixteen lanes', () => {
  const { joined, loss } = solve({
    needs: [need('graphics-card-1/edge', 'expansion-slot', display, { draws: { busMBps: 31_504 } })],
    places: sharedSlots,
    resources: sharedLanes,
  });
  expect(joined).toEqual({ 'graphics-card-1/edge': 'motherboard-1/slot-1 as x16' });
  expect(loss).toBe(0);
});

test('x2: a second card halves the lanes, and the display card keeps the first slot', () => {
  const { joined, left } = solve({
    needs: [
      need('bus-card-1/edge', 'expansion-slot', { bus: 'pcie', lanes: 8 }, { draws: { busMBps: 15_752 } }),
      need('graphics-card-1/edge', 'expansion-slot', display, { draws: { busMBps: 31_504 } }),
    ],
    places: sharedSlots,
    resources: sharedLanes,
  });
  expect(joined).toEqual({
    'graphics-card-1/edge': 'motherboard-1/slot-1 as x8',
    'bus-card-1/edge': 'motherboard-1/slot-2 as x8',
  });
  expect(left).toEqual([]);
});

test('x3: a small card goes into the slot that takes no lanes from the display card', () => {
  const { joined, loss } = solve({
    needs: [
      need('bus-card-1/edge', 'expansion-slot', { bus: 'pcie', lanes: 1 }, { draws: { busMBps: 1969 } }),
      need('graphics-card-1/edge', 'expansion-slot', display, { draws: { busMBps: 31_504 } }),
    ],
    places: [
      ...sharedSlots,
      place(
        'motherboard-1/slot-3',
        'expansion-slot',
        2,
        { bus: 'pcie', lengthLanes: 4 },
        {
          meters: { busMBps: ['motherboard-1/slot-3-x4'] },
        },
      ),
    ],
    resources: [...sharedLanes, lost('motherboard-1/slot-3-x4', 7876)],
  });
  expect(joined).toEqual({
    'graphics-card-1/edge': 'motherboard-1/slot-1 as x16',
    'bus-card-1/edge': 'motherboard-1/slot-3',
  });
  expect(loss).toBe(0);
});

/** Positions 1 to 8 of the board, each as deep as one slot: two halves. */
const boardPositions: Resource[] = [
  { id: 'motherboard-1/pos-1', capacity: 2 },
  { id: 'motherboard-1/pos-2', capacity: 2 },
  { id: 'motherboard-1/pos-3', capacity: 2 },
  { id: 'motherboard-1/pos-4', capacity: 2 },
  { id: 'motherboard-1/pos-5', capacity: 2 },
  { id: 'motherboard-1/pos-6', capacity: 2 },
  { id: 'motherboard-1/pos-7', capacity: 2 },
  { id: 'motherboard-1/pos-8', capacity: 2 },
];
const at1 = ['motherboard-1/pos-1', 'motherboard-1/pos-2', 'motherboard-1/pos-3'];
const at3 = ['motherboard-1/pos-3', 'motherboard-1/pos-4', 'motherboard-1/pos-5'];
const at4 = ['motherboard-1/pos-4', 'motherboard-1/pos-5', 'motherboard-1/pos-6'];
const at6 = ['motherboard-1/pos-6', 'motherboard-1/pos-7', 'motherboard-1/pos-8'];
const at7 = ['motherboard-1/pos-7', 'motherboard-1/pos-8'];

test('x4: a card two and a half slots thick covers the slot at position 3', () => {
  const { joined } = solve({
    needs: [
      need('bus-card-1/edge', 'expansion-slot', { bus: 'pcie', lanes: 4 }, { draws: { busMBps: 7876, halfSlots: 2 } }),
      need('graphics-card-1/edge', 'expansion-slot', display, { draws: { busMBps: 31_504, halfSlots: 5 } }),
    ],
    places: [
      place('motherboard-1/slot-1', 'expansion-slot', 0, longSlot, {
        meters: { halfSlots: at1, busMBps: ['motherboard-1/slot-1-x16'] },
      }),
      place('motherboard-1/slot-2', 'expansion-slot', 1, longSlot, {
        meters: { halfSlots: at3, busMBps: ['motherboard-1/slot-2-x4'] },
      }),
      place('motherboard-1/slot-3', 'expansion-slot', 2, longSlot, {
        meters: { halfSlots: at4, busMBps: ['motherboard-1/slot-3-x4'] },
      }),
    ],
    resources: [
      ...boardPositions,
      lost('motherboard-1/slot-1-x16', 31_504),
      lost('motherboard-1/slot-2-x4', 7876),
      lost('motherboard-1/slot-3-x4', 7876),
    ],
  });
  expect(joined).toEqual({
    'graphics-card-1/edge': 'motherboard-1/slot-1',
    'bus-card-1/edge': 'motherboard-1/slot-3',
  });
});

const boardMount = need(
  'motherboard-1/mount',
  'board-mount',
  { formFactor: 'atx' },
  {
    stands: true,
    carries: ['pos-1', 'pos-2', 'pos-3', 'pos-4', 'pos-5', 'pos-6', 'pos-7', 'pos-8'],
  },
);
/** A case with seven cut-outs. */
const tray = place(
  'chassis-1/tray',
  'board-mount',
  0,
  { formFactors: ['atx'] },
  {
    meters: { 'pos-6': ['chassis-1/pos-6'], 'pos-7': ['chassis-1/pos-7'], 'pos-8': ['chassis-1/pos-8'] },
  },
);
const cutOuts: Resource[] = [
  { id: 'chassis-1/pos-6', capacity: 2 },
  { id: 'chassis-1/pos-7', capacity: 2 },
  { id: 'chassis-1/pos-8', capacity: 0 },
];

const anyCard = { bus: 'pcie', lanes: 1 };
const onBoard = (halfSlots: string[]): Partial<Place> => ({ meters: { halfSlots }, after: ['motherboard-1/mount'] });

test('x5: the thick card takes the first slot though it is not the first card', () => {
  const { joined, left } = solve({
    needs: [
      boardMount,
      need('bus-card-1/edge', 'expansion-slot', anyCard, { draws: { halfSlots: 4 } }),
      need('bus-card-2/edge', 'expansion-slot', anyCard, { draws: { halfSlots: 6 } }),
      need('bus-card-3/edge', 'expansion-slot', anyCard, { draws: { halfSlots: 4 } }),
    ],
    places: [
      tray,
      place('motherboard-1/slot-1', 'expansion-slot', 0, longSlot, onBoard(at1)),
      place('motherboard-1/slot-2', 'expansion-slot', 1, longSlot, onBoard(at4)),
      place('motherboard-1/slot-3', 'expansion-slot', 2, longSlot, onBoard(at6)),
    ],
    resources: [...boardPositions, ...cutOuts],
  });
  expect(joined).toEqual({
    'motherboard-1/mount': 'chassis-1/tray',
    'bus-card-1/edge': 'motherboard-1/slot-2',
    'bus-card-2/edge': 'motherboard-1/slot-1',
    'bus-card-3/edge': 'motherboard-1/slot-3',
  });
  expect(left).toEqual([]);
});

test('x6: a thick card in the last slot would need a cut-out that the case does not have', () => {
  const { left, reasons } = solve({
    needs: [boardMount, need('bus-card-1/edge', 'expansion-slot', anyCard, { draws: { halfSlots: 4 } })],
    places: [tray, place('motherboard-1/slot-1', 'expansion-slot', 0, longSlot, onBoard(at7))],
    resources: [...boardPositions, ...cutOuts],
  });
  expect(left).toEqual(['bus-card-1/edge']);
  expect(reasons['bus-card-1/edge']).toEqual([
    {
      why: 'spent',
      place: 'motherboard-1/slot-1',
      resource: 'chassis-1/pos-8',
      capacity: 0,
      wanted: 2,
      joints: [],
    },
  ]);
});

test('x7: with no case at all the board stands, and the card has its slot', () => {
  const { joined, left, reasons } = solve({
    needs: [boardMount, need('bus-card-1/edge', 'expansion-slot', anyCard, { draws: { halfSlots: 4 } })],
    places: [place('motherboard-1/slot-1', 'expansion-slot', 0, longSlot, onBoard(at7))],
    resources: boardPositions,
  });
  expect(joined).toEqual({ 'bus-card-1/edge': 'motherboard-1/slot-1' });
  expect(left).toEqual(['motherboard-1/mount']);
  expect(reasons).toEqual({ 'motherboard-1/mount': [{ why: 'none-offered', kind: 'board-mount' }] });
});

test('x8: the board stays in the case though taking it out would fit two cards more', () => {
  const { joined, left } = solve({
    needs: [
      boardMount,
      need('bus-card-1/edge', 'expansion-slot', anyCard, { draws: { halfSlots: 2 } }),
      need('bus-card-2/edge', 'expansion-slot', anyCard, { draws: { halfSlots: 2 } }),
    ],
    places: [
      place(
        'chassis-1/tray',
        'board-mount',
        0,
        { formFactors: ['atx'] },
        {
          meters: { 'pos-6': ['chassis-1/pos-6'], 'pos-7': ['chassis-1/pos-7'] },
        },
      ),
      place('motherboard-1/slot-1', 'expansion-slot', 0, longSlot, onBoard(['motherboard-1/pos-6'])),
      place('motherboard-1/slot-2', 'expansion-slot', 1, longSlot, onBoard(['motherboard-1/pos-7'])),
    ],
    resources: [...boardPositions, { id: 'chassis-1/pos-6', capacity: 0 }, { id: 'chassis-1/pos-7', capacity: 0 }],
  });
  expect(joined).toEqual({ 'motherboard-1/mount': 'chassis-1/tray' });
  expect(left).toEqual(['bus-card-1/edge', 'bus-card-2/edge']);
});

test('x9: a thick card stands upright on a riser, so that the small card has its only slot', () => {
  const { joined, loss } = solve({
    needs: [
      need('graphics-card-1/edge', 'expansion-slot', display, { draws: { busMBps: 31_504, halfSlots: 6 } }),
      need('bus-card-1/edge', 'expansion-slot', { bus: 'pcie', lanes: 4 }, { draws: { busMBps: 7876, halfSlots: 2 } }),
      need('riser-1/edge', 'expansion-slot', display, { left: 'spare', draws: { halfSlots: 1 }, carries: ['busMBps'] }),
    ],
    places: [
      place('motherboard-1/slot-1', 'expansion-slot', 0, longSlot, {
        meters: { halfSlots: at1, busMBps: ['motherboard-1/slot-1-x16'] },
      }),
      place(
        'motherboard-1/slot-2',
        'expansion-slot',
        1,
        { bus: 'pcie', lengthLanes: 4 },
        {
          meters: { halfSlots: at3, busMBps: ['motherboard-1/slot-2-x4'] },
        },
      ),
      place('riser-1/slot', 'expansion-slot', 2, longSlot, {
        after: ['riser-1/edge'],
        meters: {
          halfSlots: ['riser-1/upright-1', 'riser-1/upright-2', 'riser-1/upright-3'],
          busMBps: ['riser-1/busMBps'],
        },
      }),
    ],
    resources: [
      ...boardPositions,
      { id: 'riser-1/upright-1', capacity: 2 },
      { id: 'riser-1/upright-2', capacity: 2 },
      { id: 'riser-1/upright-3', capacity: 2 },
      lost('motherboard-1/slot-1-x16', 31_504),
      lost('motherboard-1/slot-2-x4', 7876),
      lost('riser-1/busMBps', 15_760),
    ],
  });
  expect(joined).toEqual({
    'graphics-card-1/edge': 'riser-1/slot',
    'bus-card-1/edge': 'motherboard-1/slot-2',
    'riser-1/edge': 'motherboard-1/slot-1',
  });
  expect(loss).toBe(15_744);
});
