/** Timings that are published one by one: `dmt` of monitors, `vic` of television sets. */
type NamedTiming = {
  widthPx: number;
  heightPx: number;
  pixelClockKHz: number;
  hTotal: number;
  vTotal: number;
  source: string;
};

const dmt = (
  widthPx: number,
  heightPx: number,
  pixelClockKHz: number,
  hTotal: number,
  vTotal: number,
): NamedTiming => ({
  widthPx,
  heightPx,
  pixelClockKHz,
  hTotal,
  vTotal,
  source: 'vesa-dmt',
});
const vic = (...row: Parameters<typeof dmt>): NamedTiming => ({ ...dmt(...row), source: 'cta-861' });

/** By number: of the monitor timings in hexadecimal, of the television timings in decimal, as they are published. */
export const namedTimings = {
  'dmt-04': dmt(640, 480, 25175, 800, 525),
  'dmt-05': dmt(640, 480, 31500, 832, 520),
  'dmt-06': dmt(640, 480, 31500, 840, 500),
  'dmt-08': dmt(800, 600, 36000, 1024, 625),
  'dmt-09': dmt(800, 600, 40000, 1056, 628),
  'dmt-10': dmt(1024, 768, 65000, 1344, 806),
  'dmt-12': dmt(1024, 768, 78750, 1312, 800),
  'dmt-23': dmt(1280, 1024, 108000, 1688, 1066),
  'dmt-33': dmt(1600, 1200, 162000, 2160, 1250),
  'dmt-3a': dmt(1680, 1050, 146250, 2240, 1089),
  'dmt-44': dmt(1920, 1200, 154000, 2080, 1235),
  'dmt-45': dmt(1920, 1200, 193250, 2592, 1245),
  'dmt-4c': dmt(2560, 1600, 268500, 2720, 1646),
  'dmt-52': dmt(1920, 1080, 148500, 2200, 1125),
  'vic-1': vic(640, 480, 25175, 800, 525),
  'vic-4': vic(1280, 720, 74250, 1650, 750),
  'vic-16': vic(1920, 1080, 148500, 2200, 1125),
  'vic-95': vic(3840, 2160, 297000, 4400, 2250),
  'vic-97': vic(3840, 2160, 594000, 4400, 2250),
  'vic-118': vic(3840, 2160, 1188000, 4400, 2250),
} as const satisfies Record<string, NamedTiming>;
