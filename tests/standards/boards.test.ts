// FF-004, FF-005: encyclopaedia table "Motherboard form factor" (basis: read). FF-010: form-factor table (basis: read).
// FF-019 to FF-021: microATX Motherboard Interface Specification v1.2, Table 3, and its conversion (basis: read, computed).
// FF-027, FF-028, FF-031, FF-032: the same, Figure 2, and set arithmetic on it (basis: read, computed).
// FF-037 to FF-040: slots and pitch (basis: read, computed). FF-048 to FF-051: encyclopaedia article "PCI Express" (basis: read).
import { describe, expect, it } from 'vitest';
import { formFactors, slotLengths, slotPitch } from '../../src/standards/boards.ts';

/** id, form factor, width and depth in millimetres, slots (FF-037). */
const outlines: readonly (readonly [string, keyof typeof formFactors, number, number, number])[] = [
  ['FF-004', 'atx', 305, 244, 7],
  ['FF-005', 'micro-atx', 244, 244, 4],
  ['FF-010 and FF-023', 'mini-itx', 170, 170, 1],
];

describe('form factors of boards', () => {
  it.each(outlines)('%s: %s measures %d by %d mm and has %d slots', (_id, name, width, depth, slots) => {
    expect(formFactors[name].widthMm).toBe(width);
    expect(formFactors[name].depthMm).toBe(depth);
    expect(formFactors[name].slots).toBe(slots);
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
