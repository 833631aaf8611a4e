import { describe, expect, test } from 'vitest';
import { planBoard, rowAt, spotOf } from '../../src/drawings/board-plan.ts';
import { aPart } from '../../src/fit/examples.ts';
import { judge } from '../../src/fit/judge.ts';
import { partClasses } from '../../src/parts/part.ts';

const board = aPart('motherboard');
const inside = (box: { x: number; y: number; w: number; h: number }, plan: { w: number; h: number }) =>
  box.x >= 0 && box.y >= 0 && box.x + box.w <= plan.w && box.y + box.h <= plan.h;

describe('the plan of a board', () => {
  test('is as large as its file says, and its form when the file does not say', () => {
    expect(planBoard({ ...board, depthMm: 203, heightMm: 244 })).toMatchObject({ w: 203, h: 244, isKnown: true });
    const unknown = planBoard({ ...board, formFactor: 'mini-itx', depthMm: undefined, heightMm: undefined });
    expect(unknown).toMatchObject({ w: 170, h: 170, isKnown: false });
  });

  test('memory slots stand in the order of their names, whatever the order of filling', () => {
    const { memory } = planBoard(board);
    expect(memory.map(({ id }) => id)).toEqual(['a1', 'a2', 'b1', 'b2']);
    expect([...memory].sort((a, b) => a.box.x - b.box.x)).toEqual(memory);
  });

  test('slots for cards stand in the rows of their cut-outs, 20.32 mm apart', () => {
    expect(rowAt(4) - rowAt(1)).toBeCloseTo(3 * 20.32, 6);
  });

  test('every place lies on the board, on the largest and on the smallest', () => {
    const small = planBoard({
      ...board,
      formFactor: 'mini-itx',
      depthMm: 170,
      heightMm: 170,
      memory: {
        ...board.memory,
        slots: [
          { id: 'a1', channel: 'a' },
          { id: 'b1', channel: 'b' },
        ],
      },
      expansionSlots: [{ id: 'x16-1', position: 1, lengthLanes: 16, lanes: 16, generation: 4 }],
      sataPorts: 2,
    });
    for (const plan of [planBoard(board), small]) {
      const spots = [...plan.memory, ...plan.cards, ...plan.modules, ...plan.power, ...plan.sata, ...plan.headers];
      expect(spots.filter(({ box }) => !inside(box, plan))).toEqual([]);
    }
  });

  test('the spots answer to the names that the hookup gives to places on the board', () => {
    const plan = planBoard(board);
    const { joints } = judge(partClasses.slice(0, 10).map((of) => ({ part: aPart(of), quantity: 1 })));
    const placeOf = (kind: string) => joints.find((joint) => joint.kind === kind)?.place ?? '';
    expect(spotOf(placeOf('memory-slot'), plan.memory)?.id).toBe('a2');
    expect(spotOf(placeOf('expansion-slot'), plan.cards)?.id).toBe('x16-1');
    expect(spotOf(placeOf('module-slot'), plan.modules)?.id).toBe('m2-1');
    expect(spotOf(placeOf('fan-header'), plan.headers)).toBeDefined();
    const need = joints.find((joint) => joint.kind === 'board-power')?.need ?? '';
    expect(spotOf(need, plan.power)?.id).toBe('power-1');
  });
});
