// Cases beside the examples of the rules: each area exactly at its limit and one unit beyond.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { sustainedPower } from '../../../src/fit/budgets/power.ts';
import { workingOf } from '../../../src/fit/budgets/working.ts';
import { exampleList, verdictOf } from '../../../src/fit/examples.ts';
import { judge } from '../../../src/fit/judge.ts';
import { kinds } from '../../../src/fit/kinds.ts';
import type { ExampleParts, JudgeBrief } from '../../../src/fit/rule.ts';
import { airRise } from '../../../src/fit/rules/cooling/air-rise.ts';
import { sayFinding } from '../../../src/fit/say.ts';
import type { PartClass } from '../../../src/parts/part.ts';

const verdict = (id: string, parts: ExampleParts, brief?: JudgeBrief) =>
  verdictOf(judge(exampleList(parts), brief), id);
const finding = (id: string, parts: ExampleParts) =>
  judge(exampleList(parts)).findings.find((one) => one.rule === id && one.verdict === 'does-not-fit');

describe('clearance', () => {
  test('a quarter of a millimetre counts and is printed', () => {
    const parts: ExampleParts = { 'memory-module': { heightMm: 31.25 }, cooler: { memoryHeightMm: 31 } };
    expect(finding('clearance/memory-height', parts)?.facts).toEqual({ height: 31.25, limit: 31, over: 0.25 });
  });

  test('tenths that binary fractions blur are still equal: 0.1 + 0.2 against 0.3', () => {
    expect(
      verdict('clearance/cooler-height', { cooler: { heightMm: 150.1 + 0.2 }, chassis: { coolerHeightMm: 150.3 } }),
    ).toBe('fits');
  });

  test('a thinner fan is offered with its thickness, and only where one can be had', () => {
    const remedy = (lengthMm: number) => {
      const found = finding('clearance/card-length', {
        'graphics-card': { lengthMm },
        chassis: {
          cardLengthMm: 312,
          frontFansTakeCardRoom: true,
          fittedFans: [{ id: 'front-1', panel: 'front', sizeMm: 120, thicknessMm: 25, pins: 3, milliamps: 180 }],
        },
      });
      return found && sayFinding(found).remedy;
    };
    expect(remedy(300)).toContain('or choose a fan there of 12 mm or less.');
    expect(remedy(311)).not.toContain('choose a fan');
  });

  test('of two fans at the front the thicker one decides', () => {
    const parts = (lengthMm: number): ExampleParts => ({
      'graphics-card': { lengthMm },
      chassis: {
        cardLengthMm: 312,
        frontFansTakeCardRoom: true,
        fittedFans: [
          { id: 'front-1', panel: 'front', sizeMm: 120, thicknessMm: 15, pins: 3, milliamps: 150 },
          { id: 'front-2', panel: 'front', sizeMm: 120, thicknessMm: 38, pins: 4, milliamps: 900 },
        ],
      },
    });
    expect(verdict('clearance/card-length', parts(274))).toBe('fits');
    expect(verdict('clearance/card-length', parts(275))).toBe('does-not-fit');
  });

  test('a fan at the rear takes no room from the card', () => {
    const rear = { id: 'rear-1', panel: 'rear', sizeMm: 120, thicknessMm: 25, pins: 3, milliamps: 150 } as const;
    expect(
      verdict('clearance/card-length', {
        'graphics-card': { lengthMm: 312 },
        chassis: { cardLengthMm: 312, frontFansTakeCardRoom: true, fittedFans: [rear] },
      }),
    ).toBe('fits');
  });

  test('whether front fans take room is not recorded: told only where it decides', () => {
    const parts = (lengthMm: number): ExampleParts => ({
      'graphics-card': { lengthMm },
      chassis: {
        cardLengthMm: 312,
        frontFansTakeCardRoom: undefined,
        fittedFans: [{ id: 'front-1', panel: 'front', sizeMm: 120, thicknessMm: 25, pins: 3, milliamps: 150 }],
      },
    });
    expect(verdict('clearance/card-length', parts(287))).toBe('fits');
    expect(verdict('clearance/card-length', parts(288))).toBe('cannot-tell');
    expect(verdict('clearance/card-length', parts(313))).toBe('does-not-fit');
  });

  test('of two cards the longer one is named', () => {
    const parts: ExampleParts = {
      'graphics-card': [{ lengthMm: 200 }, { lengthMm: 320 }],
      chassis: { cardLengthMm: 312, frontFansTakeCardRoom: false, fittedFans: [] },
    };
    expect(finding('clearance/card-length', parts)?.about).toContain('graphics-card-2');
    expect(finding('clearance/card-length', parts)?.about).not.toContain('graphics-card-1');
  });

  test('less never fits worse', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 400 }), fc.integer({ min: 1, max: 400 }), (a, b) => {
        const [shorter, longer] = [Math.min(a, b), Math.max(a, b)];
        const at = (heightMm: number) =>
          verdict('clearance/cooler-height', { cooler: { heightMm }, chassis: { coolerHeightMm: 160 } });
        if (at(longer) === 'fits') expect(at(shorter)).toBe('fits');
      }),
      { numRuns: 30 },
    );
  });
});

describe('expansion', () => {
  const card = (slotsThick: number): ExampleParts => ({
    'graphics-card': { lanes: 16, slotsThick },
    motherboard: {
      formFactor: 'micro-atx',
      expansionSlots: [{ id: 'x16-1', position: 2, lengthLanes: 16, lanes: 16, generation: 4 }],
    },
    chassis: { formFactors: ['micro-atx'], cutOuts: 4 },
  });

  test('a card of three slots from position 2 reaches exactly the fourth cut-out', () => {
    expect(verdict('expansion/slot-free', card(3))).toBe('fits');
  });

  test('half a slot more does not go in', () => {
    expect(verdict('expansion/slot-free', card(3.5))).toBe('does-not-fit');
  });

  const two = (slotsThick: number, cutOuts: number): ExampleParts => ({
    'graphics-card': [
      { lanes: 16, slotsThick },
      { lanes: 16, slotsThick: 1 },
    ],
    motherboard: {
      formFactor: 'micro-atx',
      expansionSlots: [
        { id: 'x16-1', position: 1, lengthLanes: 16, lanes: 16, generation: 4 },
        { id: 'x16-2', position: 3, lengthLanes: 16, lanes: 4, generation: 4 },
      ],
    },
    chassis: { formFactors: ['micro-atx'], cutOuts },
  });

  test('two slots thick leaves the slot at position 3 free, two and a half covers it', () => {
    expect(verdict('expansion/slot-free', two(2, 4))).toBe('fits');
    expect(verdict('expansion/slot-free', two(2.5, 4))).toBe('does-not-fit');
  });

  test('with a cut-out more the thick card goes below, and both have a slot', () => {
    expect(verdict('expansion/slot-free', two(2.5, 5))).toBe('fits');
  });

  test('card and slot settle on the lesser lanes and the lesser generation, not on the product of each', () => {
    const parts = (lanes: number, generation: number): ExampleParts => ({
      'graphics-card': { lanes: 8, generation: 3, slotsThick: 1 },
      motherboard: { expansionSlots: [{ id: 'x16-1', position: 1, lengthLanes: 16, lanes, generation }] },
    });
    expect(verdict('expansion/link-width', parts(8, 3))).toBe('fits');
    expect(verdict('expansion/link-width', parts(16, 4))).toBe('fits');
    // Four lanes of generation 4 could carry what eight of generation 3 do; this card drives them at generation 3.
    expect(verdict('expansion/link-width', parts(4, 4))).toBe('does-not-fit');
    expect(finding('expansion/link-width', parts(4, 4))?.facts).toMatchObject({ can: 7876, passes: 3938, less: 3938 });
    expect(verdict('expansion/link-width', parts(16, 2))).toBe('does-not-fit');
  });
});

describe('storage', () => {
  const drives = (boxes: number): ExampleParts => ({
    'storage-drive': [
      ...Array.from({ length: boxes }, () => ({ build: '2.5' as const })),
      { build: 'm2', key: 'm', lengthMm: 80, link: 'pcie', lanes: 4, generation: 4 },
    ],
    motherboard: {
      sataPorts: 3,
      moduleSlots: [
        { id: 'm2-1', key: 'm', lengthsMm: [80], links: ['pcie'], lanes: 4, generation: 4, switchesOff: ['sata-3'] },
      ],
    },
  });

  test('with the M.2 slot in use two of three ports are live', () => {
    expect(verdict('storage/drive-port', drives(2))).toBe('fits');
    expect(verdict('storage/module-slot-free', drives(2))).toBe('fits');
  });

  test('a third drive has no live port, or the M.2 drive no slot', () => {
    const found = judge(exampleList(drives(3))).findings.filter(({ verdict: v }) => v === 'does-not-fit');
    const both = found.filter(({ rule }) => ['storage/drive-port', 'storage/module-slot-free'].includes(rule));
    expect(both).toHaveLength(1);
  });
});

describe('power', () => {
  // 200 W of processor alone: what the rest of the list draws is then the difference, whatever the allowances are.
  const list = (ratedW: number): ExampleParts => ({
    processor: { sustainedW: 150, peakW: 200 },
    'power-supply': { ratedW },
  });

  test('a supply rated exactly for the load fits, one watt less does not', () => {
    expect(verdict('power/supply-load', list(200))).toBe('fits');
    expect(verdict('power/supply-load', list(199))).toBe('does-not-fit');
  });

  test('exactly a fifth free is enough, one watt less is said', () => {
    expect(verdict('power/supply-headroom', list(250))).toBe('fits');
    expect(verdict('power/supply-headroom', list(249))).toBe('does-not-fit');
  });

  test('the supply that the remedy names is one that fits', () => {
    const found = finding('power/supply-headroom', list(249));
    expect(found && sayFinding(found).remedy).toContain('250 W');
  });
});

describe('cooling and cabling', () => {
  test('tenths of a watt count', () => {
    const parts = (sustainedW: number): ExampleParts => ({
      processor: { socket: 'k4', sustainedW },
      motherboard: { socket: 'k4', coolerMountings: ['square-80'] },
      cooler: { mountings: ['square-80'], ratedW: 95 },
    });
    expect(verdict('cooling/cooler-rating', parts(95))).toBe('fits');
    expect(verdict('cooling/cooler-rating', parts(95.1))).toBe('does-not-fit');
  });

  test('the strong fan takes the strong header, so that both turn', () => {
    expect(
      verdict('cabling/fan-header', {
        fan: [
          { sizeMm: 120, pins: 4, milliamps: 150 },
          { sizeMm: 120, pins: 4, milliamps: 1400 },
        ],
        motherboard: {
          fanHeaders: [
            { id: 'case-1', pins: 4, milliamps: 2000 },
            { id: 'case-2', pins: 4, milliamps: 1000 },
          ],
        },
      }),
    ).toBe('fits');
  });
});

describe('memory', () => {
  test('three equal modules leave the channels one module apart', () => {
    const parts: ExampleParts = {
      'memory-module': [{ capacityGb: 8 }, { capacityGb: 8 }, { capacityGb: 8 }],
      motherboard: {
        memory: {
          generation: 'ddr5',
          registered: false,
          moduleGb: 32,
          totalGb: 64,
          slots: [
            { id: 'a2', channel: 'a' },
            { id: 'b2', channel: 'b' },
            { id: 'a1', channel: 'a' },
            { id: 'b1', channel: 'b' },
          ],
        },
      },
    };
    expect(finding('memory/channel-balance', parts)?.facts['apart']).toBe(8);
  });

  test('the sum of what is known is already too much, though one size is not recorded', () => {
    const parts: ExampleParts = {
      'memory-module': [{ capacityGb: 32 }, { capacityGb: 33 }, { capacityGb: undefined }],
      motherboard: {
        memory: {
          generation: 'ddr5',
          totalGb: 64,
          slots: [
            { id: 'a2', channel: 'a' },
            { id: 'b2', channel: 'b' },
            { id: 'a1', channel: 'a' },
          ],
        },
      },
    };
    expect(verdict('memory/total-capacity', parts)).toBe('does-not-fit');
  });
});

describe('display', () => {
  test('ten bits a colour do not go through HDMI 2.0 where eight do', () => {
    const parts = (bitsPerColour: 8 | 10): ExampleParts => ({
      monitor: {
        widthPx: 2560,
        heightPx: 1440,
        refreshHz: 144,
        bitsPerColour,
        sockets: [{ id: 'hdmi-1', plug: 'hdmi', megabits: 14400 }],
      },
      processor: { socket: 'k4', hasGraphics: true },
      motherboard: { socket: 'k4', pictureSockets: [{ id: 'hdmi-1', plug: 'hdmi', megabits: 14400 }] },
    });
    expect(verdict('display/colour-depth', parts(8))).toBe('does-not-apply');
    expect(verdict('display/colour-depth', parts(10))).toBe('does-not-fit');
    // Size and rate still pass, and one fault is told once.
    expect(verdict('display/picture-mode', parts(10))).toBe('fits');
  });

  test('the better of two sockets is used, so the full picture passes', () => {
    expect(
      verdict('display/picture-mode', {
        monitor: {
          widthPx: 3840,
          heightPx: 2160,
          refreshHz: 60,
          bitsPerColour: 10,
          sockets: [
            { id: 'hdmi-1', plug: 'hdmi', megabits: 14400 },
            { id: 'displayport-1', plug: 'displayport', megabits: 25920 },
          ],
        },
        'graphics-card': {
          outputs: [
            { id: 'hdmi-1', plug: 'hdmi', megabits: 14400 },
            { id: 'displayport-1', plug: 'displayport', megabits: 25920 },
          ],
        },
        motherboard: {},
      }),
    ).toBe('fits');
  });
});

describe('firmware', () => {
  test('of several families only the one in the socket counts', () => {
    expect(
      verdict('firmware/processor-family', {
        processor: { socket: 'k4', family: 'quellin-2' },
        motherboard: {
          socket: 'k4',
          firmware: {
            shipped: 9,
            knows: [
              { family: 'quellin-2', from: 1 },
              { family: 'quellin-3', from: 12 },
            ],
          },
        },
      }),
    ).toBe('fits');
  });
});

describe('what an operating system asks', () => {
  test('memory that has no slot counts for nothing', () => {
    const parts = (generation: 'ddr4' | 'ddr5'): ExampleParts => ({
      'memory-module': [
        { capacityGb: 4, generation: 'ddr5' },
        { capacityGb: 4, generation },
      ],
      motherboard: {},
      'operating-system': { memoryMb: 8192 },
    });
    expect(verdict('firmware/system-memory', parts('ddr5'))).toBe('fits');
    expect(verdict('firmware/system-memory', parts('ddr4'))).toBe('does-not-fit');
  });

  test('a size that cannot decide is not asked for', () => {
    const parts = (memoryMb: number): ExampleParts => ({
      'memory-module': [{ capacityGb: 8 }, { capacityGb: undefined }],
      motherboard: {},
      'operating-system': { memoryMb },
    });
    expect(verdict('firmware/system-memory', parts(8192))).toBe('fits');
    expect(verdict('firmware/system-memory', parts(8193))).toBe('cannot-tell');
  });

  test('the drive with room for it may be any of them, and one without a port is none', () => {
    const parts = (sataPorts: number): ExampleParts => ({
      'storage-drive': [{ capacityGb: 32 }, { build: '2.5', capacityGb: 64 }],
      motherboard: { sataPorts },
      'operating-system': { storageMb: 64_000 },
    });
    expect(verdict('firmware/system-storage', parts(1))).toBe('fits');
    expect(verdict('firmware/system-storage', parts(0))).toBe('does-not-fit');
  });

  test('each level is its own: a processor that runs level 3 but does not list level 2 is not said to', () => {
    const parts: ExampleParts = {
      processor: { levels: ['x86-64-v3'] },
      'operating-system': { level: 'x86-64-v2' },
    };
    expect(verdict('firmware/instruction-level', parts)).toBe('does-not-fit');
  });
});

describe('what a machine starts from', () => {
  test('sectors of 4,096 bytes reach eight times as far: 17,592 GB and no more', () => {
    const parts = (capacityGb: number): ExampleParts => ({
      'storage-drive': { capacityGb, sectorBytes: 4096 },
      motherboard: { firmware: { shipped: 5, knows: [], bootModes: ['bios'] } },
    });
    expect(verdict('storage/partition-table', parts(17_592))).toBe('fits');
    expect(verdict('storage/partition-table', parts(17_593))).toBe('does-not-fit');
  });

  test('beyond what any sector reaches the size of the sectors is not asked for', () => {
    const parts = (capacityGb: number): ExampleParts => ({
      'storage-drive': { capacityGb, sectorBytes: undefined },
      motherboard: { firmware: { shipped: 5, knows: [], bootModes: ['bios'] } },
    });
    expect(verdict('storage/partition-table', parts(17_592))).toBe('cannot-tell');
    expect(verdict('storage/partition-table', parts(17_593))).toBe('does-not-fit');
  });

  test('a small drive asks nothing of the boot mode', () => {
    const parts: ExampleParts = {
      'storage-drive': { capacityGb: 2199, sectorBytes: undefined },
      motherboard: { firmware: undefined },
    };
    expect(verdict('storage/partition-table', parts)).toBe('fits');
  });

  test('a module that speaks SATA is no drive over PCIe', () => {
    const parts = (link: 'pcie' | 'sata'): ExampleParts => ({
      'storage-drive': { build: 'm2', link },
      motherboard: { firmware: { shipped: 5, knows: [], bootsFrom: ['nvme'] } },
    });
    expect(verdict('storage/boot-drive', parts('pcie'))).toBe('fits');
    expect(verdict('storage/boot-drive', parts('sata'))).toBe('does-not-fit');
  });

  test('of the ports that two slots switch off each is named once', () => {
    const slot = { key: 'm', lengthsMm: [80], links: ['pcie'], lanes: 4, generation: 4 } as const;
    const parts: ExampleParts = {
      'storage-drive': [{}, {}],
      motherboard: {
        sataPorts: 4,
        moduleSlots: [
          { id: 'm2-1', ...slot, lengthsMm: [80], links: ['pcie'], switchesOff: ['sata-4'] },
          { id: 'm2-2', ...slot, lengthsMm: [80], links: ['pcie'], switchesOff: ['sata-3'] },
        ],
      },
    };
    expect(finding('storage/module-shares-port', parts)?.facts).toMatchObject({ off: ['3', '4'], on: ['1', '2'] });
  });
});

describe('pictures through adapters', () => {
  const through = (megabits: number): ExampleParts => ({
    monitor: {
      widthPx: 3840,
      heightPx: 2160,
      refreshHz: 60,
      bitsPerColour: 8,
      sockets: [{ id: 'dp-1', plug: 'displayport', megabits: 17_280 }],
    },
    adapter: {
      form: 'adapter',
      ins: [
        {
          id: 'in',
          kind: 'picture',
          attrs: { plugs: ['hdmi'], signals: null, dualMode: null },
          carries: ['pictureMbps'],
        },
      ],
      outs: [{ id: 'out', kind: 'picture', attrs: { plug: 'displayport', signal: null, megabits: 17_280 } }],
    },
    'graphics-card': { outputs: [{ id: 'hdmi-1', plug: 'hdmi', megabits }] },
    motherboard: { pictureSockets: [] },
  });

  test('what the picture wants is counted at the socket of the machine: 12,543 Mbit/s for 3840 by 2160 at 60 Hz', () => {
    expect(verdict('display/picture-mode', through(12_543))).toBe('fits');
    expect(verdict('display/picture-mode', through(12_542))).toBe('does-not-fit');
  });

  test('a monitor behind an adapter takes a head as well', () => {
    const parts = (heads: number): ExampleParts => ({
      ...through(14_400),
      monitor: [{}, { sockets: [{ id: 'dp-1', plug: 'displayport', megabits: 17_280 }] }],
      'graphics-card': {
        heads,
        outputs: [
          { id: 'hdmi-1', plug: 'hdmi', megabits: 14_400 },
          { id: 'hdmi-2', plug: 'hdmi', megabits: 14_400 },
        ],
      },
    });
    expect(verdict('display/heads', parts(2))).toBe('fits');
    expect(verdict('display/picture-socket', parts(2))).toBe('fits');
    expect(verdict('display/picture-socket', parts(1))).toBe('does-not-fit');
  });

  test('a second monitor on the outlet of the first needs no second socket', () => {
    const parts = (passesOn: boolean): ExampleParts => ({
      monitor: [
        {
          sockets: [{ id: 'dp-1', plug: 'displayport', megabits: 17_280 }],
          ...(passesOn ? { passesOn: { plug: 'displayport', megabits: 17_280 } } : {}),
        },
        { sockets: [{ id: 'dp-1', plug: 'displayport', megabits: 17_280 }] },
      ],
      'graphics-card': { heads: 2, outputs: [{ id: 'dp-1', plug: 'displayport', megabits: 25_920 }] },
      motherboard: { pictureSockets: [] },
    });
    expect(verdict('display/picture-socket', parts(true))).toBe('fits');
    expect(verdict('display/heads', parts(true))).toBe('fits');
    expect(verdict('display/picture-socket', parts(false))).toBe('does-not-fit');
  });

  test('both pictures go through the one socket, and together they may be too much', () => {
    const parts = (megabits: number): ExampleParts => ({
      monitor: [
        {
          sockets: [{ id: 'dp-1', plug: 'displayport', megabits: 17_280 }],
          passesOn: { plug: 'displayport', megabits: 17_280 },
        },
        { sockets: [{ id: 'dp-1', plug: 'displayport', megabits: 17_280 }] },
      ],
      'graphics-card': { outputs: [{ id: 'dp-1', plug: 'displayport', megabits }] },
      motherboard: { pictureSockets: [] },
    });
    // 1920 by 1080 at 60 Hz in eight bits is 133,320 kHz × 24: 3,200 Mbit/s, so two are 6,400.
    expect(verdict('display/picture-mode', parts(6400))).toBe('fits');
    expect(verdict('display/picture-mode', parts(6399))).toBe('does-not-fit');
  });
});

describe('emissions', () => {
  test('in a home one part of class A is told, though the class of another is not recorded', () => {
    const parts: ExampleParts = { motherboard: {}, 'graphics-card': { emissionClass: 'a' } };
    expect(verdict('emissions/class-for-home', parts, { usedAt: 'home' })).toBe('does-not-fit');
  });

  test('nothing about emissions is ever graver than a note, and each says to check the rules', () => {
    const parts: ExampleParts = {
      motherboard: { emissionClass: 'a', isAuthorised: false },
      'power-supply': { emissionClass: 'a', isAuthorised: false },
    };
    const told = judge(exampleList(parts), { usedAt: 'home', forSale: true }).findings.filter(({ rule }) =>
      rule.startsWith('emissions/'),
    );
    expect(told.map(({ rule, severity }) => [rule, severity])).toEqual([
      ['emissions/built-for-sale', 'note'],
      ['emissions/class-for-home', 'note'],
      ['emissions/own-authorisation', 'note'],
    ]);
    for (const one of told) expect(sayFinding(one).remedy).toContain('check the rules where you live');
  });
});

describe('lanes that are shared', () => {
  const parts = (lanes: number, second: boolean): ExampleParts => ({
    'graphics-card': { lanes, slotsThick: 1 },
    ...(second ? { 'expansion-card': { lanes: 4, slotsThick: 1, lengthMm: 150 } } : {}),
    motherboard: {
      expansionSlots: [
        { id: 'x16-1', position: 1, lengthLanes: 16, lanes: 16, generation: 4, shares: { slot: 'x4-1', lanes: 8 } },
        { id: 'x4-1', position: 3, lengthLanes: 4, lanes: 4, generation: 4 },
      ],
    },
  });

  test('a card of eight lanes loses none, one of sixteen loses eight, and only while the other slot is used', () => {
    expect(verdict('expansion/lane-sharing', parts(8, true))).toBe('fits');
    expect(verdict('expansion/lane-sharing', parts(16, true))).toBe('does-not-fit');
    expect(verdict('expansion/lane-sharing', parts(16, false))).toBe('does-not-apply');
  });

  test('the loss is told once', () => {
    expect(verdict('expansion/link-width', parts(16, true))).toBe('fits');
  });
});

describe('the air of the case', () => {
  test('its heat is the sum that the budget of steady power shows: every field of that sum is declared', () => {
    const gathers = airRise.gathers as Partial<Record<PartClass, readonly string[]>>;
    for (const { class: partClass, reads } of sustainedPower.adds) {
      expect(gathers[partClass], partClass).toEqual(expect.arrayContaining([...reads]));
    }
  });

  test('it is as warm as the budget of the air says', () => {
    const fittedFans = [
      {
        id: 'rear-1',
        panel: 'rear' as const,
        sizeMm: 120,
        thicknessMm: 25,
        pins: 3 as const,
        milliamps: 200,
        airflowM3h: 40,
      },
    ];
    const list = exampleList({ chassis: { fittedFans }, motherboard: {}, processor: { sustainedW: 200 } });
    const told = judge(list).findings.find(({ rule }) => rule === 'cooling/air-rise');
    const [budget] = workingOf(list, {}, kinds).filter(({ name }) => name === 'air');
    expect(budget?.used).toBeGreaterThan(15_000);
    expect(told?.verdict).toBe('does-not-fit');
    expect(told?.facts['rise']).toBe(Math.ceil((budget?.used ?? 0) / 100) / 10);
  });

  test('a fan that makes room for a radiator moves no air', () => {
    const parts: ExampleParts = {
      chassis: {
        fanPanels: [{ id: 'rear', sizesMm: [120], units: 2, radiatorsMm: [120], depthMm: 60 }],
        fittedFans: [
          { id: 'rear-1', panel: 'rear', sizeMm: 120, thicknessMm: 25, pins: 3, milliamps: 200, airflowM3h: 500 },
        ],
      },
      motherboard: {},
      processor: { sustainedW: 200 },
      cooler: {
        radiator: { lengthMm: 120, thicknessMm: 27, fanThicknessMm: 25, fanSizeMm: 120, fans: 1 },
        fan: { pins: 4, milliamps: 200, airflowM3h: 40 },
      },
    };
    expect(finding('cooling/air-rise', parts)?.facts['flow']).toBe(40);
  });
});

test('a load that is not told names the field in which each part records it', () => {
  const { findings } = judge(
    exampleList({
      'power-supply': {},
      processor: { sustainedW: undefined, peakW: undefined },
      'expansion-card': { sustainedW: undefined },
      'storage-drive': { milliwatts: undefined },
    }),
  );
  expect(findings.find(({ rule }) => rule === 'power/supply-load')?.missing?.toSorted()).toEqual([
    'expansion-card-1.sustainedW',
    'processor-1.sustainedW',
    'storage-drive-1.milliwatts',
  ]);
});
