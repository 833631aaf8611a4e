// 03-simm-banks: Upgrading and Repairing PCs, Table 6.18, rows by data bus; the two rows for a 64-bit bus with 72-pin
// modules: a copy of an encyclopaedia text on banks (basis: read). MEM-031, MEM-032: the same table (basis: read).
// MEM-033 to MEM-039: arithmetic (basis: computed). A SIPP is from memory (MEM-041) and is not tested.
import { describe, expect, it } from 'vitest';
import { bankBitsWithParity, bankModules, dataBusBits, moduleKb, modulesPerBank } from '../../src/standards/banks.ts';

/**
 * Row of the table; the bits of its bank, and with parity; modules to a bank with 30 contacts, with 72, and of 64 bits.
 * Where the table has a dash the module is wider than the bus, or is not made for such a machine: no number is tested.
 */
const rows: readonly (readonly [string, number, number, number | null, number | null, number | null])[] = [
  ['row 1, 8-bit bus', 8, 9, 1, null, null],
  ['row 2, 16-bit bus', 16, 18, 2, null, null],
  ['row 3, 16-bit bus', 16, 18, 2, null, null],
  ['row 4, 16-bit bus of the 32-bit generation', 16, 18, 2, null, null],
  ['row 5, 16-bit bus of the next generation', 16, 18, 2, null, null],
  ['row 6, 32-bit bus', 32, 36, 4, 1, null],
  ['row 7, 32-bit bus of the next generation', 32, 36, 4, 1, null],
  ['row 8, 64-bit bus, one channel', 64, 72, null, null, 1],
  ['row 9, 64-bit bus, two channels', 128, 144, null, null, 2],
  ['row 10, 64-bit bus, three channels', 192, 216, null, null, 3],
  ['row 11, 64-bit bus with older modules', 64, 72, 8, 2, 1],
  ['row 12, 64-bit bus run by halves', 32, 36, 4, 1, null],
];

const perBank: readonly (readonly [string, number, number, number])[] = rows.flatMap(
  ([row, bits, , of30, of72, of64]) =>
    [
      [bankModules['30'].dataBits, of30],
      [bankModules['72'].dataBits, of72],
      [64, of64],
    ].flatMap(([moduleBits = 0, modules = null]) =>
      modules === null ? [] : [[row, bits, moduleBits ?? 0, modules] as const],
    ),
);

describe('banks of memory', () => {
  it.each(perBank)('%s: a bank of %d bits takes modules of %d bits, %d of them', (_row, bits, moduleBits, modules) => {
    expect(modulesPerBank(bits, moduleBits)).toBe(modules);
  });

  it.each(rows)('%s: %d bits are %d with parity', (_row, bits, withParity) => {
    expect(bankBitsWithParity(bits)).toBe(withParity);
  });

  it('has 8 data bits on 30 contacts and 32 on 72, 9 and 36 with parity (MEM-031, MEM-032)', () => {
    expect(bankModules['30']).toMatchObject({ dataBits: 8, parityBits: 9 });
    expect(bankModules['72']).toMatchObject({ dataBits: 32, parityBits: 36 });
  });

  it('has no bank of a module wider than the bus: the table has a dash there', () => {
    expect(modulesPerBank(8, 32)).toBeUndefined();
    expect(modulesPerBank(16, 32)).toBeUndefined();
    expect(modulesPerBank(32, 64)).toBeUndefined();
  });

  it('knows the buses of the table', () => {
    expect(dataBusBits).toEqual([8, 16, 32, 64]);
  });
});

/** id, thousands of places, MiB. */
const sizes: readonly (readonly [string, number, number])[] = [
  ['MEM-034', 256, 1],
  ['MEM-035', 1024, 4],
  ['MEM-036', 2048, 8],
  ['MEM-037', 4096, 16],
  ['MEM-038', 8192, 32],
  ['MEM-039', 16384, 64],
];

describe('sizes of 72-pin modules', () => {
  it.each(sizes)('%s: %d K places of 32 bits hold %d MiB', (_id, placesK, mebibytes) => {
    expect(moduleKb(placesK, 32)).toBe(mebibytes * 1024);
  });
});
