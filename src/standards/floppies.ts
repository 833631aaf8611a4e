/** Diskettes: what is on one, and which drive reads and writes which. */
import { sectorBytes } from './disks.ts';

/**
 * Formats by size of the disk and kilobytes. `kilobits` is the rate at which the controller must read, a second;
 * `freeBytes` is what an empty disk of the usual file system leaves. Source: `floppy-formats`; `oersteds` is how hard
 * the coating is to turn, source: `diskette-coatings`.
 */
export const disketteFormats = {
  '5.25-360': {
    name: '360 K',
    cylinders: 40,
    heads: 2,
    sectorsPerTrack: 9,
    kilobits: 250,
    turnsPerMinute: 300,
    freeBytes: 362_496,
    oersteds: 300,
    source: 'floppy-formats',
  },
  '5.25-1200': {
    name: '1.2 M',
    cylinders: 80,
    heads: 2,
    sectorsPerTrack: 15,
    kilobits: 500,
    turnsPerMinute: 360,
    freeBytes: 1_213_952,
    oersteds: 600,
    source: 'floppy-formats',
  },
  '3.5-720': {
    name: '720 K',
    cylinders: 80,
    heads: 2,
    sectorsPerTrack: 9,
    kilobits: 250,
    turnsPerMinute: 300,
    freeBytes: 730_112,
    oersteds: 600,
    source: 'floppy-formats',
  },
  '3.5-1440': {
    name: '1.44 M',
    cylinders: 80,
    heads: 2,
    sectorsPerTrack: 18,
    kilobits: 500,
    turnsPerMinute: 300,
    freeBytes: 1_457_664,
    oersteds: 700,
    source: 'floppy-formats',
  },
  '3.5-2880': {
    name: '2.88 M',
    cylinders: 80,
    heads: 2,
    sectorsPerTrack: 36,
    kilobits: 1000,
    turnsPerMinute: 300,
    freeBytes: 2_931_712,
    oersteds: 750,
    source: 'floppy-formats',
  },
} as const;

export type DisketteFormat = keyof typeof disketteFormats;

/** Bytes of a formatted disk, files and file tables together. */
export const disketteBytes = (format: DisketteFormat): number => {
  const { cylinders, heads, sectorsPerTrack } = disketteFormats[format];
  return cylinders * heads * sectorsPerTrack * sectorBytes;
};

/** Bytes that pass the head in one turn, gaps and marks counted in. */
export const rawTrackBytes = (kilobits: number, turnsPerMinute: number): number => (kilobits * 7500) / turnsPerMinute;

/**
 * What a drive makes of a disk. `poorly`: it may seem to work, and the disk is not to be relied on afterwards.
 * `kilobits` is the rate the controller must have for it; undefined where the drive can do nothing with the disk.
 */
export type DisketteUse = {
  reads: boolean;
  writes: 'well' | 'poorly' | 'no';
  kilobits: number | undefined;
  note: string;
};

const well = (kilobits: number, note = 'the format it is made for'): DisketteUse => ({
  reads: true,
  writes: 'well',
  kilobits,
  note,
});
const not = (note: string): DisketteUse => ({ reads: false, writes: 'no', kilobits: undefined, note });

/** Drive by the format it is made for, then the disk. Source: `floppy-formats` and `diskette-coatings`. */
const uses: Partial<Record<DisketteFormat, Partial<Record<DisketteFormat, DisketteUse>>>> = {
  '5.25-360': {
    '5.25-360': well(250),
    '5.25-1200': not('its head is too weak for the harder coating, and it turns too slowly'),
  },
  '5.25-1200': {
    '5.25-1200': well(500),
    '5.25-360': {
      reads: true,
      writes: 'poorly',
      kilobits: 300,
      note: 'its narrow head leaves the edges of the old wide track, which a drive for 360 K then reads as well',
    },
  },
  '3.5-720': {
    '3.5-720': well(250),
    '3.5-1440': { reads: false, writes: 'poorly', kilobits: 250, note: 'only as a disk of 720 K, and not reliably' },
    // From memory.
    '3.5-2880': not('it cannot write across the depth of the coating'),
  },
  '3.5-1440': {
    '3.5-1440': well(500),
    '3.5-720': well(250, 'tracks of the same width'),
    '3.5-2880': not('it is too slow and cannot write across the depth of the coating'),
  },
  '3.5-2880': {
    '3.5-2880': well(1000),
    '3.5-1440': well(500, 'tracks of the same width'),
    '3.5-720': well(250, 'tracks of the same width'),
  },
};

/** What a drive made for one format makes of a disk of another. A disk of the other size does not go in. */
export const disketteUse = (drive: DisketteFormat, disk: DisketteFormat): DisketteUse =>
  uses[drive]?.[disk] ?? not('the disk is of another size and does not go in');
