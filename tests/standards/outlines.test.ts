import { describe, expect, test } from 'vitest';
import {
  boardHoles,
  boardOutlines,
  cutOutPitch,
  driveBoxes,
  slotLengths,
  supplyFaces,
} from '../../src/standards/outlines.ts';

// Copied from the tables named beside each; lengths in millimetres.
describe('outside measures', () => {
  test('boards: microATX Motherboard Interface Specification v1.2, Table 3; Mini-ITX Addendum v1.1, Table 1', () => {
    expect(boardOutlines.atx).toEqual({ height: 305, depth: 244 });
    expect(boardOutlines['micro-atx']).toEqual({ height: 244, depth: 244 });
    expect(boardOutlines['mini-itx']).toEqual({ height: 170, depth: 170 });
  });

  test('the pitch of cut-outs is 0.8 in, and three of them are what ATX has over microATX (12.0 − 9.6 in)', () => {
    expect(cutOutPitch).toBeCloseTo(0.8 * 25.4, 9);
    expect(3 * cutOutPitch).toBeCloseTo((12 - 9.6) * 25.4, 9);
  });

  test('slots: encyclopaedia article "PCI Express", physical layer', () => {
    expect(slotLengths).toEqual({ 1: 25, 4: 39, 8: 56, 16: 89 });
  });

  test('the face of an ATX supply: list of supply form factors', () => {
    expect(supplyFaces.atx).toEqual({ width: 150, height: 86 });
  });

  test('a 3.5 drive: SFF-8301, 101.6 × 147.0 × 26.1', () => {
    expect(driveBoxes['3.5']).toEqual({ length: 147, height: 26.1 });
  });

  // ATX specification 2.2, Figure 3, read from CAD models: A (11.35, 0.40), H (6.45, 6.50), M (0.25, 9.35) in.
  test('holes A, H and M of an ATX board', () => {
    for (const [down, front] of [
      [11.35, 0.4],
      [6.45, 6.5],
      [0.25, 9.35],
    ] as const) {
      const found = boardHoles.atx.some(
        ([x, y]) => Math.abs(x - down * 25.4) < 0.01 && Math.abs(y - front * 25.4) < 0.01,
      );
      expect(found).toBe(true);
    }
  });

  test('no hole lies outside its board', () => {
    for (const form of ['atx', 'micro-atx', 'mini-itx'] as const) {
      for (const [down, front] of boardHoles[form]) {
        expect(down).toBeLessThan(boardOutlines[form].height);
        expect(front).toBeLessThan(boardOutlines[form].depth);
      }
    }
  });
});
