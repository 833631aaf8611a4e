/** Cases where what seems settled before the search is not. Each answer is argued by hand and tried by the oracle. */
import { test } from 'vitest';
import { check } from './agree.ts';
import { need, place } from './build.ts';

/** The supply draws through the board, and the tray allows nothing: one of the two must stand on the bench. */
const hungSupply = {
  needs: [
    need('motherboard-1/mount', 'board-mount', { formFactor: 'atx' }, { stands: true, carries: ['mA'] }),
    need('power-supply-1/mount', 'supply-mount', { shape: 'atx', lengthMm: 160 }, { stands: true, draws: { mA: 1 } }),
  ],
  places: [
    place('chassis-1/tray', 'board-mount', 5, { formFactor: 'atx' }, { meters: { mA: ['chassis-1/mA'] } }),
    place(
      'motherboard-1/hook',
      'supply-mount',
      0,
      { shape: 'atx', lengthMm: null },
      { after: ['motherboard-1/mount'] },
    ),
  ],
  resources: [{ id: 'chassis-1/mA', capacity: 0 }],
};

test('a place that only one need wants is not taken when another would lose its own by it', () => {
  check(hungSupply, { 'power-supply-1/mount': 'motherboard-1/hook' });
});

test('a need with places enough is not sure to be joined when what they draw on runs out', () => {
  const metered = { meters: { mA: ['motherboard-1/mA'] } };
  check(
    {
      needs: [
        need('cable-1/in', 'fan-header', {}, { draws: { mA: 1 } }),
        need('cooler-1/pump', 'drive-power', { plug: 'sata-power' }, { left: 'hazard', draws: { mA: 1 } }),
        need('bus-card-1/edge', 'expansion-slot', { bus: 'usb', lanes: 1 }, { draws: { busMBps: 60 } }),
      ],
      places: [
        place('motherboard-1/header-1', 'fan-header', 0, {}, metered),
        place('motherboard-1/header-2', 'fan-header', 1, {}, metered),
        place('motherboard-1/pump', 'drive-power', 0, { plug: 'sata-power' }, metered),
        place('cable-1/out', 'expansion-slot', 0, { bus: 'usb', lengthLanes: 1 }, { after: ['cable-1/in'] }),
        place('bus-card-1/socket', 'keyboard', 0, {}, { after: ['bus-card-1/edge'] }),
      ],
      resources: [{ id: 'motherboard-1/mA', capacity: 1 }],
    },
    { 'cooler-1/pump': 'motherboard-1/pump' },
  );
});

test('what hangs on a need that is sure to be joined still decides where', () => {
  check(
    {
      needs: [
        need('bus-card-1/edge', 'expansion-slot', { bus: 'x', lanes: 1 }, { carries: ['mA'] }),
        need('storage-drive-1/power', 'drive-power', { plug: 'x' }, { draws: { mA: 2 } }),
      ],
      places: [
        place(
          'motherboard-1/slot-1',
          'expansion-slot',
          0,
          { bus: 'x', lengthLanes: 1 },
          { meters: { mA: ['motherboard-1/slot-1/mA'] } },
        ),
        place(
          'motherboard-1/slot-2',
          'expansion-slot',
          1,
          { bus: 'x', lengthLanes: 1 },
          { meters: { mA: ['motherboard-1/slot-2/mA'] } },
        ),
        place('bus-card-1/plug', 'drive-power', 0, { plug: 'x' }, { after: ['bus-card-1/edge'] }),
      ],
      resources: [
        { id: 'motherboard-1/slot-1/mA', capacity: 1 },
        { id: 'motherboard-1/slot-2/mA', capacity: 2 },
      ],
    },
    { 'bus-card-1/edge': 'motherboard-1/slot-2', 'storage-drive-1/power': 'bus-card-1/plug' },
  );
});

/** An adapter with two inputs, on a splitter of one lead. */
const twoInputs = (capacity: number) => ({
  needs: [
    need('graphics-card-1/power', 'card-power', { plug: 'pcie-16' }, { draws: { leadDeciwatts: 3 } }),
    need('adapter-1/in-1', 'card-power', { plug: 'pcie-8' }, { left: 'spare', carries: ['leadDeciwatts'] }),
    need('adapter-1/in-2', 'card-power', { plug: 'pcie-8' }, { left: 'spare', carries: ['leadDeciwatts'] }),
    need('cable-1/in', 'card-power', { plug: 'pcie-6' }, { left: 'spare', carries: ['leadDeciwatts'] }),
  ],
  places: [
    place(
      'power-supply-1/plug',
      'card-power',
      0,
      { plug: 'pcie-6' },
      { meters: { leadDeciwatts: ['power-supply-1/leadDeciwatts'] } },
    ),
    place('cable-1/out-1', 'card-power', 1, { plug: 'pcie-8' }, { after: ['cable-1/in'] }),
    place('cable-1/out-2', 'card-power', 2, { plug: 'pcie-8' }, { after: ['cable-1/in'] }),
    place('adapter-1/out', 'card-power', 3, { plug: 'pcie-16' }, { after: ['adapter-1/in-1', 'adapter-1/in-2'] }),
  ],
  resources: [{ id: 'power-supply-1/leadDeciwatts', capacity }],
});

test('two equal shares of three are two each, one more than a lead of three gives', () => {
  check(twoInputs(3), {});
});

test('a lead of four gives two shares of two', () => {
  check(twoInputs(4), {
    'graphics-card-1/power': 'adapter-1/out',
    'adapter-1/in-1': 'cable-1/out-1',
    'adapter-1/in-2': 'cable-1/out-2',
    'cable-1/in': 'power-supply-1/plug',
  });
});

/** A splitter that draws on a header, on a splitter that does so too. */
const twiceMetered = (capacity: number) => ({
  needs: [
    need('fan-1/lead', 'drive-power', { plug: 'c' }, { draws: { mA: 2 } }),
    need('cable-1/in', 'drive-power', { plug: 'b' }, { left: 'spare', carries: ['mA'] }),
    need('cable-2/in', 'drive-power', { plug: 'a' }, { left: 'spare', carries: ['mA'] }),
  ],
  places: [
    place('motherboard-1/header', 'drive-power', 0, { plug: 'a' }, { meters: { mA: ['motherboard-1/mA'] } }),
    place(
      'cable-2/out',
      'drive-power',
      1,
      { plug: 'b' },
      { after: ['cable-2/in'], meters: { mA: ['motherboard-1/mA'] } },
    ),
    place('cable-1/out', 'drive-power', 2, { plug: 'c' }, { after: ['cable-1/in'] }),
  ],
  resources: [{ id: 'motherboard-1/mA', capacity }],
});

test('a resource metered twice on the way is drawn on twice', () => {
  check(twiceMetered(3), {});
});

test('and serves when it has enough for both', () => {
  check(twiceMetered(4), {
    'fan-1/lead': 'cable-1/out',
    'cable-1/in': 'cable-2/out',
    'cable-2/in': 'motherboard-1/header',
  });
});

test('two needs that are sure to be joined are not joined in a ring', () => {
  check(
    {
      needs: [
        need('monitor-1/picture', 'picture', { plugs: 'hdmi', end: 'socket' }),
        need('monitor-2/picture', 'picture', { plugs: 'dp', end: 'socket' }),
      ],
      places: [
        place('graphics-card-1/hdmi', 'picture', 5, { plug: 'hdmi', end: 'socket' }),
        place('graphics-card-1/dp', 'picture', 6, { plug: 'dp', end: 'socket' }),
        place('monitor-1/outlet', 'picture', 0, { plug: 'dp', end: 'socket' }, { after: ['monitor-1/picture'] }),
        place('monitor-2/outlet', 'picture', 0, { plug: 'hdmi', end: 'socket' }, { after: ['monitor-2/picture'] }),
      ],
      resources: [],
    },
    { 'monitor-1/picture': 'graphics-card-1/hdmi', 'monitor-2/picture': 'monitor-1/outlet' },
  );
});

test('what a place draws itself is lost once, however many needs it takes', () => {
  check(
    {
      needs: [
        need('bank-module-1/edge', 'memory-bank', { pins: 30, sizeMb: 1 }, { draws: { channelMib: 2 } }),
        need('bank-module-2/edge', 'memory-bank', { pins: 30, sizeMb: 1 }, { draws: { channelMib: 2 } }),
      ],
      places: [
        place(
          'motherboard-1/bank-0',
          'memory-bank',
          0,
          { pins: 30, sizeMb: 1 },
          { fill: 2, draws: { wait: 3 }, meters: { wait: ['motherboard-1/wait'] } },
        ),
        place(
          'motherboard-1/bank-1',
          'memory-bank',
          1,
          { pins: 30, sizeMb: 1 },
          { fill: 2, meters: { channelMib: ['motherboard-1/channel'] } },
        ),
      ],
      resources: [
        { id: 'motherboard-1/wait', capacity: 0, over: 'lost' },
        { id: 'motherboard-1/channel', capacity: 0, over: 'lost' },
      ],
    },
    { 'bank-module-1/edge': 'motherboard-1/bank-0', 'bank-module-2/edge': 'motherboard-1/bank-0' },
  );
});
