// Every published data rate, and every payload of a picture link, with its row and source beside it.
import { describe, expect, it } from 'vitest';
import { linkCarries, pictureLinks, pictureMbps } from '../../src/standards/picture.ts';
import { cvtRows, referenceLinks } from './cvt-rows.ts';

// Rows as published. Source: encyclopaedia article "HDMI", refresh-frequency tables (CVT-RB v2, RGB). Basis: read.
/** width, height, hertz, bits a colour, published Gbit/s. */
const published: readonly (readonly [number, number, number, number, number])[] = [
  [1280, 720, 60, 8, 1.45],
  [1280, 720, 120, 8, 2.99],
  [1920, 1080, 60, 8, 3.2],
  [1920, 1080, 120, 8, 6.59],
  [1920, 1080, 144, 8, 8.0],
  [1920, 1080, 240, 8, 14.0],
  [2560, 1440, 60, 8, 5.63],
  [2560, 1440, 75, 8, 7.09],
  [2560, 1440, 120, 8, 11.59],
  [2560, 1440, 144, 8, 14.08],
  [2560, 1440, 240, 8, 24.62],
  [3840, 2160, 30, 8, 6.18],
  [3840, 2160, 60, 8, 12.54],
  [3840, 2160, 75, 8, 15.79],
  [3840, 2160, 120, 8, 25.82],
  [3840, 2160, 144, 8, 31.35],
  [3840, 2160, 240, 8, 54.84],
  [5120, 2880, 60, 8, 22.18],
  [5120, 2880, 120, 8, 45.66],
  [7680, 4320, 30, 8, 24.48],
  [7680, 4320, 60, 8, 49.65],
  [1920, 1080, 60, 10, 4.0],
  [1920, 1080, 120, 10, 8.24],
  [1920, 1080, 144, 10, 10.0],
  [1920, 1080, 240, 10, 17.5],
  [2560, 1440, 60, 10, 7.04],
  [2560, 1440, 120, 10, 14.49],
  [2560, 1440, 144, 10, 17.6],
  [2560, 1440, 240, 10, 30.77],
  [3840, 2160, 60, 10, 15.68],
  [3840, 2160, 120, 10, 32.27],
  [3840, 2160, 144, 10, 39.19],
  [3840, 2160, 240, 10, 68.56],
  [5120, 2880, 60, 10, 27.72],
  [7680, 4320, 60, 10, 62.06],
];

describe('published data rates', () => {
  it.each(published)(
    '%d x %d at %d Hz and %d bits agrees to a hundredth of a gigabit',
    (widthPx, heightPx, refreshHz, bitsPerColour, gigabits) => {
      const mbps = pictureMbps({ widthPx, heightPx, refreshHz, bitsPerColour });
      // Published to two decimals (one value printed cut off, not rounded), ours rounded up to a whole megabit.
      expect(Math.abs(mbps / 1000 - gigabits)).toBeLessThan(0.01);
    },
  );

  it('is a whole number of megabits and never less than the exact rate', () => {
    // 2560 x 1440 at 144 Hz, 8 bits: 586,586 kHz x 24 = 14,078.064 Mbit/s.
    expect(pictureMbps({ widthPx: 2560, heightPx: 1440, refreshHz: 144, bitsPerColour: 8 })).toBe(14079);
  });
});

// Gbit/s. DSP-001 to DSP-009: DisplayPort payload on four lanes, channel coding 80 % or 96.71 %
// (DP 2.1 section 3.5.2.18, as in a public driver); basis: computed. DSP-014 to DSP-016 and DSP-017 to DSP-023:
// encyclopaedia article "HDMI"; basis: read. DSP-027: same article, 165 MHz; basis: read.
// The dual link of DVI is from memory (DSP-028) and is not tested.
const links: readonly (readonly [string, keyof typeof pictureLinks, number])[] = [
  ['DSP-001', 'dp-rbr', 5.184],
  ['DSP-002 and DSP-012', 'dp-hbr', 8.64],
  ['DSP-003', 'dp-hbr2', 17.28],
  ['DSP-004', 'dp-hbr3', 25.92],
  ['DSP-005', 'dp-uhbr10', 38.68],
  ['DSP-007', 'dp-uhbr13.5', 52.22],
  ['DSP-009', 'dp-uhbr20', 77.37],
  ['DSP-014', 'hdmi-1.0', 3.96],
  ['DSP-015', 'hdmi-1.3', 8.16],
  ['DSP-016', 'hdmi-2.0', 14.4],
  ['DSP-017', 'hdmi-2.1-9', 7.88],
  ['DSP-018', 'hdmi-2.1-18', 15.8],
  ['DSP-019', 'hdmi-2.1-24', 21],
  ['DSP-020', 'hdmi-2.1-32', 28],
  ['DSP-021', 'hdmi-2.1-40', 35],
  ['DSP-022', 'hdmi-2.1', 42],
  ['DSP-023', 'hdmi-2.2', 84],
  ['DSP-027', 'dvi-single', 3.96],
];

/** id, link, Gbit/s by the bare line code, which is more than gets through. */
const bareLineCodes: readonly (readonly [string, keyof typeof pictureLinks, number])[] = [
  ['DSP-006 disagrees', 'dp-uhbr10', 38.79],
  ['DSP-008 disagrees', 'dp-uhbr13.5', 52.36],
  ['DSP-010 disagrees', 'dp-uhbr20', 77.58],
  ['DSP-017, 16b/18b alone', 'hdmi-2.1-9', 8.0],
  ['DSP-018, 16b/18b alone', 'hdmi-2.1-18', 16.0],
  ['DSP-019, 16b/18b alone', 'hdmi-2.1-24', 21.33],
  ['DSP-020, 16b/18b alone', 'hdmi-2.1-32', 28.44],
  ['DSP-021, 16b/18b alone', 'hdmi-2.1-40', 35.56],
  ['DSP-022, 16b/18b alone', 'hdmi-2.1', 42.67],
  ['DSP-023, 16b/18b alone', 'hdmi-2.2', 85.33],
];

describe('picture links', () => {
  it.each(links)('%s: %s carries the reference payload', (_id, link, gigabits) => {
    expect(Math.abs(pictureLinks[link].megabits / 1000 - gigabits)).toBeLessThanOrEqual(0.005);
  });

  it.each(links.filter(([, link]) => !link.includes('uhbr')))(
    '%s: %s is printed to its last figure',
    (_id, link, gigabits) => {
      expect(pictureLinks[link].megabits).toBe(Math.round(gigabits * 1000));
    },
  );

  it('keeps 96.71 % of four lanes of 10, 13.5 and 20 Gbit/s, cut off to whole megabits (DSP-005, DSP-007, DSP-009)', () => {
    expect(pictureLinks['dp-uhbr10'].megabits).toBe(Math.floor(10_000 * 4 * 0.9671));
    expect(pictureLinks['dp-uhbr13.5'].megabits).toBe(Math.floor(13_500 * 4 * 0.9671));
    expect(pictureLinks['dp-uhbr20'].megabits).toBe(Math.floor(20_000 * 4 * 0.9671));
  });

  it.each(bareLineCodes)('%s: %s carries less than its bare line code', (_id, link, gigabits) => {
    expect(pictureLinks[link].megabits / 1000).toBeLessThan(gigabits - 0.05);
  });

  it('takes the clock times 24 bits on HDMI and DVI (DSP-014 to DSP-016 and DSP-027: 165, 340 and 600 MHz)', () => {
    expect(pictureLinks['hdmi-1.0'].megabits).toBe(165 * 24);
    expect(pictureLinks['hdmi-1.3'].megabits).toBe(340 * 24);
    expect(pictureLinks['hdmi-2.0'].megabits).toBe(600 * 24);
    expect(pictureLinks['dvi-single'].megabits).toBe(165 * 24);
  });

  it('asks a quarter more for 30 bits a pixel than for 24 (DSP-025)', () => {
    const mode = { widthPx: 3840, heightPx: 2160, refreshHz: 60 };
    const [eight, ten] = [8, 10].map((bitsPerColour) => pictureMbps({ ...mode, bitsPerColour }));
    expect((ten ?? 0) / (eight ?? 1)).toBeCloseTo(1.25, 3);
  });

  it.each(cvtRows)(
    '%s: %d x %d at %d Hz goes through the links of the reference and no others (links_that_carry, computed)',
    (...row) => {
      const clock = row[4];
      const carried = (bits: number) =>
        referenceLinks.map((link) => (linkCarries(link, clock, bits) ? 'x' : '-')).join('');
      expect(carried(8)).toBe(row[17]);
      expect(carried(10)).toBe(row[18]);
    },
  );

  it('does not put 1920 x 1080 at 60 Hz with full blanking on one link of DVI, and does with reduced (173.0 and 138.5 MHz)', () => {
    expect(linkCarries('dvi-single', 173_000, 8)).toBe(false);
    expect(linkCarries('dvi-single', 138_500, 8)).toBe(true);
    expect(linkCarries('dvi-single', 148_500, 8)).toBe(true);
  });

  it('carries 2560 x 1440 at 144 Hz and 8 bits on HDMI 2.0, and not at 10 bits', () => {
    const mode = { widthPx: 2560, heightPx: 1440, refreshHz: 144 };
    expect(pictureMbps({ ...mode, bitsPerColour: 8 })).toBeLessThanOrEqual(pictureLinks['hdmi-2.0'].megabits);
    expect(pictureMbps({ ...mode, bitsPerColour: 10 })).toBeGreaterThan(pictureLinks['hdmi-2.0'].megabits);
  });

  it('has no figure for a rate at which blanking fills the second', () => {
    const mode = { widthPx: 640, heightPx: 480, refreshHz: 2200, bitsPerColour: 8 };
    expect(pictureMbps(mode)).toBe(Number.POSITIVE_INFINITY);
  });
});
