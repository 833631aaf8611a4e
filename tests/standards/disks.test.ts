// BUS-092 to BUS-094: arithmetic on the widths of fields (basis: computed). FLO-012 to FLO-019: reference pages on the
// ST506/412 interface (basis: read) and arithmetic (basis: computed). BUS-065 to BUS-082: a reference post on the modes
// of AT Attachment (basis: read) and arithmetic on the cycle times (basis: computed). BUS-090: a page on its generations.
// Clusters of 12- and 16-bit tables: a page on the limits of drive sizes (basis: read).
import { describe, expect, it } from 'vitest';
import {
  addressingBytes,
  ataKBps,
  ataModes,
  fatVolumes,
  firmwareCeilingBytes,
  geometryBytes,
  st506,
  st506BytesPerSecond,
} from '../../src/standards/disks.ts';

describe('how far a disk can be counted', () => {
  it('ends at 528,482,304 bytes, 504 MiB, with 1,024 cylinders, 16 heads and 63 sectors (BUS-092)', () => {
    expect(addressingBytes.chs).toBe(528_482_304);
    expect(addressingBytes.chs).toBe(504 * 2 ** 20);
  });

  it('ends at 8,422,686,720 bytes with 255 heads, and 8,455,716,864 with all 256 (BUS-093)', () => {
    expect(addressingBytes['chs-large']).toBe(8_422_686_720);
    expect(firmwareCeilingBytes).toBe(8_455_716_864);
  });

  it('ends at 137,438,953,472 bytes with sectors counted in 28 bits (BUS-094)', () => {
    expect(addressingBytes['lba-28']).toBe(137_438_953_472);
  });

  it('reaches farther with every way of counting', () => {
    const reach = [...Object.values(addressingBytes)];
    expect(reach).toEqual(reach.toSorted((a, b) => a - b));
    expect(addressingBytes['lba-48']).toBe(2 ** 57);
  });

  it('ends a volume of the 12-bit table at 32 MiB and of the 16-bit table at 2 GiB (4096 x 16 x 512; 65536 x 32 K)', () => {
    expect(fatVolumes.fat12.bytes).toBe(4096 * 16 * 512);
    expect(fatVolumes.fat12.clusters * fatVolumes.fat12.clusterBytes).toBe(32 * 2 ** 20);
    expect(fatVolumes.fat16.bytes).toBe(65536 * 32 * 1024);
    expect(fatVolumes.fat16.clusters * fatVolumes.fat16.clusterBytes).toBe(2 * 2 ** 30);
  });
});

/** id, encoding, sectors, Mbit/s, bytes a second, kB a second as published. */
const encodings: readonly (readonly [string, 'mfm' | 'rll', number, number, number, number])[] = [
  ['FLO-012 to FLO-015', 'mfm', 17, 5, 522_240, 522],
  ['FLO-012 to FLO-015', 'rll', 26, 7.5, 798_720, 799],
];

describe('disks on the older pair of cables', () => {
  it.each(encodings)(
    '%s: %s has %d sectors a track at %d Mbit/s',
    (_id, encoding, sectors, megabits, bytes, kilobytes) => {
      expect(st506[encoding]).toMatchObject({ sectorsPerTrack: sectors, kilobits: megabits * 1000 });
      expect(st506BytesPerSecond(encoding)).toBe(bytes);
      expect(Math.round(st506BytesPerSecond(encoding) / 1000)).toBe(kilobytes);
    },
  );

  it('come with up to 16 heads, 1,024 cylinders and two to a cable (FLO-012)', () => {
    expect(st506).toMatchObject({ heads: 16, cylinders: 1024, drives: 2 });
  });

  it('gain half again with the denser encoding (FLO-016: 50 %, 26/17)', () => {
    expect(st506.rll.kilobits / st506.mfm.kilobits).toBe(1.5);
  });

  it('hold 10,653,696 and 5,326,848 bytes in the first two of them, sold as 10 and 5 MB (FLO-017 to FLO-019)', () => {
    expect(geometryBytes(306, 4, 17)).toBe(10_653_696);
    expect(geometryBytes(153, 4, 17)).toBe(5_326_848);
  });
});

/** ids, mode, MB/s as published to one decimal (cut off or rounded), and exact. */
const modes: readonly (readonly [string, keyof typeof ataModes, number, number])[] = [
  ['BUS-065 and BUS-066', 'pio-0', 3.3, 3.33],
  ['BUS-067 and BUS-068', 'pio-1', 5.2, 5.22],
  ['BUS-069 and BUS-070', 'pio-2', 8.3, 8.33],
  ['BUS-071 and BUS-072', 'pio-3', 11.1, 11.11],
  ['BUS-073 and BUS-074', 'pio-4', 16.7, 16.67],
  ['BUS-075 and BUS-076', 'multiword-1', 13.3, 13.33],
  ['BUS-077 and BUS-078', 'multiword-2', 16.7, 16.67],
];

describe('modes of the 40-lead ribbon', () => {
  it.each(modes)('%s: %s carries %d MB/s', (_id, mode, published, exact) => {
    expect(ataKBps(mode) / 1000).toBeCloseTo(published, 1);
    expect(ataKBps(mode) / 1000).toBeCloseTo(exact, 2);
  });

  it('reach 8.3 MB/s in the first generation and 16.6 in the next (BUS-091)', () => {
    expect(Math.floor(ataKBps('pio-2') / 100) / 10).toBe(8.3);
    expect(Math.floor(ataKBps('pio-4') / 100) / 10).toBe(16.6);
  });

  it('do not repeat the printed 4.7 MB/s of multiword mode 0 (BUS-082 disagrees; 4.17 by its cycle)', () => {
    expect(ataKBps('multiword-0') / 1000).toBeCloseTo(4.17, 2);
  });

  it('move two bytes a cycle: half of that is the slip of the printed single-word rates (BUS-079 to BUS-081 disagree)', () => {
    // 240 ns is printed as 4.17 MB/s there; two bytes in 240 ns are 8.33.
    expect(ataModes['pio-2'].nanoseconds).toBe(240);
    expect(ataKBps('pio-2')).not.toBe(4170);
    expect(ataKBps('pio-2')).toBe(8333);
  });

  it('need 80 leads above 33 MB/s (BUS-090)', () => {
    for (const [mode, { needs80Leads }] of Object.entries(ataModes)) {
      expect(needs80Leads, mode).toBe(ataKBps(mode as keyof typeof ataModes) > 33_400);
    }
  });
});
