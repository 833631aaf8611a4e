/**
 * The timing of a picture: how many pixels and lines are sent, blanking counted in, and how fast.
 * Computed by the formulas of the coordinated video timings, in whole numbers throughout.
 * Sources: `vesa-cvt` for `cvt` and `cvt-rb`, `vesa-cvt-2` for `cvt-rb2`.
 */
export type Mode = { widthPx: number; heightPx: number; refreshHz: number };

/** Pixels across, lines down; front porch, sync and back porch of each; the clock in kilohertz. */
export type Timing = {
  pixelClockKHz: number;
  hFront: number;
  hSync: number;
  hBack: number;
  hTotal: number;
  vFront: number;
  vSync: number;
  vBack: number;
  vTotal: number;
};

export type TimingMethod = 'cvt' | 'cvt-rb' | 'cvt-rb2';

/**
 * Up to version 1 widths come in cells of eight pixels, and the clock in steps of 250 kHz. The clock and the blanking
 * are worked out for whole cells: pixels beyond them make every line that little longer.
 */
const cellPx = 8;
const wholeCells = (px: number): number => Math.floor(px / cellPx) * cellPx;
const clockStepKHz = 250;
const leastFrontLines = 3;
const leastBackLines = 6;
/** Sync and back porch with full blanking, and all blanking with reduced, last at least so long, in microseconds. */
const syncAndBackUs = 550;
const reducedBlankUs = 460;

/** Lines of sync tell the monitor the shape of the picture; ten for a shape that is not in the list. */
const syncLinesByShape: readonly (readonly [across: number, down: number, lines: number])[] = [
  [4, 3, 4],
  [16, 9, 5],
  [16, 10, 6],
  [5, 4, 7],
  [15, 9, 7],
];

function syncLines(widthPx: number, heightPx: number): number {
  const shape = syncLinesByShape.find(([across, down]) => wholeCells((heightPx * across) / down) === widthPx);
  return shape?.[2] ?? 10;
}

/** Microseconds of each second that are left for lines when every picture gives up so many. */
const leftUs = (refreshHz: number, blankUs: number): number => Math.max(0, 1_000_000 - blankUs * refreshHz);

/** Whole lines that last at least so long, and one more begun. */
const linesFor = (blankUs: number, refreshHz: number, lines: number): number =>
  Math.floor((blankUs * refreshHz * lines) / leftUs(refreshHz, blankUs)) + 1;

function fullBlanking({ widthPx, heightPx, refreshHz }: Mode): Timing {
  const vSync = syncLines(widthPx, heightPx);
  const lines = heightPx + leastFrontLines;
  const syncAndBack = Math.max(linesFor(syncAndBackUs, refreshHz, lines), vSync + leastBackLines);
  // One line lasts left / (refresh × lines) microseconds; blanking is 30 % of it less 0.3 % a microsecond, and at least 20 %.
  const left = leftUs(refreshHz, syncAndBackUs);
  const linesPerSecond = refreshHz * lines;
  const blankShare = Math.max(300 * linesPerSecond - 3 * left, 200 * linesPerSecond);
  const hBlank =
    Math.floor((wholeCells(widthPx) * blankShare) / ((1000 * linesPerSecond - blankShare) * 2 * cellPx)) * 2 * cellPx;
  const cells = wholeCells(widthPx) + hBlank;
  const hSync = wholeCells((cells * 8) / 100);
  const hBack = hBlank / 2;
  return {
    pixelClockKHz: Math.floor((cells * linesPerSecond * 1000) / (left * clockStepKHz)) * clockStepKHz,
    hFront: hBlank - hSync - hBack,
    hSync,
    hBack,
    hTotal: widthPx + hBlank,
    vFront: leastFrontLines,
    vSync,
    vBack: syncAndBack - vSync,
    vTotal: lines + syncAndBack,
  };
}

function reducedBlanking({ widthPx, heightPx, refreshHz }: Mode): Timing {
  const vSync = syncLines(widthPx, heightPx);
  const blank = Math.max(linesFor(reducedBlankUs, refreshHz, heightPx), leastFrontLines + vSync + leastBackLines);
  const [hFront, hSync, hBack] = [48, 32, 80] as const;
  const hBlank = hFront + hSync + hBack;
  const vTotal = heightPx + blank;
  return {
    pixelClockKHz:
      Math.floor((refreshHz * (wholeCells(widthPx) + hBlank) * vTotal) / (1000 * clockStepKHz)) * clockStepKHz,
    hFront,
    hSync,
    hBack,
    hTotal: widthPx + hBlank,
    vFront: leastFrontLines,
    vSync,
    vBack: blank - leastFrontLines - vSync,
    vTotal,
  };
}

function reducedBlanking2({ widthPx, heightPx, refreshHz }: Mode): Timing {
  const [hFront, hSync, hBack] = [8, 32, 40] as const;
  const [vSync, vBack] = [8, 6] as const;
  const blank = Math.max(linesFor(reducedBlankUs, refreshHz, heightPx), 1 + vSync + vBack);
  const hTotal = widthPx + hFront + hSync + hBack;
  const vTotal = heightPx + blank;
  return {
    pixelClockKHz: Math.floor((refreshHz * hTotal * vTotal) / 1000),
    hFront,
    hSync,
    hBack,
    hTotal,
    vFront: blank - vSync - vBack,
    vSync,
    vBack,
    vTotal,
  };
}

const methods = { cvt: fullBlanking, 'cvt-rb': reducedBlanking, 'cvt-rb2': reducedBlanking2 } as const;

/**
 * The timing of a mode. Analog monitors that draw with a beam need `cvt`; `cvt-rb` and `cvt-rb2` are for panels.
 * A rate so high that blanking fills the second gives an infinite clock, which no link carries.
 */
export const timingOf = (method: TimingMethod, mode: Mode): Timing => methods[method](mode);

type Sent = { pixelClockKHz: number; hTotal: number; vTotal: number };

/** Lines a second, rounded. */
export const lineHz = ({ pixelClockKHz, hTotal }: Sent): number => Math.round((pixelClockKHz * 1000) / hTotal);

/** Thousandths of a picture a second, rounded. */
export const refreshMilliHz = ({ pixelClockKHz, hTotal, vTotal }: Sent): number =>
  Math.round((pixelClockKHz * 1_000_000) / (hTotal * vTotal));

/** Megabits a second of an uncompressed picture in three colours, blanking counted in; whole, rounded up. */
export const bitRateMbps = ({ pixelClockKHz }: { pixelClockKHz: number }, bitsPerColour: number): number =>
  Math.ceil((pixelClockKHz * 3 * bitsPerColour) / 1000);
