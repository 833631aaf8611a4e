/**
 * Lists of current parts, each argued by hand beside it. The argument is about places and resources; what the search
 * gives is never copied.
 */
import { describe, expect, test } from 'vitest';
import { exampleList } from '../../src/fit/examples.ts';
import { judge } from '../../src/fit/judge.ts';
import type { ExampleParts } from '../../src/fit/rule.ts';

/** What is joined to what, by need, and the needs left over. */
function hooked(parts: ExampleParts) {
  const { joints, left, findings, proved } = judge(exampleList(parts));
  expect(proved).toBe(true);
  return {
    at: Object.fromEntries(joints.map(({ need, place }) => [need, place])),
    way: Object.fromEntries(joints.flatMap(({ place, way }) => (way === undefined ? [] : [[place, way]]))),
    left: left.map(({ need }) => need),
    findings,
  };
}

const header = (id: string, milliamps: number) => ({ id, pins: 4 as const, milliamps });

describe('power', () => {
  test('two sockets and two leads of two plugs: the first plug of each lead, so that neither carries both', () => {
    const { at } = hooked({
      'graphics-card': { powerSockets: ['pcie-8', 'pcie-8'] },
      'power-supply': {
        leads: [
          { id: 'card-1', plugs: ['pcie-8', 'pcie-8'], carriesW: 300 },
          { id: 'card-2', plugs: ['pcie-8', 'pcie-8'], carriesW: 300 },
        ],
      },
    });
    expect([at['graphics-card-1/power-1'], at['graphics-card-1/power-2']]).toEqual([
      'power-supply-1/lead-card-1-plug-1',
      'power-supply-1/lead-card-2-plug-1',
    ]);
  });

  // 150 + 75 W fill the lead of 225 W exactly; the lead of 150 W is full with one 8-pin plug.
  test('two 8-pin sockets and a 6-pin one: the 6-pin shares the stronger lead', () => {
    const { at, left } = hooked({
      motherboard: {},
      'graphics-card': { powerSockets: ['pcie-8', 'pcie-8', 'pcie-6'] },
      'power-supply': {
        leads: [
          { id: 'card-1', plugs: ['pcie-8', 'pcie-6'], carriesW: 225 },
          { id: 'card-2', plugs: ['pcie-8', 'pcie-6'], carriesW: 150 },
        ],
      },
    });
    expect(at['graphics-card-1/power-3']).toBe('power-supply-1/lead-card-1-plug-2');
    expect(left.filter((need) => need.startsWith('graphics-card'))).toEqual([]);
  });

  const fourIntoOne = {
    form: 'adapter' as const,
    ins: [1, 2, 3, 4].map((n) => ({
      id: `in-${n}`,
      kind: 'card-power' as const,
      attrs: { plug: 'pcie-8', drawsW: null },
      carries: ['leadDeciwatts'],
    })),
    outs: [
      { ways: 600, after: ['in-1', 'in-2', 'in-3', 'in-4'] },
      { ways: 450, after: ['in-1', 'in-2', 'in-3'] },
      { ways: 300, after: ['in-1', 'in-2'] },
    ].map(({ ways, after }) => ({
      id: 'out',
      way: String(ways),
      kind: 'card-power' as const,
      attrs: { plug: '12v-2x6', senseW: ways },
      after,
      limits: { leadDeciwatts: ways * 10 },
    })),
  };
  const eights = (n: number) =>
    Array.from({ length: n }, (_, index) => ({
      id: `card-${index + 1}`,
      plugs: ['pcie-8' as const],
      carriesW: 150,
    }));

  // 300 W announces too little and 600 W needs a fourth plug: 400 W through three, 133.4 W each.
  test('a card of 400 W, three 8-pin plugs and an adapter of four: three of its ends, announcing 450 W', () => {
    const { at, way, left } = hooked({
      motherboard: {},
      'graphics-card': { powerSockets: ['12v-2x6'], sustainedW: 400 },
      'power-supply': { leads: eights(3) },
      adapter: fourIntoOne,
    });
    expect(at['graphics-card-1/power-1']).toBe('adapter-1/out');
    expect(way['adapter-1/out']).toBe('450');
    expect(Object.keys(at).filter((need) => need.startsWith('adapter-1/in-'))).toEqual([
      'adapter-1/in-1',
      'adapter-1/in-2',
      'adapter-1/in-3',
    ]);
    expect(left).not.toContain('graphics-card-1/power-1');
  });

  test('with two plugs it announces 300 W, and the card is left without', () => {
    const { left, findings } = hooked({
      motherboard: {},
      'graphics-card': { powerSockets: ['12v-2x6'], sustainedW: 400 },
      'power-supply': { leads: eights(2) },
      adapter: fourIntoOne,
    });
    expect(left).toContain('graphics-card-1/power-1');
    const told = findings.filter(
      ({ verdict, need }) => verdict === 'does-not-fit' && need === 'graphics-card-1/power-1',
    );
    expect(told.map(({ severity }) => severity)).toEqual(['blocker']);
  });

  test('a small supply goes into a large bay through a plate', () => {
    const { at, left } = hooked({
      'power-supply': { shape: 'sfx', lengthMm: 100 },
      chassis: { supplyShape: 'atx', supplyLengthMm: 160 },
      motherboard: {},
      adapter: {
        form: 'plate',
        ins: [{ id: 'outside', kind: 'supply-mount', attrs: { shape: 'atx', lengthMm: null } }],
        outs: [{ id: 'inside', kind: 'supply-mount', attrs: { shape: 'sfx', lengthMm: 130 } }],
      },
    });
    expect(at['power-supply-1/mount']).toBe('adapter-1/inside');
    expect(at['adapter-1/outside']).toBe('chassis-1/supply-bay');
    expect(left).not.toContain('power-supply-1/mount');
  });

  test('a limit that is not recorded: joined, and nobody can tell', () => {
    const { at, findings } = hooked({
      'power-supply': { shape: 'atx', lengthMm: 160 },
      chassis: { supplyShape: 'atx', supplyLengthMm: undefined },
      motherboard: {},
    });
    expect(at['power-supply-1/mount']).toBe('chassis-1/supply-bay');
    expect(findings.find(({ rule }) => rule === 'clearance/supply-length')?.verdict).toBe('cannot-tell');
  });
});

describe('fans', () => {
  test('the strong fan has the strong header, though it is last by id', () => {
    const { at } = hooked({
      fan: [{ milliamps: 300 }, { milliamps: 1500 }],
      motherboard: { fanHeaders: [header('case-1', 2000), header('case-2', 1000)] },
    });
    expect(at['fan-2/lead']).toBe('motherboard-1/header-case-1');
    expect(at['fan-1/lead']).toBe('motherboard-1/header-case-2');
  });

  test('three fans, two headers and a splitter: all served, two of them through it', () => {
    const { at, left } = hooked({
      fan: [{ milliamps: 500 }, { milliamps: 500 }, { milliamps: 500 }],
      motherboard: { fanHeaders: [header('case-1', 1000), header('case-2', 1000)] },
      chassis: { fittedFans: [] },
      adapter: {},
    });
    const places = [1, 2, 3].map((n) => at[`fan-${n}/lead`] ?? '');
    expect(places.filter((place) => place.startsWith('adapter-1/')).length).toBe(2);
    expect(left.filter((need) => need.endsWith('/lead'))).toEqual([]);
  });

  const outlets = [1, 2, 3].map((n) => ({ id: `out-${n}`, kind: 'fan-header' as const, attrs: { pins: 4 } }));
  const threeFans = {
    fan: [{ milliamps: 400 }, { milliamps: 400 }, { milliamps: 400 }],
    motherboard: { fanHeaders: [header('case-1', 1000)] },
    chassis: { fittedFans: [] },
  };

  // Three times 0.4 A is 1.2 A from a header of 1 A.
  test('three fans, one header and a splitter of three: the third is left, for want of current', () => {
    const { left, findings } = hooked({
      ...threeFans,
      adapter: {
        form: 'splitter',
        ins: [{ id: 'in', kind: 'fan-header', attrs: { pins: 4 }, carries: ['milliamps'] }],
        outs: outlets,
      },
    });
    expect(left.filter((need) => need.endsWith('/lead'))).toEqual(['fan-3/lead']);
    const told = findings.find(({ rule, verdict }) => rule === 'cabling/fan-header' && verdict === 'does-not-fit');
    expect(told?.facts).toMatchObject({ reason: 'spent', capacity: 1000, wanted: 1200 });
  });

  test('through a hub with a power lead of its own all three are served', () => {
    const { at, left } = hooked({
      ...threeFans,
      'power-supply': {},
      adapter: {
        form: 'hub',
        ins: [
          { id: 'signal', kind: 'fan-header', attrs: { pins: 4 } },
          { id: 'supply', kind: 'drive-power', attrs: { plug: 'sata-power' }, carries: ['milliamps'] },
        ],
        outs: outlets,
      },
    });
    expect(left.filter((need) => need.endsWith('/lead'))).toEqual([]);
    expect(at['adapter-1/signal']).toBe('motherboard-1/header-case-1');
    expect(at['adapter-1/supply']).toBe('power-supply-1/lead-drives-1-plug-1');
  });

  const front = { id: 'front' as const, units: 6, radiatorsMm: [240], depthMm: 60 };

  // Six units: four for the radiator, two for one fan.
  test('a radiator of 240 and two fans of 120 on a panel for three: one fan is left over', () => {
    const { at, left } = hooked({
      motherboard: {},
      cooler: { radiator: { lengthMm: 240, thicknessMm: 27, fanThicknessMm: 25, fanSizeMm: 120, fans: 2 } },
      fan: [{ sizeMm: 120 }, { sizeMm: 120 }],
      chassis: { fanPanels: [{ ...front, sizesMm: [120] }], fittedFans: [] },
    });
    expect(at['cooler-1/radiator']).toBe('chassis-1/radiator-front');
    expect(left.filter((need) => need.endsWith('/mount'))).toEqual(['fan-2/mount']);
  });

  // Three units each for the two of 140 leave none.
  test('two fans of 140 and one of 120 on the same panel: one is left over', () => {
    const { left } = hooked({
      fan: [{ sizeMm: 140 }, { sizeMm: 140 }, { sizeMm: 120 }],
      chassis: { fanPanels: [{ ...front, sizesMm: [120, 140] }], fittedFans: [] },
    });
    expect(left.filter((need) => need.endsWith('/mount')).length).toBe(1);
  });

  test('a radiator goes where nothing is in its way, though another panel comes first', () => {
    const { at } = hooked({
      motherboard: {},
      cooler: { radiator: { lengthMm: 240, thicknessMm: 27, fanThicknessMm: 25, fanSizeMm: 120, fans: 2 } },
      'graphics-card': { lengthMm: 300 },
      chassis: {
        cardLengthMm: 320,
        frontFansTakeCardRoom: true,
        fanPanels: [
          { ...front, sizesMm: [120] },
          { id: 'top', sizesMm: [120], units: 4, radiatorsMm: [240], depthMm: 60, memoryHeightMm: 40 },
        ],
        fittedFans: [],
      },
    });
    expect(at['cooler-1/radiator']).toBe('chassis-1/radiator-top');
  });
});

describe('drives in bays', () => {
  const frame = {
    form: 'frame' as const,
    ins: [{ id: 'outside', kind: 'drive-bay' as const, attrs: { bay: '5.25', heightMm: null, lengthMm: null } }],
    outs: [{ id: 'inside', kind: 'drive-bay' as const, attrs: { bays: ['3.5'], heightMm: null, depthMm: null } }],
  };

  test('one bay for either size and a frame: the large drive goes into the frame, the small one into the bay', () => {
    const { at } = hooked({
      'storage-drive': [{ build: '3.5' }, { build: '2.5' }],
      chassis: {
        driveBays: [
          { id: 'bay-1', sizes: ['3.5', '2.5'] },
          { id: 'bay-2', sizes: ['5.25'] },
        ],
      },
      adapter: frame,
    });
    expect(at['storage-drive-1/bay']).toBe('adapter-1/inside');
    expect(at['storage-drive-2/bay']).toBe('chassis-1/bay-1');
    expect(at['adapter-1/outside']).toBe('chassis-1/bay-2');
  });

  test('with a bay free for each the frame stays in its bag', () => {
    const { at } = hooked({
      'storage-drive': [{ build: '3.5' }, { build: '2.5' }],
      chassis: {
        driveBays: [
          { id: 'bay-1', sizes: ['3.5', '2.5'] },
          { id: 'bay-2', sizes: ['5.25'] },
          { id: 'bay-3', sizes: ['3.5'] },
        ],
      },
      adapter: frame,
    });
    expect(at['storage-drive-1/bay']).toBe('chassis-1/bay-3');
    expect(at['adapter-1/outside']).toBeUndefined();
  });
});

describe('cards in slots', () => {
  const slot = (id: string, position: number, lengthLanes: number, lanes = lengthLanes) => ({
    id,
    position,
    lengthLanes,
    lanes,
    generation: 4,
  });
  const shared = [
    { ...slot('one', 1, 16), shares: { slot: 'two', lanes: 8 } },
    { ...slot('two', 4, 16, 8) },
    { ...slot('three', 6, 4) },
  ];
  const display = { lanes: 16, slotsThick: 2 };
  const place = (name: string) => `motherboard-1/expansion-slot-${name}`;

  test('a display card alone has all lanes of the first slot', () => {
    const { at, way } = hooked({ 'graphics-card': display, motherboard: { expansionSlots: shared } });
    expect(at['graphics-card-1/edge']).toBe(place('one'));
    expect(way[place('one')]).toBe('full');
  });

  // With both slots used there are eight lanes each, whichever card sits where; the hungrier chooses first.
  test('with a card of eight lanes beside it each has eight', () => {
    const { at, way } = hooked({
      'graphics-card': display,
      'expansion-card': { lanes: 8 },
      motherboard: { expansionSlots: shared.slice(0, 2) },
    });
    expect(at['graphics-card-1/edge']).toBe(place('one'));
    expect(way[place('one')]).toBe('shared');
    expect(at['expansion-card-1/edge']).toBe(place('two'));
  });

  test('a small card goes into the slot of the chipset, and the display card keeps its sixteen', () => {
    const { at, way } = hooked({
      'graphics-card': display,
      'expansion-card': { lanes: 1 },
      motherboard: { expansionSlots: shared },
    });
    expect(way[place('one')]).toBe('full');
    expect(at['expansion-card-1/edge']).toBe(place('three'));
  });

  // 2.5 slots cover positions 1, 2 and half of 3.
  test('a card of two and a half slots covers the third, so the small card takes the fourth', () => {
    const { at } = hooked({
      'graphics-card': { lanes: 16, slotsThick: 2.5 },
      'expansion-card': { lanes: 1 },
      motherboard: { expansionSlots: [slot('p1', 1, 16), slot('p3', 3, 1), slot('p4', 4, 1)] },
    });
    expect(at['expansion-card-1/edge']).toBe(place('p4'));
  });

  // Three slots thick at position 4 would cover 4 to 6; at 1 it covers 1 to 3 and leaves 4-5 and 6-7 to the others.
  test('the thickest card goes to the top, though it comes second, and all three fit', () => {
    const { at, left } = hooked({
      'graphics-card': [
        { lanes: 16, slotsThick: 2 },
        { lanes: 16, slotsThick: 3 },
        { lanes: 16, slotsThick: 2 },
      ],
      motherboard: { expansionSlots: [slot('p1', 1, 16), slot('p4', 4, 16), slot('p6', 6, 16)] },
      chassis: { cutOuts: 7 },
    });
    // Equal cards are one part twice, so the thick one is the third unit.
    expect(at['graphics-card-3/edge']).toBe(place('p1'));
    expect(left.filter((need) => need.endsWith('/edge'))).toEqual([]);
  });

  test('below the last cut-out a card has no room for its second slot; without a case it has', () => {
    const low = {
      'graphics-card': { lanes: 16, slotsThick: 2 },
      motherboard: { expansionSlots: [slot('p7', 7, 16)] },
    };
    const { left, findings } = hooked({ ...low, chassis: { cutOuts: 7 } });
    expect(left).toContain('graphics-card-1/edge');
    const told = findings.find(({ need }) => need === 'graphics-card-1/edge');
    expect(told?.facts).toMatchObject({ reason: 'spent' });

    const loose = hooked(low);
    expect(loose.at['graphics-card-1/edge']).toBe(place('p7'));
    expect(loose.left).toContain('motherboard-1/mount');
  });

  test('two cards below the last cut-out are both left over; the board stays in the case', () => {
    const { at, left } = hooked({
      'graphics-card': [
        { lanes: 16, slotsThick: 1 },
        { lanes: 16, slotsThick: 1 },
      ],
      motherboard: { expansionSlots: [slot('p5', 5, 16), slot('p6', 6, 16)] },
      chassis: { cutOuts: 4 },
    });
    expect(left.filter((need) => need.endsWith('/edge'))).toEqual(['graphics-card-1/edge', 'graphics-card-2/edge']);
    expect(at['motherboard-1/mount']).toBe('chassis-1/tray');
  });

  // Flat in the first slot the card covers the only other one. Upright it does not, at half of its link.
  test('a card over the only small slot stands upright on a riser', () => {
    const { at, left, findings } = hooked({
      'graphics-card': { lanes: 16, generation: 4, slotsThick: 3 },
      'expansion-card': { lanes: 4 },
      motherboard: { expansionSlots: [slot('p1', 1, 16), slot('p2', 2, 4)] },
      chassis: { cutOuts: 7 },
      adapter: {
        form: 'riser',
        ins: [
          {
            id: 'edge',
            kind: 'expansion-slot',
            attrs: { bus: 'pcie', lanes: 16, generation: 3 },
            draws: { halfSlots: 1 },
            carries: ['busMBps'],
          },
        ],
        outs: [
          {
            id: 'slot',
            kind: 'expansion-slot',
            attrs: { bus: 'pcie', lengthLanes: 16, lanes: 16, generation: 3 },
            limits: { busMBps: 15_753, halfSlots: 6 },
          },
        ],
      },
    });
    expect(at['graphics-card-1/edge']).toBe('adapter-1/slot');
    expect(at['adapter-1/edge']).toBe(place('p1'));
    expect(at['expansion-card-1/edge']).toBe(place('p2'));
    expect(left.filter((need) => need.endsWith('/edge'))).toEqual([]);
    expect(findings.find(({ rule }) => rule === 'expansion/link-width')?.verdict).toBe('does-not-fit');
  });
});

describe('what does harm is never joined', () => {
  test('a 5 V light is left off a 12 V header, and told as a hazard', () => {
    const { at, findings } = hooked({
      fan: { light: { plug: 'light-5v-3', milliamps: 300 } },
      motherboard: { lightPins: [{ id: 'light-1', plug: 'light-12v-4', milliamps: 2000 }] },
    });
    expect(at['fan-1/light']).toBeUndefined();
    const told = findings.find(({ rule }) => rule === 'cabling/light-voltage');
    expect([told?.verdict, told?.severity]).toEqual(['does-not-fit', 'hazard']);
  });

  test('a monitor too heavy for its arm is a hazard; one with other holes is not', () => {
    const told = (monitor: NonNullable<ExampleParts['monitor']>) =>
      hooked({ 'monitor-arm': { holesMm: [100], carriesGrams: 5000 }, monitor })
        .findings.filter(({ rule, verdict }) => rule.startsWith('mounting/arm-') && verdict === 'does-not-fit')
        .map(({ rule, severity }) => [rule, severity]);
    expect(told({ armHolesMm: [100], grams: 5001 })).toEqual([['mounting/arm-weight', 'hazard']]);
    expect(told({ armHolesMm: [75], grams: 5001 })).toEqual([['mounting/arm-holes', 'limit']]);
  });
});
