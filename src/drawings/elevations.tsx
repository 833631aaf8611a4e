/**
 * The six evenings as things that stand on one ground line, seen from the front or the side, to one scale.
 * Lengths are millimetres. The set's words say the same, so the drawing is for the eye alone.
 */
import type { Evening } from '../content-types.ts';

/** Left edge, height over the ground, width, height. */
const box = (x: number, up: number, w: number, h: number) => `M${x} ${-up}h${w}v${-h}h${-w}z`;
const line = (x: number, up: number, w: number) => `M${x} ${-up}h${w}`;
const disc = (x: number, up: number, r: number) =>
  `M${x - r} ${-up}a${r} ${r} 0 1 1 ${2 * r} 0a${r} ${r} 0 1 1 ${-2 * r} 0`;

type Drawn = { outline: string; detail: string; place?: string };

const screen = (x: number, w: number, h: number): Drawn => ({
  outline: `${box(x + w / 2 - 110, 0, 220, 14)}M${x + w / 2 - 34} -14l8 -96h52l8 96${box(x, 110, w, h)}`,
  detail: box(x + 20, 132, w - 40, h - 42),
});

const drawerBoxes = [0, 1].flatMap((across) =>
  [0, 1, 2, 3, 4].map((up) => ({ x: 202 + across * 180, up: 18 + up * 80 })),
);

/** A board lying against the wall, its rear edge at the left; what is on it is drawn from its lower left corner. */
const board = (x: number, up: number): Drawn => ({
  outline: box(x, up, 244, 305) + box(x + 70, up + 175, 70, 70),
  detail:
    box(x + 84, up + 189, 42, 42) +
    [0, 1, 2, 3].map((n) => box(x + 164 + n * 16, up + 150, 8, 130)).join('') +
    [20, 62, 104, 250].map((h) => box(x + 6, up + h + 20, 22, 26)).join('') +
    [38, 78, 118].map((h) => box(x + 44, up + h, 96, 9)).join('') +
    box(x + 176, up + 50, 42, 42),
  place: box(x + 180, up + 150, 8, 130),
});

const sideInside = board(232, 122);

const elevations: Record<Evening['elevation'], Drawn> = {
  monitor: {
    outline: screen(120, 520, 310).outline,
    detail: `${screen(120, 520, 310).detail}${line(190, 350, 190)}${line(190, 300, 250)}${line(190, 250, 150)}${disc(530, 220, 40)}`,
  },
  drawers: {
    outline: box(184, 0, 392, 424) + box(196, 12, 368, 400),
    detail: drawerBoxes
      .map(({ x, up }) => box(x, up, 172, 72) + box(x + 36, up + 34, 100, 26) + disc(x + 86, up + 18, 7))
      .join(''),
  },
  board: { ...board(258, 20), outline: board(258, 20).outline + box(180, 0, 400, 16) },
  case: {
    outline:
      box(200, 16, 430, 440) + box(230, 0, 60, 16) + box(540, 0, 60, 16) + line(200, 110, 400) + box(600, 16, 30, 440),
    detail:
      sideInside.outline +
      sideInside.detail +
      box(206, 24, 150, 80) +
      disc(281, 64, 30) +
      box(556, 140, 26, 130) +
      box(556, 290, 26, 130),
  },
  meter: {
    outline: box(140, 16, 210, 440) + box(160, 0, 40, 16) + box(290, 0, 40, 16) + box(470, 0, 120, 200),
    detail:
      box(165, 380, 160, 50) +
      disc(245, 300, 16) +
      'M245 -330v20M245 -270v-20M215 -300h20M275 -300h-20M224 -321l12 12M266 -321l-12 12M224 -279l12 -12M266 -279l-12 -12' +
      box(488, 130, 84, 46) +
      disc(530, 70, 34) +
      'M530 -70l18 20M470 -30q-60 30 -90 -20t-60 -30',
    place: '',
  },
  desk: {
    outline: screen(40, 450, 270).outline + box(530, 16, 190, 420) + box(550, 0, 34, 16) + box(666, 0, 34, 16),
    detail: screen(40, 450, 270).detail + box(552, 350, 146, 50) + disc(625, 290, 14),
  },
};

export function Elevation({ of }: { of: Evening['elevation'] }) {
  const { outline, detail, place } = elevations[of];
  return (
    <svg class="elevation" viewBox="0 -480 760 480" aria-hidden="true" focusable="false">
      <path class="elevation-detail" d={detail} />
      {place && <path class="elevation-place" d={place} />}
      <path class="elevation-outline" d={outline} />
    </svg>
  );
}
