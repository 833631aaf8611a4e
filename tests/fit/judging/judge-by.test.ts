import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { exampleList } from '../../../src/fit/examples.ts';
import { judgeBy } from '../../../src/fit/judging/judge-by.ts';
import type { Finding } from '../../../src/fit/report.ts';
import type { ExampleParts, Rule } from '../../../src/fit/rule.ts';
import { partClasses } from '../../../src/parts/part.ts';
import { anyList } from '../../helpers/any-part.ts';
import * as small from './small-rules.ts';

const all: Rule[] = Object.values(small);
const report = (parts: ExampleParts, rules: Rule[] = all) => judgeBy(rules)(exampleList(parts));
const findings = (parts: ExampleParts, rule: Rule): Finding[] =>
  report(parts).findings.filter((one) => one.rule === rule.id);
const one = (parts: ExampleParts, rule: Rule): Finding => {
  const found = findings(parts, rule);
  expect(found).toHaveLength(1);
  return found[0] as Finding;
};

/** One plain part of each class that makes up a current machine. */
const machine: ExampleParts = Object.fromEntries(partClasses.slice(0, 10).map((partClass) => [partClass, {}]));

const board = (slots: number, memory: object = { generation: 'ddr5', moduleGb: 32, registered: false }) => ({
  memory: {
    slots: Array.from({ length: slots }, (_, n) => ({ id: `s${n + 1}`, channel: `${n % 2}` })),
    ...memory,
  },
});

describe('a test of the hookup', () => {
  test('fits: the two values and the two parts', () => {
    expect(one({ processor: {}, motherboard: {} }, small.socket)).toEqual({
      id: 'test/socket processor-1/socket → motherboard-1/socket',
      rule: 'test/socket',
      verdict: 'fits',
      severity: 'blocker',
      basis: 'maker',
      about: ['processor-1', 'motherboard-1'],
      joint: 'processor-1/socket → motherboard-1/socket',
      facts: { part: 'Plain processor', on: 'Plain motherboard', need: 'k4', offered: 'k4', difference: null },
    });
  });

  test('does not fit: worded by the test that refused', () => {
    const finding = one({ processor: { socket: 'n9' }, motherboard: {} }, small.socket);
    expect(finding).toMatchObject({
      id: 'test/socket processor-1/socket',
      verdict: 'does-not-fit',
      need: 'processor-1/socket',
      facts: { need: 'n9', offered: 'k4' },
    });
  });

  test('cannot tell: which field of which unit is not recorded', () => {
    expect(one({ cooler: { mountings: undefined }, motherboard: {} }, small.mounting)).toMatchObject({
      verdict: 'cannot-tell',
      facts: {},
      missing: ['cooler-1.mountings'],
    });
    expect(one({ cooler: {}, motherboard: { coolerMountings: undefined } }, small.mounting).missing).toEqual([
      'motherboard-1.coolerMountings',
    ]);
    const noSize = { generation: 'ddr5', registered: false };
    expect(one({ 'memory-module': {}, motherboard: board(2, noSize) as object }, small.size).missing).toEqual([
      'motherboard-1.memory.moduleGb',
    ]);
  });

  test('equal parts with equal facts are told once, and all are named', () => {
    const finding = one({ 'memory-module': [{}, {}], motherboard: board(2) as object }, small.generation);
    expect(finding.about).toEqual(['memory-module-1', 'memory-module-2', 'motherboard-1']);
    expect(finding.facts['part']).toBe('Plain memory module');
  });

  test('parts that differ are told apart', () => {
    const list = { 'memory-module': [{ capacityGb: 8 }, { capacityGb: 16 }], motherboard: board(2) as object };
    expect(findings(list, small.size).map(({ facts }) => [facts['part'], facts['difference']])).toEqual([
      ['Plain memory module', 24],
      ['Plain memory module 2', 16],
    ]);
  });
});

describe('a need left over', () => {
  test('one fault, one message: the test that was got to last is told, and no other rule says it again', () => {
    const list = { 'memory-module': { capacityGb: 64 }, motherboard: board(4) as object };
    expect(one(list, small.size)).toMatchObject({
      verdict: 'does-not-fit',
      facts: { need: 64, offered: 32, difference: 32 },
    });
    expect(findings(list, small.generation)).toEqual([]);
    expect(findings(list, small.slotsFree)).toEqual([]);
  });

  test('of places that refuse by the same test, the nearest miss is told', () => {
    const list = {
      'memory-module': { capacityGb: 64 },
      motherboard: [board(1) as object, board(1, { generation: 'ddr5', moduleGb: 48, registered: false }) as object],
    };
    expect(one(list, small.size).facts).toMatchObject({ on: 'Plain motherboard 2', difference: 16 });
  });

  test('five equal modules and four slots: the fifth has none, the others have', () => {
    const list = { 'memory-module': [{}, {}, {}, {}, {}], motherboard: board(4) as object };
    const [bad, good] = findings(list, small.slotsFree);
    expect(bad).toMatchObject({
      verdict: 'does-not-fit',
      need: 'memory-module-5/edge',
      about: ['memory-module-5'],
      facts: {
        part: 'Plain memory module (5th)',
        needName: 'edge',
        reason: 'taken',
        places: 4,
        mating: 4,
        wanting: 5,
        holders: ['Plain memory module (1st, 2nd, 3rd and 4th)'],
      },
    });
    expect(good).toMatchObject({ verdict: 'fits', facts: { reason: 'joined', part: expect.stringContaining('1st') } });
  });

  test('nothing on the list offers the kind', () => {
    expect(one({ 'memory-module': {} }, small.slotsFree).facts).toMatchObject({
      reason: 'none-offered',
      places: 0,
      mating: 0,
      wanting: 1,
    });
  });

  test('a list of places that is not recorded gives no verdict', () => {
    expect(one({ 'memory-module': {}, motherboard: { memory: undefined } }, small.slotsFree)).toMatchObject({
      verdict: 'cannot-tell',
      missing: ['motherboard-1.memory'],
    });
  });

  test('absent: it waits for a part that has itself no place, and keeps its own severity', () => {
    const list = { processor: {}, motherboard: {}, cooler: { mountings: ['wide-94'] } };
    expect(one(list, small.mounting)).toMatchObject({ verdict: 'does-not-fit', severity: 'blocker' });
    expect(one(list, small.cooling)).toMatchObject({
      verdict: 'does-not-fit',
      severity: 'hazard',
      facts: { reason: 'absent', waitsFor: 'Plain cooler', places: 1 },
    });
  });

  test('the third data port is off while a drive sits in the slot that shares it', () => {
    const motherboard = {
      sataPorts: 3,
      moduleSlots: [
        { id: 'm2-1', key: 'm', lengthsMm: [80], links: ['pcie'], lanes: 4, generation: 4, switchesOff: ['sata-3'] },
      ],
    } as object;
    const box = { build: '2.5' } as const;
    const finding = findings({ motherboard, 'storage-drive': [{}, box, box, box] }, small.dataPort)[0];
    expect(finding).toMatchObject({
      verdict: 'does-not-fit',
      facts: {
        part: 'Plain storage drive 2 (3rd)',
        reason: 'spent',
        capacity: 1,
        wanted: 2,
        holders: ['Plain storage drive'],
      },
    });
  });

  test('a card below the last cut-out, and a card covered by its neighbour', () => {
    const slot = (position: number) => ({ id: `s${position}`, position, lengthLanes: 16, lanes: 16, generation: 4 });
    const low = { motherboard: { expansionSlots: [slot(7)] }, chassis: { cutOuts: 7 }, 'graphics-card': {} };
    expect(one(low, small.cardSlot).facts).toMatchObject({ reason: 'spent', capacity: 0 });
    const tight = {
      motherboard: { expansionSlots: [slot(1), slot(2)] },
      chassis: {},
      'graphics-card': [{ slotsThick: 3 }, { slotsThick: 3 }],
    };
    expect(findings(tight, small.cardSlot)[0]?.facts).toMatchObject({ reason: 'spent', capacity: 2 });
  });

  test('the severity is the one of the need: a second processor lead is a note', () => {
    const list = {
      motherboard: { powerSockets: ['atx-24', 'eps-8', 'eps-8'] },
      'power-supply': { leads: [{ id: 'processor', plugs: ['eps-8'] }] },
    } as ExampleParts;
    expect(findings(list, small.processorLead).map(({ verdict, severity }) => [verdict, severity])).toEqual([
      ['does-not-fit', 'note'],
      ['fits', 'blocker'],
    ]);
  });
});

describe('a kind whose plug is its only test', () => {
  const supply = (plugs: string[]) =>
    ({ leads: plugs.map((plug, n) => ({ id: `l${n}`, plugs: [plug] })) }) as ExampleParts['power-supply'];
  const card = (powerSockets: string[]) => ({ powerSockets }) as ExampleParts['graphics-card'];

  test('no such plug anywhere: refused, in one finding for both sockets', () => {
    const list = { 'graphics-card': card(['pcie-8', 'pcie-8']), 'power-supply': supply(['pcie-6']) } as ExampleParts;
    expect(one(list, small.cardLeads)).toMatchObject({
      verdict: 'does-not-fit',
      about: ['graphics-card-1'],
      facts: { needName: 'pcie-8', reason: 'refused', places: 1, mating: 0, wanting: 2 },
    });
  });

  test('one plug too few: taken, and the one plug counts as fitting', () => {
    const list = { 'graphics-card': card(['pcie-8', 'pcie-8']), 'power-supply': supply(['pcie-8', 'pcie-6']) };
    expect(
      findings(list as ExampleParts, small.cardLeads).map(({ verdict, facts }) => [verdict, facts['reason']]),
    ).toEqual([
      ['does-not-fit', 'taken'],
      ['fits', 'joined'],
    ]);
  });

  test('a lead that carries less than the card may draw is spent', () => {
    const leads = { leads: [{ id: 'card', plugs: ['pcie-8', 'pcie-8'], carriesW: 225 }] };
    const list = { 'graphics-card': card(['pcie-8', 'pcie-8']), 'power-supply': leads } as ExampleParts;
    expect(findings(list, small.cardLeads)[0]?.facts).toMatchObject({
      reason: 'spent',
      capacity: 2250,
      wanted: 3000,
      holders: ['Plain graphics card'],
    });
  });

  test('sockets that are not recorded give no verdict', () => {
    const list = { 'graphics-card': { powerSockets: undefined }, 'power-supply': {} };
    expect(one(list, small.cardLeads)).toMatchObject({
      verdict: 'cannot-tell',
      about: ['graphics-card-1'],
      missing: ['graphics-card-1.powerSockets'],
    });
  });

  test('leads that are not recorded give no verdict', () => {
    const list = { 'graphics-card': {}, 'power-supply': { leads: undefined } };
    expect(one(list, small.cardLeads).missing).toEqual(['power-supply-1.leads']);
  });
});

describe('an amount that is not recorded', () => {
  test('a card of unknown thickness is joined, and its slot is not judged', () => {
    const list = { motherboard: {}, 'graphics-card': { slotsThick: undefined } };
    expect(one(list, small.cardSlot)).toMatchObject({
      verdict: 'cannot-tell',
      missing: ['graphics-card-1.slotsThick'],
      joint: expect.stringContaining('graphics-card-1/edge'),
    });
  });

  test('unknown cut-outs hold for every card', () => {
    const list = { motherboard: {}, chassis: { cutOuts: undefined }, 'graphics-card': {} };
    expect(one(list, small.cardSlot).missing).toEqual(['chassis-1.cutOuts']);
  });

  test('a processor that may or may not draw pictures: no verdict on the monitor', () => {
    const list = { motherboard: {}, processor: { hasGraphics: undefined }, monitor: {} };
    expect(one(list, small.picture)).toMatchObject({
      verdict: 'cannot-tell',
      missing: ['processor-1.hasGraphics'],
    });
  });
});

describe('a rule at a joint', () => {
  test('gets what is lost there: a card of 16 lanes in a slot of 4', () => {
    // 31,507 MB/s wanted, 7,876 MB/s offered: generation 4 carries 16 GT/s × 128/130 ÷ 8 for each lane.
    const slot = { id: 's', position: 1, lengthLanes: 16, lanes: 4, generation: 4 };
    expect(one({ motherboard: { expansionSlots: [slot] }, 'graphics-card': {} }, small.linkWidth)).toMatchObject({
      verdict: 'does-not-fit',
      severity: 'limit',
      about: ['graphics-card-1', 'motherboard-1'],
      facts: { lost: 31_507 - 7_876 },
    });
  });
});

describe('a rule that joins classes', () => {
  test('runs once for each combination of unequal parts', () => {
    const list = { cooler: [{ heightMm: 150 }, { heightMm: 170 }], chassis: [{}, { coolerHeightMm: 200 }] };
    expect(findings(list, small.height).map(({ about, verdict }) => [about.join(' '), verdict])).toEqual([
      ['cooler-2 chassis-1', 'does-not-fit'],
      ['cooler-1 chassis-1', 'fits'],
      ['cooler-1 chassis-2', 'fits'],
      ['cooler-2 chassis-2', 'fits'],
    ]);
  });

  test('tells equal parts once', () => {
    expect(one({ cooler: [{}, {}], chassis: {} }, small.height).about).toEqual(['cooler-1', 'cooler-2', 'chassis-1']);
  });

  test('names the unit whose field is not recorded', () => {
    expect(one({ cooler: [{}, {}], chassis: { coolerHeightMm: undefined } }, small.height)).toMatchObject({
      verdict: 'cannot-tell',
      missing: ['chassis-1.coolerHeightMm'],
      about: ['chassis-1'],
    });
  });

  test('tells a field that is not recorded once, whatever it is combined with', () => {
    expect(
      one({ cooler: { heightMm: undefined }, chassis: [{}, { coolerHeightMm: 200 }] }, small.height),
    ).toMatchObject({
      verdict: 'cannot-tell',
      missing: ['cooler-1.heightMm'],
    });
  });

  test('does not run without one part of each class', () => {
    expect(findings({ cooler: {} }, small.height)).toEqual([]);
  });
});

describe('a rule that gathers', () => {
  test('runs once over all units', () => {
    const list = { 'memory-module': [{}, {}, { capacityGb: 32 }], motherboard: {} };
    expect(one(list, small.total).facts).toEqual({ inAll: 64, limit: 128 });
  });

  test('may say which units it is about', () => {
    const list = { 'memory-module': [{ capacityGb: 128 }, {}], motherboard: {} };
    expect(one(list, small.total)).toMatchObject({ verdict: 'does-not-fit', about: ['motherboard-1'] });
  });

  test('names each unit that does not record the field, and a field within a field', () => {
    const list = { 'memory-module': [{}, { capacityGb: undefined }, { capacityGb: undefined }], motherboard: {} };
    expect(one(list, small.total)).toMatchObject({
      missing: ['memory-module-2.capacityGb', 'memory-module-3.capacityGb'],
      about: ['memory-module-2', 'memory-module-3'],
    });
    const noTotal = { 'memory-module': {}, motherboard: board(2) as object };
    expect(one(noTotal, small.total).missing).toEqual(['motherboard-1.memory.totalGb']);
  });
});

describe('a rule on a budget', () => {
  test('names the part that sets the limit', () => {
    expect(one({ processor: {}, 'power-supply': {} }, small.load)).toMatchObject({
      verdict: 'fits',
      about: ['power-supply-1'],
      facts: { used: 900, limit: 5500 },
    });
  });
});

describe('the report', () => {
  test('an empty list is judged, and nothing is found', () => {
    expect(report({})).toMatchObject({ units: [], joints: [], left: [], findings: [], overall: 'cannot-tell' });
  });

  test('a list on which nothing that matters was judged is no list that fits', () => {
    expect(report({ fan: {} }).overall).toBe('cannot-tell');
    expect(report(machine, [small.height]).overall).toBe('fits');
  });

  test('a need that matters, left over, keeps a list from fitting though no rule words it', () => {
    expect(report({ cooler: {}, chassis: {} }, [small.height])).toMatchObject({
      overall: 'cannot-tell',
      findings: [{ verdict: 'fits' }],
    });
  });

  test('a limit still fits', () => {
    const slot = { id: 's', position: 1, lengthLanes: 16, lanes: 4, generation: 4 };
    const list = { ...machine, motherboard: { expansionSlots: [slot] } };
    const { findings: found, overall } = report(list, [small.linkWidth, small.cardSlot]);
    expect(found[0]).toMatchObject({ verdict: 'does-not-fit', severity: 'limit' });
    expect(overall).toBe('fits');
  });

  test('what cannot be told of a blocker keeps the whole from fitting', () => {
    expect(report({ cooler: { heightMm: undefined }, chassis: {} }, [small.height]).overall).toBe('cannot-tell');
  });

  test('the worst comes first', () => {
    const list = { processor: { socket: 'n9' }, motherboard: {}, cooler: { heightMm: undefined }, chassis: {} };
    expect(report(list, [small.height, small.cooling, small.socket]).findings.map(({ id }) => id)).toEqual([
      'test/socket processor-1/socket',
      'test/height cooler-1',
      'test/cooling processor-1/cooling → cooler-1/cooling',
    ]);
  });

  test('needs left over are listed with their severity and reasons', () => {
    const [left] = report({ processor: {} }, [small.cooling]).left;
    expect(left).toEqual({
      need: 'processor-1/cooling',
      part: 'processor-1',
      kind: 'cooling',
      severity: 'hazard',
      why: expect.objectContaining({ reasons: [{ why: 'none-offered', kind: 'cooling' }] }),
    });
  });
});

describe('laws, for whatever a file may hold', () => {
  const judge = judgeBy(all);
  const lists = anyList(6);

  test('judging never throws, and the report is plain JSON', () => {
    fc.assert(
      fc.property(lists, (list) => {
        const judged = judge(list);
        expect(JSON.parse(JSON.stringify(judged))).toStrictEqual(judged);
      }),
      { numRuns: 200 },
    );
  });

  test('the order of the list and of the lines of one part changes nothing', () => {
    fc.assert(
      fc.property(lists, fc.nat(), (list, turn) => {
        const turned = list.map((_, index) => list[(index + turn) % list.length] as (typeof list)[number]).reverse();
        const lineByLine = turned.flatMap(({ part, quantity }) =>
          Array.from({ length: quantity }, () => ({ part, quantity: 1 })),
        );
        expect(judge(lineByLine)).toEqual(judge(list));
      }),
      { numRuns: 100 },
    );
  });

  test('judging changes no part', () => {
    fc.assert(
      fc.property(lists, (list) => {
        const before = structuredClone(list);
        judge(list);
        expect(list).toEqual(before);
      }),
      { numRuns: 50 },
    );
  });

  test('every finding has an id of its own and names units of the list', () => {
    fc.assert(
      fc.property(lists, (list) => {
        const { findings: found, units } = judge(list);
        const ids = found.map(({ id }) => id);
        expect(new Set(ids).size).toBe(ids.length);
        const known = new Set(units.map(({ id }) => id));
        for (const { about, missing = [] } of found) {
          expect(about.filter((id) => !known.has(id))).toEqual([]);
          expect(missing.filter((field) => !known.has(field.slice(0, field.indexOf('.'))))).toEqual([]);
        }
      }),
      { numRuns: 100 },
    );
  });

  test('one of each plain part of a machine has a place for everything', () => {
    expect(report(machine)).toMatchObject({ left: [], overall: 'fits' });
  });
});
