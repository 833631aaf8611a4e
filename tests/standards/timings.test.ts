// Timings: all 81 rows of the coordinated video timings (cvt-rows.ts), all 21 reduced-blanking rows of the VESA monitor
// timings, and all 20 published timings. Basis of all: computed by a public tool that lists VESA and CTA timings.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { namedTimings } from '../../src/standards/named-timings.ts';
import { bitRateMbps, lineHz, refreshMilliHz, type TimingMethod, timingOf } from '../../src/standards/timings.ts';
import { cvtRows } from './cvt-rows.ts';

describe('computed timings', () => {
  it('are checked against every row of the reference', () => {
    expect(cvtRows).toHaveLength(81);
    expect(new Set(cvtRows.map((row) => row.slice(0, 4).join(' '))).size).toBe(81);
  });

  it.each(cvtRows)('%s: %d x %d at %d Hz has the reference clock, porches and totals', (...row) => {
    const [method, widthPx, heightPx, refreshHz, clock, hFront, hSync, hBack, hTotal, vFront, vSync, vBack, vTotal] =
      row;
    expect(timingOf(method, { widthPx, heightPx, refreshHz })).toEqual({
      pixelClockKHz: clock,
      hFront,
      hSync,
      hBack,
      hTotal,
      vFront,
      vSync,
      vBack,
      vTotal,
    });
  });

  it.each(cvtRows)('%s: %d x %d at %d Hz has the reference scan rates and bit rates', (...row) => {
    const [method, widthPx, heightPx, refreshHz] = row;
    const timing = timingOf(method, { widthPx, heightPx, refreshHz });
    // Printed to three decimals of a kilohertz and six of a hertz; ours are whole hertz and thousandths of a picture.
    expect(Math.abs(lineHz(timing) - row[13] * 1000)).toBeLessThanOrEqual(1);
    expect(Math.abs(refreshMilliHz(timing) - row[14] * 1000)).toBeLessThanOrEqual(0.51);
    // Printed to four decimals of a gigabit; ours is rounded up to a whole megabit.
    expect(Math.abs(bitRateMbps(timing, 8) / 1000 - row[15])).toBeLessThan(0.0011);
    expect(Math.abs(bitRateMbps(timing, 10) / 1000 - row[16])).toBeLessThan(0.0011);
  });

  it('follows 1920 x 1080 at 60 Hz by hand (05-display, worked example)', () => {
    // Line time (1/60 s - 460 µs) / 1080 = 15.006 µs; 460 / 15.006 is 30 and a bit, so 31 lines of blanking.
    const timing = timingOf('cvt-rb2', { widthPx: 1920, heightPx: 1080, refreshHz: 60 });
    expect(timing.vTotal).toBe(1080 + 31);
    expect(timing.hTotal).toBe(1920 + 80);
    expect(timing.pixelClockKHz).toBe((60 * 2000 * 1111) / 1000);
  });

  it('holds its own sums, and never runs faster than it was asked', () => {
    const methods = fc.constantFrom<TimingMethod>('cvt', 'cvt-rb', 'cvt-rb2');
    const widths = fc.integer({ min: 40, max: 1000 }).map((cells) => cells * 8);
    const mode = { heightPx: fc.integer({ min: 200, max: 4400 }), refreshHz: fc.integer({ min: 24, max: 360 }) };
    fc.assert(
      fc.property(methods, widths, mode.heightPx, mode.refreshHz, (method, widthPx, heightPx, refreshHz) => {
        const timing = timingOf(method, { widthPx, heightPx, refreshHz });
        expect(timing.hTotal).toBe(widthPx + timing.hFront + timing.hSync + timing.hBack);
        expect(timing.vTotal).toBe(heightPx + timing.vFront + timing.vSync + timing.vBack);
        expect(Object.values(timing).every((value) => Number.isSafeInteger(value) && value >= 0)).toBe(true);
        if (method !== 'cvt') expect(refreshMilliHz(timing)).toBeLessThanOrEqual(refreshHz * 1000);
      }),
    );
  });
});

// VESA DMT list as a public tool has it. The last column is what another public tool computes: where it differs from
// the published clock it is a trap, kept to show that the slip is not repeated.
/** id, pixels across and down, hertz, published clock in MHz, the other tool's clock in MHz. */
const reduced: readonly (readonly [string, number, number, number, number, number])[] = [
  ['DMT 0x14', 1024, 768, 120, 115.5, 115.25],
  ['DMT 0x16', 1280, 768, 60, 68.25, 68.0],
  ['DMT 0x1a', 1280, 768, 120, 140.25, 140.25],
  ['DMT 0x1b', 1280, 800, 60, 71.0, 71.0],
  ['DMT 0x1f', 1280, 800, 120, 146.25, 146.25],
  ['DMT 0x22', 1280, 960, 120, 175.5, 175.5],
  ['DMT 0x26', 1280, 1024, 120, 187.25, 187.25],
  ['DMT 0x29', 1400, 1050, 60, 101.0, 101.0],
  ['DMT 0x2d', 1400, 1050, 120, 208.0, 208.0],
  ['DMT 0x2e', 1440, 900, 60, 88.75, 88.75],
  ['DMT 0x32', 1440, 900, 120, 182.75, 182.75],
  ['DMT 0x38', 1600, 1200, 120, 268.25, 268.0],
  ['DMT 0x39', 1680, 1050, 60, 119.0, 119.0],
  ['DMT 0x3d', 1680, 1050, 120, 245.5, 245.25],
  ['DMT 0x40', 1792, 1344, 120, 333.25, 333.0],
  ['DMT 0x43', 1856, 1392, 120, 356.5, 356.25],
  ['DMT 0x44', 1920, 1200, 60, 154.0, 154.0],
  ['DMT 0x48', 1920, 1200, 120, 317.0, 317.0],
  ['DMT 0x4b', 1920, 1440, 120, 380.5, 380.25],
  ['DMT 0x4c', 2560, 1600, 60, 268.5, 268.5],
  ['DMT 0x50', 2560, 1600, 120, 552.75, 552.75],
];

describe('reduced blanking against the published monitor timings', () => {
  it.each(reduced)(
    '%s: %d x %d at %d Hz has the published clock of %d MHz',
    (_id, widthPx, heightPx, refreshHz, megahertz) => {
      const { pixelClockKHz } = timingOf('cvt-rb', { widthPx, heightPx, refreshHz });
      expect(pixelClockKHz).toBe(megahertz * 1000);
    },
  );

  it.each(reduced.filter(([, , , , published, other]) => published !== other))(
    '%s: %d x %d at %d Hz does not repeat a slip of one step (published %d, disagreeing %d MHz)',
    (_id, widthPx, heightPx, refreshHz, _published, other) => {
      expect(timingOf('cvt-rb', { widthPx, heightPx, refreshHz }).pixelClockKHz).not.toBe(other * 1000);
    },
  );
});

/** id, name, pixels across and down, clock in kHz, totals, kHz across, Hz down, Gbit/s at 8 bits. */
const published: readonly [
  string,
  keyof typeof namedTimings,
  number,
  number,
  number,
  number,
  number,
  number,
  number,
  number,
][] = [
  ['DMT 0x04', 'dmt-04', 640, 480, 25175, 800, 525, 31.469, 59.940476, 0.6042],
  ['DMT 0x05', 'dmt-05', 640, 480, 31500, 832, 520, 37.861, 72.808802, 0.756],
  ['DMT 0x06', 'dmt-06', 640, 480, 31500, 840, 500, 37.5, 75.0, 0.756],
  ['DMT 0x08', 'dmt-08', 800, 600, 36000, 1024, 625, 35.156, 56.25, 0.864],
  ['DMT 0x09', 'dmt-09', 800, 600, 40000, 1056, 628, 37.879, 60.316541, 0.96],
  ['DMT 0x10', 'dmt-10', 1024, 768, 65000, 1344, 806, 48.363, 60.00384, 1.56],
  ['DMT 0x12', 'dmt-12', 1024, 768, 78750, 1312, 800, 60.023, 75.028582, 1.89],
  ['DMT 0x23', 'dmt-23', 1280, 1024, 108000, 1688, 1066, 63.981, 60.01974, 2.592],
  ['DMT 0x33', 'dmt-33', 1600, 1200, 162000, 2160, 1250, 75.0, 60.0, 3.888],
  ['DMT 0x3a', 'dmt-3a', 1680, 1050, 146250, 2240, 1089, 65.29, 59.95425, 3.51],
  ['DMT 0x52', 'dmt-52', 1920, 1080, 148500, 2200, 1125, 67.5, 60.0, 3.564],
  ['DMT 0x45', 'dmt-45', 1920, 1200, 193250, 2592, 1245, 74.556, 59.8846, 4.638],
  ['DMT 0x44', 'dmt-44', 1920, 1200, 154000, 2080, 1235, 74.038, 59.950171, 3.696],
  ['DMT 0x4c', 'dmt-4c', 2560, 1600, 268500, 2720, 1646, 98.713, 59.971589, 6.444],
  ['VIC 1', 'vic-1', 640, 480, 25175, 800, 525, 31.469, 59.940476, 0.6042],
  ['VIC 4', 'vic-4', 1280, 720, 74250, 1650, 750, 45.0, 60.0, 1.782],
  ['VIC 16', 'vic-16', 1920, 1080, 148500, 2200, 1125, 67.5, 60.0, 3.564],
  ['VIC 95', 'vic-95', 3840, 2160, 297000, 4400, 2250, 67.5, 30.0, 7.128],
  ['VIC 97', 'vic-97', 3840, 2160, 594000, 4400, 2250, 135.0, 60.0, 14.256],
  ['VIC 118', 'vic-118', 3840, 2160, 1188000, 4400, 2250, 270.0, 120.0, 28.512],
];

describe('published timings', () => {
  it.each(published)('%s: %s has the published size, clock and totals, and the rates that follow', (...row) => {
    const [, name, widthPx, heightPx, clock, hTotal, vTotal, kilohertz, hertz, gigabits] = row;
    const timing = namedTimings[name];
    expect(timing).toMatchObject({ widthPx, heightPx, pixelClockKHz: clock, hTotal, vTotal });
    expect(Math.abs(lineHz(timing) - kilohertz * 1000)).toBeLessThanOrEqual(1);
    expect(Math.abs(refreshMilliHz(timing) - hertz * 1000)).toBeLessThanOrEqual(0.51);
    expect(Math.abs(bitRateMbps(timing, 8) / 1000 - gigabits)).toBeLessThan(0.0011);
  });

  it('lists no timing beyond the published ones', () => {
    expect(Object.keys(namedTimings)).toHaveLength(published.length);
  });

  /** name, method that gives it, hertz it is computed for. */
  const alsoComputed: readonly (readonly [keyof typeof namedTimings, TimingMethod, number])[] = [
    ['dmt-3a', 'cvt', 60],
    ['dmt-45', 'cvt', 60],
    ['dmt-44', 'cvt-rb', 60],
    ['dmt-4c', 'cvt-rb', 60],
  ];
  it.each(alsoComputed)('%s is what %s gives at %d Hz', (name, method, refreshHz) => {
    const { widthPx, heightPx, pixelClockKHz, hTotal, vTotal } = namedTimings[name];
    expect(timingOf(method, { widthPx, heightPx, refreshHz })).toMatchObject({ pixelClockKHz, hTotal, vTotal });
  });
});
