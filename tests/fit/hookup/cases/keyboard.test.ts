import { expect, test } from 'vitest';
import { need, place, solve } from '../build.ts';

const six = { plug: 'din-6' };
const five = { plug: 'din-5' };
const keyboard = need('keyboard-1/lead', 'keyboard', six);
const pointer = need('pointer-1/lead', 'pointer', six, { left: 'limit' });

test('d1: keyboard and pointer have the same plug and a socket each', () => {
  const { joined } = solve({
    needs: [keyboard, pointer],
    places: [place('motherboard-1/keyboard', 'keyboard', 0, six), place('motherboard-1/pointer', 'pointer', 0, six)],
  });
  expect(joined).toEqual({
    'keyboard-1/lead': 'motherboard-1/keyboard',
    'pointer-1/lead': 'motherboard-1/pointer',
  });
});

/** One socket that takes either: two places that share it. */
const combined = {
  places: [
    place('motherboard-1/combined-keyboard', 'keyboard', 0, six, {
      draws: { socket: 1 },
      meters: { socket: ['motherboard-1/combined'] },
    }),
    place('motherboard-1/combined-pointer', 'pointer', 0, six, {
      draws: { socket: 1 },
      meters: { socket: ['motherboard-1/combined'] },
    }),
  ],
  resources: [{ id: 'motherboard-1/combined', capacity: 1 }],
};

test('d2: a combined socket serves the keyboard, without which the machine stops', () => {
  const { joined, reasons } = solve({ needs: [keyboard, pointer], ...combined });
  expect(joined).toEqual({ 'keyboard-1/lead': 'motherboard-1/combined-keyboard' });
  expect(reasons['pointer-1/lead']).toEqual([
    {
      why: 'spent',
      place: 'motherboard-1/combined-pointer',
      resource: 'motherboard-1/combined',
      capacity: 1,
      wanted: 2,
      joints: ['keyboard-1/lead → motherboard-1/combined-keyboard'],
    },
  ]);
});

test('d3: through a Y adapter the combined socket serves both', () => {
  const { joined } = solve({
    needs: [keyboard, pointer, need('adapter-1/plug', 'keyboard', six, { left: 'spare' })],
    places: [
      ...combined.places,
      place('adapter-1/keyboard', 'keyboard', 1, six, { after: ['adapter-1/plug'] }),
      place('adapter-1/pointer', 'pointer', 1, six, { after: ['adapter-1/plug'] }),
    ],
    resources: combined.resources,
  });
  expect(joined).toEqual({
    'adapter-1/plug': 'motherboard-1/combined-keyboard',
    'keyboard-1/lead': 'adapter-1/keyboard',
    'pointer-1/lead': 'adapter-1/pointer',
  });
});

test('d4: a keyboard of the older plug is refused by the newer socket, and joined through an adapter', () => {
  const older = need('keyboard-1/lead', 'keyboard', five);
  const socket = place('motherboard-1/keyboard', 'keyboard', 0, six);
  const without = solve({ needs: [older], places: [socket] });
  expect(without.left).toEqual(['keyboard-1/lead']);
  expect(without.reasons['keyboard-1/lead']).toEqual([
    { why: 'refused', place: 'motherboard-1/keyboard', test: 'test/plug', need: 'din-5', offered: 'din-6' },
  ]);
  const { joined } = solve({
    needs: [older, need('adapter-1/plug', 'keyboard', six, { left: 'spare' })],
    places: [socket, place('adapter-1/socket', 'keyboard', 1, five, { after: ['adapter-1/plug'] })],
  });
  expect(joined).toEqual({
    'adapter-1/plug': 'motherboard-1/keyboard',
    'keyboard-1/lead': 'adapter-1/socket',
  });
});
