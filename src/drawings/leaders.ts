/** Where balloons stand and how leaders run: no leader crosses another or goes through words. Pure; pixels. */

import type { Box, Point } from './shapes.ts';
import type { Pinned } from './sheet-of.ts';

export type Leader = { n: number; points: readonly [Point, Point, Point] };
export type Balloon = { n: number; at: Point; dot: Point; isDashed: boolean };

const mostLeaders = 5;
/** Two balloons' hit areas of 44 px do not overlap. */
const apart = 46;
const radius = 17;

/**
 * A leader for each pinned note that has an `end` (the edge of its balloon beside the drawing): one angled leg
 * from the thing, one level leg to the balloon. At most five; a note whose leader would cross another, or words,
 * has none. `bottom`: leaders stay above it.
 */
export function runLeaders(
  pinned: readonly Pinned[],
  ends: ReadonlyMap<number, Point>,
  labels: readonly Box[],
  bottom: number,
): Leader[] {
  const leaders: Leader[] = [];
  for (const { note, at } of pinned) {
    const end = ends.get(note.n);
    if (!end || leaders.length === mostLeaders || end[1] > bottom || end[1] < 0) continue;
    const leader = knees(at, end)
      .map((knee): Leader => ({ n: note.n, points: [at, knee, end] }))
      .find((one) => !leaders.some((other) => meet(one, other)) && !labels.some((box) => goesThrough(one, box)));
    if (leader) leaders.push(leader);
  }
  return leaders;
}

function knees(at: Point, end: Point): Point[] {
  const down = Math.abs(end[1] - at[1]);
  const last = end[0] - 24;
  return [0.5, 0.9, 0.25, 1.4, 2, 3, 0.1]
    .map((slope): Point => [at[0] + Math.max(6, down * slope), end[1]])
    .filter(([x]) => x < last)
    .concat([[last, end[1]]]);
}

const legs = ({ points: [a, b, c] }: Leader): [Point, Point][] => [
  [a, b],
  [b, c],
];

const meet = (one: Leader, other: Leader) => legs(one).some((a) => legs(other).some((b) => cross(a, b)));

function goesThrough(leader: Leader, { x, y, w, h }: Box): boolean {
  const sides: [Point, Point][] = [
    [
      [x, y],
      [x + w, y],
    ],
    [
      [x, y + h],
      [x + w, y + h],
    ],
    [
      [x, y],
      [x, y + h],
    ],
    [
      [x + w, y],
      [x + w, y + h],
    ],
  ];
  return legs(leader).some((leg) => sides.some((side) => cross(leg, side)));
}

/** True when two legs have a point in common. */
export function cross([a, b]: [Point, Point], [c, d]: [Point, Point]): boolean {
  const side = (p: Point, q: Point, r: Point) =>
    Math.sign((q[0] - p[0]) * (r[1] - p[1]) - (q[1] - p[1]) * (r[0] - p[0]));
  const on = (p: Point, q: Point, r: Point) =>
    Math.min(p[0], q[0]) <= r[0] &&
    r[0] <= Math.max(p[0], q[0]) &&
    Math.min(p[1], q[1]) <= r[1] &&
    r[1] <= Math.max(p[1], q[1]);
  const [one, two, three, four] = [side(a, b, c), side(a, b, d), side(c, d, a), side(c, d, b)];
  if (one !== two && three !== four) return true;
  return (
    (one === 0 && on(a, b, c)) ||
    (two === 0 && on(a, b, d)) ||
    (three === 0 && on(c, d, a)) ||
    (four === 0 && on(c, d, b))
  );
}

/** A balloon in the drawing for each pinned note, near its thing, clear of words and of the other balloons. */
export function placeBalloons(
  pinned: readonly Pinned[],
  labels: readonly Box[],
  area: Box,
  leaders: readonly Leader[] = [],
): Balloon[] {
  const [left, top, right, bottom] = [area.x + 22, area.y + 22, area.x + area.w - 22, area.y + area.h - 22];
  const balloons: Balloon[] = [];
  for (const { note, at } of pinned) {
    const spots = [44, 62, 84, 110, 140].flatMap((far) =>
      [-45, 45, -20, 20, -70, 70, -110, 110, -135, 135, 180].map((turn): Point => {
        const angle = (turn * Math.PI) / 180;
        return [at[0] + far * Math.cos(angle), at[1] + far * Math.sin(angle)];
      }),
    );
    const free = (spot: Point) =>
      spot[0] > left &&
      spot[0] < right &&
      spot[1] > top &&
      spot[1] < bottom &&
      balloons.every((other) => Math.hypot(other.at[0] - spot[0], other.at[1] - spot[1]) >= apart) &&
      !leaders.some((leader) =>
        goesThrough(leader, { x: spot[0] - radius, y: spot[1] - radius, w: 2 * radius, h: 2 * radius }),
      ) &&
      pinned.every((other) => Math.hypot(other.at[0] - spot[0], other.at[1] - spot[1]) > radius + 4) &&
      labels.every(
        ({ x, y, w, h }) =>
          spot[0] < x - radius || spot[0] > x + w + radius || spot[1] < y - radius || spot[1] > y + h + radius,
      );
    const inside = (spot: Point): Point => [
      Math.min(Math.max(spot[0], left), right),
      Math.min(Math.max(spot[1], top), bottom),
    ];
    const clash = (spot: Point) =>
      Math.min(apart, ...balloons.map((other) => Math.hypot(other.at[0] - spot[0], other.at[1] - spot[1])));
    const chosen =
      spots.find(free) ?? spots.map(inside).reduce((best, spot) => (clash(spot) > clash(best) ? spot : best));
    balloons.push({ n: note.n, at: chosen, dot: at, isDashed: note.verdict === 'cannot-tell' });
  }
  return balloons;
}
