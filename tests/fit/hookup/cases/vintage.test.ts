import { expect, test } from 'vitest';
import type { Place } from '../../../../src/fit/model.ts';
import { need, place, solve } from '../build.ts';

const shortSlot = { bus: ['isa-8'] };
const longSlot = { bus: ['isa-8', 'isa-16'] };
const shortCard = { bus: 'isa-8', lanes: null };
const longCard = { bus: 'isa-16', lanes: null };

test('r1: the 8-bit card takes the short slot, so that the 16-bit card has the long one', () => {
  const { joined } = solve({
    needs: [need('bus-card-1/edge', 'expansion-slot', shortCard), need('bus-card-2/edge', 'expansion-slot', longCard)],
    places: [
      place('motherboard-1/slot-1', 'expansion-slot', 0, longSlot),
      place('motherboard-1/slot-2', 'expansion-slot', 1, shortSlot),
    ],
  });
  expect(joined).toEqual({
    'bus-card-1/edge': 'motherboard-1/slot-2',
    'bus-card-2/edge': 'motherboard-1/slot-1',
  });
});

/** A position of a jumper block: it draws its lines of the bus. */
const position = (card: string, name: string, rank: number, lines: string[], more: Partial<Place> = {}): Place =>
  place(
    `${card}/${name}`,
    'setting',
    rank,
    { block: card },
    {
      draws: Object.fromEntries(lines.map((line) => [line, 1])),
      meters: Object.fromEntries(lines.map((line) => [line, [`bus/${line}`]])),
      ...more,
    },
  );

test('r2: three cards get three interrupts, and none the one that the board keeps', () => {
  const { joined } = solve({
    needs: [
      need('bus-card-1/jumper', 'setting', { block: 'bus-card-1' }),
      need('bus-card-2/jumper', 'setting', { block: 'bus-card-2' }),
      need('bus-card-3/jumper', 'setting', { block: 'bus-card-3' }),
    ],
    places: [
      position('bus-card-1', 'at-5', 0, ['irq-5']),
      position('bus-card-1', 'at-3', 1, ['irq-3']),
      position('bus-card-2', 'at-5', 0, ['irq-5']),
      position('bus-card-3', 'at-3', 0, ['irq-3']),
      position('bus-card-3', 'at-6', 1, ['irq-6']),
      position('bus-card-3', 'at-7', 2, ['irq-7']),
    ],
    resources: [
      { id: 'bus/irq-3', capacity: 1 },
      { id: 'bus/irq-5', capacity: 1 },
      { id: 'bus/irq-6', capacity: 1 },
      { id: 'bus/irq-6', capacity: 0 },
      { id: 'bus/irq-7', capacity: 1 },
    ],
  });
  expect(joined).toEqual({
    'bus-card-1/jumper': 'bus-card-1/at-3',
    'bus-card-2/jumper': 'bus-card-2/at-5',
    'bus-card-3/jumper': 'bus-card-3/at-7',
  });
});

test('r3: the card that can use interrupt 10 takes the wide slot, which alone has that line', () => {
  const { joined } = solve({
    needs: [
      need('bus-card-1/edge', 'expansion-slot', shortCard, { carries: ['high-line'] }),
      need('bus-card-1/jumper', 'setting', { block: 'bus-card-1' }),
      need('bus-card-2/edge', 'expansion-slot', shortCard, { carries: ['high-line'] }),
      need('bus-card-2/jumper', 'setting', { block: 'bus-card-2' }),
    ],
    places: [
      place('motherboard-1/slot-1', 'expansion-slot', 0, longSlot),
      place('motherboard-1/slot-2', 'expansion-slot', 1, shortSlot, {
        meters: { 'high-line': ['motherboard-1/slot-2/high-line'] },
      }),
      position('bus-card-1', 'at-5', 0, ['irq-5'], { after: ['bus-card-1/edge'] }),
      position('bus-card-2', 'at-5', 0, ['irq-5'], { after: ['bus-card-2/edge'] }),
      place(
        'bus-card-2/at-10',
        'setting',
        1,
        { block: 'bus-card-2' },
        {
          draws: { 'irq-10': 1, 'high-line': 1 },
          meters: { 'irq-10': ['bus/irq-10'] },
          after: ['bus-card-2/edge'],
        },
      ),
    ],
    resources: [
      { id: 'bus/irq-5', capacity: 1 },
      { id: 'bus/irq-10', capacity: 1 },
      { id: 'motherboard-1/slot-2/high-line', capacity: 0 },
    ],
  });
  expect(joined).toEqual({
    'bus-card-1/edge': 'motherboard-1/slot-2',
    'bus-card-1/jumper': 'bus-card-1/at-5',
    'bus-card-2/edge': 'motherboard-1/slot-1',
    'bus-card-2/jumper': 'bus-card-2/at-10',
  });
});

test('r4: a port that can move makes room for one that cannot, and the network card gives way', () => {
  const { joined } = solve({
    needs: [
      need('bus-card-1/port', 'setting', { block: 'bus-card-1' }),
      need('bus-card-2/port', 'setting', { block: 'bus-card-2' }),
      need('bus-card-3/jumper', 'setting', { block: 'bus-card-3' }),
    ],
    places: [
      position('bus-card-1', 'first', 0, ['io-3f8', 'irq-4']),
      position('bus-card-1', 'second', 1, ['io-2f8', 'irq-3']),
      position('bus-card-2', 'first', 0, ['io-3f8', 'irq-4']),
      position('bus-card-3', 'at-3', 0, ['irq-3']),
      position('bus-card-3', 'at-5', 1, ['irq-5']),
    ],
    resources: [
      { id: 'bus/io-2f8', capacity: 1 },
      { id: 'bus/io-3f8', capacity: 1 },
      { id: 'bus/irq-3', capacity: 1 },
      { id: 'bus/irq-4', capacity: 1 },
      { id: 'bus/irq-5', capacity: 1 },
    ],
  });
  expect(joined).toEqual({
    'bus-card-1/port': 'bus-card-1/second',
    'bus-card-2/port': 'bus-card-2/first',
    'bus-card-3/jumper': 'bus-card-3/at-5',
  });
});

/** Both connectors at the end of the cable, A, are two ways of one place; in the middle, B, there is one. */
const ribbon = {
  cable: need('cable-1/controller-end', 'drive-data', { plug: 'floppy-34' }, { left: 'spare' }),
  places: [
    place('bus-card-1/floppy', 'drive-data', 0, { plug: 'floppy-34' }),
    place('cable-1/a', 'drive-data', 1, { plug: 'floppy-edge' }, { way: 'edge', after: ['cable-1/controller-end'] }),
    place('cable-1/a', 'drive-data', 1, { plug: 'floppy-pins' }, { way: 'pins', after: ['cable-1/controller-end'] }),
    place('cable-1/b', 'drive-data', 2, { plug: 'floppy-edge' }, { way: 'edge', after: ['cable-1/controller-end'] }),
  ],
};

test('r5: a 5.25 drive alone is at the end of the cable', () => {
  const { joined } = solve({
    needs: [ribbon.cable, need('floppy-drive-1/data', 'drive-data', { plug: 'floppy-edge' })],
    places: ribbon.places,
  });
  expect(joined).toEqual({
    'cable-1/controller-end': 'bus-card-1/floppy',
    'floppy-drive-1/data': 'cable-1/a as edge',
  });
});

test('r6: beside a 3.5 drive, which has pins only at the end, it moves to the middle', () => {
  const { joined } = solve({
    needs: [
      ribbon.cable,
      need('floppy-drive-1/data', 'drive-data', { plug: 'floppy-edge' }),
      need('floppy-drive-2/data', 'drive-data', { plug: 'floppy-pins' }),
    ],
    places: ribbon.places,
  });
  expect(joined).toEqual({
    'cable-1/controller-end': 'bus-card-1/floppy',
    'floppy-drive-1/data': 'cable-1/b as edge',
    'floppy-drive-2/data': 'cable-1/a as pins',
  });
});

test('r7: a drive is left over because its controller has no slot', () => {
  const { left, reasons } = solve({
    needs: [
      need('bus-card-1/edge', 'expansion-slot', longCard),
      need('storage-drive-1/data', 'drive-data', { plug: 'ata-40' }),
    ],
    places: [
      place('motherboard-1/slot-1', 'expansion-slot', 0, shortSlot),
      place('bus-card-1/ata', 'drive-data', 0, { plug: 'ata-40' }, { after: ['bus-card-1/edge'] }),
    ],
  });
  const refused = {
    why: 'refused',
    place: 'motherboard-1/slot-1',
    test: 'test/bus',
    need: 'isa-16',
    offered: ['isa-8'],
  };
  expect(left).toEqual(['bus-card-1/edge', 'storage-drive-1/data']);
  expect(reasons).toEqual({
    'bus-card-1/edge': [refused],
    'storage-drive-1/data': [
      { why: 'absent', place: 'bus-card-1/ata', waitsFor: 'bus-card-1/edge', reasons: [refused] },
    ],
  });
});
