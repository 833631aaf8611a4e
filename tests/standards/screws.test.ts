// FF-068 to FF-071: encyclopaedia article on the screws of computer cases (basis: read). The pitch of M3 is from memory
// (FF-072) and is not tested. FF-074, FF-075, FF-077: articles on the mounting interface of monitors (basis: read).
import { describe, expect, it } from 'vitest';
import { monitorMounts } from '../../src/standards/monitor-mounts.ts';
import { screws } from '../../src/standards/screws.ts';

describe('screws', () => {
  it('of #6-32 are 0.1380 inch thick with 32 turns to the inch (FF-068, FF-069)', () => {
    expect(screws['6-32'].diameterMm).toBeCloseTo(0.138 * 25.4, 4);
    expect(screws['6-32'].pitchMm).toBeCloseTo(25.4 / 32, 6);
  });

  it('hold the supply and 3.5 inch drives with #6-32, optical, floppy and 2.5 inch drives with M3 (FF-070, FF-071)', () => {
    expect(screws['6-32'].for).toContain('power supply');
    expect(screws['6-32'].for).toContain('3.5 inch drive');
    expect(screws.m3.for).toEqual(['5.25 inch optical drive', '3.5 inch floppy drive', '2.5 inch drive']);
  });

  it('are not alike in either measure', () => {
    expect(screws.m3.diameterMm).toBeLessThan(screws['6-32'].diameterMm);
  });
});

describe('holes at the back of a monitor', () => {
  it('are 75, 100 or 200 by 100 mm apart, for screws of M4 (FF-074, FF-075)', () => {
    expect(monitorMounts.patterns.map(({ acrossMm, downMm }) => [acrossMm, downMm])).toEqual([
      [75, 75],
      [100, 100],
      [200, 100],
    ]);
    expect(monitorMounts.patterns.every(({ screw }) => screw === 'M4')).toBe(true);
  });

  it('bear 14 kg on the two small patterns (FF-077)', () => {
    expect(monitorMounts.smallPatternKg).toBe(14);
  });
});
