/**
 * What a picture needs, and what a picture link carries. All figures are for an uncompressed RGB picture; links count
 * all their lanes.
 */
import { bitRateMbps, type Mode, timingOf } from './timings.ts';

/** Megabits a second with blanking counted in, whole, rounded up: the least that a modern monitor asks for (CVT-RBv2). */
export const pictureMbps = ({ bitsPerColour, ...mode }: Mode & { bitsPerColour: number }): number =>
  bitRateMbps(timingOf('cvt-rb2', mode), bitsPerColour);

type Link = {
  plug: 'hdmi' | 'displayport' | 'dvi-d';
  name: string;
  megabits: number;
  /** The most bits for each colour, where the link has a limit of its own. */
  bitsPerColour?: number;
  source: string;
};

/**
 * Usable megabits a second of each kind of link, after its line code.
 * DisplayPort at 8b/10b keeps four bits in five; from UHBR10 on, 96.71 % is left after error correction.
 */
export const pictureLinks = {
  'dvi-single': { plug: 'dvi-d', name: 'DVI, single link', megabits: 3960, bitsPerColour: 8, source: 'dvi' },
  'dvi-dual': { plug: 'dvi-d', name: 'DVI, dual link', megabits: 7920, bitsPerColour: 8, source: 'from-memory' },
  'hdmi-1.0': { plug: 'hdmi', name: 'HDMI 1.0 to 1.2', megabits: 3960, source: 'hdmi' },
  'hdmi-1.3': { plug: 'hdmi', name: 'HDMI 1.3 and 1.4', megabits: 8160, source: 'hdmi' },
  'hdmi-2.0': { plug: 'hdmi', name: 'HDMI 2.0', megabits: 14400, source: 'hdmi' },
  'hdmi-2.1-9': { plug: 'hdmi', name: 'HDMI 2.1 at 9 Gbit/s', megabits: 7880, source: 'hdmi' },
  'hdmi-2.1-18': { plug: 'hdmi', name: 'HDMI 2.1 at 18 Gbit/s', megabits: 15800, source: 'hdmi' },
  'hdmi-2.1-24': { plug: 'hdmi', name: 'HDMI 2.1 at 24 Gbit/s', megabits: 21000, source: 'hdmi' },
  'hdmi-2.1-32': { plug: 'hdmi', name: 'HDMI 2.1 at 32 Gbit/s', megabits: 28000, source: 'hdmi' },
  'hdmi-2.1-40': { plug: 'hdmi', name: 'HDMI 2.1 at 40 Gbit/s', megabits: 35000, source: 'hdmi' },
  'hdmi-2.1': { plug: 'hdmi', name: 'HDMI 2.1', megabits: 42000, source: 'hdmi' },
  'hdmi-2.2': { plug: 'hdmi', name: 'HDMI 2.2', megabits: 84000, source: 'hdmi' },
  'dp-rbr': { plug: 'displayport', name: 'DisplayPort RBR', megabits: 5184, source: 'displayport' },
  'dp-hbr': { plug: 'displayport', name: 'DisplayPort HBR', megabits: 8640, source: 'displayport' },
  'dp-hbr2': { plug: 'displayport', name: 'DisplayPort HBR2', megabits: 17280, source: 'displayport' },
  'dp-hbr3': { plug: 'displayport', name: 'DisplayPort HBR3', megabits: 25920, source: 'displayport' },
  'dp-uhbr10': { plug: 'displayport', name: 'DisplayPort UHBR10', megabits: 38684, source: 'displayport' },
  'dp-uhbr13.5': { plug: 'displayport', name: 'DisplayPort UHBR13.5', megabits: 52223, source: 'displayport' },
  'dp-uhbr20': { plug: 'displayport', name: 'DisplayPort UHBR20', megabits: 77368, source: 'displayport' },
} as const satisfies Record<string, Link>;

/** True when a link carries a picture whose clock that is, at that depth, without compression. */
export function linkCarries(link: keyof typeof pictureLinks, pixelClockKHz: number, bitsPerColour: number): boolean {
  const { megabits, bitsPerColour: most }: Link = pictureLinks[link];
  return bitRateMbps({ pixelClockKHz }, bitsPerColour) <= megabits && (most === undefined || bitsPerColour <= most);
}
