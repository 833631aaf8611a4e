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
    expect(
      report.findings.filter(({ verdict }) => verdict !== 'fits').map(({ id: finding }) => finding),
      id,
    ).toEqual([]);
    expect(report.overall, id).toBe('fits');
  }
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
