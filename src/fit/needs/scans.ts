/**
 * What a socket sends and a monitor does not follow, as draws: so the search joins a monitor to the card that it is made
 * for, where another has the same socket. Pictures of no published rate are left to the rules.
 */
import { scanRates } from '../../standards/scan-rates.ts';
import type { Resource } from '../model.ts';

type Range = readonly [number, number];
type Mode = { readonly horizontalKhz: number; readonly verticalHz: number };

const published = Object.entries(scanRates).map(([name, { pixelClockKHz, hTotal, vTotal }]) => ({
  name,
  khz: pixelClockKHz / hTotal,
  hz: (pixelClockKHz * 1000) / hTotal / vTotal,
}));

/** The part of itself by which a rate may differ from the one on the sheet, where makers round. Common practice. */
const slack = 0.01;
/** Whether a rate lies in a range, both as makers print them. */
export const within = ([lowest, highest]: Range, rate: number): boolean =>
  rate >= lowest * (1 - slack) && rate <= highest * (1 + slack);
const exactly = (rate: number): Range => [rate, rate];

/** No picture at all outweighs any number of pictures that a program can leave alone. */
const whole = 1000;

/** What a monitor draws for each published picture that it does not follow; nothing where its rates are not recorded. */
export function scanDraws(horizontalKhz: Range | undefined, verticalHz: Range | undefined): Record<string, number> {
  if (!horizontalKhz || !verticalHz) return {};
  const beyond = published.filter(({ khz, hz }) => !within(horizontalKhz, khz) || !within(verticalHz, hz));
  return Object.fromEntries(
    beyond.flatMap(({ name }) => [
      [`dark-${name}`, whole],
      [`skips-${name}`, 1],
    ]),
  );
}

/** Loses a whole when none of a socket's pictures is followed, and one for each that is not. */
export function scanMeters(
  id: string,
  modes: readonly Mode[] = [],
): { meters: Record<string, string[]>; resources: Resource[] } {
  const sent = modes.map(({ horizontalKhz, verticalHz }) =>
    published.find(({ khz, hz }) => within(exactly(horizontalKhz), khz) && within(exactly(verticalHz), hz)),
  );
  const names = [...new Set(sent.flatMap((one) => one?.name ?? []))];
  if (names.length === 0) return { meters: {}, resources: [] };
  const unknown = sent.filter((one) => one === undefined).length;
  const [dark, skips] = [`${id}/dark`, `${id}/skips`];
  return {
    meters: Object.fromEntries(
      names.flatMap((name) => [
        [`dark-${name}`, [dark]],
        [`skips-${name}`, [skips]],
      ]),
    ),
    resources: [
      { id: dark, capacity: (names.length + unknown - 1) * whole, over: 'lost' },
      { id: skips, capacity: 0, over: 'lost' },
    ],
  };
}
