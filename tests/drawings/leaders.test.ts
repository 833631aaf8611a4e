import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cross, type Leader, placeBalloons, runLeaders } from '../../src/drawings/leaders.ts';
import type { Box, Point } from '../../src/drawings/shapes.ts';
import type { Pinned } from '../../src/drawings/sheet-of.ts';

const pinned = (points: readonly Point[]): Pinned[] =>
  points.map((at, index) => ({ at, note: { n: index + 1, finding: `f${index}`, verdict: 'does-not-fit', says: 's' } }));
const endsAt = (ys: readonly number[]) => new Map(ys.map((y, index): [number, Point] => [index + 1, [700, y]]));
const legs = ({ points: [a, b, c] }: Leader): [Point, Point][] => [
  [a, b],
  [b, c],
];

describe('leaders', () => {
  test('one runs by one angled and one level leg from the thing to its note', () => {
    const [leader] = runLeaders(pinned([[100, 200]]), endsAt([80]), [], 500);
    expect(leader?.points[0]).toEqual([100, 200]);
    expect(leader?.points[1][1]).toBe(80);
    expect(leader?.points[2]).toEqual([700, 80]);
  });

  test('two that would have to cross leave the second note without one', () => {
    const leaders = runLeaders(
      pinned([
        [600, 100],
        [600, 300],
      ]),
      endsAt([400, 50]),
      [],
      500,
    );
    expect(leaders.map(({ n }) => n)).toEqual([1]);
  });

  test('there are at most five, and none below the drawing', () => {
    const points: Point[] = [
      [90, 10],
      [90, 40],
      [90, 70],
      [90, 100],
      [90, 130],
      [90, 160],
      [90, 190],
    ];
    expect(runLeaders(pinned(points), endsAt([10, 40, 70, 100, 130, 160, 190]), [], 500)).toHaveLength(5);
    expect(runLeaders(pinned([[90, 10]]), endsAt([510]), [], 500)).toEqual([]);
  });

  test('no leader crosses another or runs through words, wherever things and notes are', () => {
    const point = fc.tuple(fc.integer({ min: 40, max: 620 }), fc.integer({ min: 40, max: 460 }));
    const label: Box = { x: 300, y: 200, w: 90, h: 24 };
    fc.assert(
      fc.property(
        fc.array(fc.tuple(point, fc.integer({ min: 10, max: 480 })), { minLength: 2, maxLength: 8 }),
        (given) => {
          const leaders = runLeaders(pinned(given.map(([at]) => at)), endsAt(given.map(([, y]) => y)), [label], 500);
          for (const [i, one] of leaders.entries()) {
            for (const other of leaders.slice(i + 1)) {
              for (const a of legs(one)) for (const b of legs(other)) expect(cross(a, b)).toBe(false);
            }
            const [, knee, end] = one.points;
            const isThrough =
              knee[1] > label.y && knee[1] < label.y + label.h && knee[0] < label.x && end[0] > label.x + label.w;
            expect(isThrough).toBe(false);
          }
        },
      ),
    );
  });
});

describe('balloons', () => {
  test('stand apart, inside the drawing, with a dashed ring where nobody can tell', () => {
    const notes = pinned([
      [100, 100],
      [104, 102],
      [108, 98],
    ]);
    const [first] = notes;
    const balloons = placeBalloons(
      first ? [{ ...first, note: { ...first.note, verdict: 'cannot-tell' } }, ...notes.slice(1)] : [],
      [],
      { x: 0, y: 0, w: 330, h: 400 },
    );
    expect(balloons.map(({ isDashed }) => isDashed)).toEqual([true, false, false]);
    for (const [i, one] of balloons.entries()) {
      expect(one.at[0]).toBeGreaterThanOrEqual(22);
      expect(one.at[1]).toBeLessThanOrEqual(378);
      for (const other of balloons.slice(i + 1)) {
        expect(Math.hypot(one.at[0] - other.at[0], one.at[1] - other.at[1])).toBeGreaterThanOrEqual(44);
      }
    }
  });
});
