/**
 * A drawing laid out for one width: views at one scale, a frame with zones, a scale bar, balloons and leaders.
 * Everything here is in pixels of the screen; text is never scaled.
 */
import type { Box, Note, Point, View } from './shapes.ts';

export type Placed = {
  view: View;
  x: number;
  y: number /** Where its name ends (when `end`) or starts. */;
  nameAt: number;
  nameEnds: boolean;
};
export type Sheet = {
  width: number;
  height: number;
  /** Pixels to a millimetre. */
  scale: number;
  views: Placed[];
  /** Line on which the names of the views stand. */
  nameY: number;
  /** The frame with zones 1 to 8 and A to F; a narrow drawing has none. */
  frame: Box | undefined;
  /** 100 mm. */
  bar: { x: number; y: number; mm: number };
};

/** Room for the largest thing that may be drawn, so that a choice does not change the scale. In millimetres. */
export type Largest = { w: number; h: number; back: number };

const strip = 20;
const columns = 8;
const rows = ['A', 'B', 'C', 'D', 'E', 'F'] as const;
const above = 38;
const below = 44;
const leftOf = 46;
const between = 36;
const tallest = 560;

/** `views` holds one or two; two are set in line, side by side, in a frame. */
export function layOut(views: readonly View[], width: number, largest: Largest): Sheet {
  const isFramed = views.length > 1;
  const edge = isFramed ? strip + 14 : 2;
  const left = edge + leftOf;
  const gaps = left + edge + (isFramed ? between : 8);
  const wide = largest.w + (isFramed ? largest.back : 0);
  const scale = Math.min((width - gaps) / wide, tallest / largest.h);
  const top = (isFramed ? strip : 0) + above;
  const ground = top + largest.h * scale;
  const spare = width - gaps - wide * scale;
  const placed = views.map((view, index): Placed => {
    const isBack = index === 1 || !isFramed;
    const first = left + (isFramed ? spare / 3 : 0);
    const alone = left + Math.max(0, (width - left - edge - view.w * scale) / 2);
    const second = width - edge - spare / 3 - view.w * scale;
    const x = !isFramed ? (view.w < largest.w / 2 ? alone - leftOf / 2 : left) : isBack ? second : first;
    return isFramed && isBack
      ? { view, x, y: ground - view.h * scale, nameAt: width - edge - spare / 3, nameEnds: true }
      : { view, x, y: ground - view.h * scale, nameAt: isFramed ? x : edge + 4, nameEnds: false };
  });
  return {
    width,
    height: Math.round(ground + below + (isFramed ? strip : 0)),
    scale,
    views: placed,
    nameY: ground + 29,
    frame: isFramed ? { x: strip, y: strip, w: width - 2 * strip, h: Math.round(ground + below - strip) } : undefined,
    bar: { x: left + (isFramed ? spare / 3 : 0), y: (isFramed ? strip : 0) + 20, mm: 100 },
  };
}

/** Where a point of a view lies on the sheet. */
export const onSheet = ({ scale }: Sheet, { x, y }: { x: number; y: number }, at: Point): Point => [
  x + at[0] * scale,
  y + at[1] * scale,
];

/** "D5": row and column of a point on a sheet with a frame. */
export function zoneOf(sheet: Sheet, [x, y]: Point): string | undefined {
  if (!sheet.frame) return undefined;
  const column = Math.min(columns, Math.max(1, 1 + Math.floor((x / sheet.width) * columns)));
  const row = rows[Math.min(5, Math.max(0, Math.floor((y / sheet.height) * rows.length)))];
  return `${row}${column}`;
}

export const zoneMarks = (sheet: Sheet) => ({
  columns: Array.from({ length: columns }, (_, n) => ({
    name: `${n + 1}`,
    x: ((n + 0.5) * sheet.width) / columns,
    edge: (n * sheet.width) / columns,
  })),
  rows: rows.map((name, n) => ({
    name,
    y: ((n + 0.5) * sheet.height) / rows.length,
    edge: (n * sheet.height) / rows.length,
  })),
});

export type Pinned = { note: Note; at: Point };

/** The notes that can be seen on the sheet, each with its place: in the view that shows it best. */
export function pin(sheet: Sheet, notes: readonly Note[], prefersBack: (finding: string) => boolean): Pinned[] {
  return notes.flatMap((note) => {
    const order = prefersBack(note.finding) ? [...sheet.views].reverse() : sheet.views;
    for (const placed of order) {
      const at = placed.view.seen.get(note.finding);
      if (at) return [{ note, at: onSheet(sheet, placed, at) }];
    }
    return [];
  });
}

/** Boxes taken by words on the sheet, which no leader or balloon may cover. */
export function labelBoxes(sheet: Sheet): Box[] {
  const boxes: Box[] = [{ x: sheet.bar.x - 6, y: sheet.bar.y - 14, w: sheet.bar.mm * sheet.scale + 76, h: 26 }];
  for (const placed of sheet.views) {
    const w = textWidth(placed.view.name);
    boxes.push({ x: placed.nameEnds ? placed.nameAt - w : placed.nameAt, y: sheet.nameY - 12, w, h: 24 });
    for (const { from, to, at, way, says } of placed.view.dimensions) {
      const centre =
        way === 'level'
          ? onSheet(sheet, placed, [(from[0] + to[0]) / 2, at])
          : onSheet(sheet, placed, [at, (from[1] + to[1]) / 2]);
      const w = textWidth(says);
      boxes.push(
        way === 'level'
          ? { x: centre[0] - w / 2, y: centre[1] - 12, w, h: 24 }
          : { x: centre[0] - 12, y: centre[1] - w / 2, w: 24, h: w },
      );
    }
  }
  return boxes;
}

/** About as wide as a label is drawn: the lettering is near enough to half its size a letter. */
export const textWidth = (says: string): number => says.length * 8.2 + 8;
