/**
 * Memory of about 1990 is put in by whole banks: as many modules of one sort as make up the processor's data bus.
 * Source: `memory-banks`; that a SIPP is organised as a 30-pin module is from memory.
 */
export const bankModules = {
  '30': { name: '30-pin SIMM', dataBits: 8, parityBits: 9, source: 'memory-banks' },
  'sipp-30': { name: 'SIPP', dataBits: 8, parityBits: 9, source: 'from-memory' },
  '72': { name: '72-pin SIMM', dataBits: 32, parityBits: 36, source: 'memory-banks' },
} as const;

export type BankModulePins = keyof typeof bankModules;

/** Widths that processors' data buses have. */
export const dataBusBits = [8, 16, 32, 64] as const;

/** Modules to a bank; undefined where one module is wider than the bus, so that no such bank exists. */
export function modulesPerBank(busBits: number, moduleBits: number): number | undefined {
  const modules = busBits / moduleBits;
  return Number.isInteger(modules) ? modules : undefined;
}

/** Bits of a bank with one parity bit to every eight. */
export const bankBitsWithParity = (bankBits: number): number => (bankBits / 8) * 9;

/** Kilobytes of data on a module: so many thousand (1,024) places, each so many data bits wide. */
export const moduleKb = (placesK: number, dataBits: number): number => (placesK * dataBits) / 8;
