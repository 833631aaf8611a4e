// 03-memory-modules: encyclopaedia article "DDR SDRAM", comparison of generations (basis: read). Exact bandwidth and module
// name: arithmetic, and the rule of a public decoder of module data (basis: computed).
// MEM-001 to MEM-007, MEM-012, MEM-017, MEM-024, MEM-044, MEM-045: the same article (basis: read). MEM-019, MEM-023:
// encyclopaedia article "DDR5 SDRAM" (basis: read). MEM-008 to MEM-010: arithmetic (basis: computed).
import { describe, expect, it } from 'vitest';
import {
  channelMBps,
  latencyNs,
  type MemoryGeneration,
  memoryGenerations,
  moduleBits,
  moduleName,
  otherMillivolts,
} from '../../src/standards/memory.ts';

/** chip, generation, speed as sold, published and exact MB/s, module name, volts, contacts, of small modules, prefetch. */
const rows: readonly (readonly [
  string,
  MemoryGeneration,
  number,
  number,
  number,
  string,
  number,
  number,
  number,
  number,
])[] = [
  ['DDR-200', 'ddr', 200, 1600, 1600.0, 'PC-1600', 2.5, 184, 200, 2],
  ['DDR-266', 'ddr', 266, 2133, 2133.3, 'PC-2100', 2.5, 184, 200, 2],
  ['DDR-333', 'ddr', 333, 2667, 2666.7, 'PC-2700', 2.5, 184, 200, 2],
  ['DDR-400', 'ddr', 400, 3200, 3200.0, 'PC-3200', 2.5, 184, 200, 2],
  ['DDR2-400', 'ddr2', 400, 3200, 3200.0, 'PC2-3200', 1.8, 240, 200, 4],
  ['DDR2-533', 'ddr2', 533, 4267, 4266.7, 'PC2-4200', 1.8, 240, 200, 4],
  ['DDR2-667', 'ddr2', 667, 5333, 5333.3, 'PC2-5300', 1.8, 240, 200, 4],
  ['DDR2-800', 'ddr2', 800, 6400, 6400.0, 'PC2-6400', 1.8, 240, 200, 4],
  ['DDR2-1066', 'ddr2', 1066, 8533, 8533.3, 'PC2-8500', 1.8, 240, 200, 4],
  ['DDR3-800', 'ddr3', 800, 6400, 6400.0, 'PC3-6400', 1.5, 240, 204, 8],
  ['DDR3-1066', 'ddr3', 1066, 8533, 8533.3, 'PC3-8500', 1.5, 240, 204, 8],
  ['DDR3-1333', 'ddr3', 1333, 10600, 10666.7, 'PC3-10600', 1.5, 240, 204, 8],
  ['DDR3-1600', 'ddr3', 1600, 12800, 12800.0, 'PC3-12800', 1.5, 240, 204, 8],
  ['DDR3-1866', 'ddr3', 1866, 14933, 14933.3, 'PC3-14900', 1.5, 240, 204, 8],
  ['DDR3-2133', 'ddr3', 2133, 17067, 17066.7, 'PC3-17000', 1.5, 240, 204, 8],
  ['DDR4-1600', 'ddr4', 1600, 12800, 12800.0, 'PC4-12800', 1.2, 288, 260, 8],
  ['DDR4-1866', 'ddr4', 1866, 14933, 14933.3, 'PC4-14900', 1.2, 288, 260, 8],
  ['DDR4-2133', 'ddr4', 2133, 17067, 17066.7, 'PC4-17000', 1.2, 288, 260, 8],
  ['DDR4-2400', 'ddr4', 2400, 19200, 19200.0, 'PC4-19200', 1.2, 288, 260, 8],
  ['DDR4-2666', 'ddr4', 2666, 21333, 21333.3, 'PC4-21300', 1.2, 288, 260, 8],
  ['DDR4-2933', 'ddr4', 2933, 23467, 23466.7, 'PC4-23400', 1.2, 288, 260, 8],
  ['DDR4-3200', 'ddr4', 3200, 25600, 25600.0, 'PC4-25600', 1.2, 288, 260, 8],
  ['DDR5-3200', 'ddr5', 3200, 25600, 25600.0, 'PC5-25600', 1.1, 288, 262, 16],
  ['DDR5-3600', 'ddr5', 3600, 28800, 28800.0, 'PC5-28800', 1.1, 288, 262, 16],
  ['DDR5-4000', 'ddr5', 4000, 32000, 32000.0, 'PC5-32000', 1.1, 288, 262, 16],
  ['DDR5-4800', 'ddr5', 4800, 38400, 38400.0, 'PC5-38400', 1.1, 288, 262, 16],
  ['DDR5-5600', 'ddr5', 5600, 44800, 44800.0, 'PC5-44800', 1.1, 288, 262, 16],
  ['DDR5-6400', 'ddr5', 6400, 51200, 51200.0, 'PC5-51200', 1.1, 288, 262, 16],
  ['DDR5-7200', 'ddr5', 7200, 57600, 57600.0, 'PC5-57600', 1.1, 288, 262, 16],
];

describe('memory generations', () => {
  it.each(rows)('%s is in the table with its contacts, voltage and prefetch', (...row) => {
    const [, generation, speed, , , , volts, contacts, smallContacts, prefetch] = row;
    expect(memoryGenerations[generation].speedsMts).toContain(speed);
    expect(memoryGenerations[generation]).toMatchObject({
      millivolts: volts * 1000,
      contacts,
      smallContacts,
      prefetch,
    });
  });

  it.each(rows)('%s carries its exact bandwidth through one channel and is sold under its name', (...row) => {
    const [, generation, speed, , exact, name] = row;
    expect(Math.abs(channelMBps(speed) - exact)).toBeLessThanOrEqual(0.5);
    expect(moduleName(generation, speed)).toBe(name);
  });

  it.each(rows.filter(([chip]) => chip !== 'DDR3-1333'))(
    '%s carries the published bandwidth',
    (_chip, _gen, speed, mbps) => {
      expect(channelMBps(speed)).toBe(mbps);
    },
  );

  it('does not repeat the published slip of 10,600 MB/s for 1333 megatransfers (MEM-044 disagrees; exact 10,666.7)', () => {
    expect(channelMBps(1333)).toBe(10667);
  });

  it('lists no speed beyond the published ones, so not only 4000 to 6400 for DDR5 (MEM-023 disagrees)', () => {
    const listed = Object.values(memoryGenerations).flatMap(({ speedsMts }) => [...speedsMts]);
    expect(listed).toHaveLength(rows.length);
    expect(memoryGenerations.ddr5.speedsMts).toContain(7200);
  });

  it('gives DDR4 1.2 V, not the 1.05 V listed beside it (MEM-045)', () => {
    expect(memoryGenerations.ddr4.millivolts).toBe(1200);
  });

  it('gives DDR-400 2.6 V and low-voltage DDR3 1.35 V besides their own (03-memory-modules, volts)', () => {
    expect(otherMillivolts).toMatchObject({ 'ddr-400': 2600, 'ddr3-low': 1350 });
  });

  it('gives 1,600 MB/s for 200 megatransfers, the worked example MEM-002 (100 x 2 x 64 / 8)', () => {
    expect(channelMBps(200)).toBe(1600);
  });

  it('keeps generations apart by contacts or voltage (MEM-017: not interchangeable)', () => {
    const ways = Object.values(memoryGenerations).map(({ contacts, millivolts }) => `${contacts} at ${millivolts}`);
    expect(new Set(ways).size).toBe(ways.length);
  });

  it('splits the contacts of a DDR module 52 and 40, half of them on each side (MEM-012)', () => {
    expect(memoryGenerations.ddr.notch.contacts).toEqual([52, 40]);
    expect(2 * (52 + 40)).toBe(memoryGenerations.ddr.contacts);
  });

  it('has 64 data bits, 72 with error correction, and 72 or 80 for DDR5 (MEM-001, MEM-019, MEM-024)', () => {
    expect(moduleBits).toMatchObject({ plain: 64, corrected: [72], correctedDdr5: [72, 80] });
  });
});

/** id, clocks, speed as sold, nanoseconds. */
const latencies: readonly (readonly [string, number, number, number])[] = [
  ['MEM-003', 2, 200, 20],
  ['MEM-004', 2.5, 266, 18.75],
  ['MEM-005', 2.5, 333, 15],
  ['MEM-006', 2.5, 400, 12.5],
  ['MEM-007', 3, 400, 15],
  ['MEM-008', 16, 3200, 10],
  ['MEM-009', 30, 6000, 10],
  ['MEM-010', 40, 4800, 16.667],
];

describe('latency', () => {
  it.each(latencies)('%s: %d clocks at %d megatransfers are %d ns', (_id, clocks, speed, nanoseconds) => {
    expect(latencyNs(clocks, speed)).toBeCloseTo(nanoseconds, 3);
  });
});
