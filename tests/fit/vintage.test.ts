import { describe, expect, test } from 'vitest';
import { exampleList, verdictOf } from '../../src/fit/examples.ts';
import { judge } from '../../src/fit/judge.ts';
import type { FitReport } from '../../src/fit/report.ts';
import type { ExampleParts, JudgeInput } from '../../src/fit/rule.ts';
import { sayFinding } from '../../src/fit/say.ts';

/** Parts of about 1990: the plain one of each class named, with these fields changed. */
const older = (parts: ExampleParts): JudgeInput => exampleList(parts, 'vintage');

/** The same in a case, with a supply, so that the board itself lacks nothing. */
const built = (parts: ExampleParts): JudgeInput =>
  older({ chassis: {}, 'power-supply': {}, motherboard: {}, ...parts });

const joined = ({ joints }: FitReport): Record<string, string> =>
  Object.fromEntries(joints.map(({ need, place }) => [need, place]));
const left = (report: FitReport): string[] => report.left.map(({ need }) => need);
/** Rules that say of something grave that it does not fit. */
const faults = ({ findings }: FitReport): string[] => [
  ...new Set(
    findings
      .filter(
        ({ verdict, severity }) => verdict === 'does-not-fit' && (severity === 'hazard' || severity === 'blocker'),
      )
      .map(({ rule }) => rule),
  ),
];
const unknown = ({ findings }: FitReport): string[] =>
  findings.filter(({ verdict }) => verdict === 'cannot-tell').map(({ rule }) => rule);

type Settings = { id: string; says: string; positions: { id: string; lines: string[] }[] }[];
/** A block with one position for each interrupt. */
const interrupts = (...numbers: number[]): Settings => [
  { id: 'irq', says: 'interrupt', positions: numbers.map((n) => ({ id: String(n), lines: [`irq-${n}`] })) },
];
const short = { id: 'short-1', position: 1, buses: ['isa-8' as const] };
const long = { id: 'long-1', position: 2, buses: ['isa-8' as const, 'isa-16' as const] };
const bare = { dataSockets: [], inputSockets: [], lines: [], settings: [] };

describe('slots and lines', () => {
  test('r1: the 8-bit card takes the short slot, so that the 16-bit card has the long one', () => {
    const report = judge(
      built({
        'bus-card': [
          { ...bare, buses: ['isa-8'] },
          { ...bare, buses: ['isa-16'] },
        ],
        motherboard: { busSlots: [long, short] },
      }),
    );
    expect(joined(report)).toMatchObject({
      'bus-card-1/edge': 'motherboard-1/bus-slot-short-1',
      'bus-card-2/edge': 'motherboard-1/bus-slot-long-1',
    });
  });

  test('r2: three cards get three interrupts, and none the one that the board keeps', () => {
    // Only 5 is left for the second card, so the first is at 3; the board keeps 6, so the third is at 7.
    const report = judge(
      built({
        'bus-card': [
          { ...bare, buses: ['isa-8'], settings: interrupts(5, 3) },
          { ...bare, buses: ['isa-8'], settings: interrupts(5) },
          { ...bare, buses: ['isa-8'], settings: interrupts(3, 6, 7) },
        ],
        motherboard: { takenLines: ['irq-6'] },
      }),
    );
    expect(joined(report)).toMatchObject({
      'bus-card-1/jumper-irq': 'bus-card-1/jumper-irq-at-3',
      'bus-card-2/jumper-irq': 'bus-card-2/jumper-irq-at-5',
      'bus-card-3/jumper-irq': 'bus-card-3/jumper-irq-at-7',
    });
    const [moves] = report.findings.filter(({ rule }) => rule === 'expansion/card-settings').map(sayFinding);
    expect(moves?.remedy).toBe(
      'Set the interrupt of Plain bus card to position 3 and set the interrupt of Plain bus card 3 to position 7, before the card goes into its slot.',
    );
  });

  test('r3: the card that can use interrupt 10 takes the long slot, which alone has that line', () => {
    const report = judge(
      built({
        'bus-card': [
          { ...bare, buses: ['isa-8'], settings: interrupts(5) },
          { ...bare, buses: ['isa-16', 'isa-16-short'], settings: interrupts(5, 10) },
        ],
        motherboard: { busSlots: [long, short] },
      }),
    );
    expect(joined(report)).toMatchObject({
      'bus-card-1/edge': 'motherboard-1/bus-slot-short-1',
      'bus-card-1/jumper-irq': 'bus-card-1/jumper-irq-at-5',
      'bus-card-2/edge': 'motherboard-1/bus-slot-long-1',
      'bus-card-2/jumper-irq': 'bus-card-2/jumper-irq-at-10',
    });
  });

  test('r4: a port that can move makes room for one that cannot, and the network card gives way', () => {
    const first = { id: 'first', lines: ['io-3f8', 'irq-4'] };
    const second = { id: 'second', lines: ['io-2f8', 'irq-3'] };
    const report = judge(
      built({
        'bus-card': [
          { ...bare, buses: ['isa-8'], settings: [{ id: 'port', says: 'port', positions: [first, second] }] },
          { ...bare, buses: ['isa-8'], settings: [{ id: 'port', says: 'port', positions: [first] }] },
          { ...bare, buses: ['isa-8'], settings: interrupts(3, 5) },
        ],
        motherboard: {},
      }),
    );
    expect(joined(report)).toMatchObject({
      'bus-card-1/jumper-port': 'bus-card-1/jumper-port-at-second',
      'bus-card-2/jumper-port': 'bus-card-2/jumper-port-at-first',
      'bus-card-3/jumper-irq': 'bus-card-3/jumper-irq-at-5',
    });
  });

  test('of three cards for two interrupts one is left, and it is told once', () => {
    const report = judge(
      built({
        'bus-card': [
          { ...bare, buses: ['isa-8'], settings: interrupts(5, 3) },
          { ...bare, buses: ['isa-8'], settings: interrupts(5, 3) },
          { ...bare, buses: ['isa-8'], lines: ['irq-3'] },
        ],
        motherboard: {},
      }),
    );
    expect(left(report)).toHaveLength(1);
    expect(faults(report).filter((rule) => rule.startsWith('expansion/'))).toEqual(['expansion/bus-lines']);
  });

  test('a bus with five cards in a case of eight cut-outs is solved to the end', () => {
    const port = (id: string, ...positions: { id: string; lines: string[] }[]) => ({
      id,
      says: `${id} port`,
      positions,
    });
    const off = { id: 'off', lines: [] };
    const serial = { id: 'first', lines: ['irq-4', 'io-3f8'] };
    const other = { id: 'second', lines: ['irq-3', 'io-2f8'] };
    const printer = { id: 'first', lines: ['irq-7', 'io-378'] };
    const spare = { id: 'second', lines: ['irq-5', 'io-278'] };
    const report = judge(
      built({
        motherboard: {
          busSlots: [1, 2, 3, 4, 5, 6, 7].map((n) => ({ ...long, id: `long-${n}`, position: n })),
        },
        'bus-card': [
          { ...bare, lines: ['io-3c0', 'mem-a000'] },
          {
            ...bare,
            lines: ['irq-6', 'irq-14', 'io-1f0', 'io-3f0'],
            settings: [port('serial', serial, off), port('other', other, off), port('printer', printer, spare, off)],
          },
          { ...bare, settings: [port('serial', serial), port('other', other), port('printer', printer, spare)] },
          { ...bare, buses: ['isa-16'], settings: interrupts(10, 11, 5) },
          { ...bare, buses: ['isa-16'], settings: interrupts(5, 7, 10) },
        ],
      }),
    );
    expect(report.proved).toBe(true);
    expect(report.left).toEqual([]);
    // Two ports of the one card must give way to those of the other. Of the two printers and the two other cards one
    // has to move, or one printer is switched off.
    expect(joined(report)).toMatchObject({
      'bus-card-2/jumper-serial': 'bus-card-2/jumper-serial-at-off',
      'bus-card-2/jumper-other': 'bus-card-2/jumper-other-at-off',
      'bus-card-3/jumper-serial': 'bus-card-3/jumper-serial-at-first',
    });
  });

  test('the local-bus card has the local-bus slot, and the 16-bit card the EISA slot', () => {
    const report = judge(
      built({
        'bus-card': [
          { ...bare, buses: ['isa-16'] },
          { ...bare, buses: ['vlb'] },
        ],
        motherboard: {
          busSlots: [
            { id: 'vlb-1', position: 1, buses: ['isa-8', 'isa-16', 'vlb'] },
            { id: 'eisa-1', position: 2, buses: ['isa-8', 'isa-16', 'eisa'] },
          ],
        },
      }),
    );
    expect(joined(report)).toMatchObject({
      'bus-card-1/edge': 'motherboard-1/bus-slot-eisa-1',
      'bus-card-2/edge': 'motherboard-1/bus-slot-vlb-1',
    });
  });
});

describe('ribbons', () => {
  const small = { size: '3.5', format: '3.5-1440', plug: 'floppy-pins', powerPlug: 'floppy-4' } as const;
  const large = { size: '5.25', format: '5.25-1200', plug: 'floppy-edge', powerPlug: 'peripheral-4' } as const;
  /** Pins at the end of the cable alone, an edge connector at both places. */
  const controller = {
    dataSockets: [
      {
        id: 'floppy',
        plug: 'floppy-34' as const,
        kilobits: 500,
        ribbon: [
          { at: 'end' as const, plugs: ['floppy-edge' as const, 'floppy-pins' as const] },
          { at: 'middle' as const, plugs: ['floppy-edge' as const] },
        ],
      },
    ],
  };

  test('r5: a 5.25 inch drive alone is at the end of the cable', () => {
    const report = judge(built({ 'floppy-drive': large, 'bus-card': controller, motherboard: {} }));
    expect(joined(report)['floppy-drive-1/data']).toBe('bus-card-1/data-floppy-end');
  });

  test('r6: beside a 3.5 inch drive, which finds pins only at the end, it moves to the middle', () => {
    const report = judge(built({ 'floppy-drive': [large, small], 'bus-card': controller, motherboard: {} }));
    expect(joined(report)).toMatchObject({
      'floppy-drive-1/data': 'bus-card-1/data-floppy-middle',
      'floppy-drive-2/data': 'bus-card-1/data-floppy-end',
    });
    const said = report.findings.filter(({ rule }) => rule === 'storage/ribbon-positions').map(sayFinding);
    expect(said.map(({ headline, what }) => headline || what)).toEqual([
      'Drive B is in the middle',
      'Plain diskette drive 2 is at the end of its ribbon, after the twist, and is drive A.',
    ]);
  });

  test('r6 again, with a cable bought for itself', () => {
    const report = judge(
      built({
        'floppy-drive': [large, small],
        'bus-card': { dataSockets: [{ id: 'floppy', plug: 'floppy-34', kilobits: 500, ribbon: [] }] },
        adapter: {
          form: 'ribbon',
          ins: [{ id: 'controller', kind: 'drive-data', attrs: { plug: 'floppy-34' } }],
          outs: [
            { id: 'a', way: 'edge', kind: 'drive-data', attrs: { plug: 'floppy-edge' } },
            { id: 'a', way: 'pins', kind: 'drive-data', attrs: { plug: 'floppy-pins' } },
            { id: 'b', kind: 'drive-data', attrs: { plug: 'floppy-edge' } },
          ],
        },
        motherboard: {},
      }),
    );
    expect(joined(report)).toMatchObject({
      'adapter-1/controller': 'bus-card-1/data-floppy-socket',
      'floppy-drive-1/data': 'adapter-1/b',
      'floppy-drive-2/data': 'adapter-1/a',
    });
  });

  test('r7: the controller has no slot, and its drive is left over for that reason', () => {
    const report = judge(
      built({ 'fixed-disk': {}, 'bus-card': { buses: ['isa-16'] }, motherboard: { busSlots: [short] } }),
    );
    expect(left(report)).toContain('bus-card-1/edge');
    expect(left(report)).toContain('fixed-disk-1/data');
    const [reason] = report.left.find(({ need }) => need === 'fixed-disk-1/data')?.why.reasons ?? [];
    expect(reason).toMatchObject({ why: 'absent', waitsFor: 'bus-card-1/edge' });
    // The jumpers of the card wait for the card itself and say nothing of their own.
    expect(report.findings.filter(({ rule }) => rule === 'expansion/bus-lines')).toEqual([]);
  });
});

describe('banks', () => {
  const ofTwo = (id: string, largestKb = 16_384) => ({
    id,
    slots: 2 as const,
    pins: '30' as const,
    largestKb,
    slowestNs: 80,
  });
  const one = { capacityKb: 1024 };
  const four = { capacityKb: 4096 };

  test('m7: six alike and two banks of four fill one bank; two are left, too few alike', () => {
    const report = judge(built({ 'bank-module': [one, one, one, one, one, one], motherboard: {} }));
    expect(left(report)).toEqual(['bank-module-5/edge', 'bank-module-6/edge']);
    const [fault] = report.findings.filter(
      ({ verdict, rule }) => verdict === 'does-not-fit' && rule === 'memory/bank-fill',
    );
    expect(fault?.about).toEqual(['bank-module-5', 'bank-module-6']);
    expect(fault?.facts).toMatchObject({ reason: 'too-few-alike', fill: 4, alike: 2 });
  });

  test('m8: three small and two large modules, two banks of two: the third small one is left', () => {
    const report = judge(
      built({
        'bank-module': [one, one, one, four, four],
        motherboard: { memoryBanks: [ofTwo('bank-0'), ofTwo('bank-1')] },
      }),
    );
    expect(left(report)).toEqual(['bank-module-3/edge']);
    expect(joined(report)).toMatchObject({
      'bank-module-1/edge': 'motherboard-1/bank-0',
      'bank-module-4/edge': 'motherboard-1/bank-1',
      'bank-module-5/edge': 'motherboard-1/bank-1',
    });
  });

  test('m9: the small modules give up the first bank, the only one that takes the large ones', () => {
    const report = judge(
      built({
        'bank-module': [one, one, four, four],
        motherboard: { memoryBanks: [ofTwo('bank-0'), ofTwo('bank-1', 1024)] },
      }),
    );
    expect(left(report)).toEqual([]);
    expect(joined(report)).toMatchObject({
      'bank-module-1/edge': 'motherboard-1/bank-1',
      'bank-module-2/edge': 'motherboard-1/bank-1',
      'bank-module-3/edge': 'motherboard-1/bank-0',
      'bank-module-4/edge': 'motherboard-1/bank-0',
    });
  });

  // Modules to a bank, by data bus and module: "Upgrading and Repairing PCs", table 6.18, and for the bus of 64 bits a
  // copy of an encyclopaedia's text on SIMM banks. A board whose banks follow the table is judged to be right.
  test.each([
    [8, 8, 1],
    [16, 8, 2],
    [32, 8, 4],
    [32, 32, 1],
    [64, 8, 8],
    [64, 32, 2],
  ] as const)('a bus of %d bits and modules of %d: a bank is %d', (dataBusBits, dataBits, slots) => {
    const module = { dataBits, pins: dataBits === 8 ? ('30' as const) : ('72' as const) };
    const width = (sockets: 1 | 2 | 4 | 8) => {
      const bank = { id: 'bank-0', slots: sockets, pins: module.pins, largestKb: 4096, slowestNs: 80 };
      const board = { dataBusBits, memoryBanks: [bank] };
      const report = judge(built({ 'bank-module': Array.from({ length: sockets }, () => module), motherboard: board }));
      return report.findings.filter(({ rule }) => rule === 'memory/bank-width').map(({ verdict }) => verdict);
    };
    expect(width(slots)).toEqual(['fits']);
    expect(width(slots === 1 ? 2 : ((slots / 2) as 1 | 2 | 4))).toEqual(['does-not-fit']);
  });
});

describe('pictures', () => {
  test('v4: an analog monitor through a passive adapter needs the socket that has analog contacts', () => {
    const report = judge([
      ...exampleList({
        motherboard: {},
        'graphics-card': {
          outputs: [
            { id: 'dvi-1', plug: 'dvi-d' },
            { id: 'dvi-2', plug: 'dvi-i' },
          ],
        },
        adapter: {
          form: 'adapter',
          ins: [
            {
              id: 'plug',
              kind: 'picture',
              attrs: { plugs: ['dvi-d', 'dvi-i'], signals: null, dualMode: null },
              carries: ['analog'],
            },
          ],
          outs: [{ id: 'socket', kind: 'picture', attrs: { plug: 'vga', signal: 'analog', megabits: null } }],
        },
      }),
      ...older({ monitor: {} }),
    ]);
    expect(joined(report)).toMatchObject({
      'monitor-1/picture': 'adapter-1/socket',
      'adapter-1/plug': 'graphics-card-1/output-dvi-2',
    });
  });

  // Rates as published: "Video FAQ" (comp.sys.ibm.pc.hardware.video) for 18.43, 15.75 and 21.8 kHz, a wiki's list of
  // scan rates for 15.7 kHz, and a manual's appendix for 31.5 kHz. What the cards send is worked out from clock and totals.
  const modes = {
    mono: { id: 'mono-350', horizontalKhz: 18.432, verticalHz: 49.82 },
    colour: { id: 'colour-200', horizontalKhz: 15.7, verticalHz: 59.92 },
    finer: { id: 'colour-350', horizontalKhz: 21.851, verticalHz: 59.7 },
  };
  test.each([
    ['mono', 18.43, 50, true],
    ['colour', 15.75, 60, true],
    ['colour', 15.7, 60, true],
    ['finer', 21.8, 60, true],
    ['mono', 15.75, 60, false],
    ['colour', 18.43, 50, false],
    ['finer', 15.75, 60, false],
  ] as const)('a card that sends %s and a monitor for %d kHz at %d Hz: %s', (mode, khz, hz, isSafe) => {
    const report = judge(
      built({
        monitor: { sockets: [{ id: 'in', plug: 'de-9' }], horizontalKhz: [khz, khz], verticalHz: [hz, hz] },
        'bus-card': { ...bare, roles: ['display'], outputs: [{ id: 'out', plug: 'de-9', modes: [modes[mode]] }] },
        motherboard: {},
      }),
    );
    const [finding] = report.findings.filter(({ rule }) => rule === 'display/scan-rate');
    expect(finding).toMatchObject({ verdict: isSafe ? 'fits' : 'does-not-fit', severity: 'hazard' });
  });

  const outputs = [
    { id: 'left', plug: 'de-9' as const, modes: [modes.finer] },
    { id: 'right', plug: 'de-9' as const, modes: [modes.finer] },
  ];
  const sockets = [{ id: 'in', plug: 'de-9' as const }];
  test.each([
    ['display/scan-rate', [15.7, 15.7], [18.43, 18.43]],
    ['display/scan-range', [15, 17], [17, 19]],
  ] as const)('%s tells every monitor that the card is wrong for', (rule, one, two) => {
    const report = judge(
      built({
        monitor: [
          { sockets, horizontalKhz: [...one], verticalHz: [50, 70] },
          { sockets, horizontalKhz: [...two], verticalHz: [50, 70] },
        ],
        'bus-card': { ...bare, roles: ['display'], outputs },
        motherboard: {},
      }),
    );
    const [finding] = report.findings.filter((found) => found.rule === rule);
    expect(finding?.verdict).toBe('does-not-fit');
    expect(finding?.about).toEqual(['monitor-1', 'monitor-2', 'bus-card-1']);
    expect(finding && sayFinding(finding).what).toContain('The same goes for Plain monitor 2.');
  });

  test('a picture chip on the board is judged by the rates of its own socket, and needs no card', () => {
    const rates = (horizontalKhz: number) => ({
      monitor: { horizontalKhz: [31.5, 31.5], verticalHz: [50, 70] },
      motherboard: {
        hasPictureChip: true,
        pictureSockets: [
          { id: 'vga-1', plug: 'vga' as const, modes: [{ id: 'one', horizontalKhz, verticalHz: 59.94 }] },
        ],
      },
      processor: {},
    });
    const right = judge(older(rates(31.469) as ExampleParts));
    expect(joined(right)['monitor-1/picture']).toBe('motherboard-1/picture-vga-1');
    expect(verdictOf(right, 'display/no-picture')).toBe('fits');
    expect(verdictOf(right, 'display/scan-rate')).toBe('fits');
    expect(verdictOf(judge(older(rates(48.363) as ExampleParts)), 'display/scan-rate')).toBe('does-not-fit');
  });
});

/** A card that shows a picture, beside the plain card that drives disks and ports. */
const display = {
  ...bare,
  roles: ['display' as const],
  buses: ['isa-16' as const, 'isa-16-short' as const],
  outputs: [
    {
      id: 'vga-1',
      plug: 'vga' as const,
      signal: 'analog' as const,
      modes: [{ id: 'vga-480', horizontalKhz: 31.469, verticalHz: 59.94 }],
    },
  ],
  bootsFrom: [],
};
const whole: ExampleParts = {
  chassis: { standoffScrew: '6-32' },
  motherboard: {},
  processor: {},
  'power-supply': {},
  monitor: {},
  'bank-module': [{}, {}, {}, {}],
  coprocessor: {},
  'bus-card': [{}, display],
  'floppy-drive': [{}, { size: '5.25', format: '5.25-1200', plug: 'floppy-edge', powerPlug: 'peripheral-4' }],
  'fixed-disk': {},
  keyboard: {},
  pointer: {},
  'power-strip': { sockets: 2 },
  'operating-system': {},
  diskette: {},
};

describe('a whole machine of about 1990', () => {
  test('fits, with every need joined', () => {
    const report = judge(older(whole));
    expect(report.left).toEqual([]);
    expect(report.proved).toBe(true);
    expect(faults(report)).toEqual([]);
    expect(report.overall).toBe('fits');
  });

  test('leaves nothing grave that nobody can tell', () => {
    const report = judge(older(whole));
    const grave = report.findings.filter(({ severity }) => severity === 'hazard' || severity === 'blocker');
    expect(grave.filter(({ verdict }) => verdict === 'cannot-tell')).toEqual([]);
  });

  test('says of two plugs and of a second drive on a ribbon what hands must know', () => {
    const notes = judge(older(whole)).findings.filter(
      ({ verdict, severity }) => verdict === 'does-not-fit' && severity === 'note',
    );
    expect(notes.map(({ rule }) => rule)).toEqual(['power/two-plug-order', 'storage/ribbon-positions']);
  });

  test('with a plug-in board in place of the processor it fits as well', () => {
    const { processor: _, ...rest } = whole;
    const report = judge(older({ ...rest, 'processor-board': {} }));
    expect(joined(report)['processor-board-1/socket']).toBe('motherboard-1/socket');
    expect(faults(report)).toEqual([]);
  });

  // One change each, and the one rule that speaks of it.
  test.each<[string, ExampleParts, string]>([
    ['three modules for a bank of four', { 'bank-module': [{}, {}, {}] }, 'memory/bank-fill'],
    [
      'modules of 100 ns for banks of 80 ns',
      { 'bank-module': [{ nanoseconds: 100 }, { nanoseconds: 100 }, { nanoseconds: 100 }, { nanoseconds: 100 }] },
      'memory/bank-speed',
    ],
    [
      'modules without parity',
      { 'bank-module': [{ hasParity: false }, { hasParity: false }, { hasParity: false }, { hasParity: false }] },
      'memory/bank-parity',
    ],
    ['a coprocessor for another socket', { coprocessor: { socket: 'c-40' } }, 'socket/coprocessor-socket'],
    ['a processor that the firmware does not know', { processor: { family: 'velm-586' } }, 'firmware/processor-family'],
    ['a card longer than the case has room for', { chassis: { cardLengthMm: 170 } }, 'clearance/bus-card'],
    ['a case that opens for a plate', { chassis: { rearPanel: 'plate' } }, 'mounting/rear-panel'],
    [
      'a supply with the one plug of later boards',
      {
        'power-supply': {
          leads: [
            { id: 'board', plugs: ['atx-20'] },
            { id: 'drives', plugs: ['peripheral-4', 'peripheral-4', 'floppy-4'], carriesW: 60 },
          ],
        },
      },
      'power/board-lead',
    ],
    [
      'a third disk on one ribbon',
      {
        'fixed-disk': [{}, {}, {}],
        'floppy-drive': {},
        chassis: {
          driveBays: [
            { id: 'bay-1', sizes: ['3.5-open'] },
            { id: 'bay-2', sizes: ['3.5'] },
            { id: 'bay-3', sizes: ['3.5'] },
            { id: 'bay-4', sizes: ['3.5'] },
          ],
        },
      },
      'storage/drive-port',
    ],
    ['diskettes that no drive reads', { diskette: { format: '3.5-2880' } }, 'storage/diskette-format'],
    [
      'a system on diskettes that no drive reads',
      { 'operating-system': { comesOn: '3.5-2880' } },
      'storage/system-diskettes',
    ],
    [
      'a display card that sends beyond the fixed rate of the monitor',
      {
        'bus-card': [
          {},
          {
            ...display,
            outputs: [{ id: 'vga-1', plug: 'vga', modes: [{ id: 'svga', horizontalKhz: 35.156, verticalHz: 56.25 }] }],
          },
        ],
      },
      'display/scan-rate',
    ],
    [
      'a digital monitor',
      { monitor: { sockets: [{ id: 'in', plug: 'de-9' }], horizontalKhz: [21.8, 21.8], verticalHz: [60, 60] } },
      'display/signal',
    ],
    [
      'a strip with one socket and a monitor with a lead of its own',
      { monitor: { fitsSupplyOutlet: false }, 'power-strip': { sockets: 1 } },
      'cabling/mains-socket',
    ],
    [
      'a card whose interrupt the disk card keeps',
      { 'bus-card': [{}, { ...display, lines: ['irq-14'], buses: ['isa-16'] }] },
      'expansion/bus-lines',
    ],
    [
      'a card for a bus that the board has not',
      { 'bus-card': [{}, display, { ...bare, buses: ['vlb'] }] },
      'expansion/bus-slot',
    ],
  ])('does not fit with %s', (_, change, rule) => {
    const report = judge(older({ ...whole, ...change }));
    expect(faults(report)).toEqual([rule]);
    expect(report.overall).toBe('does-not-fit');
  });

  test.each<[string, ExampleParts, string]>([
    [
      'the access time of the modules',
      {
        'bank-module': [
          { nanoseconds: undefined },
          { nanoseconds: undefined },
          { nanoseconds: undefined },
          { nanoseconds: undefined },
        ],
      },
      'memory/bank-speed',
    ],
    ['the lines that the board keeps', { motherboard: { takenLines: undefined } }, 'expansion/bus-lines'],
    [
      'the modes of the display card',
      { 'bus-card': [{}, { ...display, outputs: [{ id: 'vga-1', plug: 'vga' }] }] },
      'display/scan-rate',
    ],
  ])('cannot be told without %s', (_, change, rule) => {
    const report = judge(older({ ...whole, ...change }));
    expect(unknown(report)).toContain(rule);
    expect(report.overall).toBe('cannot-tell');
  });

  test('the order of the list changes nothing', () => {
    const list = older(whole);
    expect(judge([...list].reverse())).toEqual(judge(list));
  });
});
