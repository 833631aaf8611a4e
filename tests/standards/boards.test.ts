// FF-004, FF-005: encyclopaedia table "Motherboard form factor" (basis: read). FF-010: form-factor table (basis: read).
// FF-019 to FF-021: microATX Motherboard Interface Specification v1.2, Table 3, and its conversion (basis: read, computed).
// FF-027, FF-028, FF-031, FF-032: the same, Figure 2, and set arithmetic on it (basis: read, computed).
// Holes: three public case models that agree on the ATX specification 2.2, Figure 3 (basis: read; R and S are from memory
// and not tested). FF-053, FF-056: encyclopaedia article "Drive bay" (basis: read). FF-058: drawings that quote SFF-8301 (basis: read).
// FF-037 to FF-040: slots and pitch (basis: read, computed). FF-048 to FF-051: encyclopaedia article "PCI Express" (basis: read).
import { describe, expect, it } from 'vitest';
import {
  formFactors,
  type Hole,
  holePositions,
  slotLengths,
  slotPitch,
  standoffsUnder,
} from '../../src/standards/boards.ts';
import { boardHoles, driveBoxes, slotWidth } from '../../src/standards/outlines.ts';

/** id, form factor, width and depth in millimetres, slots (FF-037). */
const outlines: readonly (readonly [string, keyof typeof formFactors, number, number, number])[] = [
  ['FF-004', 'atx', 305, 244, 7],
  ['FF-005', 'micro-atx', 244, 244, 4],
  ['FF-010 and FF-023', 'mini-itx', 170, 170, 1],
];

/** id, form factor, the largest width and depth in millimetres. FF-002, FF-003: encyclopaedia table; FF-015: form-factor table (read). */
const olderOutlines: readonly (readonly [string, keyof typeof formFactors, number, number])[] = [
  ['FF-002', 'full-at', 305, 330],
  ['FF-003', 'baby-at', 216, 330],
  ['FF-015', 'lpx', 330, 229],
];

/** Distances between holes in inches, down then front: worked example on all the models that were read (basis: computed). */
const between: readonly (readonly [Hole, Hole, number, number])[] = [
  ['A', 'C', 4.9, 0],
  ['A', 'B', 3.1, 0],
  ['B', 'C', 1.8, 0],
  ['C', 'F', 6.2, -0.9],
  ['A', 'F', 11.1, -0.9],
  ['A', 'G', 0, -6.1],
  ['A', 'K', 0, -8.95],
  ['G', 'J', 11.1, 0],
];

describe('form factors of boards', () => {
  it.each(outlines)('%s: %s measures %d by %d mm and has %d slots', (_id, name, width, depth, slots) => {
    expect(formFactors[name].widthMm).toBe(width);
    expect(formFactors[name].depthMm).toBe(depth);
    expect(formFactors[name].slots).toBe(slots);
  });

  it.each(olderOutlines)('%s: %s measures at most %d by %d mm', (_id, name, width, depth) => {
    expect([formFactors[name].widthMm, formFactors[name].depthMm]).toEqual([width, depth]);
  });

  it('keeps 305 by 330 mm for full AT, not 350.5 mm deep or 350 mm wide (FF-025 and FF-026 disagree)', () => {
    expect(formFactors['full-at'].depthMm).not.toBeCloseTo(350.5, 0);
    expect(formFactors['full-at'].widthMm).not.toBe(350);
  });

  it('has extended ATX at the outline of SSI EEB, 305 by 330 mm (FF-007; that the two are one is from memory)', () => {
    expect([formFactors['e-atx'].widthMm, formFactors['e-atx'].depthMm]).toEqual([305, 330]);
  });

  it('prints the inches of the specification as whole millimetres (FF-019 to FF-021)', () => {
    expect(formFactors.atx.widthMm).toBe(Math.round(12 * 25.4));
    expect(formFactors.atx.depthMm).toBe(Math.round(9.6 * 25.4));
    expect(formFactors['micro-atx'].widthMm).toBe(Math.round(9.6 * 25.4));
  });

  it('shares holes C F H J L M between ATX and microATX, and leaves A G K over (FF-031, FF-032)', () => {
    const micro: readonly string[] = formFactors['micro-atx'].holes;
    expect(formFactors.atx.holes.filter((hole) => micro.includes(hole))).toEqual(['C', 'F', 'H', 'J', 'L', 'M']);
    expect(formFactors.atx.holes.filter((hole) => !micro.includes(hole))).toEqual(['A', 'G', 'K']);
  });

  it('gives Mini-ITX four holes that all exist on ATX', () => {
    const atx: readonly string[] = formFactors.atx.holes;
    expect(formFactors['mini-itx'].holes).toHaveLength(4);
    expect(formFactors['mini-itx'].holes.every((hole) => atx.includes(hole))).toBe(true);
  });
});

describe('slots', () => {
  it('stand 0.8 inch apart, so three fewer slots are 60.96 mm less board (FF-038 to FF-040)', () => {
    expect(slotPitch.mm).toBeCloseTo(0.8 * 25.4, 10);
    expect(3 * slotPitch.mm).toBeCloseTo(60.96, 10);
  });

  it('have the published connector lengths (FF-048 to FF-051)', () => {
    expect([slotLengths[1], slotLengths[4], slotLengths[8], slotLengths[16]]).toEqual([25, 39, 56, 89]);
  });
});

/** Letter, then inches from the edge at the top of the board and from the edge with the ports. */
const holes: readonly (readonly [string, number, number])[] = [
  ['A', 11.35, 0.4],
  ['C', 6.45, 0.4],
  ['F', 0.25, 1.3],
  ['G', 11.35, 6.5],
  ['H', 6.45, 6.5],
  ['J', 0.25, 6.5],
  ['K', 11.35, 9.35],
  ['L', 6.45, 9.35],
  ['M', 0.25, 9.35],
];

describe('outlines that only drawings need', () => {
  it.each(holes)('hole %s of an ATX board lies where the models have it', (letter, down, front) => {
    const letters: readonly string[] = formFactors.atx.holes;
    const at = boardHoles.atx[letters.indexOf(letter)];
    expect(at?.[0]).toBeCloseTo(down * 25.4, 2);
    expect(at?.[1]).toBeCloseTo(front * 25.4, 2);
  });

  it('has a 5.25 inch bay of 41.3 mm, and of 82.6 mm for two of them, up to 203.2 mm deep (FF-053, FF-056)', () => {
    expect(driveBoxes['5.25']).toEqual({ length: 203.2, height: 41.3 });
    expect(driveBoxes['5.25-full'].height).toBe(2 * driveBoxes['5.25'].height);
  });

  it('has a 3.5 inch drive of 147.0 by 26.1 mm (FF-058) and a slot 8.8 mm wide (FF-048)', () => {
    expect(driveBoxes['3.5']).toEqual({ length: 147, height: 26.1 });
    expect(slotWidth).toBe(8.8);
  });
});

describe('standoffs of a case under a board', () => {
  it.each(between)('from hole %s to hole %s is %d inches down and %d towards the front', (from, to, down, front) => {
    expect((holePositions[from][0] - holePositions[to][0]) / 25.4).toBeCloseTo(down, 9);
    expect((holePositions[from][1] - holePositions[to][1]) / 25.4).toBeCloseTo(front, 9);
  });

  it('A, G and K of an ATX case lie outside a microATX board and do it no harm (FF-032 and 02, worked example)', () => {
    const found = standoffsUnder('micro-atx', formFactors.atx.holes);
    expect(found?.outside).toEqual(['A', 'G', 'K']);
    expect(found?.underBoard).toEqual([]);
    expect(found?.used).toEqual(['C', 'F', 'H', 'J', 'L', 'M']);
    expect(found?.missing).toEqual(['B', 'R', 'S']);
  });

  it('B, R and S left in the tray lie under an ATX board where it has no hole, and may short it (02, worked example)', () => {
    const union = [...new Set([...formFactors.atx.holes, ...formFactors['micro-atx'].holes])];
    const found = standoffsUnder('atx', union);
    expect(found?.underBoard.toSorted()).toEqual(['B', 'R', 'S']);
    expect(found?.outside).toEqual([]);
    expect(found?.missing).toEqual([]);
  });

  it('a case with every standoff takes all three sizes (02, worked example)', () => {
    const union = [...new Set([...formFactors.atx.holes, ...formFactors['micro-atx'].holes])];
    for (const form of ['atx', 'micro-atx', 'mini-itx'] as const)
      expect(standoffsUnder(form, union)?.missing).toEqual([]);
  });

  it('nothing but its own four lies under a Mini-ITX board', () => {
    const union = [...new Set([...formFactors.atx.holes, ...formFactors['micro-atx'].holes])];
    expect(standoffsUnder('mini-itx', union)?.underBoard).toEqual([]);
    expect(standoffsUnder('mini-itx', union)?.used.toSorted()).toEqual(['C', 'F', 'H', 'J']);
  });

  it("takes a board's own holes where they differ from its form factor's", () => {
    expect(standoffsUnder('atx', ['A', 'C', 'B'], ['A', 'B'])).toEqual({
      used: ['A', 'B'],
      underBoard: ['C'],
      outside: [],
      missing: [],
    });
  });

  it('says nothing where the holes of a form factor are not published', () => {
    expect(standoffsUnder('baby-at', ['A', 'C'])).toBeUndefined();
  });
});
