/**
 * What a drawing is made of, before it is drawn: shapes in millimetres, with the meaning of each line and
 * never its colour. `x` runs to the right and `y` down, from the top left corner of the view.
 */
import type { Verdict } from '../fit/model.ts';

export type Point = readonly [x: number, y: number];
export type Box = { x: number; y: number; w: number; h: number };

/** What a line means. `unknown` is dashed, `empty` dotted, `lead` a power lead, `solid` filled with ink. */
export type Look = 'wall' | 'outline' | 'detail' | 'texture' | 'unknown' | 'empty' | 'lead' | 'solid' | 'place';

export type Shape =
  /** `clear`: what is behind it does not show. */
  | { is: 'box'; box: Box; look: Look; clear?: true }
  | { is: 'line'; points: readonly Point[]; look: Look }
  | { is: 'disc'; at: Point; r: number; look: Look; clear?: true }
  | { is: 'hatch'; box: Box };

/** A measure: `room` is what is chosen against, `part` what was chosen. */
export type Dimension = {
  from: Point;
  to: Point;
  /** Where the line stands: its `y` when level, its `x` when upright. */
  at: number;
  way: 'level' | 'upright';
  says: string;
  of: 'room' | 'part' | 'whole';
};

/** A tick in a ring where something goes into something. */
export type Ring = { at: Point; says: string };

export type View = {
  name: string;
  w: number;
  h: number;
  shapes: Shape[];
  /** Question marks in boxes of unknown size. */
  questions: Point[];
  dimensions: Dimension[];
  rings: Ring[];
  /** Where a finding is seen, by its id. */
  seen: Map<string, Point>;
  /** What the view shows, in reading order, as whole sentences. */
  words: string[];
};

/** A note that has a balloon in the drawing. */
export type Note = { n: number; finding: string; verdict: Exclude<Verdict, 'does-not-apply'>; says: string };

export const boxAt = (x: number, y: number, w: number, h: number): Box => ({ x, y, w, h });
export const middle = ({ x, y, w, h }: Box): Point => [x + w / 2, y + h / 2];

/** What two boxes share; undefined when they only touch or lie apart. */
export function overlap(a: Box, b: Box): Box | undefined {
  const x = Math.max(a.x, b.x);
  const y = Math.max(a.y, b.y);
  const w = Math.min(a.x + a.w, b.x + b.w) - x;
  const h = Math.min(a.y + a.h, b.y + b.h) - y;
  return w > 0 && h > 0 ? { x, y, w, h } : undefined;
}
