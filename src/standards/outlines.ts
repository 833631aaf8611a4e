/**
 * Positions and outside measures that only drawings need, in millimetres; no rule judges by them.
 */

/** A slot for a card is this wide. */
// Encyclopaedia article "PCI Express", table of the physical layer.
export const slotWidth = 8.8;

/** Drives that go into a bay. */
// 3.5: SFF-8301, largest envelope. 2.5: SFF-8201, from memory, not confirmed.
export const driveBoxes = { '3.5': { length: 147, height: 26.1 }, '2.5': { length: 100.45, height: 9.5 } } as const;

/** Where a board is screwed down, by letter: from its top edge down, then from the edge with the ports towards the front. */
// ATX specification 2.2, Figure 3, as three public CAD models of it agree. Which of R and S is which is from memory.
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

/** Holes of each form of board. */
// microATX Motherboard Interface Specification v1.2, Figure 2; the four of Mini-ITX are from memory.
export const boardHoles: Readonly<
  Record<'atx' | 'micro-atx' | 'mini-itx', readonly (readonly [down: number, front: number])[]>
> = {
  atx: [holes.A, holes.C, holes.F, holes.G, holes.H, holes.J, holes.K, holes.L, holes.M],
  'micro-atx': [holes.B, holes.C, holes.F, holes.H, holes.J, holes.L, holes.M, holes.R, holes.S],
  'mini-itx': [holes.C, holes.F, holes.H, holes.J],
};
