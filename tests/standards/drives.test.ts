// BUS-031: encyclopaedia article "SATA" (basis: read). BUS-032 to BUS-034: line rate / 10 (basis: computed). BUS-037, BUS-039 to BUS-041: white paper on M.2, key table (basis: read).
import { describe, expect, it } from 'vitest';
import { moduleCode, moduleKeys, moduleLengthsMm, sataGenerations } from '../../src/standards/drives.ts';

/** id, generation, line rate in Gbit/s (BUS-031, read), MB/s. */
const links: readonly (readonly [string, keyof typeof sataGenerations, number, number])[] = [
  ['BUS-032', 1, 1.5, 150],
  ['BUS-033', 2, 3, 300],
  ['BUS-034', 3, 6, 600],
];

describe('links of drives', () => {
  it.each(links)('%s: SATA %d at %d Gbit/s carries %d MB/s', (_id, generation, gigabits, megabytes) => {
    expect(sataGenerations[generation]).toMatchObject({ megabits: gigabits * 1000, megabytes });
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
