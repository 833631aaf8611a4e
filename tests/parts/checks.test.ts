import { describe, expect, test } from 'vitest';
import { aPart } from '../../src/fit/examples.ts';
import type { SenseFault } from '../../src/parts/checks/check.ts';
import { senseChecks } from '../../src/parts/checks/index.ts';
import { type Part, type PartClass, type PartOf, partClasses } from '../../src/parts/part.ts';
import { content } from '../helpers/content.ts';

const faultsOf = (id: string, ...parts: Part[]): SenseFault[] =>
  senseChecks.find((one) => one.id === id)?.check(parts) ?? [];
const changed = <C extends PartClass>(of: C, change: Partial<PartOf<C>>, shelf?: 'vintage') =>
  ({ ...aPart(of, shelf), ...change }) as unknown as Part;

/** What makes no sense, its nearest neighbour that does, and where the fault stands. */
const cases: readonly (readonly [check: string, wrong: Part, right: Part, path: SenseFault['path']])[] = [
  [
    'adapter-ends',
    changed('adapter', { outs: [{ id: 'out', kind: 'fan-header', attrs: { pins: 4 }, after: ['inn'] }] }),
    changed('adapter', { outs: [{ id: 'out', kind: 'fan-header', attrs: { pins: 4 }, after: ['in'] }] }),
    ['outs', 0, 'after', 0],
  ],
  [
    'board-memory',
    changed('motherboard', { memory: { slots: [{ id: 'a1', channel: 'a' }], moduleGb: 32, totalGb: 33 } }),
    changed('motherboard', { memory: { slots: [{ id: 'a1', channel: 'a' }], moduleGb: 32, totalGb: 32 } }),
    ['memory', 'totalGb'],
  ],
  [
    'board-memory',
    changed(
      'motherboard',
      { memoryBanks: [{ id: 'b', slots: 4, pins: '30', largestKb: 1024 }], memoryTotalKb: 4097 },
      'vintage',
    ),
    changed(
      'motherboard',
      { memoryBanks: [{ id: 'b', slots: 4, pins: '30', largestKb: 1024 }], memoryTotalKb: 4096 },
      'vintage',
    ),
    ['memoryTotalKb'],
  ],
  [
    'board-names',
    changed('motherboard', { sataPorts: 3 }),
    changed('motherboard', { sataPorts: 4 }),
    ['moduleSlots', 1, 'switchesOff', 0],
  ],
  [
    'board-outline',
    changed('motherboard', { formFactor: 'mini-itx', depthMm: 172, heightMm: 170 }),
    changed('motherboard', { formFactor: 'mini-itx', depthMm: 171, heightMm: 170 }),
    ['depthMm'],
  ],
  [
    // 75 W from the slot and 150 W from one 8-pin socket.
    'card-power',
    changed('graphics-card', { sustainedW: 226, peakW: 300, powerSockets: ['pcie-8'] }),
    changed('graphics-card', { sustainedW: 225, peakW: 300, powerSockets: ['pcie-8'] }),
    ['sustainedW'],
  ],
  [
    'disk-size',
    changed('fixed-disk', { capacityMb: 210 }),
    // 900 × 15 × 17 × 512 bytes are 117.5 million.
    changed('fixed-disk', { capacityMb: 117 }),
    ['capacityMb'],
  ],
  ['drive-build', changed('storage-drive', { build: '2.5' }), changed('storage-drive', {}), ['key']],
  [
    'fan-room',
    changed('chassis', { fanPanels: [{ id: 'rear', sizesMm: [120], units: 1 }] }),
    changed('chassis', { fanPanels: [{ id: 'rear', sizesMm: [120], units: 2 }] }),
    ['fittedFans', 0],
  ],
  [
    'offers-price',
    changed('fan', { priceCents: 900, offers: [{ shop: 'quayside', date: '2026-10-01', priceCents: 1000 }] }),
    changed('fan', { priceCents: 1000, offers: [{ shop: 'quayside', date: '2026-10-01', priceCents: 1000 }] }),
    ['priceCents'],
  ],
  [
    'power-order',
    changed('processor', { sustainedW: 91, peakW: 90 }),
    changed('processor', { sustainedW: 90, peakW: 90 }),
    ['peakW'],
  ],
  [
    'supply-leads',
    changed('power-supply', { ratedW: 450, leads: [{ id: 'card', plugs: ['pcie-8'], carriesW: 451 }] }),
    changed('power-supply', { ratedW: 450, leads: [{ id: 'card', plugs: ['pcie-8'], carriesW: 450 }] }),
    ['leads', 0, 'carriesW'],
  ],
  [
    // Three 8-pin plugs are rated for 450 W together, two for 300 W.
    'supply-leads',
    changed('power-supply', { ratedW: 400, leads: [{ id: 'card', plugs: ['pcie-8', 'pcie-8', 'pcie-8'] }] }),
    changed('power-supply', { ratedW: 400, leads: [{ id: 'card', plugs: ['pcie-8', 'pcie-8'] }] }),
    ['leads'],
  ],
  [
    // 16.7 A at 12 V are 200.4 W.
    'supply-rails',
    changed('power-supply', { ratedW: 200, rails: [{ id: '12v', milliamps: 16_700 }] }),
    changed('power-supply', { ratedW: 200, rails: [{ id: '12v', milliamps: 16_600 }] }),
    ['rails', 0, 'milliamps'],
  ],
];

describe('a catalogue that makes no sense is told so, and its nearest neighbour is not', () => {
  test.each(cases.map(([check, ...rest], n) => [`${check} (${n + 1})`, check, ...rest] as const))(
    '%s',
    (_, check, wrong, right, path) => {
      expect(faultsOf(check, wrong).map((fault) => fault.path)).toEqual([path]);
      expect(faultsOf(check, right)).toEqual([]);
    },
  );

  test('a price ten times the median of its class', () => {
    const fan = (id: string, priceCents: number) => changed('fan', { id, priceCents });
    const five = ['a', 'b', 'c', 'd'].map((id) => fan(id, 1000));
    expect(faultsOf('price-outlier', ...five, fan('e', 10_000)).map(({ part }) => part)).toEqual(['e']);
    expect(faultsOf('price-outlier', ...five, fan('e', 9999))).toEqual([]);
    expect(faultsOf('price-outlier', ...five, fan('e', 100)).map(({ part }) => part)).toEqual(['e']);
    expect(faultsOf('price-outlier', ...five, fan('e', 101))).toEqual([]);
    // Of four prices there is no median worth the name.
    expect(faultsOf('price-outlier', fan('a', 1), fan('b', 2), fan('c', 1000), fan('d', 1000))).toEqual([]);
  });

  test('a large module may cost ten times the median, if its price for its size is like the others', () => {
    const bank = (id: string, capacityKb: number, priceCents: number) =>
      changed('bank-module', { id, capacityKb, priceCents });
    const small = ['a', 'b', 'c', 'd'].map((id) => bank(id, 1024, 4000));
    expect(faultsOf('price-outlier', ...small, bank('e', 16_384, 64_000))).toEqual([]);
    expect(faultsOf('price-outlier', ...small, bank('e', 1024, 40_000)).map(({ part }) => part)).toEqual(['e']);
  });

  test('every check is shown by a case', () => {
    const shown = new Set([...cases.map(([check]) => check), 'price-outlier']);
    expect(senseChecks.map(({ id }) => id).filter((id) => !shown.has(id))).toEqual([]);
  });
});

test('parts that record nothing but their names make no fault of sense', () => {
  for (const of of partClasses) {
    const { class: partClass, id, name, maker, source } = aPart(of);
    const bare = {
      class: partClass,
      id,
      name,
      maker,
      source,
      ...('build' in aPart(of) ? { build: '3.5' } : {}),
    } as unknown as Part;
    for (const { check } of senseChecks) expect(check([bare])).toEqual([]);
  }
});

test('the catalogue makes sense', () => {
  expect(senseChecks.flatMap(({ check }) => check(content.parts))).toEqual([]);
});
