/** Two boards or two cases on one list: each machine is judged by its own parts, and whatever has no place is said. */
import { describe, expect, test } from 'vitest';
import { exampleList, verdictOf } from '../../../src/fit/examples.ts';
import { judge } from '../../../src/fit/judge.ts';
import { judgeBy } from '../../../src/fit/judging/judge-by.ts';
import type { ExampleParts } from '../../../src/fit/rule.ts';
import { budgetRule, doesNotApply, fits, gathersRule, refusesRule } from '../../../src/fit/rule.ts';
import { sayFinding } from '../../../src/fit/say.ts';
import { partClasses } from '../../../src/parts/part.ts';
import * as small from './small-rules.ts';

const machine: ExampleParts = Object.fromEntries(partClasses.slice(0, 10).map((partClass) => [partClass, {}]));
const report = (parts: ExampleParts) => judge(exampleList(parts));
const of = (parts: ExampleParts, rule: string) => report(parts).findings.filter((one) => one.rule === rule);

describe('a second board', () => {
  test('without a case is left over, and the words say how many boards and places there are', () => {
    const two = report({ ...machine, motherboard: [{}, {}] });
    expect(two.overall).toBe('does-not-fit');
    const finding = two.findings.find(({ rule, verdict }) => rule === 'mounting/case-present' && verdict !== 'fits');
    expect(finding?.about).toEqual(['motherboard-2']);
    expect(finding && sayFinding(finding).what).toBe(
      'The list has two boards and one place for one, so Plain motherboard (2nd) is left over.',
    );
  });

  test('in a case of its own is left without power, memory or a processor of its own, not without a word', () => {
    const two = report({ ...machine, motherboard: [{}, {}], chassis: [{}, {}] });
    expect(two.overall).toBe('does-not-fit');
    const not = two.findings.filter(
      ({ verdict, about }) => verdict === 'does-not-fit' && about.includes('motherboard-2'),
    );
    expect(not.map(({ rule }) => rule)).toContain('power/board-lead');
  });

  test('two whole machines fit', () => {
    const twice = exampleList(machine).map(({ part, quantity }) => ({ part, quantity: 2 * quantity }));
    const once = judge(exampleList(machine));
    const both = judge(twice);
    const amiss = ({ findings }: typeof both) => [
      ...new Set(findings.filter(({ verdict }) => verdict !== 'fits').map(({ rule, verdict }) => `${rule} ${verdict}`)),
    ];
    expect(amiss(both)).toEqual(amiss(once));
    expect(both.overall).toBe(once.overall);
  });
});

describe('the memory of each board', () => {
  const memory = (slots: number, totalGb: number) => ({
    memory: {
      generation: 'ddr5' as const,
      moduleGb: 64,
      totalGb,
      registered: false,
      slots: Array.from({ length: slots }, (_, n) => ({ id: `s${n + 1}`, channel: `c${n + 1}` })),
    },
  });

  test('is added up for that board alone', () => {
    // Two slots of 32 GB each: 64 GB on either board, and each can use 64.
    const list = {
      motherboard: [memory(2, 64), { ...memory(2, 64), sataPorts: 2 }],
      'memory-module': Array(4).fill({ capacityGb: 32 }),
    };
    expect(verdictOf(report(list), 'memory/total-capacity')).toBe('fits');
  });

  test('is too much for the second board though the first can use it', () => {
    const list = {
      motherboard: [memory(2, 128), { ...memory(2, 32), sataPorts: 2 }],
      'memory-module': Array(4).fill({ capacityGb: 32 }),
    };
    const said = of(list, 'memory/total-capacity').map(({ verdict, about }) => [verdict, about.at(-1)]);
    expect(said).toContainEqual(['does-not-fit', 'motherboard-2']);
  });
});

describe('the supply of each machine', () => {
  const supply = { chassis: [{}, {}], motherboard: [{}, {}], 'power-supply': [{}, {}] };
  const load = (processor: object[]) =>
    of({ ...supply, processor } as ExampleParts, 'power/supply-load').map(({ verdict, facts }) => [
      verdict,
      facts['used'],
    ]);

  test('carries that machine alone', () => {
    // 400 W and 400 W are more than one supply of 550 W carries, and less than two.
    const said = load([{ peakW: 400 }, { peakW: 400 }]);
    expect(said.map(([verdict]) => verdict)).toEqual(['fits', 'fits']);
  });

  test('is too weak for the one machine and not for the other', () => {
    expect(load([{ peakW: 600 }, { peakW: 60 }]).map(([verdict]) => verdict)).toEqual(['does-not-fit', 'fits']);
  });

  test('money is added up over the whole list', () => {
    const paid = budgetRule({
      ...small.load,
      id: 'test/paid',
      budget: 'money',
      judge: ({ used }) => fits({ used, limit: 0 }),
    });
    const list = exampleList(supply);
    const cents = list.reduce((sum, { part, quantity }) => sum + quantity * (part.priceCents ?? 0), 0);
    expect(judgeBy([paid])(list).findings.map(({ facts }) => facts['used'])).toEqual([cents]);
  });
});

describe('a second case', () => {
  test('wants a power button of its own board', () => {
    const two = report({ ...machine, chassis: [{}, {}] });
    expect(two.overall).toBe('does-not-fit');
    expect(two.findings[0]).toMatchObject({ rule: 'cabling/front-lead', about: ['chassis-2'] });
  });

  test('a cooler is measured against the case that its board is in', () => {
    const cases = { chassis: [{ coolerHeightMm: 120, formFactors: ['mini-itx' as const] }, { coolerHeightMm: 160 }] };
    const list = { motherboard: { formFactor: 'atx' as const }, cooler: { heightMm: 150 }, ...cases };
    const said = of(list, 'clearance/cooler-height').map(({ verdict, about }) => [verdict, ...about]);
    expect(said).toEqual([['fits', 'cooler-1', 'chassis-2']]);
  });

  test('a part that belongs to neither is measured against both', () => {
    const list = { chassis: [{ coolerHeightMm: 120 }, { coolerHeightMm: 160 }], cooler: { heightMm: 150 } };
    expect(of(list, 'clearance/cooler-height').map(({ verdict }) => verdict)).toEqual(['does-not-fit', 'fits']);
  });
});

describe('the runner', () => {
  const { severity, basis, sources, lesson, examples } = small.total;
  const say = {
    fits: () => 'It fits.',
    doesNotFit: () => ({ headline: 'It does not', what: 'It does not fit.', why: 'Because.', remedy: 'Change it.' }),
    cannotTell: () => ({ headline: 'Not known', what: 'It is not judged.', findOut: 'Look it up.' }),
  };
  const common = { severity, basis, sources, lesson, examples, say, title: 'It fits' };
  const form = refusesRule({
    ...common,
    id: 'test/form',
    refuses: { kind: 'board-mount', op: 'shares', need: 'formFactor', place: 'formFactors' },
  });
  const boards = gathersRule({
    ...common,
    id: 'test/boards',
    gathers: { motherboard: ['socket'], chassis: ['cutOuts'], monitor: ['sockets'] },
    sees: ['board-mount'],
    judge: ({ motherboard, chassis, monitor }, { joints }) =>
      motherboard.length === 0
        ? doesNotApply
        : fits({ boards: motherboard.length, cases: chassis.length, monitors: monitor.length, joints: joints.length }, [
            motherboard[0]?.unit ?? '',
          ]),
  });
  const facts = (parts: ExampleParts) =>
    judgeBy([boards, form])(exampleList(parts))
      .findings.filter(({ rule }) => rule === boards.id)
      .map(({ about, facts: told }) => [about[0], told]);

  test('gives a rule that gathers one machine at a time; what belongs to none is in each', () => {
    const each = { boards: 1, cases: 1, monitors: 1, joints: 1 };
    expect(facts({ motherboard: [{}, {}], chassis: [{}, {}], monitor: {} })).toEqual([
      ['motherboard-1', each],
      ['motherboard-2', each],
    ]);
  });

  test('a board without a case is a machine without one', () => {
    expect(facts({ motherboard: [{}, {}], chassis: {} })).toEqual([
      ['motherboard-1', { boards: 1, cases: 1, monitors: 0, joints: 1 }],
      ['motherboard-2', { boards: 1, cases: 0, monitors: 0, joints: 0 }],
    ]);
  });

  test('a list of one machine is given whole, joined or not', () => {
    const list = { motherboard: { formFactor: 'atx' as const }, chassis: { formFactors: ['mini-itx' as const] } };
    expect(facts(list)).toEqual([['motherboard-1', { boards: 1, cases: 1, monitors: 0, joints: 0 }]]);
  });
});
