// BUS-034: line rate / 10 (basis: computed). BUS-037, BUS-039 to BUS-041: white paper on M.2, key table (basis: read).
import { describe, expect, it } from 'vitest';
import { moduleCode, moduleKeys, moduleLengthsMm, sataMBps } from '../../src/standards/drives.ts';

describe('links of drives', () => {
  it('carry 600 MB/s on a 6 Gbit/s port (BUS-034)', () => {
    expect(sataMBps.megabytes).toBe(600);
  });
});

describe('M.2 modules', () => {
  it('have the published lengths (BUS-041)', () => {
    expect(moduleLengthsMm).toEqual([16, 26, 30, 38, 42, 60, 80, 110]);
  });

  it('are marked with width and length: 2280 is 22 by 80 mm (BUS-041)', () => {
    expect(moduleCode(80)).toBe('2280');
    expect(moduleCode(110)).toBe('22110');
  });

  it('keep key B at pins 12 to 19 with two lanes and key M at pins 59 to 66 with four (BUS-037, BUS-039)', () => {
    expect(moduleKeys.b).toMatchObject({ pins: [12, 19], lanes: 2 });
    expect(moduleKeys.m).toMatchObject({ pins: [59, 66], lanes: 4 });
  });
});
