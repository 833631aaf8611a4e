import { describe, expect, test } from 'vitest';
import type { Drawer } from '../../../src/components/parts-checker/list.ts';
import { scaleOf } from '../../../src/components/parts-checker/tray.ts';
import type { Machine } from '../../../src/drawings/case-plan.ts';
import type { ChooseExercise } from '../../../src/exercises/types.ts';
import { aPart } from '../../../src/fit/examples.ts';
import { judge } from '../../../src/fit/judge.ts';
import type { Part } from '../../../src/parts/part.ts';

const exercise: ChooseExercise = {
  kind: 'choose',
  id: 'e',
  title: 't',
  lesson: 'l',
  minutes: 10,
  rubric: [{ id: 'complete', says: 's', marks: 1, for: 'complete' }],
  brief: {
    for: 'somebody',
    says: 's',
    budgetCents: 50_000,
    demands: [
      { id: 'd', says: 's', class: 'memory-module', field: 'capacityGb', over: 'sum', atLeast: 32, unit: 'GB' },
      { id: 'p', says: 's', class: 'processor', field: 'processingPoints', over: 'each', atLeast: 500, unit: 'points' },
    ],
  },
  procedure: 'p',
  shelf: [],
};
const brief = { budgetCents: 50_000 };

function scale(of: Part, chosen: Part[]) {
  const drawer: Drawer = { position: of.class, class: of.class, parts: [of.id], from: 1, to: 1 };
  const report = judge(
    chosen.map((part) => ({ part, quantity: 1 })),
    brief,
  );
  const units = report.units.flatMap(({ id, part }) => {
    const found = chosen.find((one) => one.id === part);
    return found ? [{ id, part: found }] : [];
  });
  const machine: Machine = { units, report, wanted: [], isJudged: true };
  return scaleOf(drawer, exercise, new Map([[of.id, of]]), machine, report.budgets);
}

const tower = { ...aPart('chassis'), cardLengthMm: 337, frontFansTakeCardRoom: true, fittedFans: [] };
const fan = { ...aPart('fan'), sizeMm: 120, thicknessMm: 25 };

describe('the limit that decides in a drawer', () => {
  test('for a card it is the room behind the front fan', () => {
    const { limit } = scale(aPart('graphics-card'), [tower, fan]);
    expect(limit).toEqual({ value: 312, says: 'room 312 mm', sort: 'at-most' });
  });

  test('for a cooler it is the room under the side panel, and nothing when that is not recorded', () => {
    expect(scale(aPart('cooler'), [{ ...tower, coolerHeightMm: 165 }]).limit?.value).toBe(165);
    expect(scale(aPart('cooler'), [{ ...tower, coolerHeightMm: undefined }]).limit).toBeUndefined();
  });

  test('for a supply it is what the other parts draw, and less falls short', () => {
    const { limit } = scale(aPart('power-supply'), [aPart('processor')]);
    expect(limit?.sort).toBe('at-least');
    expect(limit?.value).toBe(aPart('processor').peakW ?? aPart('processor').sustainedW ?? Number.NaN);
  });

  test('for a case it is the length of the card, and without a card the height of the cooler', () => {
    const card = { ...aPart('graphics-card'), lengthMm: 300 };
    expect(scale(tower, [card]).limit).toEqual({ value: 300, says: 'card 300 mm', sort: 'at-least' });
    expect(scale(tower, [{ ...aPart('cooler'), heightMm: 154 }]).limit?.says).toBe('cooler 154 mm');
  });

  test('where the brief asks for a number it is that number: a line in all, a least of each', () => {
    expect(scale(aPart('memory-module'), []).limit).toEqual({ value: 32, says: 'brief: 32 in all', sort: 'mark' });
    expect(scale(aPart('processor'), []).limit).toEqual({ value: 500, says: 'brief: 500', sort: 'at-least' });
  });

  test('where nothing else decides it is the money left', () => {
    const board = { ...aPart('motherboard'), priceCents: 12_000 };
    const { limit, isMoney } = scale(board, [{ ...aPart('cooler'), priceCents: 3400 }]);
    expect(limit).toEqual({ value: 46_600, says: 'left €466', sort: 'at-most' });
    expect(isMoney).toBe(true);
  });

  test('a part whose number is not recorded has none, and the scale still holds the limit', () => {
    const { values, end } = scale({ ...aPart('graphics-card'), lengthMm: undefined }, [tower]);
    expect([...values.values()]).toEqual([undefined]);
    expect(end).toBe(337);
  });
});
