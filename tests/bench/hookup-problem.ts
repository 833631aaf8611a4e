/**
 * Fourteen parts, lowered by hand: processor, motherboard, cooler, two memory modules, graphics card,
 * M.2 drive, two SATA drives, supply, case with a fitted fan, two fans, monitor. 30 needs.
 */
import type { Need, Place, Problem, Resource } from '../../src/fit/model.ts';
import { need, place, problem } from '../fit/hookup/build.ts';

const needs: Need[] = [
  need('processor-1/socket', 'processor-socket', { socket: 's1' }),
  need('processor-1/cooling', 'cooling', {}, { left: 'hazard' }),
  need('cooler-1/mount', 'cooler-mount', { mountings: ['s1', 's2'] }),
  need('cooler-1/fan-lead', 'fan-header', {}, { left: 'limit', draws: { mA: 300 } }),
  need('motherboard-1/mount', 'board-mount', { formFactor: 'atx' }, { stands: true, carries: cutOuts() }),
  need('motherboard-1/power', 'board-power', { plug: 'atx-24' }),
  need('motherboard-1/processor-power-1', 'processor-power', { plug: 'eps-8' }),
  need('motherboard-1/processor-power-2', 'processor-power', { plug: 'eps-8' }, { left: 'note' }),
  need('memory-module-1/edge', 'memory-slot', { generation: 'ddr5', sizeGb: 16 }, { draws: { channelMib: 16_384 } }),
  need('memory-module-2/edge', 'memory-slot', { generation: 'ddr5', sizeGb: 16 }, { draws: { channelMib: 16_384 } }),
  need(
    'graphics-card-1/edge',
    'expansion-slot',
    { bus: 'pcie', lanes: 16 },
    { draws: { busMBps: 31_504, halfSlots: 5 }, carries: ['busMBps'] },
  ),
  need('graphics-card-1/power-1', 'card-power', { plug: 'pcie-8' }, { draws: { leadDeciwatts: 1_500 } }),
  need('graphics-card-1/power-2', 'card-power', { plug: 'pcie-8' }, { draws: { leadDeciwatts: 1_500 } }),
  need(
    'storage-drive-1/edge',
    'module-slot',
    { key: ['m'], lengthMm: 80, link: 'pcie' },
    { draws: { busMBps: 7_876 } },
  ),
  need('storage-drive-2/data', 'drive-data', { plug: 'sata' }),
  need('storage-drive-2/power', 'drive-power', { plug: 'sata-power' }, { draws: { leadDeciwatts: 90 } }),
  need('storage-drive-2/bay', 'drive-bay', { bay: '3.5' }, { left: 'limit' }),
  need('storage-drive-3/data', 'drive-data', { plug: 'sata' }),
  need('storage-drive-3/power', 'drive-power', { plug: 'sata-power' }, { draws: { leadDeciwatts: 45 } }),
  need('storage-drive-3/bay', 'drive-bay', { bay: '2.5' }, { left: 'limit' }),
  need('power-supply-1/mount', 'supply-mount', { shape: 'atx', lengthMm: 160 }, { stands: true }),
  need('chassis-1/power-button', 'front-panel', { plug: 'power-button' }),
  need('chassis-1/front-usb', 'front-panel', { plug: 'usb-20' }, { left: 'limit' }),
  need('chassis-1/front-sound', 'front-panel', { plug: 'sound-9' }, { left: 'limit' }),
  need('chassis-1/fan-lead', 'fan-header', {}, { left: 'limit', draws: { mA: 200 } }),
  need('fan-1/mount', 'fan-mount', { sizeMm: 120 }, { left: 'limit', draws: { panelUnits: 2 } }),
  need('fan-1/lead', 'fan-header', {}, { left: 'limit', draws: { mA: 250 } }),
  need('fan-2/mount', 'fan-mount', { sizeMm: 140 }, { left: 'limit', draws: { panelUnits: 3 } }),
  need('fan-2/lead', 'fan-header', {}, { left: 'limit', draws: { mA: 350 } }),
  need('monitor-1/picture', 'picture', { plugs: ['hdmi', 'dp'], end: 'socket' }, { draws: { pictureMbps: 12_540 } }),
];

function cutOuts(): string[] {
  return ['pos-1', 'pos-2', 'pos-3', 'pos-4', 'pos-5', 'pos-6', 'pos-7', 'pos-8'];
}

/** The row that a card covers from its position on. */
const cards = (...positions: number[]) => ({ halfSlots: positions.map((position) => `motherboard-1/pos-${position}`) });
const slot = (id: string, rank: number, lengthLanes: number, more: Partial<Place>): Place =>
  place(
    `motherboard-1/${id}`,
    'expansion-slot',
    rank,
    { bus: 'pcie', lengthLanes },
    { after: ['motherboard-1/mount'], ...more },
  );
const memorySlot = (name: string, rank: number, channel: string): Place =>
  place(
    `motherboard-1/memory-slot-${name}`,
    'memory-slot',
    rank,
    { generation: 'ddr5', sizeGb: 64 },
    { meters: { channelMib: [`motherboard-1/channel-${channel}`] } },
  );
const header = (name: string, rank: number): Place =>
  place(`motherboard-1/${name}`, 'fan-header', rank, {}, { meters: { mA: [`motherboard-1/${name}/mA`] } });
const port = (n: number, more: Partial<Place> = {}): Place =>
  place(`motherboard-1/sata-${n}`, 'drive-data', n, { plug: 'sata' }, more);
const drivePlug = (lead: number, plug: number): Place =>
  place(
    `power-supply-1/drive-lead-${lead}/plug-${plug}`,
    'drive-power',
    plug * 10 + lead,
    { plug: 'sata-power' },
    { meters: { leadDeciwatts: [`power-supply-1/drive-lead-${lead}/leadDeciwatts`] } },
  );
const cardPlug = (lead: number, plug: number): Place =>
  place(
    `power-supply-1/card-lead-${lead}/plug-${plug}`,
    'card-power',
    plug * 10 + lead,
    { plug: ['pcie-6', 'pcie-8'] },
    { meters: { leadDeciwatts: [`power-supply-1/card-lead-${lead}/leadDeciwatts`] } },
  );
const fanPosition = (name: string, rank: number, sizeMm: number, units: string[]): Place =>
  place(
    `chassis-1/${name}`,
    'fan-mount',
    rank,
    { sizeMm },
    { meters: { panelUnits: units.map((unit) => `chassis-1/${unit}`) } },
  );
const output = (name: string, rank: number, plug: string, unit = 'graphics-card-1', more: Partial<Place> = {}): Place =>
  place(
    `${unit}/${name}`,
    'picture',
    rank,
    { plug, end: 'socket' },
    { meters: { pictureMbps: [`${unit}/${name}/pictureMbps`] }, ...more },
  );

const places: Place[] = [
  place('motherboard-1/socket', 'processor-socket', 0, { socket: 's1' }),
  place('motherboard-1/cooler-mount', 'cooler-mount', 0, { mountings: ['s1'] }),
  place('cooler-1/cooling', 'cooling', 0, {}, { after: ['cooler-1/mount'] }),
  memorySlot('a2', 0, 'a'),
  memorySlot('b2', 1, 'b'),
  memorySlot('a1', 2, 'a'),
  memorySlot('b1', 3, 'b'),
  slot('slot-1', 0, 16, {
    way: 'x16',
    draws: { lanes: 16 },
    meters: { busMBps: ['motherboard-1/slot-1-x16'], lanes: ['motherboard-1/lanes'], ...cards(1, 2, 3, 4) },
  }),
  slot('slot-1', 0, 16, {
    way: 'x8',
    draws: { lanes: 8 },
    meters: { busMBps: ['motherboard-1/slot-1-x8'], lanes: ['motherboard-1/lanes'], ...cards(1, 2, 3, 4) },
  }),
  slot('slot-2', 1, 16, {
    way: 'x8',
    draws: { lanes: 8 },
    meters: { busMBps: ['motherboard-1/slot-2-x8'], lanes: ['motherboard-1/lanes'], ...cards(4, 5, 6, 7) },
  }),
  slot('slot-3', 2, 4, { meters: { busMBps: ['motherboard-1/slot-3-x4'], ...cards(6, 7, 8) } }),
  place(
    'motherboard-1/module-slot-1',
    'module-slot',
    0,
    { key: ['m'], lengthsMm: [42, 60, 80], links: ['pcie'] },
    { meters: { busMBps: ['motherboard-1/module-slot-1-link'] } },
  ),
  place(
    'motherboard-1/module-slot-2',
    'module-slot',
    1,
    { key: ['m'], lengthsMm: [60, 80, 110], links: ['pcie', 'sata'] },
    {
      draws: { switch: 1 },
      meters: { busMBps: ['motherboard-1/module-slot-2-link'], switch: ['motherboard-1/sata-4-switch'] },
    },
  ),
  port(1),
  port(2),
  port(3),
  port(4, { draws: { switch: 1 }, meters: { switch: ['motherboard-1/sata-4-switch'] } }),
  header('processor-fan', 0),
  header('fan-header-1', 1),
  header('fan-header-2', 2),
  header('fan-header-3', 3),
  header('fan-header-4', 4),
  header('fan-header-5', 5),
  place('motherboard-1/power-button', 'front-panel', 0, { plug: 'power-button' }),
  place('motherboard-1/power-light', 'front-panel', 0, { plug: 'power-light' }),
  place('motherboard-1/drive-light', 'front-panel', 0, { plug: 'drive-light' }),
  place('motherboard-1/usb-1', 'front-panel', 0, { plug: 'usb-20' }),
  place('motherboard-1/usb-2', 'front-panel', 1, { plug: 'usb-20' }),
  place('motherboard-1/usb-fast', 'front-panel', 0, { plug: 'usb-32' }),
  place('motherboard-1/sound', 'front-panel', 0, { plug: 'sound-9' }),
  output('hdmi', 10, 'hdmi', 'motherboard-1'),
  output('dp', 11, 'dp', 'motherboard-1'),
  output('dp-1', 0, 'dp', 'graphics-card-1', { after: ['graphics-card-1/edge'] }),
  output('dp-2', 1, 'dp', 'graphics-card-1', { after: ['graphics-card-1/edge'] }),
  output('dp-3', 2, 'dp', 'graphics-card-1', { after: ['graphics-card-1/edge'] }),
  output('hdmi-1', 3, 'hdmi', 'graphics-card-1', { after: ['graphics-card-1/edge'] }),
  place(
    'chassis-1/tray',
    'board-mount',
    0,
    { formFactors: ['atx', 'micro-atx', 'mini-itx'] },
    { meters: Object.fromEntries(cutOuts().map((name) => [name, [`chassis-1/${name}`]])) },
  ),
  place('chassis-1/supply-bay', 'supply-mount', 0, { shape: ['atx'], lengthMm: 180 }),
  place('chassis-1/bay-1', 'drive-bay', 0, { bays: ['3.5', '2.5'] }),
  place('chassis-1/bay-2', 'drive-bay', 1, { bays: ['3.5', '2.5'] }),
  place('chassis-1/bay-3', 'drive-bay', 2, { bays: ['3.5', '2.5'] }),
  place('chassis-1/bay-4', 'drive-bay', 3, { bays: ['2.5'] }),
  place('chassis-1/bay-5', 'drive-bay', 4, { bays: ['2.5'] }),
  place('chassis-1/bay-6', 'drive-bay', 5, { bays: ['2.5'] }),
  fanPosition('front-1', 0, 120, ['front-a', 'front-b']),
  fanPosition('front-2', 1, 120, ['front-c', 'front-d']),
  fanPosition('front-3', 2, 120, ['front-e', 'front-f']),
  fanPosition('front-4', 0, 140, ['front-a', 'front-b', 'front-c']),
  fanPosition('front-5', 1, 140, ['front-d', 'front-e', 'front-f']),
  fanPosition('top-1', 3, 120, ['top-a', 'top-b']),
  fanPosition('top-2', 4, 120, ['top-c', 'top-d']),
  place('power-supply-1/board-lead', 'board-power', 0, { plug: 'atx-24' }),
  place('power-supply-1/processor-lead-1', 'processor-power', 0, { plug: ['eps-4', 'eps-8'] }),
  place('power-supply-1/processor-lead-2', 'processor-power', 1, { plug: ['eps-4', 'eps-8'] }),
  cardPlug(1, 1),
  cardPlug(2, 1),
  cardPlug(1, 2),
  cardPlug(2, 2),
  drivePlug(1, 1),
  drivePlug(2, 1),
  drivePlug(3, 1),
  drivePlug(1, 2),
  drivePlug(2, 2),
  drivePlug(3, 2),
  drivePlug(1, 3),
  drivePlug(2, 3),
  drivePlug(3, 3),
  drivePlug(1, 4),
  drivePlug(2, 4),
  drivePlug(3, 4),
];

const lost = (id: string, capacity: number): Resource => ({ id, capacity, over: 'lost' });
const each = (ids: string[], capacity: number): Resource[] => ids.map((id) => ({ id, capacity }));

const resources: Resource[] = [
  { id: 'motherboard-1/channel-a', capacity: 0, over: 'lost', even: 'motherboard-1/channels' },
  { id: 'motherboard-1/channel-b', capacity: 0, over: 'lost', even: 'motherboard-1/channels' },
  { id: 'motherboard-1/lanes', capacity: 16 },
  { id: 'motherboard-1/sata-4-switch', capacity: 1 },
  lost('motherboard-1/slot-1-x16', 31_504),
  lost('motherboard-1/slot-1-x8', 15_752),
  lost('motherboard-1/slot-2-x8', 15_752),
  lost('motherboard-1/slot-3-x4', 7_876),
  lost('motherboard-1/module-slot-1-link', 7_876),
  lost('motherboard-1/module-slot-2-link', 3_940),
  lost('motherboard-1/hdmi/pictureMbps', 18_000),
  lost('motherboard-1/dp/pictureMbps', 25_920),
  lost('graphics-card-1/dp-1/pictureMbps', 25_920),
  lost('graphics-card-1/dp-2/pictureMbps', 25_920),
  lost('graphics-card-1/dp-3/pictureMbps', 25_920),
  lost('graphics-card-1/hdmi-1/pictureMbps', 42_667),
  ...each(
    cutOuts().map((name) => `motherboard-1/${name}`),
    2,
  ),
  ...each(
    cutOuts().map((name) => `chassis-1/${name}`),
    2,
  ).map((cutOut) => (cutOut.id === 'chassis-1/pos-8' ? { ...cutOut, capacity: 0 } : cutOut)),
  ...each(
    ['processor-fan', 'fan-header-1', 'fan-header-2', 'fan-header-3', 'fan-header-4', 'fan-header-5'].map(
      (name) => `motherboard-1/${name}/mA`,
    ),
    1_000,
  ),
  ...each(
    ['front-a', 'front-b', 'front-c', 'front-d', 'front-e', 'front-f', 'top-a', 'top-b', 'top-c', 'top-d'].map(
      (unit) => `chassis-1/${unit}`,
    ),
    1,
  ),
  ...each(
    ['card-lead-1', 'card-lead-2'].map((lead) => `power-supply-1/${lead}/leadDeciwatts`),
    3_000,
  ),
  ...each(
    ['drive-lead-1', 'drive-lead-2', 'drive-lead-3'].map((lead) => `power-supply-1/${lead}/leadDeciwatts`),
    540,
  ),
];

export const fourteenParts: Problem = problem({ needs, places, resources });
