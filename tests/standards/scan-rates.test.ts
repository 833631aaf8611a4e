// DSP-030, DSP-034: common questions on video cards, from a public newsgroup (basis: read). DSP-033, DSP-036: a wiki of
// scan rates (basis: read). DSP-035: a monitor manual, standard modes (basis: read).
// DSP-037 to DSP-042: clock over totals (basis: computed).
import { describe, expect, it } from 'vitest';
import { scanRates } from '../../src/standards/scan-rates.ts';
import { lineHz, refreshMilliHz } from '../../src/standards/timings.ts';

type Name = keyof typeof scanRates;

/** id, card, kHz across, Hz down. */
const computed: readonly (readonly [string, Name, number, number])[] = [
  ['DSP-037', 'mono-350', 18.432, 49.82],
  ['DSP-038', 'colour-200', 15.7, 59.92],
  ['DSP-039', 'colour-350', 21.851, 59.7],
  ['DSP-040', 'vga-480', 31.469, 59.94],
  ['DSP-041', 'vga-400', 31.469, 70.09],
  ['DSP-042', 'vga-text', 31.469, 70.09],
];

/** id, card, pixels across and down, kHz across and Hz down as printed, and how many decimals of a kHz are printed. */
const printed: readonly (readonly [string, Name, number, number, number, number, number])[] = [
  ['DSP-030', 'mono-350', 720, 350, 18.43, 50, 2],
  ['DSP-033', 'colour-200', 640, 200, 15.7, 60, 1],
  ['DSP-034', 'colour-350', 640, 350, 21.8, 60, 1],
  ['DSP-035', 'vga-480', 640, 480, 31.5, 60, 1],
  ['DSP-035', 'vga-400', 640, 400, 31.5, 70, 1],
];

describe('scan rates of the cards of about 1990', () => {
  it.each(computed)('%s: %s runs at %d kHz and %d Hz', (_id, name, kilohertz, hertz) => {
    expect(lineHz(scanRates[name]) / 1000).toBeCloseTo(kilohertz, 3);
    expect(refreshMilliHz(scanRates[name]) / 1000).toBeCloseTo(hertz, 2);
  });

  it.each(printed)(
    '%s: %s draws %d by %d at the printed rates',
    (_id, name, widthPx, heightPx, kilohertz, hertz, decimals) => {
      expect(scanRates[name]).toMatchObject({ widthPx, heightPx });
      // Printed cut off or rounded in its last place.
      expect(Math.abs(lineHz(scanRates[name]) / 1000 - kilohertz)).toBeLessThan(10 ** -decimals);
      expect(Math.round(refreshMilliHz(scanRates[name]) / 1000)).toBe(hertz);
    },
  );

  it('does not repeat the slip of 18.43 kHz for the 200-line card (DSP-032 disagrees)', () => {
    expect(lineHz(scanRates['colour-200'])).toBeLessThan(16_000);
  });

  it('keeps the clock of text at 28.322 MHz, not the rounded 28.320 (DSP-043 differs)', () => {
    expect(scanRates['vga-text'].pixelClockKHz).toBe(28322);
  });

  it('has every analog card near 31.5 kHz, twice what the digital colour monitor follows (DSP-036)', () => {
    const analog = Object.values(scanRates).filter(({ signal }) => signal === 'analog');
    expect(analog).toHaveLength(3);
    for (const card of analog) expect(Math.round(lineHz(card) / 100)).toBe(315);
  });
});
