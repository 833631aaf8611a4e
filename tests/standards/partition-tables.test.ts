// Arithmetic on the 32 bits that the older table has for a first sector and for a count (basis: computed): 2 TiB.
import { describe, expect, it } from 'vitest';
import { guidTable, masterBootRecord, oldTableGb } from '../../src/standards/partition-tables.ts';

describe('tables that divide a drive up', () => {
  it('end at 2 TiB, 2,199 GB, with sectors of 512 bytes', () => {
    expect(2 ** masterBootRecord.sectorBits * 512).toBe(2 * 2 ** 40);
    expect(oldTableGb(512)).toBe(Math.floor((2 * 2 ** 40) / 1e9));
    expect(oldTableGb(512)).toBe(2199);
  });

  it('end eight times as far with sectors of 4,096 bytes: 16 TiB', () => {
    expect(oldTableGb(4096)).toBe(Math.floor((16 * 2 ** 40) / 1e9));
  });

  it('reach beyond any drive with 64 bits', () => {
    expect(guidTable.sectorBits).toBe(64);
  });
});
