// 06-floppy-formats and 06-floppy-compatibility: tables of formats and drives in a public operating system's floppy
// driver; mailing-list posts of 2000 and 2003 on coatings (basis: read). Free space: two public tools that make the file
// system (basis: computed). FLO-001 to FLO-011 as named. Formats of 160, 180 and 320 K are from memory and not kept.
import { describe, expect, it } from 'vitest';
import {
  type DisketteFormat,
  disketteBytes,
  disketteFormats,
  disketteUse,
  rawTrackBytes,
} from '../../src/standards/floppies.ts';

/** row, format, cylinders, heads, sectors, bytes, KiB, kbit/s, turns a minute, raw bytes a track, bytes free. */
const formats: readonly [
  string,
  DisketteFormat,
  number,
  number,
  number,
  number,
  number,
  number,
  number,
  number,
  number,
][] = [
  ['360K', '5.25-360', 40, 2, 9, 368_640, 360, 250, 300, 6250.0, 362_496],
  ['1.2M', '5.25-1200', 80, 2, 15, 1_228_800, 1200, 500, 360, 10416.7, 1_213_952],
  ['720K', '3.5-720', 80, 2, 9, 737_280, 720, 250, 300, 6250.0, 730_112],
  ['1.44M', '3.5-1440', 80, 2, 18, 1_474_560, 1440, 500, 300, 12500.0, 1_457_664],
  ['2.88M', '3.5-2880', 80, 2, 36, 2_949_120, 2880, 1000, 300, 25000.0, 2_931_712],
];

describe('formats of diskettes', () => {
  it.each(formats)('%s has the published geometry, rate and bytes', (...row) => {
    const [, format, cylinders, heads, sectorsPerTrack, bytes, kibibytes, kilobits, turnsPerMinute, raw, freeBytes] =
      row;
    expect(disketteFormats[format]).toMatchObject({
      cylinders,
      heads,
      sectorsPerTrack,
      kilobits,
      turnsPerMinute,
      freeBytes,
    });
    expect(disketteBytes(format)).toBe(bytes);
    expect(disketteBytes(format)).toBe(kibibytes * 1024);
    expect(rawTrackBytes(kilobits, turnsPerMinute)).toBeCloseTo(raw, 1);
  });

  it('fills 73.7 % of each track of every format (formatted_share_pct, computed)', () => {
    for (const [, format] of formats) {
      const { sectorsPerTrack, kilobits, turnsPerMinute } = disketteFormats[format];
      expect((sectorsPerTrack * 512 * 100) / rawTrackBytes(kilobits, turnsPerMinute)).toBeCloseTo(73.7, 1);
    }
  });

  it('leaves what the file tables do not take (FLO-010, FLO-011)', () => {
    expect(disketteFormats['3.5-1440'].freeBytes).toBe((2880 - 1 - 2 * 9 - (224 * 32) / 512) * 512);
    expect(disketteFormats['5.25-360'].freeBytes).toBe((720 - 1 - 2 * 2 - (112 * 32) / 512) * 512);
  });

  it('counts 1.44 in thousands of 1,024: 1.47456 million bytes (FLO-001, FLO-002)', () => {
    expect(disketteBytes('3.5-1440') / 1024 / 1000).toBe(1.44);
    expect(disketteBytes('3.5-1440')).toBe(1_474_560);
  });

  it('has 750 oersted or more on the disk of 2.88 M (06-floppy-formats: about 750 to 1200)', () => {
    expect(disketteFormats['3.5-2880'].oersteds).toBe(750);
  });

  it('has 600 and 700 oersted on the two 3.5 inch disks, so close that the wrong one seems to work (FLO-025)', () => {
    expect([disketteFormats['3.5-720'].oersteds, disketteFormats['3.5-1440'].oersteds]).toEqual([600, 700]);
  });

  it('has the harder coating on the disk of 1.2 M, 600 against 300 oersted (FLO-024)', () => {
    expect([disketteFormats['5.25-360'].oersteds, disketteFormats['5.25-1200'].oersteds]).toEqual([300, 600]);
  });
});

/** drive, disk, reads, writes, kbit/s: the twelve rows that were read. */
const table: readonly (readonly [
  DisketteFormat,
  DisketteFormat,
  boolean,
  'well' | 'poorly' | 'no',
  number | undefined,
])[] = [
  ['5.25-360', '5.25-360', true, 'well', 250],
  ['5.25-360', '5.25-1200', false, 'no', undefined],
  ['5.25-1200', '5.25-1200', true, 'well', 500],
  ['5.25-1200', '5.25-360', true, 'poorly', 300],
  ['3.5-720', '3.5-720', true, 'well', 250],
  ['3.5-1440', '3.5-1440', true, 'well', 500],
  ['3.5-1440', '3.5-720', true, 'well', 250],
  ['3.5-1440', '3.5-2880', false, 'no', undefined],
  ['3.5-2880', '3.5-2880', true, 'well', 1000],
  ['3.5-2880', '3.5-1440', true, 'well', 500],
  ['3.5-2880', '3.5-720', true, 'well', 250],
];

describe('which drive reads and writes which disk', () => {
  it.each(table)('a drive for %s and a disk of %s', (drive, disk, reads, writes, kilobits) => {
    expect(disketteUse(drive, disk)).toMatchObject({ reads, writes });
    expect(disketteUse(drive, disk).kilobits).toBe(kilobits);
  });

  it('a drive for 720 K does not read a disk of 1.44 M, and writes it only as 720 K and poorly', () => {
    expect(disketteUse('3.5-720', '3.5-1440')).toMatchObject({ reads: false, writes: 'poorly' });
  });

  it('a disk of 360 K turns six fifths as fast in a drive for 1.2 M, so its rate rises as much (06, worked example)', () => {
    const rise = disketteFormats['5.25-1200'].turnsPerMinute / disketteFormats['5.25-360'].turnsPerMinute;
    expect(disketteUse('5.25-1200', '5.25-360').kilobits).toBe(disketteFormats['5.25-360'].kilobits * rise);
  });

  it('every drive reads and writes the format it is made for, at its own rate', () => {
    for (const [, format] of formats) {
      const { reads, writes, kilobits } = disketteUse(format, format);
      expect([reads, writes, kilobits]).toEqual([true, 'well', disketteFormats[format].kilobits]);
    }
  });
});
