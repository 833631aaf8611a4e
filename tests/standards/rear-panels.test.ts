// FF-034: microATX Motherboard Interface Specification v1.2, Figure 4 (basis: read). 02, worked example: the opening is the
// same in every case of the ATX family. That AT boards show one keyboard socket is common practice.
import { describe, expect, it } from 'vitest';
import { plateOpening, rearPanels } from '../../src/standards/rear-panels.ts';

describe('what shows at the back of a case', () => {
  it('is an opening of 6.25 by 1.75 inches for the plate, 158.75 by 44.45 mm (FF-034)', () => {
    expect(plateOpening.widthMm).toBe(6.25 * 25.4);
    expect(plateOpening.heightMm).toBeCloseTo(1.75 * 25.4, 9);
  });

  it.each(['atx', 'micro-atx', 'mini-itx', 'e-atx'] as const)('is a plate for %s', (form) => {
    expect(rearPanels[form].shows).toBe('plate');
  });

  it.each(['full-at', 'baby-at'] as const)('is a keyboard socket for %s (common practice)', (form) => {
    expect(rearPanels[form].shows).toBe('keyboard-hole');
  });

  it('is not one thing for LPX', () => {
    expect(rearPanels.lpx.shows).toBeNull();
  });
});
