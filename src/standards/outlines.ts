/**
 * Positions and outside measures that only drawings need, in millimetres; no rule judges by them.
 */
import { formFactors } from './boards.ts';

/** A slot for a card is this wide. Source: `pci-express-base`. */
export const slotWidth = 8.8;

/** Drives that go into a bay, their largest envelope. Source: `sff-8301` for 3.5, `from-memory` for 2.5. */
export const driveBoxes = { '3.5': { length: 147, height: 26.1 }, '2.5': { length: 100.45, height: 9.5 } } as const;

/**
 * Where a board is screwed down, by letter: from its top edge down, then from the edge with the ports towards the front.
 * Source: `atx-specification`; which of R and S is which: `from-memory`.
 */
const holes = {
  A: [288.29, 10.16],
  B: [209.55, 10.16],
  C: [163.83, 10.16],
  F: [6.35, 33.02],
  G: [288.29, 165.1],
  H: [163.83, 165.1],
  J: [6.35, 165.1],
  K: [288.29, 237.49],
  L: [163.83, 237.49],
  M: [6.35, 237.49],
  R: [209.55, 165.1],
  S: [209.55, 237.49],
} as const;

const holesOf = (form: keyof typeof formFactors): readonly (readonly [down: number, front: number])[] =>
  formFactors[form].holes.map((letter) => holes[letter]);

/** Holes of each form of board. */
export const boardHoles = {
  atx: holesOf('atx'),
  'micro-atx': holesOf('micro-atx'),
  'mini-itx': holesOf('mini-itx'),
  'e-atx': holesOf('e-atx'),
  'full-at': holesOf('full-at'),
  'baby-at': holesOf('baby-at'),
  lpx: holesOf('lpx'),
} as const;
