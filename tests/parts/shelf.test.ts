/** The shelf of the demo catalogue: that its traps spring, and that what is said to fit does. Verdicts argued by hand. */
import { describe, expect, test } from 'vitest';
import { mark } from '../../src/exercises/grade.ts';
import { findingFor, reportOf } from '../../src/exercises/mark-verdicts.ts';
import type { MisfitsExercise } from '../../src/exercises/types.ts';
import { judge } from '../../src/fit/judge.ts';
import { resolveList } from '../../src/parts/list.ts';
import { type Part, type PartClass, type PartId, partClasses } from '../../src/parts/part.ts';
import { choosing, content } from '../helpers/content.ts';

const { parts } = content;

function reportOn(ids: readonly PartId[]) {
  const { input, unknown } = resolveList(
    ids.map((part) => ({ part, quantity: 1 })),
    parts,
  );
  expect(unknown).toEqual([]);
  return judge(input);
}
/** Rules that do not fit or cannot tell, with what happens when they do not hold. Notes are left out. */
const against = (ids: readonly PartId[]) =>
  reportOn(ids)
    .findings.filter(({ verdict, severity }) => verdict !== 'fits' && severity !== 'note')
    .map(({ rule, verdict, severity }) => `${rule} ${verdict} ${severity}`);

/** Classes whose every part is of about 1990. */
const olderClasses: readonly PartClass[] = [
  'bank-module',
  'bus-card',
  'coprocessor',
  'diskette',
  'fixed-disk',
  'floppy-drive',
  'processor-board',
];
/** Parts of about 1990 whose classes have current ones too, and whose fields do not say so. */
const older: ReadonlySet<PartId> = new Set([
  'dorrenby-stray-14',
  'drenning-clatter',
  'drenning-mouse-25',
  'drenning-mouse-9',
  'drenning-office',
  'drenning-office-mouse',
  'drenning-ball-9',
  'drenning-plain-din',
  'ebbe-clip',
  'ebbe-clip-fan',
  'tollick-edge-pins',
  'tollick-frame-locked',
  'tollick-keys-large',
  'tollick-lead-small',
  'tollick-lead-y',
  'tollick-mouse-changer',
  'tollick-mouse-changer-wide',
]);
/** No part says which shelf it is on: what it is made for does. */
function isOlder(part: Part): boolean {
  if (olderClasses.includes(part.class) || older.has(part.id)) return true;
  switch (part.class) {
    case 'chassis':
      return part.formFactors?.some((form) => form === 'baby-at' || form === 'lpx') ?? false;
    case 'motherboard':
      return part.busSlots !== undefined;
    case 'processor':
      return part.clockMhz !== undefined && part.clockMhz <= 50;
    case 'power-supply':
      return part.leads?.some(({ plugs }) => plugs.includes('p8')) ?? false;
    case 'monitor':
      return part.horizontalKhz !== undefined && part.widthPx === undefined;
    case 'operating-system':
      return part.comesOn !== undefined;
    default:
      return false;
  }
}

/** Both board plugs of every supply of the time are of one shape: something to look at, not something amiss. */
const usualIn1990 = ['power/two-plug-order'];

describe('the shelf', () => {
  const current = parts.filter((part) => !isOlder(part));
  const vintage = parts.filter(isOlder);

  test('holds at least 160 current parts and 80 of about 1990', () => {
    expect(current.length).toBeGreaterThanOrEqual(160);
    expect(vintage.length).toBeGreaterThanOrEqual(80);
  });

  test('has in each class at least three parts that are what they seem and two that are not', () => {
    for (const of of partClasses) {
      const ofClass = parts.filter((part) => part.class === of);
      expect(ofClass.filter(({ trap }) => trap === undefined).length, of).toBeGreaterThanOrEqual(3);
      expect(ofClass.filter(({ trap }) => trap !== undefined).length, of).toBeGreaterThanOrEqual(2);
    }
  });

  test('says of each part what a shop assistant would, in one sentence or two, and of each trap what it teaches', () => {
    for (const { id, says, trap } of parts) {
      expect(says?.length ?? 0, id).toBeGreaterThan(10);
      if (trap !== undefined) expect(trap, id).toMatch(/^[A-Z0-9].*[.]$/);
    }
  });

  test('holds, for this year, boards of three sockets, two memory kinds and four sizes', () => {
    const boards = current.filter((part) => part.class === 'motherboard');
    expect(new Set(boards.map(({ socket }) => socket))).toEqual(new Set(['k4', 'n9', 'w6']));
    expect(new Set(boards.map(({ memory }) => memory?.generation))).toEqual(new Set(['ddr4', 'ddr5']));
    expect(new Set(boards.map(({ formFactor }) => formFactor))).toEqual(
      new Set(['atx', 'micro-atx', 'mini-itx', 'e-atx']),
    );
    expect(boards.filter(({ memory }) => memory?.registered)).toHaveLength(1);
  });

  test('holds, for 1990, boards of every bus width of the time and memory of 30 and 72 contacts', () => {
    const boards = vintage.filter((part) => part.class === 'motherboard');
    expect(new Set(boards.map(({ dataBusBits }) => dataBusBits))).toEqual(new Set([8, 16, 32]));
    const slots = boards.flatMap(({ busSlots = [] }) => busSlots.flatMap(({ buses }) => buses));
    expect(new Set(slots)).toEqual(new Set(['isa-8', 'isa-16', 'eisa', 'vlb']));
    const banks = boards.flatMap(({ memoryBanks = [] }) => memoryBanks.map(({ pins }) => pins));
    expect(new Set(banks)).toEqual(new Set(['30', '72', 'sipp-30']));
  });

  test('has processors of 1990 at 8 to 50 MHz and disks of 20 to 541 MB', () => {
    const clocks = vintage.flatMap((part) => (part.class === 'processor' ? (part.clockMhz ?? []) : []));
    expect([Math.min(...clocks), Math.max(...clocks)]).toEqual([8, 50]);
    for (const part of vintage) {
      if (part.class !== 'fixed-disk' || part.cylinders === undefined) continue;
      const { cylinders, heads = 0, sectorsPerTrack = 0, capacityMb } = part;
      // Sectors of 512 bytes, millions of bytes rounded down.
      expect(Math.floor((cylinders * heads * sectorsPerTrack * 512) / 1_000_000), part.id).toBe(capacityMb);
    }
  });

  test('sells a board of 1991 with its processor for 400 to 500, as was usual', () => {
    // Common practice: 400 to 500 for a replacement board with processor around 1991.
    const price = (id: PartId) => parts.find((part) => part.id === id)?.priceCents ?? Number.NaN;
    const pair = price('eskerby-wide') + price('velm-three-25');
    expect(pair).toBeGreaterThanOrEqual(40_000);
    expect(pair).toBeLessThanOrEqual(50_000);
  });
});

test('nothing at all is against a machine that is said to be whole', () => {
  expect(content.workedBuilds.length).toBeGreaterThan(0);
  for (const { id, list } of content.workedBuilds) {
    const report = judge(resolveList(list, parts).input);
    expect(report.overall, id).toBe('fits');
    expect(report.proved, id).toBe(true);
    const amiss = report.findings.filter(({ verdict }) => verdict !== 'fits').map(({ rule }) => rule);
    expect(amiss, id).toEqual(id === 'fourteen-of-1990' ? usualIn1990 : []);
  }
});

test('two worked builds are of fourteen parts, one of today and one of 1990', () => {
  const counted = content.workedBuilds.map(({ id, list }) => [
    id,
    list.reduce((sum, { quantity }) => sum + quantity, 0),
  ]);
  expect(counted).toContainEqual(['fourteen-of-today', 14]);
  expect(counted).toContainEqual(['fourteen-of-1990', 14]);
  const own = (id: string) => content.workedBuilds.find((build) => build.id === id)?.list.map(({ part }) => part) ?? [];
  const shelfOf = (id: string) => new Set(own(id).map((one) => parts.some((part) => part.id === one && isOlder(part))));
  expect(shelfOf('fourteen-of-today')).toEqual(new Set([false]));
  expect(shelfOf('fourteen-of-1990')).toEqual(new Set([true]));
});

describe('each trap springs, and the part beside it on the shelf does not', () => {
  // A tower that fits: 160 mm for a cooler, 325 - 25 mm for a card, a supply of 160 mm, four cut-outs.
  const k4 = [
    'lodden-20',
    'orrisk-m1',
    'quellin-5',
    'skarn-mid',
    'tammer-16',
    'tammer-16',
    'marl-1tb',
    'fennick-550',
    'sollen-27',
  ];
  const n9 = [
    'lodden-20',
    'tarn-40',
    'velm-40',
    'skarn-mid',
    'corrow-16',
    'corrow-16',
    'marl-1tb',
    'fennick-550',
    'sollen-27',
  ];
  /** The list with each part of the left column changed for the one beside it. */
  const but = (ids: readonly PartId[], changes: Record<PartId, PartId>) => ids.map((id) => changes[id] ?? id);

  test('the two machines that the traps are set in have nothing against them', () => {
    expect(against(k4)).toEqual([]);
    expect(against(n9)).toEqual([]);
  });

  test.each<[string, PartId[], string]>([
    [
      'a cooler of 168 mm under a panel at 160',
      but(k4, { 'skarn-mid': 'skarn-mast' }),
      'clearance/cooler-height does-not-fit blocker',
    ],
    [
      'a cooler of no recorded height',
      but(k4, { 'skarn-mid': 'skarn-tall' }),
      'clearance/cooler-height cannot-tell blocker',
    ],
    ['DDR4 in a DDR5 board', but(k4, { 'tammer-16': 'corrow-16' }), 'memory/generation does-not-fit blocker'],
    ['registered memory', but(k4, { 'tammer-16': 'corrow-r16' }), 'memory/registered does-not-fit blocker'],
    [
      '46 mm of memory where 33 go under',
      but(k4, { 'skarn-mid': 'skarn-double', 'tammer-16': 'tammer-16-fin' }),
      'clearance/memory-height does-not-fit blocker',
    ],
    [
      'a processor of 120 W on a board for 110',
      but(k4, { 'quellin-5': 'quellin-7' }),
      'socket/power-stage does-not-fit blocker',
    ],
    [
      'firmware 9 where 12 is needed',
      but(k4, { 'orrisk-m1': 'orrisk-b1', 'quellin-5': 'quellin-7' }),
      'firmware/processor-family does-not-fit blocker',
    ],
    [
      'a SATA module where the slot has PCIe alone',
      but(k4, { 'marl-1tb': 'hask-flat-1tb' }),
      'storage/module-link does-not-fit blocker',
    ],
    ['a module of key B', but(k4, { 'marl-1tb': 'hask-stub' }), 'storage/module-key does-not-fit blocker'],
    [
      'a module of 110 mm where the last screw is at 80',
      but(k4, { 'marl-1tb': 'marl-long-4tb' }),
      'storage/module-length does-not-fit blocker',
    ],
    [
      'a supply of 180 mm in a bay of 160',
      but(k4, { 'fennick-550': 'fennick-long-750' }),
      'clearance/supply-length does-not-fit blocker',
    ],
    [
      'a supply of the small shape',
      but(k4, { 'fennick-550': 'fennick-small-450' }),
      'mounting/supply-shape does-not-fit blocker',
    ],
    [
      'a monitor with DisplayPort alone on a board without',
      but(k4, { 'sollen-27': 'sollen-27-swift' }),
      'display/picture-plug does-not-fit blocker',
    ],
    ['105 W under a cooler for 95', but(k4, { 'skarn-mid': 'ebbe-92' }), 'cooling/cooler-rating does-not-fit limit'],
    [
      'a cooler without the mounting',
      but(k4, { 'skarn-mid': 'ebbe-flat' }),
      'socket/cooler-mounting does-not-fit blocker',
    ],
    [
      'a case whose supply length is not recorded',
      but(k4, { 'lodden-20': 'lodden-25', 'skarn-mid': 'skarn-low' }),
      'clearance/supply-length cannot-tell blocker',
    ],
    [
      'two sockets on the card, one plug on the supply',
      [...but(k4, { 'lodden-20': 'lodden-30', 'fennick-550': 'dray-650' }), 'pellam-6'],
      'power/card-leads does-not-fit blocker',
    ],
    [
      'a plug of six pins for a socket of eight',
      [...but(k4, { 'fennick-550': 'dray-400' }), 'brindle-4'],
      'power/card-leads does-not-fit blocker',
    ],
    [
      'a card of 310 mm where the fitted fan leaves 300',
      [...k4, 'pellam-6'],
      'clearance/card-length does-not-fit blocker',
    ],
    ['a card of no recorded length', [...k4, 'brindle-5'], 'clearance/card-length cannot-tell blocker'],
    [
      'a fan of 1.4 A on headers of 1 A and less',
      [...but(k4, { 'lodden-20': 'lodden-35', 'skarn-mid': 'skarn-low' }), 'ebbe-gust'],
      'cabling/fan-header does-not-fit limit',
    ],
    [
      'a processor of 150 W on a board for 95',
      [...but(n9, { 'velm-40': 'velm-60' }), 'brindle-2'],
      'socket/power-stage does-not-fit blocker',
    ],
    [
      'a module of 32 GB where one may hold 16',
      but(n9, { 'tarn-40': 'tarn-10', 'corrow-16': 'corrow-32' }),
      'memory/module-size does-not-fit blocker',
    ],
  ])('%s', (_, ids, finding) => {
    expect(against(ids)).toContain(finding);
  });

  test('the Pellam 8 goes into the bare Lodden 30 by 1 mm, and is too long behind any front fan', () => {
    const bare = [...but(k4, { 'lodden-20': 'lodden-30', 'fennick-550': 'fennick-650' }), 'pellam-8'];
    const length = 'clearance/card-length does-not-fit blocker';
    expect(against(bare)).not.toContain(length);
    expect(against([...bare, 'skarn-120'])).toContain(length);
    expect(against([...bare, 'ebbe-thin-120'])).toContain(length);
  });

  test('a processor without graphics needs a card, and the small one will do', () => {
    const dark = but(k4, { 'quellin-5': 'quellin-5-dark' });
    expect(against(dark)).toContain('display/no-picture does-not-fit blocker');
    expect(against([...dark, 'brindle-2'])).toEqual([]);
  });

  test('on the Tarn 20 an M.2 drive and one box go, an M.2 drive and two boxes do not', () => {
    const storage = (ids: readonly PartId[]) => against(ids).filter((finding) => finding.startsWith('storage/'));
    const small = but(n9, { 'tarn-40': 'tarn-20' });
    expect(storage([...small, 'hask-box-1tb'])).toEqual([]);
    expect(storage([...small, 'hask-box-1tb', 'hask-deep-2tb'])).toHaveLength(1);
    expect(storage(['hask-box-1tb', 'hask-deep-2tb', ...small.filter((id) => id !== 'marl-1tb')])).toEqual([]);
  });

  test('the cube takes a card two slots thick and refuses one of three', () => {
    const cube = [
      'lodden-cube',
      'orrisk-c1',
      'quellin-3',
      'ebbe-92',
      'tammer-16',
      'tammer-16',
      'marl-1tb',
      'fennick-450',
      'sollen-27',
    ];
    const thick = 'expansion/slot-free does-not-fit blocker';
    expect(against([...cube, 'brindle-4'])).not.toContain(thick);
    expect(against([...cube, 'pellam-4'])).toContain(thick);
  });

  test('the slim case takes the low cooler, the low card and the small supply, and no tower cooler', () => {
    const slim = [
      'lodden-slim',
      'orrisk-m1',
      'quellin-3',
      'skarn-low',
      'tammer-16',
      'tammer-16',
      'marl-1tb',
      'fennick-small-450',
      'brindle-2',
      'ebbe-80',
      'sollen-27',
    ];
    expect(against(slim)).toEqual([]);
    expect(against(but(slim, { 'skarn-low': 'ebbe-92' }))).toEqual(['clearance/cooler-height does-not-fit blocker']);
    expect(against(but(slim, { 'brindle-2': 'brindle-4' }))).toContain('clearance/card-height does-not-fit blocker');
  });
});

describe('each part that was put there to teach something does, in a list that is whole without it', () => {
  const findings = (ids: readonly PartId[]) => {
    const { input, unknown } = resolveList(
      ids.map((part) => ({ part, quantity: 1 })),
      parts,
    );
    expect(unknown).toEqual([]);
    return judge(input, { mainsVolts: 230 })
      .findings.filter(({ verdict }) => verdict !== 'fits')
      .map(({ rule, verdict }) => `${rule} ${verdict}`);
  };
  const tower = [
    'lodden-28',
    'orrisk-b2',
    'quellin-5',
    'skarn-mid',
    'tammer-16',
    'tammer-16',
    'marl-1tb',
    'fennick-550',
    'sollen-27',
  ];
  const narrow = [
    'hulvane-desk-8',
    'eskerby-narrow',
    'velm-narrow-20',
    'hulvane-200',
    'sollen-paper-14',
    'tammer-1024-80',
    'tammer-1024-80',
    'sollen-array-256',
    'sprillock-all',
    'thrannet-35-1440',
    'hask-80',
    'drenning-plain-din',
    'drenning-mouse-9',
    'yarrant-base-4',
  ];
  const wide = [
    'hulvane-desk-8',
    'eskerby-wide',
    'velm-three-25',
    'hulvane-200',
    'sollen-paper-14',
    'tammer-1024-80',
    'tammer-1024-80',
    'tammer-1024-80',
    'tammer-1024-80',
    'sollen-array-256',
    'sprillock-all',
    'thrannet-35-1440',
    'hask-80',
    'drenning-plain-din',
    'drenning-mouse-9',
    'yarrant-easel-2',
  ];
  const four = [
    'hulvane-desk-8',
    'eskerby-four',
    'velm-four-25',
    'hulvane-200',
    'sollen-paper-14',
    'tammer-1024-70',
    'tammer-1024-70',
    'tammer-1024-70',
    'tammer-1024-70',
    'sollen-array-256',
    'sprillock-all',
    'thrannet-35-1440',
    'hask-80',
    'drenning-plain-din',
    'drenning-mouse-9',
    'yarrant-base-4',
  ];
  const two = [
    'hulvane-desk-8',
    'eskerby-two',
    'velm-two-12',
    'hulvane-200',
    'sollen-paper-14',
    'tammer-1024-80',
    'tammer-1024-80',
    'sollen-array-256',
    'sprillock-all',
    'thrannet-35-1440',
    'hask-80',
    'drenning-plain-din',
    'drenning-mouse-9',
    'yarrant-base-4',
  ];
  /** The list with each part of the left column changed for the one beside it, or left out. */
  const but = (ids: readonly PartId[], changes: Record<PartId, PartId | null>) =>
    ids.flatMap((id) => (changes[id] === null ? [] : [changes[id] ?? id]));

  test('the lists that the parts are put into have nothing against them but what is usual in their time', () => {
    expect(findings(tower)).toEqual([]);
    for (const list of [two, narrow, wide, four]) {
      expect(findings(list)).toEqual(usualIn1990.map((rule) => `${rule} does-not-fit`));
    }
  });

  const rows: [trap: PartId, title: string, ids: PartId[], finding: string][] = [
    // Of today.
    [
      'lodden-22',
      'a supply of 150 mm behind a cage that leaves 140',
      [...but(tower, { 'lodden-28': 'lodden-22', 'orrisk-b2': 'orrisk-m1' }), 'hask-deep-2tb'],
      'clearance/supply-behind-cage does-not-fit',
    ],
    [
      'lodden-32',
      'standoffs pressed in at B, R and S under an ATX board',
      but(tower, { 'lodden-28': 'lodden-32' }),
      'mounting/standoffs does-not-fit',
    ],
    [
      'lodden-glow',
      'a strip of 12 V on a board with pins for 5 V',
      but(tower, { 'lodden-28': 'lodden-glow', 'orrisk-b2': 'orrisk-c1' }),
      'cabling/light-voltage does-not-fit',
    ],
    [
      'orrisk-m2',
      'DDR5 on the k4 board for DDR4',
      but(tower, { 'orrisk-b2': 'orrisk-m2' }),
      'memory/generation does-not-fit',
    ],
    [
      'orrisk-w1',
      'plain memory on a board for registered',
      but(tower, {
        'lodden-28': 'lodden-50',
        'orrisk-b2': 'orrisk-w1',
        'quellin-5': 'quellin-w12',
        'skarn-mid': 'skarn-anvil',
      }),
      'memory/registered does-not-fit',
    ],
    [
      'tarn-50',
      'firmware 3 where 4 is needed',
      but(tower, { 'orrisk-b2': 'tarn-50', 'quellin-5': 'velm-30' }),
      'firmware/processor-family does-not-fit',
    ],
    [
      'quellin-2',
      'a system built for instructions it has not',
      [...but(tower, { 'quellin-5': 'quellin-2' }), 'yarrant-hithe-studio'],
      'firmware/instruction-level does-not-fit',
    ],
    [
      'quellin-9',
      '170 W on a board for 110',
      but(tower, { 'orrisk-b2': 'orrisk-m1', 'quellin-5': 'quellin-9' }),
      'socket/power-stage does-not-fit',
    ],
    [
      'skarn-loop-240',
      '52 mm of radiator and fans where the case leaves 50',
      but(tower, { 'lodden-28': 'lodden-35', 'skarn-mid': 'skarn-loop-240' }),
      'clearance/radiator-stack does-not-fit',
    ],
    [
      'skarn-still',
      'a cooler without a fan in a case without one',
      but(tower, { 'lodden-28': 'lodden-35', 'quellin-5': 'quellin-5-calm', 'skarn-mid': 'skarn-still' }),
      'cooling/passive-part does-not-fit',
    ],
    [
      'ebbe-glow',
      'a bracket that is not in the box',
      but(tower, { 'orrisk-b2': 'tarn-30', 'quellin-5': 'velm-40', 'skarn-mid': 'ebbe-glow' }),
      'cooling/cooler-bracket does-not-fit',
    ],
    [
      'tammer-48',
      'a module of 48 GB where one may hold 32',
      but(tower, { 'orrisk-b2': 'orrisk-m1', 'tammer-16': 'tammer-48' }),
      'memory/module-size does-not-fit',
    ],
    [
      'tammer-16-keen',
      '1.4 V promised on a board that gives 1.1',
      but(tower, { 'tammer-16': 'tammer-16-keen' }),
      'memory/voltage does-not-fit',
    ],
    [
      'tammer-e16',
      'error correction that board and processor pass by',
      but(tower, { 'tammer-16': 'tammer-e16' }),
      'memory/error-correction does-not-fit',
    ],
    [
      'pellam-2-used',
      'a lead for a card that the supply has not',
      [...but(tower, { 'fennick-550': 'dray-300' }), 'pellam-2-used'],
      'power/card-leads does-not-fit',
    ],
    [
      'pellam-10',
      '420 W from a lead that announces 300',
      [...but(tower, { 'lodden-28': 'lodden-40', 'fennick-550': 'dray-750' }), 'pellam-10'],
      'power/sense-rating does-not-fit',
    ],
    [
      'dray-750',
      'a lead that announces 300 W to a card of 420',
      [...but(tower, { 'lodden-28': 'lodden-40', 'fennick-550': 'dray-750' }), 'pellam-10'],
      'power/sense-rating does-not-fit',
    ],
    [
      'hask-deep-8tb',
      'eight terabytes under a system that reaches two',
      [...but(tower, { 'orrisk-b2': 'orrisk-b1' }), 'hask-deep-8tb', 'yarrant-hithe-2'],
      'firmware/system-disk-size does-not-fit',
    ],
    [
      'hask-thick-5tb',
      '15 mm of drive where the bay left takes 10',
      [...but(tower, { 'lodden-28': 'lodden-25', 'orrisk-b2': 'orrisk-m1' }), 'hask-deep-2tb', 'hask-thick-5tb'],
      'mounting/bay-free does-not-fit',
    ],
    [
      'marl-1tb-quick',
      'a drive of generation 5 in a slot of 4',
      but(tower, { 'marl-1tb': 'marl-1tb-quick' }),
      'storage/module-link-speed does-not-fit',
    ],
    [
      'dray-350',
      'four pins for the processor where eight are',
      but(tower, { 'fennick-550': 'dray-350' }),
      'power/processor-lead does-not-fit',
    ],
    [
      'dray-550-export',
      'a supply for 127 V on mains of 230',
      but(tower, { 'fennick-550': 'dray-550-export' }),
      'power/mains-voltage does-not-fit',
    ],
    [
      'ebbe-glow-120',
      'a light of 12 V on a board with pins for 5 V',
      [...but(tower, { 'orrisk-b2': 'orrisk-c1' }), 'ebbe-glow-120'],
      'cabling/light-voltage does-not-fit',
    ],
    ['skarn-92', 'a fan of 92 mm where no holes are', [...tower, 'skarn-92'], 'mounting/fan-size does-not-fit'],
    [
      'sollen-24-plain',
      'an arm for a monitor with a smooth back',
      [...but(tower, { 'sollen-27': 'sollen-24-plain' }), 'tollick-reach'],
      'mounting/arm-holes does-not-fit',
    ],
    [
      'sollen-27-keen',
      'ten bits a colour through a socket that carries eight',
      but(tower, { 'sollen-27': 'sollen-27-keen' }),
      'display/colour-depth does-not-fit',
    ],
    [
      'wexling-net-10',
      "a card that last year's system does not know",
      [...tower, 'wexling-net-10', 'yarrant-hithe-4'],
      'expansion/driver does-not-fit',
    ],
    [
      'wexling-usb-4',
      'a card with the older drive plug beside a small supply',
      [...but(tower, { 'fennick-550': 'fennick-small-450' }), 'tollick-plate-small', 'wexling-usb-4'],
      'power/drive-leads does-not-fit',
    ],
    [
      'wexling-modules-2',
      'eight lanes where the one long slot is taken',
      [...but(tower, { 'orrisk-b2': 'orrisk-m1' }), 'brindle-4', 'wexling-modules-2'],
      'expansion/slot-free does-not-fit',
    ],
    ['wexling-catch', 'a card of no recorded length', [...tower, 'wexling-catch'], 'clearance/added-card cannot-tell'],
    [
      'drenning-kept',
      'a round plug on a board of today',
      [...tower, 'drenning-kept'],
      'cabling/keyboard-plug does-not-fit',
    ],
    [
      'tollick-reach-light',
      '6.1 kg on an arm for 5',
      [...tower, 'tollick-reach-light'],
      'mounting/arm-weight does-not-fit',
    ],
    [
      'tollick-wall',
      'holes 200 mm apart for a monitor with 100',
      [...tower, 'tollick-wall'],
      'mounting/arm-holes does-not-fit',
    ],
    [
      'tollick-three-thin',
      'a machine and three monitors on three sockets',
      [...tower, 'brindle-4', 'sollen-22', 'sollen-24', 'tollick-three-thin'],
      'cabling/mains-socket does-not-fit',
    ],
    [
      'tollick-reel',
      'a reel whose sockets nobody counted',
      [...tower, 'tollick-reel'],
      'cabling/mains-socket cannot-tell',
    ],
    [
      'yarrant-hithe-5',
      'a system that asks for a security module',
      [...but(tower, { 'orrisk-b2': 'tarn-10', 'quellin-5': 'velm-40', 'tammer-16': 'corrow-8' }), 'yarrant-hithe-5'],
      'firmware/security-module does-not-fit',
    ],
    [
      'yarrant-hithe-studio',
      'a system built for newer instructions',
      [
        ...but(tower, { 'orrisk-b2': 'tarn-40', 'quellin-5': 'velm-20', 'tammer-16': 'corrow-16' }),
        'yarrant-hithe-studio',
      ],
      'firmware/instruction-level does-not-fit',
    ],
    [
      'yarrant-hithe-2',
      'a system that starts in the old way alone',
      [...tower, 'yarrant-hithe-2'],
      'firmware/boot-mode does-not-fit',
    ],
    [
      'tollick-picture-passive',
      'a passive adapter on a plain DisplayPort socket',
      [
        ...but(tower, { 'quellin-5': 'quellin-5-dark', 'sollen-27': 'sollen-22' }),
        'brindle-2',
        'sollen-24-plain',
        'tollick-picture-passive',
      ],
      'display/dual-mode does-not-fit',
    ],
    [
      'wexling-picture-back',
      'an adapter that goes the other way',
      [
        ...but(tower, { 'quellin-5': 'quellin-5-dark', 'sollen-27': 'sollen-22' }),
        'brindle-4',
        'sollen-24-plain',
        'wexling-picture-back',
      ],
      'display/adapter-direction does-not-fit',
    ],
    [
      'wexling-riser-16',
      'a thick card of generation 4 upright on a riser of 3, so that a small card has its slot',
      [
        ...but(tower, { 'orrisk-b2': 'tarn-40', 'quellin-5': 'velm-40', 'tammer-16': 'corrow-16' }),
        'pellam-4',
        'wexling-net-1',
        'wexling-radio',
        'wexling-riser-16',
      ],
      'expansion/link-width does-not-fit',
    ],
    [
      'tollick-fan-three',
      'two fans of 1.4 A on headers of 1, and a splitter that adds nothing',
      [...tower, 'ebbe-gust', 'ebbe-gust', 'tollick-fan-three'],
      'cabling/fan-header does-not-fit',
    ],
    [
      'tollick-card-eight',
      'an eight-pin plug at the end of a six-pin lead',
      [...but(tower, { 'fennick-550': 'dray-400' }), 'brindle-4', 'tollick-card-eight'],
      'power/card-leads does-not-fit',
    ],
    [
      'tollick-card-from-drives',
      'a card plug from two drive plugs',
      [...but(tower, { 'fennick-550': 'dray-400' }), 'brindle-4', 'tollick-card-from-drives'],
      'power/card-leads does-not-fit',
    ],
    [
      'tollick-picture-plug',
      'a plug that passes an analog picture on, on boards that make none',
      [
        ...but(tower, { 'orrisk-b2': 'tarn-20', 'quellin-5': 'velm-40', 'tammer-16': 'corrow-16' }),
        'sollen-paper-14',
        'tollick-picture-plug',
      ],
      'display/picture-socket does-not-fit',
    ],
    [
      'sollen-34-wide',
      '10.4 kg on an arm for 8',
      [...but(tower, { 'sollen-27': 'sollen-34-wide' }), 'tollick-reach'],
      'mounting/arm-weight does-not-fit',
    ],
    // Of about 1990.
    [
      'hulvane-tower-5',
      'a small diskette drive where no small bay opens to the front',
      but(narrow, { 'hulvane-desk-8': 'hulvane-tower-5' }),
      'mounting/drive-bay does-not-fit',
    ],
    [
      'hulvane-low-desk',
      'six cards behind five cut-outs',
      [
        ...but(wide, { 'hulvane-desk-8': 'hulvane-low-desk' }),
        'sprillock-net',
        'sprillock-sound',
        'vossock-shelf',
        'vossock-shelf',
      ],
      'expansion/slot-free does-not-fit',
    ],
    [
      'hulvane-old-desk',
      'small drives where both bays are wide',
      but(narrow, { 'hulvane-desk-8': 'hulvane-old-desk' }),
      'mounting/drive-bay does-not-fit',
    ],
    [
      'tarn-files-4',
      'a board of full width in a case for the narrow ones',
      but(four, { 'eskerby-four': 'tarn-files-4' }),
      'mounting/board-form does-not-fit',
    ],
    [
      'eskerby-wide',
      'two modules where a bank is four',
      but(wide, { 'tammer-1024-80': null }).concat('tammer-1024-80', 'tammer-1024-80'),
      'memory/bank-fill does-not-fit',
    ],
    [
      'eskerby-wide-33',
      'memory of 80 ns where 70 is asked for',
      but(wide, { 'eskerby-wide': 'eskerby-wide-33' }),
      'memory/bank-speed does-not-fit',
    ],
    [
      'orrisk-first',
      'a 16-bit card on a board of short slots',
      but(two, { 'eskerby-two': 'orrisk-first', 'velm-two-12': 'velm-one-8', 'tammer-1024-80': 'vossock-pin-256' }),
      'expansion/bus-slot does-not-fit',
    ],
    [
      'eskerby-bare',
      'a board without its manual',
      but(wide, { 'eskerby-wide': 'eskerby-bare' }),
      'memory/bank-speed cannot-tell',
    ],
    [
      'velm-two-12',
      'a 32-bit system on a 16-bit processor',
      [...but(two, { 'yarrant-base-4': 'yarrant-easel-2' }), 'tammer-1024-80', 'tammer-1024-80'],
      'firmware/instruction-level does-not-fit',
    ],
    [
      'velm-four-plain-20',
      'a coprocessor where the board has no socket for one',
      [...but(four, { 'velm-four-25': 'velm-four-plain-20' }), 'velm-reckoner-25'],
      'socket/coprocessor-place does-not-fit',
    ],
    [
      'quellin-four-double-50',
      'a processor that does not stay cool by itself',
      but(four, { 'velm-four-25': 'quellin-four-double-50' }),
      'cooling/no-cooling does-not-fit',
    ],
    [
      'vossock-clip-two',
      'a 32-bit system on a plug-in board of 16',
      [
        ...but(two, { 'velm-two-12': 'vossock-clip-two', 'yarrant-base-4': 'yarrant-easel-2' }),
        'tammer-1024-80',
        'tammer-1024-80',
      ],
      'firmware/instruction-level does-not-fit',
    ],
    [
      'eskerby-lift-tall',
      'a plug-in board for a wide board on a 16-bit one',
      but(two, { 'velm-two-12': 'eskerby-lift-tall' }),
      'socket/processor-board-socket does-not-fit',
    ],
    [
      'eskerby-lift-tall',
      'a plug-in board of 62 mm under bays at 30',
      but(wide, { 'hulvane-desk-8': 'hulvane-low-desk', 'velm-three-25': 'eskerby-lift-tall' }),
      'clearance/processor-board-height does-not-fit',
    ],
    [
      'ebbe-clip-fan',
      'a fan on a board without pins for one',
      [...four, 'ebbe-clip-fan'],
      'cabling/fan-header does-not-fit',
    ],
    [
      'dray-desk-150',
      'a diskette drive that finds no small plug',
      but(narrow, { 'hulvane-200': 'dray-desk-150' }),
      'power/drive-leads does-not-fit',
    ],
    [
      'hulvane-180-export',
      'a supply for 130 V on mains of 230',
      but(narrow, { 'hulvane-200': 'hulvane-180-export' }),
      'power/mains-voltage does-not-fit',
    ],
    [
      'dray-desk-180',
      'a supply without its label',
      but(narrow, { 'hulvane-200': 'dray-desk-180' }),
      'power/mains-voltage cannot-tell',
    ],
    [
      'dorrenby-colour-14',
      'a monitor of one fixed rate on a card that sends another',
      but(narrow, { 'sollen-paper-14': 'dorrenby-colour-14', 'sollen-array-256': 'dorrenby-mono' }),
      'display/scan-rate does-not-fit',
    ],
    [
      'dorrenby-sixteen',
      'a card whose rate the one-colour monitor does not follow',
      but(narrow, { 'sollen-paper-14': 'dorrenby-amber-12', 'sollen-array-256': 'dorrenby-sixteen' }),
      'display/scan-rate does-not-fit',
    ],
    [
      'dorrenby-stray-14',
      'a monitor without its label',
      but(narrow, { 'sollen-paper-14': 'dorrenby-stray-14', 'sollen-array-256': 'dorrenby-mono' }),
      'display/scan-rate cannot-tell',
    ],
    [
      'sollen-tint-14',
      'pictures beyond a fixed monitor',
      but(narrow, { 'sollen-paper-14': 'sollen-tint-14', 'sollen-array-256': 'sollen-array-1024' }),
      'display/mode-choice does-not-fit',
    ],
    [
      'sollen-array-1024',
      'pictures that a fixed monitor does not show',
      but(narrow, { 'sollen-array-256': 'sollen-array-1024' }),
      'display/mode-choice does-not-fit',
    ],
    [
      'sollen-array-local',
      'a card for the local slot on a board without',
      but(narrow, { 'sollen-array-256': 'sollen-array-local' }),
      'expansion/bus-slot does-not-fit',
    ],
    [
      'tammer-256-120',
      'memory of 120 ns where 80 is asked for',
      but(narrow, { 'tammer-1024-80': 'tammer-256-120' }),
      'memory/bank-speed does-not-fit',
    ],
    [
      'vossock-1024-eight',
      'memory without parity on a board that asks for it',
      but(narrow, { 'tammer-1024-80': 'vossock-1024-eight' }),
      'memory/bank-parity does-not-fit',
    ],
    [
      'vossock-4096-70',
      'four megabytes a module where one is the most',
      but(two, { 'tammer-1024-80': 'vossock-4096-70' }),
      'memory/bank-module-size does-not-fit',
    ],
    [
      'vossock-pin-1024',
      'pins in a socket for contacts',
      but(narrow, { 'tammer-1024-80': 'vossock-pin-1024' }),
      'memory/bank-pins does-not-fit',
    ],
    [
      'corrow-stray-1024',
      'memory whose speed nobody printed on it',
      but(narrow, { 'tammer-1024-80': 'corrow-stray-1024' }),
      'memory/bank-speed cannot-tell',
    ],
    [
      'vossock-sum-16',
      'a coprocessor for 16 MHz at 25',
      [...wide, 'vossock-sum-16'],
      'socket/coprocessor-clock does-not-fit',
    ],
    [
      'vossock-sum-flat-16',
      '68 contacts of the other sort',
      [...wide, 'vossock-sum-flat-16'],
      'socket/coprocessor-socket does-not-fit',
    ],
    [
      'sprillock-older-disk',
      'a disk of 40 pins and a card for two ribbons',
      but(narrow, { 'sprillock-all': 'sprillock-older-disk' }),
      'storage/drive-port does-not-fit',
    ],
    [
      'sprillock-short-floppy',
      'a controller of 300 kbit/s and a drive of 500',
      but(narrow, { 'sprillock-all': 'sprillock-short-floppy' }),
      'storage/floppy-rate does-not-fit',
    ],
    [
      'sprillock-sound-old',
      'two cards that keep interrupt 7',
      [
        ...but(narrow, { 'sollen-array-256': 'dorrenby-mono', 'sollen-paper-14': 'dorrenby-amber-12' }),
        'sprillock-sound-old',
      ],
      'expansion/bus-lines does-not-fit',
    ],
    [
      'sprillock-net-short',
      'interrupts 3 and 5, both held',
      [
        'hulvane-desk-8',
        'eskerby-narrow',
        'velm-narrow-20',
        'sprillock-ports',
        'sprillock-sound-old',
        'sprillock-net-short',
      ],
      'expansion/bus-lines does-not-fit',
    ],
    [
      'thrannet-35-720',
      'a system on diskettes that the drive cannot read',
      but(narrow, { 'thrannet-35-1440': 'thrannet-35-720' }),
      'storage/system-diskettes does-not-fit',
    ],
    [
      'thrannet-525-360',
      'diskettes of 1.2 MB and a drive for 360 kB',
      [...narrow, 'thrannet-525-360', 'thrannet-box-1200'],
      'storage/diskette-format does-not-fit',
    ],
    [
      'thrannet-35-2880',
      'a drive of 1,000 kbit/s on a controller of 500',
      but(narrow, { 'thrannet-35-1440': 'thrannet-35-2880' }),
      'storage/floppy-rate does-not-fit',
    ],
    [
      'thrannet-box-1200',
      'diskettes that no drive reads',
      [...narrow, 'thrannet-box-1200'],
      'storage/diskette-format does-not-fit',
    ],
    [
      'thrannet-box-2880',
      'diskettes denser than the drive',
      [...narrow, 'thrannet-box-2880'],
      'storage/diskette-format does-not-fit',
    ],
    [
      'ledger-letters',
      'diskettes of a format nobody wrote down',
      [...narrow, 'ledger-letters'],
      'storage/diskette-format cannot-tell',
    ],
    [
      'thrannet-full-40',
      'a disk of full height in half a bay',
      but(narrow, { 'hask-80': 'thrannet-full-40', 'sprillock-all': 'sprillock-older-disk' }),
      'mounting/drive-bay does-not-fit',
    ],
    [
      'thrannet-dense-60',
      'a disk of two ribbons on a card for one',
      but(narrow, { 'hask-80': 'thrannet-dense-60' }),
      'storage/drive-port does-not-fit',
    ],
    [
      'thrannet-dense-60',
      'a disk of 26 sectors a track on a card that writes 17',
      but(narrow, { 'hask-80': 'thrannet-dense-60', 'sprillock-all': 'sprillock-older-disk' }),
      'storage/disk-density does-not-fit',
    ],
    [
      'hask-540',
      'cylinders beyond 1,024',
      but(narrow, { 'hask-80': 'hask-540' }),
      'storage/disk-addressing does-not-fit',
    ],
    [
      'thrannet-stray',
      'a disk of no recorded size',
      but(narrow, { 'hask-80': 'thrannet-stray' }),
      'storage/disk-addressing cannot-tell',
    ],
    [
      'drenning-office',
      'a small round plug and a large round socket',
      but(narrow, { 'drenning-plain-din': 'drenning-office' }),
      'cabling/keyboard-plug does-not-fit',
    ],
    [
      'drenning-mouse-25',
      '25 pins and ports of nine',
      [
        ...but(narrow, { 'drenning-mouse-9': 'drenning-mouse-25', 'sprillock-all': 'sprillock-disk' }),
        'sprillock-ports',
      ],
      'cabling/pointer-plug does-not-fit',
    ],
    [
      'drenning-office-mouse',
      'a mouse for a socket the board has not',
      but(narrow, { 'drenning-mouse-9': 'drenning-office-mouse' }),
      'cabling/pointer-plug does-not-fit',
    ],
    [
      'yarrant-easel-1',
      'a system on large diskettes and a small drive',
      but(narrow, { 'yarrant-base-4': 'yarrant-easel-1' }),
      'storage/system-diskettes does-not-fit',
    ],
    [
      'yarrant-easel-2',
      'a system for 32 bits on a processor of 16',
      [...but(two, { 'yarrant-base-4': 'yarrant-easel-2' }), 'tammer-1024-80', 'tammer-1024-80'],
      'firmware/instruction-level does-not-fit',
    ],
  ];
  test.each(rows)('%s: %s', (trap, _, ids, finding) => {
    expect(parts.find(({ id }) => id === trap)?.trap).toBeDefined();
    expect(ids).toContain(trap);
    expect(findings(ids)).toContain(finding);
  });
});

describe('the museum brief', () => {
  const earned = (ids: readonly PartId[]) => {
    const list = [...new Set(ids)].map((part) => ({ part, quantity: ids.filter((id) => id === part).length }));
    return mark(choosing, { kind: 'choose', list }, parts);
  };
  const sumOf = (ids: readonly PartId[]) =>
    ids.reduce((sum, id) => sum + (parts.find((part) => part.id === id)?.priceCents ?? Number.NaN), 0);
  const lost = (ids: readonly PartId[]) =>
    earned(ids).lines.flatMap(({ line, marks, of }) => (marks < of ? [line] : []));

  test('the answer costs €932, as its sum says', () => {
    expect(sumOf(choosing.answer.flatMap(({ part, quantity }) => Array<PartId>(quantity).fill(part)))).toBe(93200);
  });

  test('has a right answer of quite another kind', () => {
    // 64 + 89 + 159 + 34 + 2 × 79 + 129 + 98 + 34 + 174 = 939; 2,000 + 4,000 GB; 560 points.
    const other = [
      'lodden-20',
      'tarn-40',
      'velm-40',
      'skarn-mid',
      'corrow-16',
      'corrow-16',
      'marl-2tb',
      'hask-deep-4tb',
      'dray-300',
      'sollen-27',
    ];
    expect(sumOf(other)).toBe(93900);
    expect(lost(other)).toEqual([]);
  });

  test('the cheapest of everything neither fits nor serves', () => {
    const cheapest = ['lodden-25', 'tarn-10', 'velm-20', 'ebbe-flat', 'corrow-8', 'hask-stub', 'dray-300', 'sollen-19'];
    expect(lost(cheapest)).toEqual(['fits', 'known', 'memory', 'storage', 'processing', 'lines']);
  });

  test('a graphics card that nobody asked for takes the money', () => {
    const answer = choosing.answer.flatMap(({ part, quantity }) => Array<PartId>(quantity).fill(part));
    expect(lost([...answer, 'brindle-4'])).toEqual(['budget']);
  });
});

test('the list left at the Net Loft has four faults, one thing untold and three sound joints', () => {
  const loft = content.exercises.find((one): one is MisfitsExercise => one.id === 'the-loft-list');
  const report = loft && reportOf(loft, parts);
  const verdicts = loft?.statements.map((one) => [one.id, report && findingFor(one, report)?.verdict]);
  expect(Object.fromEntries(verdicts ?? [])).toEqual({
    firmware: 'does-not-fit',
    'card-room': 'does-not-fit',
    'card-leads': 'does-not-fit',
    'memory-room': 'does-not-fit',
    'cooler-room': 'cannot-tell',
    'memory-kind': 'fits',
    'board-size': 'fits',
    'drive-key': 'fits',
  });
  const blockers = report?.findings.filter(({ verdict, severity }) => verdict !== 'fits' && severity !== 'note');
  expect(blockers).toHaveLength(5);
});
