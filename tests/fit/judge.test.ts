import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { aPart, exampleList, verdictOf } from '../../src/fit/examples.ts';
import { judge } from '../../src/fit/judge.ts';
import type { ExampleParts } from '../../src/fit/rule.ts';
import { sayFinding } from '../../src/fit/say.ts';
import { partSchemas } from '../../src/parts/classes/index.ts';
import { partClasses } from '../../src/parts/part.ts';
import { anyList } from '../helpers/any-part.ts';

const report = (parts: ExampleParts) => judge(exampleList(parts));
/** Of the classes that make up a current machine. */
const oneOfEach: ExampleParts = Object.fromEntries(partClasses.slice(0, 10).map((partClass) => [partClass, {}]));

describe('plain parts', () => {
  test.each(partClasses)('the plain part of class %s is one that a file may hold', (partClass) => {
    expect(partSchemas[partClass].safeParse(aPart(partClass)).error).toBeUndefined();
  });

  test('one of each fits together, and all that is to be said is that one module leaves a channel empty', () => {
    const { overall, findings, left, proved } = report(oneOfEach);
    expect({ overall, left, proved }).toEqual({ overall: 'fits', left: [], proved: true });
    const not = findings.filter(({ verdict }) => verdict !== 'fits');
    expect(not.map(({ rule, severity }) => [rule, severity])).toEqual([['memory/channel-balance', 'limit']]);
  });

  test('of each, with more memory, a second drive and a second fan, fits together', () => {
    const more = {
      ...oneOfEach,
      'memory-module': [{}, {}],
      'storage-drive': [{}, { build: '3.5' as const }],
      fan: [{}, {}],
    };
    expect(report(more).overall).toBe('fits');
  });
});

test('the worst verdict of a rule is the one that counts, and a rule with nothing to say does not apply', () => {
  const judged = report({ cooler: [{ heightMm: 170 }, { heightMm: undefined }, {}], chassis: {} });
  expect(verdictOf(judged, 'clearance/cooler-height')).toBe('does-not-fit');
  expect(verdictOf(report({ fan: {} }), 'clearance/cooler-height')).toBe('does-not-apply');
});

describe("the cooler's lead", () => {
  const joints = (parts: ExampleParts) =>
    Object.fromEntries(report(parts).joints.map(({ need, place }) => [need, place]));

  test('goes on the first header, and other fans on the others, though they draw more', () => {
    const found = joints({ motherboard: {}, cooler: {}, chassis: {}, fan: { milliamps: 900 } });
    expect(found['cooler-1/fan']).toBe('motherboard-1/header-cooler-fan');
    expect(found['fan-1/lead']).toBe('motherboard-1/header-case-1');
    expect(found['chassis-1/fitted-rear-1']).toBe('motherboard-1/header-case-2');
  });

  test('is left room for: a fan takes the first header only when the others are in use', () => {
    const fanHeaders = [
      { id: 'cooler-fan', pins: 4 as const, milliamps: 1000 },
      { id: 'case-1', pins: 4 as const, milliamps: 1000 },
    ];
    const one = joints({ motherboard: { fanHeaders }, fan: {} });
    expect(one['fan-1/lead']).toBe('motherboard-1/header-case-1');
    const two = joints({ motherboard: { fanHeaders }, fan: [{}, {}] });
    expect(two['fan-2/lead']).toBe('motherboard-1/header-cooler-fan');
  });

  test('goes elsewhere when the first header gives too little', () => {
    const fanHeaders = [
      { id: 'cooler-fan', pins: 4 as const, milliamps: 200 },
      { id: 'case-1', pins: 4 as const, milliamps: 1000 },
    ];
    expect(joints({ motherboard: { fanHeaders }, cooler: {} })['cooler-1/fan']).toBe('motherboard-1/header-case-1');
  });
});

describe('a monitor whose own HDMI socket is too slow for its mode', () => {
  const fast = { widthPx: 2560, heightPx: 1440, refreshHz: 144 };
  const place = (sockets: ExampleParts['graphics-card']) =>
    report({ motherboard: {}, 'graphics-card': sockets, monitor: fast } as ExampleParts).joints.find(
      ({ kind }) => kind === 'picture',
    )?.place;

  test('is joined by the plug that shows the whole picture', () => {
    expect(place({})).toBe('graphics-card-1/output-displayport-1');
  });

  test('is joined by the slow one when there is no other', () => {
    expect(place({ outputs: [{ id: 'hdmi-1', plug: 'hdmi', megabits: 14_400 }] })).toBe(
      'graphics-card-1/output-hdmi-1',
    );
  });
});

describe('laws, for whatever a file may hold', () => {
  test('judging and saying never throw; the report is plain JSON; every finding is put into words', () => {
    fc.assert(
      fc.property(anyList(8), fc.option(fc.integer({ min: 1, max: 1_000_000 })), (list, budgetCents) => {
        const judged = judge(list, budgetCents === null ? {} : { budgetCents });
        expect(JSON.parse(JSON.stringify(judged))).toStrictEqual(judged);
        for (const finding of judged.findings) expect(sayFinding(finding).what, finding.id).toMatch(/\.$/);
      }),
      { numRuns: 300 },
    );
  });

  test('the order of the list changes nothing', () => {
    fc.assert(
      fc.property(anyList(8), fc.nat(), (list, turn) => {
        const turned = list.map((_, index) => list[(index + turn) % list.length] as (typeof list)[number]).reverse();
        expect(judge(turned)).toEqual(judge(list));
      }),
      { numRuns: 100 },
    );
  });

  test('a measure taken off a list never turns "does not fit" into "fits" for the rule that reads it', () => {
    // A cooler height, say: whatever else is on the list, not knowing it cannot pass.
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 300 }), fc.integer({ min: 1, max: 300 }), (heightMm, coolerHeightMm) => {
        const known = report({ cooler: { heightMm }, chassis: { coolerHeightMm } });
        const unknown = report({ cooler: { heightMm: undefined }, chassis: { coolerHeightMm } });
        expect(verdictOf(known, 'clearance/cooler-height')).toBe(heightMm <= coolerHeightMm ? 'fits' : 'does-not-fit');
        expect(verdictOf(unknown, 'clearance/cooler-height')).toBe('cannot-tell');
      }),
    );
  });
});
