/** A search that stopped has not found that something does not fit. */
import { expect, test } from 'vitest';
import { aPart, exampleList } from '../../../src/fit/examples.ts';
import { openHookupRules } from '../../../src/fit/judging/hookup-rules.ts';
import { grade, overallOf } from '../../../src/fit/judging/judge-by.ts';
import { planOf, type Told } from '../../../src/fit/judging/plan.ts';
import { openDesk } from '../../../src/fit/judging/table.ts';
import type { Hookup, WhyLeft } from '../../../src/fit/model.ts';
import { lowerEach } from '../../../src/fit/needs/index.ts';
import { sortOut } from '../../../src/fit/needs/units.ts';
import type { LeftRule } from '../../../src/fit/rule.ts';
import { rules } from '../../../src/fit/rules/index.ts';
import { sayFinding } from '../../../src/fit/say.ts';

/** Everything on the list left over, as if the search had stopped at its first step. */
function stopAt(list: ReturnType<typeof exampleList>) {
  const plan = planOf(rules);
  const { groups } = sortOut(list);
  const each = lowerEach(groups.flatMap(({ units }) => units));
  const left = each.flatMap(({ needs }) => needs);
  const stopped = left.map(({ id }) => id);
  const hookup: Hookup = { joints: [], left, cost: [], used: new Map(), steps: 1, proved: false, stopped };
  const why = left
    .filter((need) => need.left !== 'spare')
    .map(({ id }): WhyLeft => ({ need: id, reasons: [{ why: 'not-proved' }], rivals: [], places: [] }));
  const told: Told = [];
  openHookupRules(plan)(openDesk(plan).lay(groups, each, hookup, why), told);
  return grade(told);
}

const lefts = rules.filter((rule): rule is LeftRule => 'left' in rule);

test('every rule on needs left over says cannot tell, and that not every way was tried', () => {
  const lists = [
    exampleList({ chassis: {}, motherboard: {}, processor: {}, cooler: {}, 'memory-module': {}, 'graphics-card': {} }),
    exampleList({ 'storage-drive': [{}, { build: '2.5' }], 'power-supply': {}, fan: {}, monitor: {}, motherboard: {} }),
    exampleList({ 'bus-card': {}, 'bank-module': {}, 'floppy-drive': {}, 'fixed-disk': {}, coprocessor: {} }),
    exampleList({ keyboard: {}, pointer: {}, 'power-strip': {}, 'power-supply': {}, 'monitor-arm': {} }),
    exampleList({ fan: { light: { plug: 'argb-3', milliamps: 500 } } as object }),
    [
      {
        part: {
          ...aPart('cooler'),
          radiator: { lengthMm: 240, thicknessMm: 27, fanThicknessMm: 25, fanSizeMm: 120, fans: 2 },
        },
        quantity: 1,
      },
    ],
  ];
  const said = new Set<string>();
  for (const list of lists) {
    const graded = stopAt(list);
    expect(overallOf(graded, false)).toBe('cannot-tell');
    for (const finding of graded.flat()) {
      expect(finding.verdict, finding.id).toBe('cannot-tell');
      if (!finding.need) continue;
      said.add(finding.rule);
      expect(sayFinding(finding).what, finding.id).toContain('stopped before every way was tried');
    }
  }
  expect([...said].sort()).toEqual(lefts.map(({ id }) => id).sort());
});
