/**
 * What a picture needs, and what a picture link carries.
 *
 * The timing is CVT with reduced blanking, version 2: the least a modern monitor asks for.
 * All figures are for an uncompressed RGB picture; links count all their lanes.
 */
export const timingSource = 'vesa-cvt-2';

const blankPixels = 80;
const frontPorchLines = 1;
const syncLines = 8;
const backPorchLines = 6;
/** The least time between two pictures, in microseconds. */
const leastBlankUs = 460;

export type Mode = { widthPx: number; heightPx: number; refreshHz: number };
export type Timing = { htotal: number; vtotal: number; pixelClockKHz: number };

/** Whole pixels, lines and kilohertz; the clock is rounded down to its 1 kHz step. */
export const cvtReducedBlanking2 = (widthPx: number, heightPx: number, refreshHz: number): Timing => {
  const blankLines = Math.max(
    Math.floor((leastBlankUs * heightPx * refreshHz) / (1_000_000 - leastBlankUs * refreshHz)) + 1,
    frontPorchLines + syncLines + backPorchLines,
  );
  const htotal = widthPx + blankPixels;
  const vtotal = heightPx + blankLines;
  return { htotal, vtotal, pixelClockKHz: Math.floor((refreshHz * htotal * vtotal) / 1000) };
};

/** Megabits a second with blanking counted in, whole, rounded up. */
export const pictureMbps = (mode: Mode & { bitsPerColour: number }): number => {
  const { pixelClockKHz } = cvtReducedBlanking2(mode.widthPx, mode.heightPx, mode.refreshHz);
  return Math.ceil((pixelClockKHz * 3 * mode.bitsPerColour) / 1000);
};

type Link = { plug: 'hdmi' | 'displayport' | 'dvi-d'; name: string; megabits: number; source: string };

/**
 * Usable megabits a second of each kind of link, after its line code.
 * DisplayPort at 8b/10b keeps four bits in five; from UHBR10 on, 96.71 % is left after error correction.
 */
export const pictureLinks = {
  'hdmi-1.0': { plug: 'hdmi', name: 'HDMI 1.0 to 1.2', megabits: 3960, source: 'hdmi' },
  'hdmi-1.3': { plug: 'hdmi', name: 'HDMI 1.3 and 1.4', megabits: 8160, source: 'hdmi' },
  'hdmi-2.0': { plug: 'hdmi', name: 'HDMI 2.0', megabits: 14400, source: 'hdmi' },
  'hdmi-2.1': { plug: 'hdmi', name: 'HDMI 2.1', megabits: 42000, source: 'hdmi' },
  'dp-rbr': { plug: 'displayport', name: 'DisplayPort RBR', megabits: 5184, source: 'displayport' },
  'dp-hbr': { plug: 'displayport', name: 'DisplayPort HBR', megabits: 8640, source: 'displayport' },
  'dp-hbr2': { plug: 'displayport', name: 'DisplayPort HBR2', megabits: 17280, source: 'displayport' },
  'dp-hbr3': { plug: 'displayport', name: 'DisplayPort HBR3', megabits: 25920, source: 'displayport' },
  'dp-uhbr10': { plug: 'displayport', name: 'DisplayPort UHBR10', megabits: 38684, source: 'displayport' },
  'dp-uhbr13.5': { plug: 'displayport', name: 'DisplayPort UHBR13.5', megabits: 52223, source: 'displayport' },
  'dp-uhbr20': { plug: 'displayport', name: 'DisplayPort UHBR20', megabits: 77368, source: 'displayport' },
  'dvi-single': { plug: 'dvi-d', name: 'DVI, single link', megabits: 3960, source: 'dvi' },
} as const satisfies Record<string, Link>;
