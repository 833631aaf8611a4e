/** How far the two tables that divide a drive up can count its sectors. */

/** The older table, which firmware of the mode `bios` starts from: a first sector and a count of sectors, 32 bits each. */
export const masterBootRecord = { sectorBits: 32, source: 'uefi' } as const;

/** The newer table, which firmware of the mode `uefi` starts from. Farther than any drive reaches. */
export const guidTable = { sectorBits: 64, source: 'uefi' } as const;

/** Whole gigabytes of 10^9 bytes that the older table reaches, rounded down: 2,199 with sectors of 512 bytes, which is 2 TiB. */
export const oldTableGb = (sectorBytes: number): number =>
  Math.floor((2 ** masterBootRecord.sectorBits * sectorBytes) / 1_000_000_000);
