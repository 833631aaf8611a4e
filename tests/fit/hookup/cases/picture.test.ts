import { expect, test } from 'vitest';
import { need, place, solve } from '../build.ts';

/** `end`: what the need is for. A monitor with its own lead needs a socket, one with a socket needs a plug. */
const socket = (plug: string) => ({ plug, end: 'socket' });
const wantsSocket = (...plugs: string[]) => ({ plugs, end: 'socket' });
const wantsPlug = (...plugs: string[]) => ({ plugs, end: 'plug' });

test('v1: the monitor that takes either leaves the socket that the other needs', () => {
  const { joined } = solve({
    needs: [
      need('monitor-1/picture', 'picture', wantsSocket('hdmi', 'dp')),
      need('monitor-2/picture', 'picture', wantsSocket('hdmi')),
    ],
    places: [
      place('graphics-card-1/hdmi', 'picture', 0, socket('hdmi')),
      place('graphics-card-1/dp', 'picture', 1, socket('dp')),
    ],
  });
  expect(joined).toEqual({
    'monitor-1/picture': 'graphics-card-1/dp',
    'monitor-2/picture': 'graphics-card-1/hdmi',
  });
});

test('v2: a fast picture goes through the good cable', () => {
  const cable = { left: 'spare' as const, carries: ['pictureMbps'] };
  const { joined, left, loss } = solve({
    needs: [
      need('monitor-1/picture', 'picture', wantsPlug('hdmi'), { draws: { pictureMbps: 20_000 } }),
      need('cable-1/socket-end', 'picture', wantsSocket('hdmi'), cable),
      need('cable-2/socket-end', 'picture', wantsSocket('hdmi'), cable),
    ],
    places: [
      place('graphics-card-1/hdmi', 'picture', 0, socket('hdmi'), {
        meters: { pictureMbps: ['graphics-card-1/hdmi/pictureMbps'] },
      }),
      place(
        'cable-1/plug-end',
        'picture',
        1,
        { plug: 'hdmi', end: 'plug' },
        {
          after: ['cable-1/socket-end'],
          meters: { pictureMbps: ['cable-1/pictureMbps'] },
        },
      ),
      place(
        'cable-2/plug-end',
        'picture',
        1,
        { plug: 'hdmi', end: 'plug' },
        {
          after: ['cable-2/socket-end'],
          meters: { pictureMbps: ['cable-2/pictureMbps'] },
        },
      ),
    ],
    resources: [
      { id: 'graphics-card-1/hdmi/pictureMbps', capacity: 42_000, over: 'lost' },
      { id: 'cable-1/pictureMbps', capacity: 8000, over: 'lost' },
      { id: 'cable-2/pictureMbps', capacity: 42_000, over: 'lost' },
    ],
  });
  expect(joined).toEqual({
    'monitor-1/picture': 'cable-2/plug-end',
    'cable-2/socket-end': 'graphics-card-1/hdmi',
  });
  expect(left).toEqual(['cable-1/socket-end']);
  expect(loss).toBe(0);
});

test('v3: with one socket the second monitor hangs on the outlet of the first', () => {
  const { joined, loss } = solve({
    needs: [
      need('monitor-1/picture', 'picture', wantsSocket('dp'), {
        draws: { pictureMbps: 6000 },
        carries: ['pictureMbps'],
      }),
      need('monitor-2/picture', 'picture', wantsSocket('dp'), { draws: { pictureMbps: 6000 } }),
    ],
    places: [
      place('graphics-card-1/dp', 'picture', 0, socket('dp'), {
        meters: { pictureMbps: ['graphics-card-1/dp/pictureMbps'] },
      }),
      place('monitor-1/outlet', 'picture', 5, socket('dp'), { after: ['monitor-1/picture'] }),
    ],
    resources: [{ id: 'graphics-card-1/dp/pictureMbps', capacity: 25_920, over: 'lost' }],
  });
  expect(joined).toEqual({
    'monitor-1/picture': 'graphics-card-1/dp',
    'monitor-2/picture': 'monitor-1/outlet',
  });
  expect(loss).toBe(0);
});

test('v4: an analog picture through a passive adapter needs the socket that has analog pins', () => {
  const { joined } = solve({
    needs: [
      need('monitor-1/picture', 'picture', wantsSocket('vga'), { draws: { analog: 1 } }),
      need('adapter-1/plug', 'picture', wantsSocket('dvi'), { left: 'spare', carries: ['analog'] }),
    ],
    places: [
      place('graphics-card-1/dvi-d', 'picture', 0, socket('dvi'), {
        meters: { analog: ['graphics-card-1/dvi-d/analog'] },
      }),
      place('graphics-card-1/dvi-i', 'picture', 1, socket('dvi')),
      place('adapter-1/outlet', 'picture', 2, socket('vga'), { after: ['adapter-1/plug'] }),
    ],
    resources: [{ id: 'graphics-card-1/dvi-d/analog', capacity: 0 }],
  });
  expect(joined).toEqual({
    'monitor-1/picture': 'adapter-1/outlet',
    'adapter-1/plug': 'graphics-card-1/dvi-i',
  });
});

test('v5: the monitor that wants more is joined to the card, the other to the board', () => {
  const { joined, loss } = solve({
    needs: [
      need('monitor-1/picture', 'picture', wantsSocket('hdmi'), { draws: { pictureMbps: 3000 } }),
      need('monitor-2/picture', 'picture', wantsSocket('hdmi'), { draws: { pictureMbps: 20_000 } }),
    ],
    places: [
      place('graphics-card-1/hdmi', 'picture', 0, socket('hdmi'), {
        meters: { pictureMbps: ['graphics-card-1/hdmi/pictureMbps'] },
      }),
      place('motherboard-1/hdmi', 'picture', 1, socket('hdmi'), {
        meters: { pictureMbps: ['motherboard-1/hdmi/pictureMbps'] },
      }),
    ],
    resources: [
      { id: 'graphics-card-1/hdmi/pictureMbps', capacity: 42_000, over: 'lost' },
      { id: 'motherboard-1/hdmi/pictureMbps', capacity: 18_000, over: 'lost' },
    ],
  });
  expect(joined).toEqual({
    'monitor-1/picture': 'motherboard-1/hdmi',
    'monitor-2/picture': 'graphics-card-1/hdmi',
  });
  expect(loss).toBe(0);
});
