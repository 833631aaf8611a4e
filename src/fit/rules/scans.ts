/** Pictures that a card of about 1990 sends, beside what the monitor it is joined to follows. */
import type { BusCard } from '../../parts/classes/bus-card.ts';
import type { Joint } from '../model.ts';
import { rootOf } from './ends.ts';

type Named = { readonly unit: string; readonly name: string };
type Monitor = Named & {
  readonly horizontalKhz: [number, number] | undefined;
  readonly verticalHz: [number, number] | undefined;
};
type Card = Named & { readonly outputs: BusCard['outputs'] };
type Mode = { id: string; horizontalKhz: number; verticalHz: number };

export type Scan = {
  monitor: Monitor;
  card: Card;
  /** Undefined when they are not recorded. */
  modes: readonly Mode[] | undefined;
  /** Those modes that the monitor follows; undefined when one of the two is not recorded. */
  followed: readonly Mode[] | undefined;
  /** Made for one line rate, so that another does harm. */
  isFixed: boolean;
};

/** Parts in a hundred by which a rate may differ from the one on the sheet, where makers round. Common practice. */
const slack = 0.01;
const follows = ([lowest, highest]: readonly [number, number], rate: number): boolean =>
  rate >= lowest * (1 - slack) && rate <= highest * (1 + slack);

/** One for each monitor whose picture comes from such a card, however many leads lie between. */
export function scansOf(monitors: readonly Monitor[], cards: readonly Card[], joints: readonly Joint[]): Scan[] {
  return monitors.flatMap((monitor) => {
    const joint = joints.find(({ need }) => need.startsWith(`${monitor.unit}/`));
    const root = joint && rootOf(joint, joints);
    const card = root && cards.find(({ unit }) => root.place.startsWith(`${unit}/`));
    if (!root || !card) return [];
    const output = card.outputs?.find(({ id }) => root.place.endsWith(`/${id}`) || root.place.endsWith(`-${id}`));
    const modes = output?.modes;
    const { horizontalKhz, verticalHz } = monitor;
    return [
      {
        monitor,
        card,
        modes,
        followed:
          modes && horizontalKhz && verticalHz
            ? modes.filter((mode) => follows(horizontalKhz, mode.horizontalKhz) && follows(verticalHz, mode.verticalHz))
            : undefined,
        isFixed: horizontalKhz !== undefined && horizontalKhz[1] <= horizontalKhz[0] * (1 + slack),
      },
    ];
  });
}

/** What of a scan is not recorded. */
export const missingOf = ({ monitor, card, modes }: Scan): string[] => [
  ...(modes ? [] : [`${card.unit}.outputs`]),
  ...(monitor.horizontalKhz ? [] : [`${monitor.unit}.horizontalKhz`]),
  ...(monitor.verticalHz ? [] : [`${monitor.unit}.verticalHz`]),
];
