import { describe, expect, test } from 'vitest';
import { formFactors } from '../../src/standards/boards.ts';
import { boardHoles, driveBoxes } from '../../src/standards/outlines.ts';

// Copied from the tables named beside each; lengths in millimetres.
describe('outside measures', () => {
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
        expect(down).toBeLessThan(formFactors[form].widthMm);
        expect(front).toBeLessThan(formFactors[form].depthMm);
      }
    }
  });
});
