// BUS-006 to BUS-015: a lecture table of the main buses, in MiB/s (basis: read), and the exact peak (basis: computed).
// BUS-018 to BUS-022: two pages on types of bus (basis: read). BUS-023 to BUS-029: arithmetic (basis: computed).
import { describe, expect, it } from 'vitest';
import { buses, busPeakKBps, needsLongSlot } from '../../src/standards/buses.ts';

type Bus = keyof typeof buses;

/** id, bus, exact MB/s. */
const exact: readonly (readonly [string, Bus, number])[] = [
  ['BUS-007', 'isa-8', 8.33],
  ['BUS-009', 'isa-16', 16.67],
  ['BUS-011', 'eisa', 33.33],
  ['BUS-013', 'pci-32', 133.33],
  ['BUS-015', 'agp-1x', 266.67],
  ['BUS-023', 'agp-1x', 266.67],
  ['BUS-024', 'agp-2x', 533.33],
  ['BUS-025', 'agp-4x', 1066.67],
  ['BUS-026', 'agp-8x', 2133.33],
  ['BUS-028', 'vlb', 133.33],
  ['BUS-029', 'pci-64', 533.33],
];

/** id, bus, MiB/s as printed to one decimal (cut off or rounded). */
const binary: readonly (readonly [string, Bus, number])[] = [
  ['BUS-006', 'isa-8', 7.9],
  ['BUS-008', 'isa-16', 15.9],
  ['BUS-010', 'eisa', 31.8],
  ['BUS-012', 'pci-32', 127.2],
  ['BUS-014', 'agp-1x', 254.3],
];

/** id, bus, MB/s as printed from a clock without its third, or from a round figure. */
const rounded: readonly (readonly [string, Bus, number])[] = [
  ['BUS-018', 'pci-32', 132],
  ['BUS-019', 'agp-1x', 264],
  ['BUS-020', 'agp-2x', 528],
  ['BUS-021', 'agp-4x', 1000],
  ['BUS-022', 'agp-8x', 2000],
];

describe('peaks of buses', () => {
  it.each(exact)('%s: %s reaches %d MB/s', (_id, bus, megabytes) => {
    expect(busPeakKBps(bus) / 1000).toBeCloseTo(megabytes, 2);
  });

  it.each(binary)('%s: %s reaches the printed %d MiB/s', (_id, bus, mebibytes) => {
    const reached = (busPeakKBps(bus) * 1000) / 2 ** 20;
    expect(Math.abs(reached - mebibytes)).toBeLessThan(0.06);
  });

  it.each(rounded)('%s: %s is not below the printed %d MB/s, and at most 7 % above', (_id, bus, megabytes) => {
    expect(busPeakKBps(bus) / 1000).toBeGreaterThan(megabytes);
    expect(busPeakKBps(bus) / 1000).toBeLessThan(megabytes * 1.07);
  });

  it('is the peak of one transfer a clock, not the 8 MB/s of two clocks (BUS-016 disagrees, BUS-017 is half of ours)', () => {
    expect(busPeakKBps('isa-16')).not.toBe(8000);
    expect(busPeakKBps('isa-16') / 2 / 1000).toBeCloseTo(8.33, 2);
  });

  it('is 16 bits wide in the long ISA slot and 8 in the short one (BUS-006, BUS-008)', () => {
    expect([buses['isa-8'].bits, buses['isa-16'].bits]).toEqual([8, 16]);
  });
});

describe('lines of the bus', () => {
  it('asks for the long part of the slot for a line that the short part does not have, and for no other', () => {
    expect(['irq-5', 'irq-9', 'dma-1', 'dma-3', 'io-300', 'mem-d000'].filter(needsLongSlot)).toEqual([]);
    expect(['irq-10', 'irq-15', 'dma-0', 'dma-5'].filter(needsLongSlot)).toHaveLength(4);
  });
});
