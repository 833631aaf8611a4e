import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { aPart, exampleList } from '../../src/fit/examples.ts';
import { kinds } from '../../src/fit/kinds.ts';
import type { KindName, Lowered, Unit } from '../../src/fit/model.ts';
import { measures } from '../../src/fit/needs/adapter.ts';
import { lower, lowerAll, unitsOf } from '../../src/fit/needs/index.ts';
import type { ExampleParts } from '../../src/fit/rule.ts';
import { type Part, type PartClass, type PartOf, partClasses } from '../../src/parts/part.ts';
import { anyList } from '../helpers/any-part.ts';

/** The plain part of a class with fields changed; a field given as undefined is left out. */
function unit<C extends PartClass>(partClass: C, change: Partial<Record<keyof PartOf<C>, unknown>> = {}): Unit {
  const fields = Object.entries({ ...aPart(partClass), ...change }).filter(([, value]) => value !== undefined);
  return { id: `${partClass}-1`, part: Object.fromEntries(fields) as unknown as Part };
}

const need = ({ needs }: Lowered, id: string) => needs.find((one) => one.id === id);
const place = ({ places }: Lowered, id: string) => places.find((one) => one.id === id);
const capacity = ({ resources }: Lowered, id: string) => resources.find((one) => one.id === id)?.capacity;
const placeIds = ({ places }: Lowered, kind: KindName) => places.filter((one) => one.kind === kind).map(({ id }) => id);
const open = ({ unrecorded }: Lowered) => unrecorded.map(({ kind, field, of }) => `${kind} ${field} ${of}`);

describe('processor', () => {
  test('needs a socket, and cooling on pain of harm', () => {
    const { needs } = lower(unit('processor'));
    expect(needs.map(({ id, kind, left }) => [id, kind, left])).toEqual([
      ['processor-1/socket', 'processor-socket', 'blocker'],
      ['processor-1/cooling', 'cooling', 'hazard'],
    ]);
  });

  test('a socket that is not recorded stays unknown', () => {
    expect(need(lower(unit('processor', { socket: undefined })), 'processor-1/socket')?.attrs).toEqual({
      socket: undefined,
      boardSocket: null,
    });
  });
});

describe('cooler', () => {
  test('offers cooling once it is mounted', () => {
    expect(place(lower(unit('cooler')), 'cooler-1/cooling')?.after).toEqual(['cooler-1/mount']);
  });

  test('its fan wants a header; a cooler without a fan does not', () => {
    expect(need(lower(unit('cooler')), 'cooler-1/fan')).toMatchObject({ kind: 'fan-header', left: 'blocker' });
    expect(need(lower(unit('cooler', { fan: undefined })), 'cooler-1/fan')).toBeUndefined();
  });

  test('a bracket that is sold apart is a mounting, but not one in the box', () => {
    const lowered = lower(unit('cooler', { mountings: ['square-80'], bracketsApart: ['wide-94'] }));
    expect(need(lowered, 'cooler-1/mount')?.attrs).toEqual({
      mountings: ['square-80', 'wide-94'],
      boxed: ['square-80'],
    });
  });

  test.each([
    [240, 120, 2, 4],
    [280, 140, 2, 6],
    [360, 120, 3, 6],
    [120, 120, 1, 2],
  ])(
    'a radiator of %i mm with fans of %i mm, %i of them, takes %i units of a panel',
    (lengthMm, fanSizeMm, fans, units) => {
      const radiator = { lengthMm, thicknessMm: 27, fanThicknessMm: 25, fanSizeMm, fans };
      const lowered = lower(unit('cooler', { radiator }));
      expect(need(lowered, 'cooler-1/radiator')).toMatchObject({
        kind: 'radiator-mount',
        left: 'blocker',
        attrs: { lengthMm, stackMm: 52 },
        draws: { panelUnits: units },
      });
      const leads = lowered.needs.filter(({ kind }) => kind === 'fan-header');
      expect(leads.map(({ left }) => left)).toEqual(['blocker', ...Array(fans - 1).fill('limit')]);
    },
  );

  test('a lighting lead wants a header, and its absence is only worth knowing', () => {
    const lowered = lower(unit('cooler', { light: { plug: 'light-5v-3', milliamps: 400 } }));
    expect(need(lowered, 'cooler-1/light')).toMatchObject({
      kind: 'light-header',
      left: 'note',
      attrs: { plug: 'light-5v-3' },
      draws: { milliamps: 400 },
    });
  });

  test('mountings that are not recorded stay unknown', () => {
    const lowered = lower(unit('cooler', { mountings: undefined }));
    expect(need(lowered, 'cooler-1/mount')?.attrs['mountings']).toBeUndefined();
  });
});

describe('memory module', () => {
  test('16 GB draw 16,384 MiB of a channel', () => {
    expect(need(lower(unit('memory-module')), 'memory-module-1/edge')).toMatchObject({
      attrs: { generation: 'ddr5', registered: false, sizeGb: 16 },
      draws: { channelMib: 16_384 },
    });
  });

  test('a size that is not recorded is unknown and draws nothing', () => {
    const edge = need(lower(unit('memory-module', { capacityGb: undefined })), 'memory-module-1/edge');
    expect(edge?.attrs['sizeGb']).toBeUndefined();
    expect(edge).not.toHaveProperty('draws');
  });
});

describe('storage drive', () => {
  test.each([
    ['m', ['m']],
    ['b', ['b']],
    ['b+m', ['b', 'm']],
    [undefined, undefined],
  ])('a module with key %s has the notches %s', (key, notches) => {
    expect(need(lower(unit('storage-drive', { key })), 'storage-drive-1/edge')?.attrs['key']).toEqual(notches);
  });

  test('a PCIe module draws what its link carries; a SATA module draws no part of a PCIe link', () => {
    // Generation 4, 4 lanes: 16 GT/s × 128/130 ÷ 8 × 4 = 7,876.9 MB/s.
    expect(need(lower(unit('storage-drive')), 'storage-drive-1/edge')?.draws).toEqual({ busMBps: 7876 });
    expect(need(lower(unit('storage-drive', { link: 'sata' })), 'storage-drive-1/edge')).not.toHaveProperty('draws');
  });

  test('a box needs data, power and a bay, and without a bay it still works', () => {
    const { needs } = lower(
      unit('storage-drive', { build: '2.5', milliwatts: 4510, heightMm: 7, lengthMm: undefined }),
    );
    expect(needs.map(({ id, kind, left, attrs, draws }) => [id, kind, left, attrs, draws])).toEqual([
      ['storage-drive-1/data', 'drive-data', 'blocker', { plug: 'sata' }, undefined],
      ['storage-drive-1/power', 'drive-power', 'blocker', { plug: 'sata-power' }, { leadDeciwatts: 46 }],
      ['storage-drive-1/bay', 'drive-bay', 'limit', { bay: '2.5', heightMm: 7 }, undefined],
    ]);
  });
});

describe('graphics card', () => {
  test('2.5 slots are five half slots', () => {
    const lowered = lower(unit('graphics-card', { slotsThick: 2.5 }));
    expect(need(lowered, 'graphics-card-1/edge')?.draws?.['halfSlots']).toBe(5);
  });

  test('a thickness that is not recorded is reported, not taken for nothing', () => {
    const lowered = lower(unit('graphics-card', { slotsThick: undefined }));
    expect(need(lowered, 'graphics-card-1/edge')?.draws).not.toHaveProperty('halfSlots');
    expect(open(lowered)).toEqual(['expansion-slot graphics-card-1.slotsThick draws']);
  });

  test('a 6-pin plug is good for 75 W and an 8-pin plug for 150 W; the 16-pin plug gives what the card draws', () => {
    const lowered = lower(unit('graphics-card', { powerSockets: ['pcie-6', 'pcie-8', '12v-2x6'], sustainedW: 320 }));
    const draws = [1, 2, 3].map((n) => need(lowered, `graphics-card-1/power-${n}`)?.draws?.['leadDeciwatts']);
    expect(draws).toEqual([750, 1500, 3200]);
  });

  test('no power socket is not the same as none recorded', () => {
    expect(open(lower(unit('graphics-card', { powerSockets: [] })))).toEqual([]);
    expect(open(lower(unit('graphics-card', { powerSockets: undefined })))).toEqual([
      'card-power graphics-card-1.powerSockets needs',
    ]);
  });

  test('its outputs are there once it is in a slot', () => {
    expect(place(lower(unit('graphics-card')), 'graphics-card-1/output-hdmi-1')?.after).toEqual([
      'graphics-card-1/edge',
    ]);
  });
});

describe('motherboard', () => {
  test('memory slots rank in the order in which the maker fills them', () => {
    const ranks = lower(unit('motherboard'))
      .places.filter(({ kind }) => kind === 'memory-slot')
      .map(({ id, rank }) => [id, rank]);
    expect(ranks).toEqual([
      ['motherboard-1/memory-slot-a2', 0],
      ['motherboard-1/memory-slot-b2', 1],
      ['motherboard-1/memory-slot-a1', 2],
      ['motherboard-1/memory-slot-b1', 3],
    ]);
  });

  test('what the memory entry does not say stays unknown', () => {
    const memory = { slots: [{ id: 'a1', channel: 'a' }] };
    expect(place(lower(unit('motherboard', { memory })), 'motherboard-1/memory-slot-a1')?.attrs).toEqual({
      generation: undefined,
      registered: undefined,
      sizeGb: undefined,
    });
  });

  test('a module slot and the port it switches off hold one thing between them', () => {
    const lowered = lower(unit('motherboard'));
    expect(place(lowered, 'motherboard-1/module-slot-m2-2')).toMatchObject({
      draws: { 'sata-4': 1 },
      meters: { 'sata-4': ['motherboard-1/switch-sata-4'] },
    });
    expect(place(lowered, 'motherboard-1/sata-4')).toMatchObject({
      draws: { 'sata-4': 1 },
      meters: { 'sata-4': ['motherboard-1/switch-sata-4'] },
    });
    expect(capacity(lowered, 'motherboard-1/switch-sata-4')).toBe(1);
    expect(place(lowered, 'motherboard-1/sata-3')).not.toHaveProperty('draws');
  });

  test('a slot at position 4 covers cut-outs 4 to 8', () => {
    const row = place(lower(unit('motherboard')), 'motherboard-1/expansion-slot-x4-1')?.meters?.['halfSlots'];
    expect(row).toEqual([4, 5, 6, 7, 8].map((n) => `motherboard-1/pos-${n}`));
  });

  test('the first processor lead is needed, the second is worth having', () => {
    const { needs } = lower(unit('motherboard', { powerSockets: ['atx-24', 'eps-8', 'eps-8'] }));
    expect(needs.filter(({ id }) => id.includes('power')).map(({ kind, left }) => [kind, left])).toEqual([
      ['board-power', 'blocker'],
      ['processor-power', 'blocker'],
      ['processor-power', 'note'],
    ]);
  });

  test('two leads of one sort have ids of their own', () => {
    const lowered = lower(unit('motherboard', { frontPins: ['usb-2', 'usb-2'] }));
    expect(placeIds(lowered, 'front-panel')).toEqual(['motherboard-1/front-usb-2', 'motherboard-1/front-usb-2-2']);
  });

  test('every list that is not recorded is reported', () => {
    const bare = lower(
      unit('motherboard', {
        memory: undefined,
        expansionSlots: undefined,
        moduleSlots: undefined,
        sataPorts: undefined,
        powerSockets: undefined,
        fanHeaders: undefined,
        frontPins: undefined,
        pictureSockets: undefined,
        lightPins: undefined,
      }),
    );
    expect(open(bare)).toEqual([
      'memory-slot motherboard-1.memory places',
      'expansion-slot motherboard-1.expansionSlots places',
      'module-slot motherboard-1.moduleSlots places',
      'drive-data motherboard-1.sataPorts places',
      'fan-header motherboard-1.fanHeaders places',
      'front-panel motherboard-1.frontPins places',
      'picture motherboard-1.pictureSockets places',
      'light-header motherboard-1.lightPins places',
      'board-power motherboard-1.powerSockets needs',
      'processor-power motherboard-1.powerSockets needs',
      'memory-bank motherboard-1.memoryBanks places',
    ]);
  });

  test('no data port is not the same as none recorded', () => {
    const lowered = lower(unit('motherboard', { sataPorts: 0 }));
    expect(placeIds(lowered, 'drive-data')).toEqual([]);
    expect(open(lowered)).toEqual([]);
  });

  test('a link of a generation that no table has sets no figure', () => {
    const slot = { id: 's', position: 1, lengthLanes: 16, lanes: 16, generation: 40 };
    const lowered = lower(unit('motherboard', { expansionSlots: [slot] }));
    expect(place(lowered, 'motherboard-1/expansion-slot-s')?.meters).not.toHaveProperty('busMBps');
  });
});

describe('power supply', () => {
  test('the first plug of every lead comes before the second of any', () => {
    const leads = [
      { id: 'card-1', plugs: ['pcie-8', 'pcie-8'], carriesW: 300 },
      { id: 'card-2', plugs: ['pcie-8', 'pcie-8'], carriesW: 300 },
    ];
    const { places } = lower(unit('power-supply', { leads }));
    const inOrder = places.toSorted((a, b) => a.rank - b.rank).map(({ id }) => id);
    expect(inOrder).toEqual([
      'power-supply-1/lead-card-1-plug-1',
      'power-supply-1/lead-card-2-plug-1',
      'power-supply-1/lead-card-1-plug-2',
      'power-supply-1/lead-card-2-plug-2',
    ]);
  });

  test('a lead is one resource for all its plugs; one whose watts are not recorded has no meter', () => {
    const leads = [
      { id: 'known', plugs: ['sata-power', 'sata-power'], carriesW: 54 },
      { id: 'unknown', plugs: ['sata-power'] },
    ];
    const lowered = lower(unit('power-supply', { leads }));
    const meters = ['known-plug-1', 'known-plug-2', 'unknown-plug-1'].map(
      (name) => place(lowered, `power-supply-1/lead-${name}`)?.meters?.['leadDeciwatts'],
    );
    expect(meters).toEqual([
      ['power-supply-1/lead-known-deciwatts'],
      ['power-supply-1/lead-known-deciwatts'],
      undefined,
    ]);
    expect(capacity(lowered, 'power-supply-1/lead-known-deciwatts')).toBe(540);
  });

  test('leads that are not recorded are reported for every kind they serve', () => {
    expect(open(lower(unit('power-supply', { leads: undefined })))).toEqual([
      'board-power power-supply-1.leads places',
      'processor-power power-supply-1.leads places',
      'card-power power-supply-1.leads places',
      'drive-power power-supply-1.leads places',
    ]);
  });
});

describe('case', () => {
  test('seven cut-outs: two half slots at each, none below', () => {
    const lowered = lower(unit('chassis', { cutOuts: 7 }));
    expect([1, 7, 8, 12].map((n) => capacity(lowered, `chassis-1/pos-${n}`))).toEqual([2, 2, 0, 0]);
  });

  test('cut-outs that are not recorded set no limit and are reported', () => {
    const lowered = lower(unit('chassis', { cutOuts: undefined }));
    expect(place(lowered, 'chassis-1/tray')?.meters).toEqual({});
    expect(open(lowered)).toEqual(['expansion-slot chassis-1.cutOuts limits']);
  });

  test('a fitted fan holds its part of a panel and wants a header', () => {
    const fitted = { id: 'front-1', panel: 'front', sizeMm: 140, thicknessMm: 25, pins: 3, milliamps: 200 };
    const lowered = lower(unit('chassis', { fittedFans: [fitted] }));
    expect(capacity(lowered, 'chassis-1/panel-front')).toBe(3);
    expect(need(lowered, 'chassis-1/fitted-front-1')).toMatchObject({ kind: 'fan-header', draws: { milliamps: 200 } });
  });

  test('the lead of the power button is needed; the others are not', () => {
    const { needs } = lower(unit('chassis', { frontLeads: ['power-button', 'usb-3'], fittedFans: [] }));
    expect(needs.map(({ id, left }) => [id, left])).toEqual([
      ['chassis-1/front-power-button', 'blocker'],
      ['chassis-1/front-usb-3', 'limit'],
    ]);
  });

  test('a length for the supply that is not recorded stays unknown', () => {
    const lowered = lower(unit('chassis', { supplyLengthMm: undefined }));
    expect(place(lowered, 'chassis-1/supply-bay')?.attrs).toEqual({ shape: 'atx', lengthMm: undefined });
  });
});

describe('fan', () => {
  test.each([
    [80, 2],
    [120, 2],
    [140, 3],
    [200, 4],
  ])('a fan of %d mm takes %d units of a panel', (sizeMm, units) => {
    expect(need(lower(unit('fan', { sizeMm })), 'fan-1/mount')?.draws).toEqual({ panelUnits: units });
  });

  test('a current that is not recorded is reported', () => {
    const lowered = lower(unit('fan', { milliamps: undefined }));
    expect(need(lowered, 'fan-1/lead')).not.toHaveProperty('draws');
    expect(open(lowered)).toEqual(['fan-header fan-1.milliamps draws']);
  });
});

describe('monitor', () => {
  test('any of its plugs will do; sockets that are not recorded stay unknown', () => {
    const plugs = (change: Parameters<typeof unit<'monitor'>>[1]) =>
      need(lower(unit('monitor', change)), 'monitor-1/picture')?.attrs['plugs'];
    expect(plugs({})).toEqual(['hdmi', 'displayport']);
    expect(plugs({ sockets: [] })).toEqual([]);
    expect(plugs({ sockets: undefined })).toBeUndefined();
  });

  test('what its own socket cannot carry counts against that plug', () => {
    // 2560 × 1440 at 144 Hz, 8 bits: CVT with reduced blanking v2 has 2640 × 1543 points, 586,586 kHz, × 24 bits.
    const sockets = [
      { id: 'hdmi-1', plug: 'hdmi', megabits: 8160 },
      { id: 'displayport-1', plug: 'displayport', megabits: 17_280 },
    ];
    const lowered = lower(unit('monitor', { widthPx: 2560, heightPx: 1440, refreshHz: 144, sockets }));
    expect(need(lowered, 'monitor-1/picture')?.draws).toEqual({ heads: 1, pictureMbps: 14_079, 'beyond-hdmi': 5919 });
  });

  test('with a mode that is not recorded it draws a head alone', () => {
    const picture = need(lower(unit('monitor', { refreshHz: undefined })), 'monitor-1/picture');
    expect(picture?.draws).toEqual({ heads: 1 });
    expect(picture?.attrs['pictureMbps']).toBeUndefined();
  });
});

describe('adapter', () => {
  const fourIntoOne = unit('adapter', {
    form: 'adapter',
    ins: [1, 2, 3, 4].map((n) => ({
      id: `in-${n}`,
      kind: 'card-power',
      attrs: { plug: 'pcie-8' },
      carries: ['leadDeciwatts'],
    })),
    outs: [
      {
        id: 'out',
        way: '600',
        kind: 'card-power',
        attrs: { plug: '12v-2x6', senseW: 600 },
        limits: { leadDeciwatts: 6000 },
      },
      {
        id: 'out',
        way: '300',
        kind: 'card-power',
        attrs: { plug: '12v-2x6', senseW: 300 },
        after: ['in-1', 'in-2'],
        limits: { leadDeciwatts: 3000 },
      },
    ],
  });

  test('every end that must be joined may stay in its bag', () => {
    const { needs } = lower(fourIntoOne);
    expect(needs.map(({ id, left, carries }) => [id, left, carries])).toEqual(
      [1, 2, 3, 4].map((n) => [`adapter-1/in-${n}`, 'spare', ['leadDeciwatts']]),
    );
  });

  test('two ways of one end are one place; a way that names no ends waits for all', () => {
    const { places } = lower(fourIntoOne);
    expect(places.map(({ id, way, after }) => [id, way, after])).toEqual([
      ['adapter-1/out', '600', ['adapter-1/in-1', 'adapter-1/in-2', 'adapter-1/in-3', 'adapter-1/in-4']],
      ['adapter-1/out', '300', ['adapter-1/in-1', 'adapter-1/in-2']],
    ]);
  });

  test('a limit is metered at its own way, under the name of the quantity', () => {
    const lowered = lower(fourIntoOne);
    expect(lowered.resources).toEqual([
      { id: 'adapter-1/out/600/leadDeciwatts', capacity: 6000 },
      { id: 'adapter-1/out/300/leadDeciwatts', capacity: 3000 },
    ]);
  });

  test('what a riser cannot pass is lost, not refused', () => {
    const riser = unit('adapter', {
      form: 'riser',
      ins: [{ id: 'edge', kind: 'expansion-slot', attrs: { bus: 'pcie', lanes: 16 }, draws: { halfSlots: 1 } }],
      outs: [
        { id: 'slot', kind: 'expansion-slot', attrs: { bus: 'pcie', lengthLanes: 16 }, limits: { busMBps: 15_753 } },
      ],
    });
    expect(lower(riser).resources).toEqual([{ id: 'adapter-1/slot/busMBps', capacity: 15_753, over: 'lost' }]);
    expect(need(lower(riser), 'adapter-1/edge')?.draws).toEqual({ halfSlots: 1 });
  });

  test('a plain splitter meters nothing itself', () => {
    const lowered = lower(unit('adapter'));
    expect(lowered.places.map(({ meters }) => meters)).toEqual([undefined, undefined]);
    expect(lowered.resources).toEqual([]);
  });

  test('with ends that are not recorded it offers nothing', () => {
    expect(lower(unit('adapter', { ins: undefined })).places).toEqual([]);
  });

  test('two ends of one name have ids of their own', () => {
    const outs = [
      { id: 'in', kind: 'fan-header', attrs: {} },
      { id: 'in', kind: 'fan-header', attrs: {} },
    ];
    expect(lower(unit('adapter', { outs })).places.map(({ id }) => id)).toEqual(['adapter-1/in-2', 'adapter-1/in-3']);
  });

  test('a size that is no number says nothing; no such limit stays so', () => {
    const outs = [{ id: 'out', kind: 'drive-bay', attrs: { bays: ['3.5'], heightMm: 'tall', depthMm: null } }];
    const [bay] = lower(unit('adapter', { outs })).places;
    expect(bay?.attrs).toEqual({ bays: ['3.5'], heightMm: undefined, depthMm: null });
  });

  test('every attribute that the hookup compares by size is kept to numbers', () => {
    const compared = Object.values(kinds).flatMap(({ tests }) =>
      tests.filter(({ op }) => op !== 'shares').flatMap((one) => [one.need, one.place]),
    );
    // Of kinds that no adapter stands between, these are never an adapter's.
    const others = ['carriesGrams', 'grams', 'clockMhz', 'capacityKb', 'largestKb', 'nanoseconds', 'slowestNs'];
    expect([...new Set(compared)].filter((attr) => !measures.has(attr) && !others.includes(attr))).toEqual([]);
  });
});

describe('lights, slots and plugs of a board and its supply', () => {
  test('a lighting header gives its own current', () => {
    const lowered = lower(unit('motherboard'));
    expect(place(lowered, 'motherboard-1/light-1')).toMatchObject({
      kind: 'light-header',
      attrs: { plug: 'light-5v-3' },
    });
    expect(capacity(lowered, 'motherboard-1/light-1-milliamps')).toBe(3000);
  });

  const shared = unit('motherboard', {
    expansionSlots: [
      {
        id: 'x16-1',
        position: 1,
        lengthLanes: 16,
        lanes: 16,
        generation: 4,
        shares: { slot: 'x16-2', lanes: 8 },
      },
      { id: 'x16-2', position: 4, lengthLanes: 16, lanes: 8, generation: 4 },
    ],
  });

  test('a slot that shares its lanes has two ways, and the other slot shuts out the wider', () => {
    const lowered = lower(shared);
    const ways = lowered.places.filter(({ id }) => id.startsWith('motherboard-1/expansion-slot-'));
    expect(ways.map(({ id, way, attrs, draws }) => [id, way, attrs['lanes'], draws])).toEqual([
      ['motherboard-1/expansion-slot-x16-1', 'full', 16, { 'all-lanes-of-x16-1': 1 }],
      ['motherboard-1/expansion-slot-x16-1', 'shared', 8, undefined],
      ['motherboard-1/expansion-slot-x16-2', undefined, 8, { 'all-lanes-of-x16-1': 1 }],
    ]);
    expect(capacity(lowered, 'motherboard-1/all-lanes-of-x16-1')).toBe(1);
    // Generation 4: 16 GT/s × 128/130 ÷ 8 = 1969.2 MB/s a lane.
    expect(capacity(lowered, 'motherboard-1/expansion-slot-x16-1-full-busMBps')).toBe(31_507);
    expect(capacity(lowered, 'motherboard-1/expansion-slot-x16-1-shared-busMBps')).toBe(15_753);
  });

  test('a slot that keeps no lanes is off while the other is used', () => {
    const off = unit('motherboard', {
      expansionSlots: [
        { id: 'a', position: 1, lengthLanes: 4, lanes: 4, generation: 3, shares: { slot: 'b', lanes: 0 } },
        { id: 'b', position: 2, lengthLanes: 1, lanes: 1, generation: 3 },
      ],
    });
    expect(
      lower(off)
        .places.filter(({ kind }) => kind === 'expansion-slot')
        .map(({ way }) => way),
    ).toEqual(['full', undefined]);
  });

  test('a 24-pin plug goes into either board socket, and is told by its own name first', () => {
    const plugs = (plug: string) =>
      lower(unit('power-supply', { leads: [{ id: 'board', plugs: [plug] }] })).places[0]?.attrs['plug'];
    expect(plugs('atx-24')).toEqual(['atx-24', 'atx-20']);
    expect(plugs('atx-20')).toEqual(['atx-20', 'atx-24']);
    expect(plugs('p8')).toBe('p8');
  });

  test('a processor plug of twice four pins is one plug, for a socket of eight or of four', () => {
    const { places } = lower(unit('power-supply', { leads: [{ id: 'processor', plugs: ['eps-4-4'] }] }));
    expect(places.map(({ kind, attrs }) => [kind, attrs['plug']])).toEqual([
      ['processor-power', ['eps-4-4', 'eps-8', 'eps-4']],
    ]);
  });

  test('only the 16-pin plug announces watts, and only its socket asks for them', () => {
    const leads = [
      { id: 'card-1', plugs: ['12v-2x6'], senseW: 450 },
      { id: 'card-2', plugs: ['pcie-8'] },
    ];
    expect(lower(unit('power-supply', { leads })).places.map(({ attrs }) => attrs['senseW'])).toEqual([450, null]);
    const card = lower(unit('graphics-card', { powerSockets: ['12v-2x6', 'pcie-8'], sustainedW: 320 }));
    const asks = [1, 2].map((n) => need(card, `graphics-card-1/power-${n}`)?.attrs['drawsW']);
    expect(asks).toEqual([320, null]);
  });
});

describe('panels and bays of a case', () => {
  test('a radiator takes from the same row as fans, and only where a panel takes one', () => {
    const fanPanels = [
      { id: 'front', sizesMm: [120], units: 6, radiatorsMm: [240], depthMm: 60 },
      { id: 'rear', sizesMm: [120], units: 2 },
    ];
    const lowered = lower(
      unit('chassis', { fanPanels, fittedFans: [], cardLengthMm: 320, frontFansTakeCardRoom: true }),
    );
    expect(placeIds(lowered, 'radiator-mount')).toEqual(['chassis-1/radiator-front']);
    expect(place(lowered, 'chassis-1/radiator-front')).toMatchObject({
      attrs: { radiatorsMm: [240], depthMm: 60, memoryHeightMm: null, cardRoomMm: 320 },
      meters: { panelUnits: ['chassis-1/panel-front'] },
    });
  });

  test('only over the memory, and only before a card, is its height or length in the way', () => {
    const fanPanels = [{ id: 'top', sizesMm: [120], units: 4, radiatorsMm: [240], depthMm: 60 }];
    const top = place(lower(unit('chassis', { fanPanels })), 'chassis-1/radiator-top');
    expect(top?.attrs).toMatchObject({ memoryHeightMm: undefined, cardRoomMm: null });
  });

  test('a bay takes every drive of its sizes where it records no less', () => {
    const driveBays = [
      { id: 'bay-1', sizes: ['3.5'] },
      { id: 'bay-2', sizes: ['2.5'], heightMm: 7, depthMm: 110 },
    ];
    const lowered = lower(unit('chassis', { driveBays }));
    expect(place(lowered, 'chassis-1/bay-1')?.attrs).toEqual({ bays: ['3.5'], heightMm: null, depthMm: null });
    expect(place(lowered, 'chassis-1/bay-2')?.attrs).toEqual({ bays: ['2.5'], heightMm: 7, depthMm: 110 });
  });

  test('a bay in front of the supply is filled last', () => {
    const driveBays = [
      { id: 'bay-1', sizes: ['3.5'], supplyLengthMm: 150 },
      { id: 'bay-2', sizes: ['3.5'] },
    ];
    const ranks = lower(unit('chassis', { driveBays }))
      .places.filter(({ kind }) => kind === 'drive-bay')
      .toSorted((a, b) => a.rank - b.rank);
    expect(ranks.map(({ id }) => id)).toEqual(['chassis-1/bay-2', 'chassis-1/bay-1']);
  });
});

describe('expansion card', () => {
  test('offers its sockets and slots once it is in a slot', () => {
    const lowered = lower(
      unit('expansion-card', {
        role: 'storage',
        dataSockets: [{ id: 'sata-1', plug: 'sata' }],
        moduleSlots: [{ id: 'm2-1', lengthsMm: [80], lanes: 4, generation: 3 }],
      }),
    );
    const offered = lowered.places.map(({ kind, after }) => [kind, after]);
    expect(offered).toEqual([
      ['drive-data', ['expansion-card-1/edge']],
      ['module-slot', ['expansion-card-1/edge']],
    ]);
  });

  test('a drive lead carries what the card draws', () => {
    const lowered = lower(unit('expansion-card', { powerSockets: ['sata-power'], sustainedW: 20 }));
    expect(need(lowered, 'expansion-card-1/power-1')).toMatchObject({
      kind: 'drive-power',
      draws: { leadDeciwatts: 200 },
    });
  });
});

describe('monitor arm', () => {
  test('needs the back of a monitor', () => {
    expect(need(lower(unit('monitor-arm')), 'monitor-arm-1/plate')).toMatchObject({
      kind: 'monitor-mount',
      left: 'limit',
      attrs: { holesMm: [75, 100], carriesGrams: 9000 },
    });
    const back = place(lower(unit('monitor', { armHolesMm: [100], grams: 4200 })), 'monitor-1/back');
    expect(back?.attrs).toEqual({ armHolesMm: [100], grams: 4200 });
  });
});

describe('a radiator among other parts', () => {
  const cooler = { radiator: { lengthMm: 240, thicknessMm: 27, fanThicknessMm: 25, fanSizeMm: 120, fans: 2 } };
  const measured = (parts: ExampleParts) => {
    const radiator = lowerAll(unitsOf(exampleList(parts))).needs.find(({ id }) => id === 'cooler-1/radiator');
    return [radiator?.attrs['memoryMm'], radiator?.attrs['reachMm']];
  };

  test('is told how tall the memory is, and how far the longest card and it reach', () => {
    expect(
      measured({
        cooler,
        'memory-module': [{ heightMm: 32 }, { heightMm: 45 }],
        'graphics-card': { lengthMm: 250 },
        'expansion-card': { lengthMm: 120 },
      }),
    ).toEqual([45, 302]);
  });

  test('one height that is not recorded leaves it open; none at all is no limit', () => {
    expect(measured({ cooler, 'memory-module': [{ heightMm: 32 }, { heightMm: undefined }] })).toEqual([
      undefined,
      null,
    ]);
  });
});

describe('a whole list', () => {
  const boardPicture = (hasGraphics: boolean | undefined) => {
    const units: Unit[] = [unit('motherboard'), unit('processor', { hasGraphics })];
    const lowered = lowerAll(units);
    return { places: placeIds(lowered, 'picture').length, open: open(lowered) };
  };

  test("a board's own picture sockets work when the processor draws pictures", () => {
    expect(boardPicture(true)).toEqual({ places: 2, open: [] });
    expect(boardPicture(false)).toEqual({ places: 0, open: [] });
    expect(boardPicture(undefined)).toEqual({ places: 0, open: ['picture processor-1.hasGraphics places'] });
  });

  test('units are numbered within their class by part id, figures by their number', () => {
    const drive = (id: string) => ({ part: { ...aPart('storage-drive'), id }, quantity: 1 });
    const units = unitsOf([{ part: aPart('monitor'), quantity: 1 }, drive('m-10'), drive('m-2')]);
    expect(units.map(({ id, part }) => [id, part.id])).toEqual([
      ['storage-drive-1', 'm-2'],
      ['storage-drive-2', 'm-10'],
      ['monitor-1', 'plain-monitor'],
    ]);
  });

  test('of three equal parts there are three units', () => {
    expect(unitsOf([{ part: aPart('fan'), quantity: 3 }]).map(({ id }) => id)).toEqual(['fan-1', 'fan-2', 'fan-3']);
  });

  test('the order of the list changes nothing', () => {
    fc.assert(
      fc.property(anyList(8), fc.nat(), (list, turn) => {
        const turned = list.map((_, index) => list[(index + turn) % list.length] as (typeof list)[number]).reverse();
        expect(lowerAll(unitsOf(turned))).toEqual(lowerAll(unitsOf(list)));
      }),
      { numRuns: 50 },
    );
  });

  test('whatever a file holds: ids once, meters and drawings declared, amounts whole', () => {
    fc.assert(
      fc.property(anyList(8), (list) => {
        const { needs, places, resources } = lowerAll(unitsOf(list));
        const ids = [...needs.map(({ id }) => id), ...places.map(({ id, way }) => (way ? `${id} ${way}` : id))];
        const doubled = ids.filter((id, index) => ids.indexOf(id) !== index);
        expect(doubled).toEqual([]);
        const declared = new Set(resources.map(({ id }) => id));
        const metered = places.flatMap(({ meters = {} }) => Object.values(meters).flat());
        expect(metered.filter((id) => !declared.has(id))).toEqual([]);
        const amounts = [
          ...[...needs, ...places].flatMap(({ draws = {} }) => Object.values(draws)),
          ...resources.map((resource) => resource.capacity),
        ];
        expect(amounts.filter((amount) => !Number.isSafeInteger(amount) || amount < 0)).toEqual([]);
      }),
      { numRuns: 200 },
    );
  });

  test('every class lowers to something, but for what is joined to nothing', () => {
    for (const partClass of partClasses.filter((one) => one !== 'operating-system' && one !== 'diskette')) {
      const { needs, places } = lower(unit(partClass));
      expect(needs.length + places.length, partClass).toBeGreaterThan(0);
    }
  });
});
