import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { efficiencyAt } from '../../src/fit/budgets/wall.ts';
import type { ExampleParts } from '../../src/fit/rule.ts';
import { efficiencyLevels } from '../../src/standards/efficiency.ts';
import { budgetsNamed, figuresOf, theBudget } from '../helpers/budgets.ts';

describe('steady and idle power', () => {
  test('the steady load counts where a burst is recorded too', () => {
    // 65 W and 120 W steady, board 40 W by allowance: 225 W.
    const parts: ExampleParts = {
      motherboard: {},
      processor: { sustainedW: 65, peakW: 90 },
      'graphics-card': { sustainedW: 120, peakW: 160 },
      'power-supply': { ratedW: 550 },
    };
    expect(theBudget('sustained-power', parts)).toMatchObject({ used: 2250, limit: 5500, unknown: [] });
  });

  test('idle counts what each maker gives, and allowances for board and memory', () => {
    // 8 W, 12 W, a drive of 0.05 W rounded up to 0.1 W, board 22 W as recorded, module 5 W: 47.1 W.
    const parts: ExampleParts = {
      motherboard: { idleW: 22 },
      processor: { idleW: 8 },
      'memory-module': {},
      'graphics-card': { idleW: 12 },
      'storage-drive': { idleMilliwatts: 50 },
    };
    expect(theBudget('idle-power', parts)).toMatchObject({ used: 471, unknown: [] });
    expect(theBudget('idle-power', { processor: { idleW: undefined } })).toMatchObject({
      used: 0,
      unknown: ['processor-1'],
    });
  });

  test('both fans of a radiator draw', () => {
    // 250 mA at 12 V is 3 W, twice.
    const radiator = { lengthMm: 240, thicknessMm: 27, fanThicknessMm: 25, fanSizeMm: 120, fans: 2 };
    expect(theBudget('power', { cooler: { fan: { pins: 4, milliamps: 250 }, radiator } }).used).toBe(60);
  });

  test('lights draw at the voltage of their plug', () => {
    // 1,000 mA at 5 V is 5 W; 300 mA at 12 V is 3.6 W; the fan itself draws 1.8 W.
    expect(
      theBudget('power', {
        chassis: { fittedFans: [], lights: [{ id: 'front', plug: 'light-5v-3', milliamps: 1000 }] },
        fan: { milliamps: 150, light: { plug: 'light-12v-4', milliamps: 300 } },
      }).used,
    ).toBe(50 + 18 + 36);
  });

  test('parts of about 1990 draw what their own files say', () => {
    // Board 40 W, processor 2 W, card 0.5 A at 5 V and 0.05 A at 12 V = 2.5 W and 0.6 W, diskette drive 3 W,
    // fixed disk 8 W turning and 18 W starting, module 2 W and coprocessor 2 W by allowance.
    const parts: ExampleParts = {
      motherboard: {},
      processor: {},
      'power-supply': {},
      'bank-module': {},
      coprocessor: {},
      'bus-card': {},
      'floppy-drive': {},
      'fixed-disk': {},
    };
    const steady = 400 + 20 + 25 + 6 + 30 + 80 + 20 + 20;
    expect(theBudget('sustained-power', parts, { shelf: 'vintage' })).toMatchObject({ used: steady, limit: 2000 });
    expect(theBudget('power', parts, { shelf: 'vintage' }).used).toBe(steady - 80 + 180);
  });
});

describe('a short excursion', () => {
  const card: ExampleParts = { 'graphics-card': { peakW: 300, excursionW: 600, powerSockets: [] } };
  const leads = [{ id: 'card', plugs: ['12v-2x6' as const] }];
  const supply = (ratedW: number, change: object): ExampleParts => ({
    ...card,
    'power-supply': { ratedW, bearsExcursions: true, leads, ...change },
  });

  // Source of the table: design guide for ATX version 3, table 3-3, as read in the guide for 12 V only supplies, which
  // prints the same table: 200 % for 100 microseconds above 450 W with the 16-pin plug, 150 % otherwise.
  test.each([
    ['1000 W with the 16-pin plug', supply(1000, {}), 20_000],
    ['450 W is not above 450 W', supply(450, {}), 6750],
    ['no 16-pin plug', supply(1000, { leads: [{ id: 'card', plugs: ['pcie-8'] }] }), 15_000],
    ['nothing promised beyond the rating', supply(1000, { bearsExcursions: false }), 10_000],
  ])('%s', (_, parts, limit) => {
    expect(theBudget('excursion', parts)).toMatchObject({ used: 6000, limit, unknown: [] });
  });

  test('not recorded whether the supply bears them: no limit', () => {
    expect(theBudget('excursion', supply(1000, { bearsExcursions: undefined }))).not.toHaveProperty('limit');
  });

  test('without the figure a card draws its burst at least', () => {
    expect(theBudget('excursion', { 'graphics-card': { peakW: 300, excursionW: undefined } })).toMatchObject({
      used: 3000,
      unknown: ['graphics-card-1'],
      working: [{ unit: 'graphics-card-1', amount: 3000, field: 'peakW' }],
    });
  });
});

describe('rails', () => {
  const rails = [
    { id: '12v' as const, milliamps: 45_000 },
    { id: '5v' as const, milliamps: 20_000 },
    { id: '3.3v' as const, milliamps: 20_000 },
  ];
  const current: ExampleParts = {
    motherboard: {},
    processor: { sustainedW: 65 },
    'memory-module': {},
    'graphics-card': { sustainedW: 120 },
    'storage-drive': [
      { build: 'm2', milliwatts: 6600 },
      { build: '3.5', milliwatts: 9000 },
    ],
    'power-supply': { rails, combinedLowW: 120 },
  };

  test('12 V feeds the processor, the graphics card and what turns', () => {
    // 65 W and 120 W at 12 V: 5,416.7 and 10,000 mA; the drive's 9 W: 750 mA.
    expect(theBudget('rail', current, { of: '12v' })).toMatchObject({ used: 5417 + 10_000 + 750, limit: 45_000 });
  });

  test('5 V feeds the board and memory by allowance, and the drive, which may draw on either', () => {
    // 40 W, 5 W and 9 W at 5 V.
    expect(theBudget('rail', current, { of: '5v' })).toMatchObject({ used: 8000 + 1000 + 1800, limit: 20_000 });
  });

  test('of a disk that turns, 5 V feeds the electronics alone: 5 W by common practice, the motor is at 12 V', () => {
    const disks: ExampleParts = {
      motherboard: {},
      'storage-drive': [
        { build: '3.5', milliwatts: 24_000, isSolidState: false },
        { build: '3.5', milliwatts: 4000, isSolidState: false },
        { build: '3.5', milliwatts: 9000, isSolidState: undefined },
      ],
      'power-supply': { rails, combinedLowW: 120 },
    };
    // 40 W, 5 W of the 24, all of the 4, and all of the 9, which may not turn: 58 W at 5 V.
    expect(theBudget('rail', disks, { of: '5v' })).toMatchObject({ used: 8000 + 1000 + 800 + 1800 });
    expect(theBudget('rail', disks, { of: '3.3v+5v' })).toMatchObject({ used: 580 });
    // 24 W, 4 W and 9 W at 12 V.
    expect(theBudget('rail', disks, { of: '12v' })).toMatchObject({ used: 2000 + 334 + 750 });
  });

  test('3.3 V feeds the M.2 drive', () => {
    // 6.6 W at 3.3 V.
    expect(theBudget('rail', current, { of: '3.3v' })).toMatchObject({ used: 2000, limit: 20_000 });
  });

  test('3.3 V and 5 V together have a limit of their own', () => {
    // 40 + 5 + 6.6 + 9 W.
    expect(theBudget('rail', current, { of: '3.3v+5v' })).toMatchObject({ used: 606, limit: 1200 });
  });

  test('a supply without a processor lead feeds the processor at 5 V', () => {
    const parts: ExampleParts = {
      motherboard: {},
      processor: {},
      'power-supply': {},
      'bus-card': {},
      'fixed-disk': {},
    };
    const of = (rail: string) => theBudget('rail', parts, { shelf: 'vintage', of: rail });
    // Board 8,000 mA, processor 2 W = 400 mA, card 500 mA, disk 8 W = 1,600 mA.
    expect(of('5v')).toMatchObject({ used: 8000 + 400 + 500 + 1600, limit: 20_000 });
    // Card 50 mA, disk 8 W = 666.7 mA.
    expect(of('12v')).toMatchObject({ used: 50 + 667, limit: 8000 });
    expect(budgetsNamed('rail', parts, { shelf: 'vintage' })).toHaveLength(2);
  });

  test('rails that are not recorded set no limit; without a supply there is none to speak of', () => {
    const names = budgetsNamed('rail', { ...current, 'power-supply': { rails: undefined, combinedLowW: undefined } });
    expect(names.map(({ of, limit }) => [of, limit])).toEqual([
      ['12v', undefined],
      ['5v', undefined],
      ['3.3v', undefined],
      ['3.3v+5v', undefined],
    ]);
    expect(budgetsNamed('rail', { ...current, 'power-supply': [] })).toEqual([]);
  });
});

describe('leads', () => {
  test('what each plug may be asked for, against what the lead carries', () => {
    const leads = [
      { id: 'card-1', plugs: ['pcie-8' as const, 'pcie-6' as const], carriesW: 225 },
      { id: 'drives-1', plugs: ['sata-power' as const, 'sata-power' as const], carriesW: 54 },
    ];
    const budgets = budgetsNamed('lead', {
      motherboard: {},
      'graphics-card': { powerSockets: ['pcie-8', 'pcie-6'] },
      'storage-drive': [
        { build: '3.5', milliwatts: 9000 },
        { build: '2.5', milliwatts: undefined },
      ],
      'power-supply': { leads },
    });
    // 150 W and 75 W; 9 W and one drive that is not recorded.
    expect(budgets).toMatchObject([
      { of: 'power-supply-1/lead-card-1', used: 2250, limit: 2250, unknown: [] },
      { of: 'power-supply-1/lead-drives-1', used: 90, limit: 540, unknown: ['storage-drive-2'] },
    ]);
  });

  test('what hangs on an adapter counts on the leads it hangs on, in equal shares', () => {
    const leads = [
      { id: 'card-1', plugs: ['pcie-8' as const], carriesW: 200 },
      { id: 'card-2', plugs: ['pcie-8' as const], carriesW: 200 },
    ];
    const end = (id: string) => ({
      id,
      kind: 'card-power' as const,
      attrs: { plug: 'pcie-8', drawsW: null },
      carries: ['leadDeciwatts'],
    });
    const budgets = budgetsNamed('lead', {
      motherboard: {},
      'graphics-card': { powerSockets: ['12v-2x6'], sustainedW: 285 },
      'power-supply': { leads },
      adapter: {
        form: 'adapter',
        ins: [end('in-1'), end('in-2')],
        outs: [{ id: 'out', kind: 'card-power', attrs: { plug: '12v-2x6', senseW: 300 } }],
      },
    });
    expect(budgets.map(({ used }) => used)).toEqual([1425, 1425]);
  });
});

describe('power from the wall', () => {
  /** A list that draws so many watts: the board's 40 by allowance and the rest in the processor. */
  const drawing = (totalW: number, ratedW: number, efficiency: { loadPercent: number; permille: number }[]) =>
    ({
      motherboard: {},
      processor: { sustainedW: totalW - 40 },
      'power-supply': { ratedW, efficiency },
    }) satisfies ExampleParts;
  const flat = (permille: number) => [{ loadPercent: 50, permille }];

  test('a supply of 80 % takes 500 W for 400 W', () => {
    // Published: 400 W at 80 % lose 100 W. Source: review of the efficiency programme.
    const budget = theBudget('wall-power', drawing(400, 800, flat(800)));
    expect(budget).toMatchObject({ used: 5000, unknown: [] });
    expect(budget.working).toContainEqual({ unit: 'power-supply-1', amount: 1000, field: 'loss' });
  });

  test('300 W at 90 % are 333.33 W, rounded up to a tenth', () => {
    expect(theBudget('wall-power', drawing(300, 600, flat(900))).used).toBe(3334);
  });

  test.each(Object.entries(efficiencyLevels))('the published points of level %s are met exactly', (_, level) => {
    const [, , at20, at50, at100] = level['230v'];
    const curve = [
      { loadPercent: 20, permille: at20 },
      { loadPercent: 50, permille: at50 },
      { loadPercent: 100, permille: at100 },
    ];
    for (const { loadPercent, permille } of curve) {
      expect(efficiencyAt(curve, loadPercent * 55, 5500)).toEqual({
        hundredThousandths: permille * 100,
        isBeyond: false,
      });
    }
  });

  test('between two points it lies on the line', () => {
    // Gold at 230 V: 900 at 20 %, 920 at 50 %. At 35 %, half way, 910.
    const curve = [
      { loadPercent: 50, permille: 920 },
      { loadPercent: 20, permille: 900 },
    ];
    expect(efficiencyAt(curve, 35 * 55, 5500)).toEqual({ hundredThousandths: 91_000, isBeyond: false });
  });

  test('outside the points the nearest counts, and the working says so', () => {
    const curve = [
      { loadPercent: 20, permille: 900 },
      { loadPercent: 50, permille: 920 },
    ];
    expect(efficiencyAt(curve, 100, 5500)).toEqual({ hundredThousandths: 90_000, isBeyond: true });
    expect(efficiencyAt(curve, 5500, 5500)).toEqual({ hundredThousandths: 92_000, isBeyond: true });
    const budget = theBudget('wall-power', drawing(450, 500, curve));
    expect(figuresOf(budget, 'permille')).toEqual({ 'efficiency.end': 920 });
    expect(budget.formula).toContain('lies outside those that are recorded');
    expect(theBudget('wall-power', drawing(200, 500, curve)).formula).not.toContain('outside');
  });

  test('without a curve what the parts draw is the least it can be', () => {
    expect(theBudget('wall-power', { motherboard: {}, 'power-supply': { efficiency: undefined } })).toMatchObject({
      used: 400,
      unknown: ['power-supply-1'],
    });
  });

  test('monitors come from the wall too, and a mains strip sets the limit', () => {
    const parts: ExampleParts = {
      ...drawing(400, 800, flat(800)),
      monitor: [{ sustainedW: 25 }, { sustainedW: 30 }],
      'power-strip': { ratedW: 2300 },
    };
    expect(theBudget('wall-power', parts)).toMatchObject({ used: 5000 + 550, limit: 23_000, about: ['power-strip-1'] });
  });

  test('for any curve and load it lies between the least and the greatest point, in whatever order they are written', () => {
    const curves = fc.uniqueArray(
      fc.record({ loadPercent: fc.integer({ min: 1, max: 120 }), permille: fc.integer({ min: 700, max: 960 }) }),
      {
        selector: ({ loadPercent }) => loadPercent,
        minLength: 1,
        maxLength: 6,
      },
    );
    fc.assert(
      fc.property(
        curves,
        fc.integer({ min: 1, max: 15_000 }),
        fc.integer({ min: 1000, max: 30_000 }),
        (curve, load, rated) => {
          const [least, most] = [curve, curve].map((points, n) =>
            Math[n === 0 ? 'min' : 'max'](...points.map(({ permille }) => permille)),
          );
          const { hundredThousandths } = efficiencyAt(curve, load, rated) ?? { hundredThousandths: 0 };
          expect(hundredThousandths).toBeGreaterThanOrEqual((least ?? 0) * 100);
          expect(hundredThousandths).toBeLessThanOrEqual((most ?? 0) * 100);
          expect(efficiencyAt([...curve].reverse(), load, rated)).toEqual(efficiencyAt(curve, load, rated));
        },
      ),
    );
  });
});

describe('running cost', () => {
  // A supply without loss, to keep the arithmetic plain: 100 W at the wall.
  const hundred: ExampleParts = {
    motherboard: {},
    processor: { sustainedW: 60 },
    'power-supply': { efficiency: [{ loadPercent: 50, permille: 1000 }] },
  };

  test('100 W for 8 hours a day at 30 cents a kilowatt-hour', () => {
    // 0.1 kW × 8 h × 365 = 292 kWh; × 0.30 = 87.60.
    expect(theBudget('running-cost', hundred, { brief: { hoursPerDay: 8, tariffMilliEuros: 300 } })).toMatchObject({
      used: 8760,
      unit: 'cent-a-year',
    });
  });

  test('half an hour a day and tenths of a cent count', () => {
    // 0.1 kW × 0.5 h × 365 = 18.25 kWh; × 0.285 = 5.20125.
    expect(theBudget('running-cost', hundred, { brief: { hoursPerDay: 0.5, tariffMilliEuros: 285 } }).used).toBe(520);
  });

  test('is there only when hours and tariff are both given', () => {
    expect(budgetsNamed('running-cost', hundred, { brief: { hoursPerDay: 8 } })).toEqual([]);
    expect(budgetsNamed('running-cost', hundred, { brief: { tariffMilliEuros: 300 } })).toEqual([]);
  });
});
