/**
 * Where the places of a board are drawn, in millimetres from its corner at the rear and the top of the case.
 * A part's file gives the outline, the slots and the cut-outs; everything else stands at one usual position.
 */

import type { Motherboard } from '../parts/classes/motherboard.ts';
import { formFactors, slotLengths, slotPitch } from '../standards/boards.ts';
import { boardHoles, slotWidth } from '../standards/outlines.ts';
import { type Box, boxAt, type Point } from './shapes.ts';

export type Spot = { id: string; box: Box };
export type BoardPlan = {
  w: number;
  h: number;
  /** False when the file gives no outline: the form's largest is drawn, dashed. */
  isKnown: boolean;
  ports: Box;
  socket: Box;
  memory: Spot[];
  cards: Spot[];
  modules: Spot[];
  power: (Spot & { plug: string })[];
  sata: Spot[];
  headers: Spot[];
  frontPins: Box;
  holes: Point[];
};

/** Said on the sheet that explains the drawings. */
export const boardConvention =
  'Slots for cards, the outline and the holes are where the board has them; socket, memory slots, plugs and M.2 slots stand at their usual positions.';

const socketAt: Point = [95, 80];
const moduleLength = 133;
const firstRow = 162;
const cardStart = 46;

/** Middle of the case's nth cut-out, below the top edge of the board. */
export const rowAt = (position: number): number => firstRow + slotPitch.mm * (position - 1);

export function planBoard(board: Motherboard | undefined): BoardPlan {
  const form = board?.formFactor ?? 'atx';
  const w = board?.depthMm ?? formFactors[form].depthMm;
  const h = board?.heightMm ?? formFactors[form].widthMm;
  const slots = [...(board?.memory?.slots ?? [])].sort((a, b) => (a.id < b.id ? -1 : 1));
  const memoryFrom = Math.min(148, w - 12 - 10 * Math.max(slots.length, 2));
  return {
    w,
    h,
    isKnown: board === undefined || (board.depthMm !== undefined && board.heightMm !== undefined),
    ports: boxAt(0, 4, 20, 138),
    socket: boxAt(socketAt[0] - 22.5, socketAt[1] - 22.5, 45, 45),
    memory: slots.map(({ id }, index) => ({ id, box: boxAt(memoryFrom + 10 * index, 14, 6.5, moduleLength) })),
    cards: (board?.expansionSlots ?? []).map(({ id, position, lengthLanes }) => ({
      id,
      box: boxAt(cardStart, rowAt(position) - slotWidth / 2, cardSlotLength(lengthLanes), slotWidth),
    })),
    modules: placeModules(board, h),
    power: placePower(board, w),
    sata: Array.from({ length: board?.sataPorts ?? 0 }, (_, index) => ({
      id: `sata-${index + 1}`,
      box: boxAt(w - 13, h - 26 - 9 * index, 12, 7),
    })),
    headers: (board?.fanHeaders ?? []).map(({ id }, index) => ({ id, box: headerBox(index, w, h) })),
    frontPins: boxAt(w - 52, h - 7, 30, 5),
    holes: boardHoles[form].filter(([down, front]) => down < h && front < w).map(([down, front]) => [front, down]),
  };
}

/** M.2 slots lie in the rows that no slot for a card takes, the first row first; then under the cooler and at the top. */
function placeModules(board: Motherboard | undefined, h: number): Spot[] {
  const taken = new Set((board?.expansionSlots ?? []).map(({ position }) => position));
  const free = [1, 2, 3, 4, 5, 6, 7].filter((row) => !taken.has(row) && rowAt(row) + 11 < h).map(rowAt);
  const rows = [...free, 136, 16];
  return (board?.moduleSlots ?? []).map(({ id, lengthsMm }, index) => ({
    id,
    box: boxAt(50, (rows[index] ?? 16) - 11, Math.max(...lengthsMm, 30) + 4, 22),
  }));
}

function placePower(board: Motherboard | undefined, w: number): BoardPlan['power'] {
  let small = 0;
  return (board?.powerSockets ?? []).map((plug, index) => {
    if (plug === 'atx-24') return { id: `power-${index + 1}`, plug, box: boxAt(w - 10, 56, 8, 52) };
    small += 1;
    return { id: `power-${index + 1}`, plug, box: boxAt(28 + 24 * (small - 1), 2, plug === 'eps-4' ? 10 : 20, 9) };
  });
}

const headerBox = (index: number, w: number, h: number): Box =>
  [boxAt(124, 3, 10, 4), boxAt(w - 7, 34, 4, 10), boxAt(24, h - 7, 10, 4), boxAt(44, h - 7, 10, 4)][index] ??
  boxAt(64 + 14 * (index - 4), h - 7, 10, 4);

/** The spot a place is drawn at: the one whose id ends the place's name. */
export function spotOf(place: string, spots: readonly Spot[]): Spot | undefined {
  const name = place.slice(place.indexOf('/') + 1);
  return spots.find(({ id }) => name === id || name.endsWith(`-${id}`));
}

function cardSlotLength(lanes: number): number {
  if (lanes <= 1) return slotLengths[1];
  if (lanes <= 4) return slotLengths[4];
  return lanes <= 8 ? slotLengths[8] : slotLengths[16];
}
