/** How far a disk's places can be counted, and how fast the older disks are. */

export const sectorBytes = 512;

/** Bytes of a disk with that many cylinders, heads and sectors to a track. */
export const geometryBytes = (cylinders: number, heads: number, sectorsPerTrack: number): number =>
  cylinders * heads * sectorsPerTrack * sectorBytes;

/**
 * The most bytes that each way of counting places on a disk reaches.
 * `chs`: the smaller of what the firmware (1,024 cylinders, 63 sectors) and the ribbon (16 heads) can say: 504 MiB.
 * `chs-large`: the firmware counts 255 heads and translates: 8.4 GB. `lba-28` and `lba-48`: sectors counted through in
 * 28 or 48 bits: 137 GB, and more than is made. Source: `disk-addressing`.
 */
export const addressingBytes = {
  chs: geometryBytes(1024, 16, 63),
  'chs-large': geometryBytes(1024, 255, 63),
  'lba-28': 2 ** 28 * sectorBytes,
  'lba-48': 2 ** 48 * sectorBytes,
} as const;
export const addressingSource = 'disk-addressing';

/** The ceiling of the firmware's own count, with all 256 heads: no system of the time used the last one. */
export const firmwareCeilingBytes: number = geometryBytes(1024, 256, 63);

/** The largest volume of each width of file table: places in the table times the largest cluster, in bytes. */
export const fatVolumes = {
  fat12: { clusters: 4096, clusterBytes: 8192, bytes: 33_554_432, source: 'drive-size-limits' },
  fat16: { clusters: 65536, clusterBytes: 32768, bytes: 2_147_483_648, source: 'drive-size-limits' },
} as const;

/**
 * Disks on the older pair of cables (one with 34 leads to all, one with 20 leads to each), by how the data is written.
 * They turn 3,600 times a minute. Source: `st506`.
 */
export const st506 = {
  mfm: { name: 'MFM', sectorsPerTrack: 17, kilobits: 5_000 },
  rll: { name: 'RLL', sectorsPerTrack: 26, kilobits: 7_500 },
  cylinders: 1024,
  heads: 16,
  drives: 2,
  turnsPerSecond: 60,
  source: 'st506',
} as const;

/** Bytes a second from one track of such a disk. */
export const st506BytesPerSecond = (encoding: 'mfm' | 'rll'): number =>
  st506[encoding].sectorsPerTrack * sectorBytes * st506.turnsPerSecond;

/**
 * Modes of the 40-lead ribbon, by the nanoseconds of one cycle, which are from memory. Modes that need the ribbon with
 * 80 leads say so. Rates of the first seven were read.
 */
export const ataModes = {
  'pio-0': { nanoseconds: 600, needs80Leads: false, source: 'ata-modes' },
  'pio-1': { nanoseconds: 383, needs80Leads: false, source: 'ata-modes' },
  'pio-2': { nanoseconds: 240, needs80Leads: false, source: 'ata-modes' },
  'pio-3': { nanoseconds: 180, needs80Leads: false, source: 'ata-modes' },
  'pio-4': { nanoseconds: 120, needs80Leads: false, source: 'ata-modes' },
  'multiword-0': { nanoseconds: 480, needs80Leads: false, source: 'from-memory' },
  'multiword-1': { nanoseconds: 150, needs80Leads: false, source: 'ata-modes' },
  'multiword-2': { nanoseconds: 120, needs80Leads: false, source: 'ata-modes' },
  'ultra-2': { nanoseconds: 60, needs80Leads: false, source: 'from-memory' },
  'ultra-4': { nanoseconds: 30, needs80Leads: true, source: 'from-memory' },
  'ultra-5': { nanoseconds: 20, needs80Leads: true, source: 'from-memory' },
  'ultra-6': { nanoseconds: 15, needs80Leads: true, source: 'from-memory' },
} as const;

/** Thousands of bytes a second, rounded: two bytes a cycle. */
export const ataKBps = (mode: keyof typeof ataModes): number => Math.round(2_000_000 / ataModes[mode].nanoseconds);
