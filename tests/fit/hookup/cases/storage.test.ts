import { expect, test } from 'vitest';
import { need, place, solve } from '../build.ts';

const module = { key: ['m'], lengthMm: 80, link: 'pcie' };
const moduleSlot = { key: ['m'], lengthsMm: [80], links: ['pcie'] };
const sata = { plug: 'sata' };

/** Slot 1 is fast and switches port 3 off; slot 2 is half as fast and leaves it on. */
const boardWithSwitch = {
  places: [
    place('motherboard-1/module-slot-1', 'module-slot', 0, moduleSlot, {
      draws: { switch: 1 },
      meters: { switch: ['motherboard-1/port-3-switch'], busMBps: ['motherboard-1/module-slot-1-link'] },
    }),
    place('motherboard-1/module-slot-2', 'module-slot', 1, moduleSlot, {
      meters: { busMBps: ['motherboard-1/module-slot-2-link'] },
    }),
    place('motherboard-1/port-1', 'drive-data', 0, sata),
    place('motherboard-1/port-2', 'drive-data', 1, sata),
    place('motherboard-1/port-3', 'drive-data', 2, sata, {
      draws: { switch: 1 },
      meters: { switch: ['motherboard-1/port-3-switch'] },
    }),
  ],
  resources: [
    { id: 'motherboard-1/port-3-switch', capacity: 1 },
    { id: 'motherboard-1/module-slot-1-link', capacity: 7876, over: 'lost' as const },
    { id: 'motherboard-1/module-slot-2-link', capacity: 3938, over: 'lost' as const },
  ],
};

test('s1: with three SATA drives the M.2 drive takes the slow slot, and no drive is left over', () => {
  const { joined, left } = solve({
    needs: [
      need('storage-drive-1/edge', 'module-slot', module, { draws: { busMBps: 7876 } }),
      need('storage-drive-2/data', 'drive-data', sata),
      need('storage-drive-3/data', 'drive-data', sata),
      need('storage-drive-4/data', 'drive-data', sata),
    ],
    ...boardWithSwitch,
  });
  expect(joined['storage-drive-1/edge']).toBe('motherboard-1/module-slot-2');
  expect(left).toEqual([]);
});

test('s2: with two SATA drives the M.2 drive takes the fast slot', () => {
  const { joined, left, loss } = solve({
    needs: [
      need('storage-drive-1/edge', 'module-slot', module, { draws: { busMBps: 7876 } }),
      need('storage-drive-2/data', 'drive-data', sata),
      need('storage-drive-3/data', 'drive-data', sata),
    ],
    ...boardWithSwitch,
  });
  expect(joined['storage-drive-1/edge']).toBe('motherboard-1/module-slot-1');
  expect(left).toEqual([]);
  expect(loss).toBe(0);
});

test('s3: the fast drive gets the fast slot though it is second by id', () => {
  const { joined, loss } = solve({
    needs: [
      need('storage-drive-1/edge', 'module-slot', module, { draws: { busMBps: 3938 } }),
      need('storage-drive-2/edge', 'module-slot', module, { draws: { busMBps: 7876 } }),
    ],
    places: [
      place('motherboard-1/module-slot-1', 'module-slot', 0, moduleSlot, {
        meters: { busMBps: ['motherboard-1/link-1'] },
      }),
      place('motherboard-1/module-slot-2', 'module-slot', 1, moduleSlot, {
        meters: { busMBps: ['motherboard-1/link-2'] },
      }),
    ],
    resources: [
      { id: 'motherboard-1/link-1', capacity: 7876, over: 'lost' },
      { id: 'motherboard-1/link-2', capacity: 3938, over: 'lost' },
    ],
  });
  expect(joined).toEqual({
    'storage-drive-1/edge': 'motherboard-1/module-slot-2',
    'storage-drive-2/edge': 'motherboard-1/module-slot-1',
  });
  expect(loss).toBe(0);
});

test('s4: the long drive gets the only slot that takes its length', () => {
  const { joined } = solve({
    needs: [
      need('storage-drive-1/edge', 'module-slot', { key: ['m'], lengthMm: 80, link: 'pcie' }),
      need('storage-drive-2/edge', 'module-slot', { key: ['m'], lengthMm: 110, link: 'pcie' }),
    ],
    places: [
      place('motherboard-1/module-slot-1', 'module-slot', 0, { key: ['m'], lengthsMm: [80, 110], links: ['pcie'] }),
      place('motherboard-1/module-slot-2', 'module-slot', 1, { key: ['m'], lengthsMm: [60, 80], links: ['pcie'] }),
    ],
  });
  expect(joined).toEqual({
    'storage-drive-1/edge': 'motherboard-1/module-slot-2',
    'storage-drive-2/edge': 'motherboard-1/module-slot-1',
  });
});

const frame = need('bracket-1/frame', 'drive-bay', { bay: '5.25' }, { left: 'spare' });
const insideFrame = place('bracket-1/inside', 'drive-bay', 5, { bays: ['3.5'] }, { after: ['bracket-1/frame'] });

test('s5: the 3.5 drive goes into the frame, so that the 2.5 drive has the only bay it fits', () => {
  const { joined, left } = solve({
    needs: [
      need('storage-drive-1/bay', 'drive-bay', { bay: '3.5' }, { left: 'limit' }),
      need('storage-drive-2/bay', 'drive-bay', { bay: '2.5' }, { left: 'limit' }),
      frame,
    ],
    places: [
      place('chassis-1/bay-1', 'drive-bay', 0, { bays: ['3.5', '2.5'] }),
      place('chassis-1/bay-2', 'drive-bay', 1, { bays: ['5.25'] }),
      insideFrame,
    ],
  });
  expect(joined).toEqual({
    'storage-drive-1/bay': 'bracket-1/inside',
    'storage-drive-2/bay': 'chassis-1/bay-1',
    'bracket-1/frame': 'chassis-1/bay-2',
  });
  expect(left).toEqual([]);
});

test('s6: with a bay for each drive the frame stays in its bag', () => {
  const { left, spares } = solve({
    needs: [
      need('storage-drive-1/bay', 'drive-bay', { bay: '3.5' }, { left: 'limit' }),
      need('storage-drive-2/bay', 'drive-bay', { bay: '2.5' }, { left: 'limit' }),
      frame,
    ],
    places: [
      place('chassis-1/bay-1', 'drive-bay', 0, { bays: ['3.5', '2.5'] }),
      place('chassis-1/bay-2', 'drive-bay', 1, { bays: ['5.25'] }),
      place('chassis-1/bay-3', 'drive-bay', 2, { bays: ['3.5', '2.5'] }),
      insideFrame,
    ],
  });
  expect(left).toEqual(['bracket-1/frame']);
  expect(spares).toBe(0);
});

test('s7: the fourth drive on a lead has a plug but no watts', () => {
  const plug = { plug: 'sata-power' };
  const drawn = { draws: { leadDeciwatts: 180 } };
  const metered = { meters: { leadDeciwatts: ['power-supply-1/lead-1/leadDeciwatts'] } };
  const { left, reasons } = solve({
    needs: [
      need('storage-drive-1/power', 'drive-power', plug, drawn),
      need('storage-drive-2/power', 'drive-power', plug, drawn),
      need('storage-drive-3/power', 'drive-power', plug, drawn),
      need('storage-drive-4/power', 'drive-power', plug, drawn),
    ],
    places: [
      place('power-supply-1/lead-1/plug-1', 'drive-power', 0, plug, metered),
      place('power-supply-1/lead-1/plug-2', 'drive-power', 1, plug, metered),
      place('power-supply-1/lead-1/plug-3', 'drive-power', 2, plug, metered),
      place('power-supply-1/lead-1/plug-4', 'drive-power', 3, plug, metered),
    ],
    resources: [{ id: 'power-supply-1/lead-1/leadDeciwatts', capacity: 540 }],
  });
  expect(left).toEqual(['storage-drive-4/power']);
  expect(reasons['storage-drive-4/power']?.[3]).toEqual({
    why: 'spent',
    place: 'power-supply-1/lead-1/plug-4',
    resource: 'power-supply-1/lead-1/leadDeciwatts',
    capacity: 540,
    wanted: 720,
    joints: [
      'storage-drive-1/power → power-supply-1/lead-1/plug-1',
      'storage-drive-2/power → power-supply-1/lead-1/plug-2',
      'storage-drive-3/power → power-supply-1/lead-1/plug-3',
    ],
  });
});

test('s8: the third drive has no port, because the M.2 drive switches port 3 off', () => {
  const { left, reasons } = solve({
    needs: [
      need('storage-drive-1/data', 'drive-data', sata),
      need('storage-drive-2/data', 'drive-data', sata),
      need('storage-drive-3/data', 'drive-data', sata),
      need('storage-drive-4/edge', 'module-slot', module, { draws: { busMBps: 7876 } }),
    ],
    places: [
      place('motherboard-1/module-slot-1', 'module-slot', 0, moduleSlot, {
        draws: { switch: 1 },
        meters: { switch: ['motherboard-1/port-3-switch'] },
      }),
      place('motherboard-1/port-1', 'drive-data', 0, sata),
      place('motherboard-1/port-2', 'drive-data', 1, sata),
      place('motherboard-1/port-3', 'drive-data', 2, sata, {
        draws: { switch: 1 },
        meters: { switch: ['motherboard-1/port-3-switch'] },
      }),
    ],
    resources: [{ id: 'motherboard-1/port-3-switch', capacity: 1 }],
  });
  expect(left).toEqual(['storage-drive-3/data']);
  expect(reasons['storage-drive-3/data']).toEqual([
    { why: 'taken', place: 'motherboard-1/port-1', joints: ['storage-drive-1/data → motherboard-1/port-1'] },
    { why: 'taken', place: 'motherboard-1/port-2', joints: ['storage-drive-2/data → motherboard-1/port-2'] },
    {
      why: 'spent',
      place: 'motherboard-1/port-3',
      resource: 'motherboard-1/port-3-switch',
      capacity: 1,
      wanted: 2,
      joints: ['storage-drive-4/edge → motherboard-1/module-slot-1'],
    },
  ]);
});
