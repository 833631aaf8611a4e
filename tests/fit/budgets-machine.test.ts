import { describe, expect, test } from 'vitest';
import type { ExampleParts } from '../../src/fit/rule.ts';
import { budgetsNamed, figuresOf, theBudget } from '../helpers/budgets.ts';

describe('air through the case', () => {
  const fan = { id: 'rear-1', panel: 'rear', sizeMm: 120, thicknessMm: 25, pins: 3, milliamps: 200 } as const;
  /** What is in the case: the board's 40 W, the processor, and fans that draw as recorded. */
  const withFans = (sustainedW: number, fittedFans: readonly object[]) =>
    ({
      chassis: { fittedFans: fittedFans as never },
      motherboard: {},
      processor: { sustainedW },
    }) satisfies ExampleParts;

  test('the textbook case: 105 W and 0.010448 kg of air a second are 10 kelvins', () => {
    // Source: Thermodynamics, an engineering approach, sixth edition, problem 6-108: 105/(1005 × 10) kg/s. At 1.204 kg a
    // cubic metre that is 31.24 m³/h. Here the fan draws 2.4 W, the board 40 W, the processor 62.6 W: 105 W in all.
    const { used, unit, unknown } = theBudget('air', withFans(62.6, [{ ...fan, airflowM3h: 31 }]));
    expect({ unit, unknown }).toEqual({ unit: 'millikelvin', unknown: [] });
    // 31 instead of 31.24 m³/h: 0.8 % more.
    expect(Math.abs(used - 10_000 * (31.24 / 31))).toBeLessThan(5);
  });

  test('300 W and 90 cubic metres an hour are about 10 kelvins', () => {
    // Published: 300 W and 10 °C take 52.71 cubic feet a minute, which are 89.55 m³/h. Source: enclosure airflow pages,
    // for air of 1.20 kg a cubic metre, a third of a percent lighter than here.
    const { used } = theBudget('air', withFans(257.6, [{ ...fan, airflowM3h: 90 }]));
    expect(Math.abs(used / 10_000 - (89.55 / 90) * (1.2 / 1.204))).toBeLessThan(0.001);
  });

  test('fans side by side add up; in and out are the same air, so the stronger side counts', () => {
    const rise = (fans: readonly object[]) => theBudget('air', withFans(60, fans)).used;
    const [front, rear] = [
      { ...fan, id: 'front-1', panel: 'front', milliamps: 1, airflowM3h: 60 },
      { ...fan, id: 'rear-1', milliamps: 1, airflowM3h: 40 },
    ];
    const still = { ...fan, milliamps: 1, airflowM3h: 1 };
    expect(rise([front, { ...front, id: 'front-2' }])).toBe(
      rise([
        { ...front, airflowM3h: 120 },
        { ...still, id: 'a' },
      ]),
    );
    expect(rise([front, rear])).toBe(rise([front, { ...rear, airflowM3h: 60 }]));
    expect(rise([rear, { ...rear, id: 'rear-2', panel: 'top' }])).toBe(
      rise([
        { ...rear, airflowM3h: 80 },
        { ...still, panel: 'front' },
      ]),
    );
  });

  test('fans that are added count where they are mounted, and both of a radiator', () => {
    const panel = { id: 'top' as const, sizesMm: [120], units: 4, radiatorsMm: [240], depthMm: 60 };
    const radiator = { lengthMm: 240, thicknessMm: 27, fanThicknessMm: 25, fanSizeMm: 120, fans: 2 };
    const budget = theBudget('air', {
      chassis: { fittedFans: [], fanPanels: [panel, { id: 'front', sizesMm: [120], units: 2 }] },
      motherboard: {},
      processor: {},
      cooler: { radiator, fan: { pins: 4, milliamps: 100, airflowM3h: 70 } },
      fan: { airflowM3h: 90 },
    });
    expect(figuresOf(budget, 'cubic-metre-an-hour')).toMatchObject({ 'flow in': 90, 'flow out': 140 });
  });

  test('a fan without its flow is unknown; with none recorded nothing is said', () => {
    const known = { ...fan, airflowM3h: 60 };
    expect(theBudget('air', withFans(60, [known, { ...fan, id: 'rear-2' }])).unknown).toEqual(['chassis-1']);
    expect(budgetsNamed('air', withFans(60, [fan]))).toEqual([]);
  });

  test('with the temperature of the room, that of the air that comes out', () => {
    const parts = withFans(62.6, [{ ...fan, airflowM3h: 31 }]);
    const budget = theBudget('air', parts, { brief: { roomCelsius: 21.5 } });
    expect(figuresOf(budget, 'millicelsius')).toEqual({ 'air out': 21_500 + budget.used });
  });
});

describe('sound', () => {
  test.each([
    // Source: pages on combining decibels: 90 and 90 are 93; 90 and 96 are 97, exactly 96.97; 75 and 80 are 81.2,
    // exactly 81.19. Three of 25 dB and one of 32 dB are 34.04 by the formula.
    [[90, 90], 9301],
    [[90, 96], 9697],
    [[75, 80], 8119],
    [[25, 25, 25, 32], 3404],
  ])('levels of %j dB together', (levels, millibels) => {
    const fans = levels.map((soundDb) => ({ soundDb }));
    expect(theBudget('sound', { fan: fans })).toMatchObject({ used: millibels, unknown: [] });
    expect(theBudget('sound', { fan: fans.toReversed() }).used).toBe(millibels);
  });

  test('cooler, supply and the fans of the case are heard; a graphics card is, but nobody says how loud', () => {
    const fitted = {
      id: 'rear-1',
      panel: 'rear' as const,
      sizeMm: 120,
      thicknessMm: 25,
      pins: 3 as const,
      milliamps: 200,
    };
    const budget = theBudget('sound', {
      chassis: {
        fittedFans: [
          { ...fitted, soundDb: 20 },
          { ...fitted, id: 'rear-2' },
        ],
      },
      cooler: { soundDb: 20 },
      'power-supply': { soundDb: 20 },
      'graphics-card': {},
    });
    // Three of 20 dB: published as 4.8 dB more, exactly 4.77.
    expect(budget).toMatchObject({ used: 2477, unknown: ['chassis-1', 'graphics-card-1'] });
  });

  test('a cooler without a fan is not heard, and with nothing that turns there is no budget', () => {
    expect(budgetsNamed('sound', { cooler: { fan: undefined, isPassive: true }, processor: {} })).toEqual([]);
  });
});

describe('lanes', () => {
  const slot = { id: 'x16-1', position: 1, lengthLanes: 16, lanes: 16, generation: 4 };

  test('card and slot alike: all of it', () => {
    // Published: 31.508 GB/s for 16 lanes of generation 4.
    const parts: ExampleParts = { 'graphics-card': {}, motherboard: { expansionSlots: [slot] } };
    expect(theBudget('lanes', parts)).toMatchObject({ of: 'graphics-card-1', used: 31_507, limit: 31_507 });
  });

  test('the lesser width and the lesser generation are settled on', () => {
    // A card of 16 lanes of generation 4 in a slot of 8 lanes of generation 3: 7.877 GB/s, published.
    const budget = theBudget('lanes', {
      'graphics-card': { lanes: 16, generation: 4 },
      motherboard: { expansionSlots: [{ ...slot, lanes: 8, generation: 3 }] },
    });
    expect(budget).toMatchObject({ used: 31_507, limit: 7876 });
    expect(figuresOf(budget, 'lane')).toEqual({ lanes: 16, 'slot.lanes': 8, 'negotiated.lanes': 8 });
    expect(figuresOf(budget, 'generation')).toMatchObject({ 'negotiated.generation': 3 });
  });

  test('a slot that shares its lanes has fewer while the other is used', () => {
    const budgets = budgetsNamed('lanes', {
      'graphics-card': { slotsThick: 1 },
      'expansion-card': { lanes: 8, generation: 4 },
      motherboard: {
        expansionSlots: [
          { ...slot, shares: { slot: 'x16-2', lanes: 8 } },
          { id: 'x16-2', position: 4, lengthLanes: 16, lanes: 8, generation: 4 },
        ],
      },
    });
    // 8 lanes of generation 4: 15.754 GB/s, published, for both.
    expect(budgets.map(({ of, limit }) => [of, limit])).toEqual([
      ['graphics-card-1', 15_753],
      ['expansion-card-1', 15_753],
    ]);
  });

  test('a riser is part of the link: the narrowest and the oldest piece of it decide', () => {
    const budget = theBudget('lanes', {
      'graphics-card': { lanes: 16, generation: 4, slotsThick: 2 },
      motherboard: { expansionSlots: [{ ...slot, generation: 3, lengthLanes: 4, lanes: 4 }] },
      adapter: {
        form: 'riser',
        ins: [
          { id: 'in', kind: 'expansion-slot', attrs: { bus: 'pcie', lanes: 4, generation: 4 }, carries: ['busMBps'] },
        ],
        outs: [
          {
            id: 'out',
            kind: 'expansion-slot',
            attrs: { bus: 'pcie', lengthLanes: 16, lanes: 16, generation: 4 },
          },
        ],
      },
    });
    // 4 lanes of generation 3: 3.938 GB/s, published.
    expect(budget.limit).toBe(3938);
  });

  test('a drive on a card goes through the card as well', () => {
    const budgets = budgetsNamed('lanes', {
      'storage-drive': { build: 'm2', link: 'pcie', lanes: 4, generation: 4 },
      'expansion-card': {
        role: 'modules',
        lanes: 4,
        generation: 3,
        moduleSlots: [{ id: 'm2-1', lengthsMm: [80], lanes: 4, generation: 4 }],
      },
      motherboard: { expansionSlots: [slot], moduleSlots: [] },
    });
    expect(budgets.find(({ of }) => of === 'storage-drive-1')).toMatchObject({ used: 7876, limit: 3938 });
  });

  test('a module that speaks SATA has one port; one whose link is not recorded has no budget', () => {
    const board = {
      moduleSlots: [
        {
          id: 'm2-1',
          key: 'm' as const,
          lengthsMm: [80],
          links: ['pcie' as const, 'sata' as const],
          lanes: 4,
          generation: 4,
        },
      ],
    };
    expect(theBudget('lanes', { 'storage-drive': { link: 'sata' }, motherboard: board })).toMatchObject({
      used: 600,
      limit: 600,
    });
    expect(budgetsNamed('lanes', { 'storage-drive': { link: undefined }, motherboard: board })).toEqual([]);
  });

  test("a card's link that is not recorded, or that no table has, is unknown and has no limit", () => {
    for (const generation of [undefined, 9]) {
      const budget = theBudget('lanes', {
        'graphics-card': { generation },
        motherboard: { expansionSlots: [{ ...slot, generation: 9 }] },
      });
      expect(budget).toMatchObject({ used: 0, unknown: ['graphics-card-1'] });
      expect(budget).not.toHaveProperty('limit');
    }
  });
});

describe('picture', () => {
  const shows = (megabits: number | undefined, change: object = {}): ExampleParts => ({
    processor: { hasGraphics: true },
    motherboard: { pictureSockets: [{ id: 'hdmi-1', plug: 'hdmi', ...(megabits === undefined ? {} : { megabits }) }] },
    monitor: {
      widthPx: 3840,
      heightPx: 2160,
      refreshHz: 60,
      bitsPerColour: 10,
      sockets: [{ id: 'hdmi-1', plug: 'hdmi', megabits: 42_000 }],
      ...change,
    },
  });

  test('3840 by 2160 at 60 Hz: timing, clock, bit rate and what carries it', () => {
    // Published: 15.68 Gbit/s at 10 bits, 12.54 at 8. Source: encyclopaedia article on HDMI. By CVT-RBv2: 3,920 by 2,222, 522.614 MHz.
    const budget = theBudget('picture', shows(14_400));
    expect(budget).toMatchObject({ of: 'monitor-1', used: 15_679, limit: 14_400 });
    expect(figuresOf(budget, 'pixel')).toMatchObject({ 'timing.hTotal': 3920 });
    expect(figuresOf(budget, 'line')).toMatchObject({ 'timing.vTotal': 2222 });
    expect(figuresOf(budget, 'kilohertz')).toEqual({ 'timing.pixelClock': 522_614 });
    // HDMI 2.0 carries 14.4 Gbit/s, so 8 bits a colour and not 10; the next faster rate is published as 15.8.
    expect(figuresOf(budget, 'bit')).toMatchObject({ 'carried.bitsPerColour': 8 });
    expect(figuresOf(budget, 'megabit-a-second')).toEqual({ 'least HDMI 2.1 at 18 Gbit/s': 15_800 });
  });

  test('the whole depth where the link carries it, none where it carries not even eight bits', () => {
    expect(figuresOf(theBudget('picture', shows(21_000)), 'bit')).toMatchObject({ 'carried.bitsPerColour': 10 });
    expect(figuresOf(theBudget('picture', shows(8160)), 'bit')).toEqual({ bitsPerColour: 10 });
  });

  test("the monitor's own socket is a link too", () => {
    const own = { sockets: [{ id: 'hdmi-1', plug: 'hdmi', megabits: 8160 }] };
    expect(theBudget('picture', shows(42_000, own)).limit).toBe(8160);
  });

  test('a socket without a figure, or a monitor that is not joined, has no limit', () => {
    expect(theBudget('picture', shows(undefined))).not.toHaveProperty('limit');
    const alone = theBudget('picture', { monitor: {} });
    expect(alone).not.toHaveProperty('limit');
    expect(alone.used).toBe(3200);
  });

  test('DVI carries eight bits a colour, whatever room is left', () => {
    const budget = theBudget('picture', {
      processor: { hasGraphics: true },
      motherboard: { pictureSockets: [{ id: 'dvi-1', plug: 'dvi-d', megabits: 7920 }] },
      monitor: { bitsPerColour: 10, sockets: [{ id: 'dvi-1', plug: 'dvi-d', megabits: 7920 }] },
    });
    // 1920 by 1080 at 60 Hz and 10 bits: 4.00 Gbit/s, published.
    expect(budget).toMatchObject({ used: 4000, limit: 7920 });
    expect(figuresOf(budget, 'bit')).toMatchObject({ 'carried.bitsPerColour': 8 });
  });

  test('heads in use against heads there are: those of a card in its slot and of the board', () => {
    const parts: ExampleParts = {
      processor: { hasGraphics: true },
      motherboard: {},
      'graphics-card': {},
      monitor: [{}, {}],
    };
    expect(theBudget('heads', parts)).toMatchObject({ used: 2, limit: 4 });
    expect(theBudget('heads', { ...parts, motherboard: { expansionSlots: [] } })).toMatchObject({ used: 2, limit: 2 });
    expect(budgetsNamed('heads', { cooler: {} })).toEqual([]);
  });

  test('a beam follows lines and pictures a second, and has no bit rate', () => {
    const parts: ExampleParts = {
      motherboard: {},
      'bus-card': {
        roles: ['display'],
        buses: ['isa-16'],
        // Source: manual appendix, standard VGA modes: 31.5 kHz at 60 and 70 Hz.
        outputs: [
          {
            id: 'vga-1',
            plug: 'vga',
            signal: 'analog',
            modes: [
              { id: 'lines-480', horizontalKhz: 31.5, verticalHz: 60 },
              { id: 'lines-400', horizontalKhz: 31.5, verticalHz: 70 },
            ],
          },
        ],
      },
      monitor: { horizontalKhz: [30, 38], verticalHz: [50, 90], widthPx: undefined },
    };
    const budget = theBudget('scan', parts, { shelf: 'vintage' });
    expect(budget).toMatchObject({ of: 'monitor-1', used: 31_500, limit: 38_000, unit: 'hertz', unknown: [] });
    expect(figuresOf(budget, 'millihertz')).toEqual({
      'verticalHz.from': 50_000,
      'verticalHz.to': 90_000,
      'lines-480 pictures': 60_000,
      'lines-400 pictures': 70_000,
    });
    expect(budgetsNamed('picture', parts, { shelf: 'vintage' })).toEqual([]);
  });
});

describe('memory', () => {
  test('all modules against what the board can use', () => {
    // 2 × 16 GB of 128 GB.
    const parts: ExampleParts = { motherboard: {}, 'memory-module': [{}, {}] };
    expect(theBudget('memory', parts)).toMatchObject({ used: 32_768, limit: 131_072, unit: 'mebibyte' });
    expect(theBudget('memory', { 'memory-module': { capacityGb: undefined } })).toMatchObject({
      used: 0,
      unknown: ['memory-module-1'],
    });
  });

  test('two modules of 1 MB are 2 MB in all', () => {
    // Common practice: a board with a 16-bit bus of about 1990.
    const banks = [{ id: 'bank-0', slots: 2 as const, pins: '30' as const }];
    const parts: ExampleParts = { motherboard: { memoryBanks: banks, memoryTotalKb: 17_408 }, 'bank-module': [{}, {}] };
    expect(theBudget('memory', parts, { shelf: 'vintage' })).toMatchObject({
      of: 'banks',
      used: 2048,
      limit: 17_408,
      unit: 'kibibyte',
    });
    expect(theBudget('banks', parts, { shelf: 'vintage' })).toMatchObject({ used: 1, limit: 1 });
    expect(theBudget('banks', { ...parts, 'bank-module': {} }, { shelf: 'vintage' })).toMatchObject({
      used: 0,
      limit: 1,
    });
  });

  test('two channels of DDR5-5600 carry 89.6 GB a second, one carries half', () => {
    // Published: 44,800 MB/s for one channel. Source: comparison of generations of DDR memory.
    const one: ExampleParts = { motherboard: {}, 'memory-module': {} };
    expect(theBudget('memory-bandwidth', one)).toMatchObject({ used: 44_800, limit: 89_600 });
    expect(theBudget('memory-bandwidth', { ...one, 'memory-module': [{}, {}] })).toMatchObject({
      used: 89_600,
      limit: 89_600,
    });
  });

  test('all run at the slowest of them and of the board', () => {
    // DDR5-4800: 38,400 MB/s for one channel, published.
    const parts: ExampleParts = { motherboard: {}, 'memory-module': [{ speedMts: 4800 }, { speedMts: 6400 }] };
    expect(theBudget('memory-bandwidth', parts).used).toBe(76_800);
    const unknown = theBudget('memory-bandwidth', {
      ...parts,
      'memory-module': [{ speedMts: 4800 }, { speedMts: undefined }],
    });
    expect(unknown).toMatchObject({ used: 0, unknown: ['memory-module-2'] });
  });
});

describe('room and weight', () => {
  test('the case and the foot of the monitor on the desk', () => {
    // 210 × 420 mm and 220 × 180 mm.
    const parts: ExampleParts = {
      chassis: {},
      monitor: { footWidthMm: 220, footDepthMm: 180, armHolesMm: [100], grams: 4000 },
    };
    expect(theBudget('footprint', parts)).toMatchObject({ used: 88_200 + 39_600, unknown: [] });
    expect(theBudget('footprint', { ...parts, 'monitor-arm': {} })).toMatchObject({ used: 88_200, unknown: [] });
    expect(theBudget('footprint', { chassis: {}, monitor: { footWidthMm: undefined } })).toMatchObject({
      used: 88_200,
      unknown: ['monitor-1'],
    });
  });

  test('the machine with all that is in it against 23 kg, and each monitor by itself', () => {
    // Source: load constant of the revised lifting equation.
    const parts: ExampleParts = {
      chassis: { grams: 6500 },
      'power-supply': { grams: 1800 },
      'storage-drive': { grams: undefined },
      monitor: [{ grams: 4200 }, { grams: undefined }],
      keyboard: { grams: 600 },
    };
    expect(budgetsNamed('weight', parts)).toMatchObject([
      { of: 'machine', used: 8300, limit: 23_000, unknown: ['storage-drive-1'] },
      { of: 'monitor-1', used: 4200, limit: 23_000, unknown: [] },
      { of: 'monitor-2', used: 0, limit: 23_000, unknown: ['monitor-2'] },
    ]);
  });
});
