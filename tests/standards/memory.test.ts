// Source of the rows: encyclopaedia article "DDR SDRAM", comparison of generations. Basis: read.
import { describe, expect, it } from 'vitest';
import { channelMBps, memoryGenerations } from '../../src/standards/memory.ts';

/** generation, speed as sold, published MB/s, volts, contacts. */
const rows: readonly (readonly ['ddr4' | 'ddr5', number, number, number, number])[] = [
  ['ddr4', 1600, 12800, 1.2, 288],
  ['ddr4', 1866, 14933, 1.2, 288],
  ['ddr4', 2133, 17067, 1.2, 288],
  ['ddr4', 2400, 19200, 1.2, 288],
  ['ddr4', 2666, 21333, 1.2, 288],
  ['ddr4', 2933, 23467, 1.2, 288],
  ['ddr4', 3200, 25600, 1.2, 288],
  ['ddr5', 3200, 25600, 1.1, 288],
  ['ddr5', 3600, 28800, 1.1, 288],
  ['ddr5', 4000, 32000, 1.1, 288],
  ['ddr5', 4800, 38400, 1.1, 288],
  ['ddr5', 5600, 44800, 1.1, 288],
  ['ddr5', 6400, 51200, 1.1, 288],
  ['ddr5', 7200, 57600, 1.1, 288],
];

describe('memory generations', () => {
  it.each(rows)(
    '%s-%d carries %d MB/s through one channel, at %d V on %d contacts',
    (generation, speed, mbps, volts, contacts) => {
      expect(memoryGenerations[generation].speedsMts).toContain(speed);
      expect(channelMBps(speed)).toBe(mbps);
      expect(memoryGenerations[generation].millivolts).toBe(volts * 1000);
      expect(memoryGenerations[generation].contacts).toBe(contacts);
    },
  );

  it('lists no speed beyond the published ones', () => {
    const listed = [...memoryGenerations.ddr4.speedsMts, ...memoryGenerations.ddr5.speedsMts];
    expect(listed).toHaveLength(rows.length);
  });

  it('gives 1,600 MB/s for 200 megatransfers, the worked example MEM-002 (100 x 2 x 64 / 8, read)', () => {
    expect(channelMBps(200)).toBe(1600);
  });

  it('does not repeat the published slip of 10,600 MB/s for 1333 megatransfers (MEM-044 disagrees; exact 10,666.7)', () => {
    expect(channelMBps(1333)).toBe(10667);
  });

  it('keeps two generations apart by voltage although both have 288 contacts (MEM-017, read: not interchangeable)', () => {
    expect(memoryGenerations.ddr4.contacts).toBe(memoryGenerations.ddr5.contacts);
    expect(memoryGenerations.ddr4.millivolts).not.toBe(memoryGenerations.ddr5.millivolts);
  });
});
