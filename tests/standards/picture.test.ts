// Rows copied from a table of reference timings. id: CVT-RBv2. Source: a public reference tool,
// `edid-decode --cvt w=W,h=H,fps=F,rb=2` (edid-decode 0.1~git20220315). Basis: computed by that tool.
import { describe, expect, it } from 'vitest';
import { cvtReducedBlanking2, pictureLinks, pictureMbps } from '../../src/standards/picture.ts';

/** width, height, hertz, pixel clock in kHz, htotal, vtotal, Gbit/s at 8 bits, Gbit/s at 10 bits. */
const timings: readonly (readonly [number, number, number, number, number, number, number, number])[] = [
  [640, 480, 60, 21384, 720, 495, 0.5132, 0.6415],
  [800, 600, 60, 32630, 880, 618, 0.7831, 0.9789],
  [1024, 768, 60, 52329, 1104, 790, 1.2559, 1.5699],
  [1280, 720, 60, 60465, 1360, 741, 1.4512, 1.8139],
  [1280, 1024, 60, 86006, 1360, 1054, 2.0641, 2.5802],
  [1366, 768, 60, 68540, 1446, 790, 1.645, 2.0562],
  [1600, 900, 60, 93340, 1680, 926, 2.2402, 2.8002],
  [1680, 1050, 60, 114048, 1760, 1080, 2.7372, 3.4214],
  [1920, 1080, 60, 133320, 2000, 1111, 3.1997, 3.9996],
  [1920, 1080, 120, 274560, 2000, 1144, 6.5894, 8.2368],
  [1920, 1080, 144, 333216, 2000, 1157, 7.9972, 9.9965],
  [1920, 1080, 240, 583200, 2000, 1215, 13.9968, 17.496],
  [1920, 1200, 60, 148200, 2000, 1235, 3.5568, 4.446],
  [2560, 1080, 60, 175982, 2640, 1111, 4.2236, 5.2795],
  [2560, 1440, 60, 234590, 2640, 1481, 5.6302, 7.0377],
  [2560, 1440, 120, 483120, 2640, 1525, 11.5949, 14.4936],
  [2560, 1440, 144, 586586, 2640, 1543, 14.0781, 17.5976],
  [2560, 1440, 240, 1025798, 2640, 1619, 24.6192, 30.7739],
  [2560, 1600, 60, 260726, 2640, 1646, 6.2574, 7.8218],
  [3440, 1440, 60, 312787, 3520, 1481, 7.5069, 9.3836],
  [3840, 2160, 30, 257661, 3920, 2191, 6.1839, 7.7298],
  [3840, 2160, 60, 522614, 3920, 2222, 12.5427, 15.6784],
  [3840, 2160, 120, 1075804, 3920, 2287, 25.8193, 32.2741],
  [3840, 2160, 144, 1306206, 3920, 2314, 31.3489, 39.1862],
  [3840, 2160, 240, 2285203, 3920, 2429, 54.8449, 68.5561],
  [5120, 2880, 60, 924144, 5200, 2962, 22.1795, 27.7243],
  [7680, 4320, 60, 2068660, 7760, 4443, 49.6478, 62.0598],
];

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

describe('picture timing with reduced blanking, version 2', () => {
  it.each(timings)(
    '%d x %d at %d Hz has the reference clock and totals',
    (width, height, hertz, clock, htotal, vtotal) => {
      expect(cvtReducedBlanking2(width, height, hertz)).toEqual({ htotal, vtotal, pixelClockKHz: clock });
    },
  );

  it.each(timings)('%d x %d at %d Hz has the reference bit rates', (width, height, hertz, _c, _h, _v, eight, ten) => {
    const mode = { widthPx: width, heightPx: height, refreshHz: hertz };
    expect(pictureMbps({ ...mode, bitsPerColour: 8 }) / 1000).toBeCloseTo(eight, 2);
    expect(pictureMbps({ ...mode, bitsPerColour: 10 }) / 1000).toBeCloseTo(ten, 2);
  });
});

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
// (DP 2.1 section 3.5.2.18, as in a public driver); basis: computed. DSP-014 to DSP-016 and DSP-022:
// encyclopaedia article "HDMI"; basis: read. DSP-027: same article, 165 MHz; basis: read.
const links: readonly (readonly [string, keyof typeof pictureLinks, number])[] = [
  ['DSP-001', 'dp-rbr', 5.184],
  ['DSP-002', 'dp-hbr', 8.64],
  ['DSP-003', 'dp-hbr2', 17.28],
  ['DSP-004', 'dp-hbr3', 25.92],
  ['DSP-005', 'dp-uhbr10', 38.68],
  ['DSP-007', 'dp-uhbr13.5', 52.22],
  ['DSP-009', 'dp-uhbr20', 77.37],
  ['DSP-014', 'hdmi-1.0', 3.96],
  ['DSP-015', 'hdmi-1.3', 8.16],
  ['DSP-016', 'hdmi-2.0', 14.4],
  ['DSP-022', 'hdmi-2.1', 42],
  ['DSP-027', 'dvi-single', 3.96],
];

describe('picture links', () => {
  it.each(links)('%s: %s carries the reference payload', (_id, link, gigabits) => {
    expect(pictureLinks[link].megabits / 1000).toBeCloseTo(gigabits, 2);
  });

  it('counts what coding and error correction take, not the bare line code (DSP-006, DSP-008, DSP-010 disagree)', () => {
    expect(pictureLinks['dp-uhbr10'].megabits).toBeLessThan(38700);
    expect(pictureLinks['dp-uhbr13.5'].megabits).toBeLessThan(52300);
    expect(pictureLinks['dp-uhbr20'].megabits).toBeLessThan(77500);
    // HDMI 48G: 16b/18b alone would give 42.67; the published rate is 42.0 (DSP-022).
    expect(pictureLinks['hdmi-2.1'].megabits).toBeLessThan(42600);
  });

  it('carries 2560 x 1440 at 144 Hz and 8 bits on HDMI 2.0, and not at 10 bits', () => {
    const mode = { widthPx: 2560, heightPx: 1440, refreshHz: 144 };
    expect(pictureMbps({ ...mode, bitsPerColour: 8 })).toBeLessThanOrEqual(pictureLinks['hdmi-2.0'].megabits);
    expect(pictureMbps({ ...mode, bitsPerColour: 10 })).toBeGreaterThan(pictureLinks['hdmi-2.0'].megabits);
  });
});
