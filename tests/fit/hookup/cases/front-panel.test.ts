import { expect, test } from 'vitest';
import { need, place, solve } from '../build.ts';

const limit = { left: 'limit' } as const;
const usb = (name: string, rank: number, plug: string) => place(`motherboard-1/${name}`, 'front-panel', rank, { plug });

test('w1: of two headers one lead takes the first, and the other stays free', () => {
  const { joined, left } = solve({
    needs: [need('chassis-1/front-usb', 'front-panel', { plug: 'usb-20' }, limit)],
    places: [usb('usb-1', 0, 'usb-20'), usb('usb-2', 1, 'usb-20')],
  });
  expect(joined).toEqual({ 'chassis-1/front-usb': 'motherboard-1/usb-1' });
  expect(left).toEqual([]);
});

/** A lead for a fast header, and an adapter from that to a slow one. */
const fastLead = [
  need('chassis-1/front-usb', 'front-panel', { plug: 'usb-32' }, limit),
  need('adapter-1/plug', 'front-panel', { plug: 'usb-20' }, { left: 'spare' }),
];
const adapterSocket = place('adapter-1/socket', 'front-panel', 2, { plug: 'usb-32' }, { after: ['adapter-1/plug'] });

test('w2: a lead that fits no header of the board goes through its adapter', () => {
  const { joined } = solve({
    needs: fastLead,
    places: [usb('usb-1', 0, 'usb-20'), usb('usb-2', 1, 'usb-20'), adapterSocket],
  });
  expect(joined).toEqual({
    'chassis-1/front-usb': 'adapter-1/socket',
    'adapter-1/plug': 'motherboard-1/usb-1',
  });
});

test('w3: where the board has the header, the adapter stays in its bag', () => {
  const { joined, left } = solve({
    needs: fastLead,
    places: [usb('usb-1', 0, 'usb-20'), usb('usb-fast', 5, 'usb-32'), adapterSocket],
  });
  // Through the adapter the ranks would be less, 2 against 5; a spare joined outranks rank.
  expect(joined).toEqual({ 'chassis-1/front-usb': 'motherboard-1/usb-fast' });
  expect(left).toEqual(['adapter-1/plug']);
});

test('w4: the lead of another part does not take the header that the adapter needs more', () => {
  const { joined, left } = solve({
    needs: [...fastLead, need('cooler-1/usb', 'front-panel', { plug: 'usb-20' }, { left: 'note' })],
    places: [usb('usb-1', 0, 'usb-20'), adapterSocket],
  });
  // One header: front sockets left over are a limit, the cooler's light a note.
  expect(joined).toEqual({
    'chassis-1/front-usb': 'adapter-1/socket',
    'adapter-1/plug': 'motherboard-1/usb-1',
  });
  expect(left).toEqual(['cooler-1/usb']);
});
