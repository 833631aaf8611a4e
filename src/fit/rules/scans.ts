/** Pictures that a card of about 1990, or the picture chip of a board, sends, beside what the monitor it is joined to follows. */
import type { BusCard } from '../../parts/classes/bus-card.ts';
import type { Monitor as MonitorFields } from '../../parts/classes/monitor.ts';
import type { Motherboard } from '../../parts/classes/motherboard.ts';
import { list } from '../../wording/phrases.ts';
import type { Joint } from '../model.ts';
import { within } from '../needs/scans.ts';
import { rootOf } from './ends.ts';

type Named = { readonly unit: string; readonly name: string };
type Monitor = Named & {
  readonly horizontalKhz: [number, number] | undefined;
  readonly verticalHz: [number, number] | undefined;
};
type Card = Named & { readonly outputs: BusCard['outputs'] };
type Board = Named & {
  readonly pictureSockets: Motherboard['pictureSockets'];
  readonly hasPictureChip: boolean | undefined;
};
type Mode = { id: string; horizontalKhz: number; verticalHz: number };

export type Scan = {
  monitor: Monitor;
  /** Card or board; `field` says where its modes are recorded. */
  card: Named & { field: string };
  /** Undefined when they are not recorded. */
  modes: readonly Mode[] | undefined;
  /** Those modes that the monitor follows; undefined when one of the two is not recorded. */
  followed: readonly Mode[] | undefined;
  /** Made for one line rate, so that another does harm. */
  isFixed: boolean;
};

/** One for each monitor whose picture comes from such a card or board, however many leads lie between. */
export function scansOf(
  monitors: readonly Monitor[],
  cards: readonly Card[],
  boards: readonly Board[],
  joints: readonly Joint[],
): Scan[] {
  const senders = [
    ...cards.map((card) => ({ ...card, field: `${card.unit}.outputs` })),
    ...boards.flatMap(({ unit, name, hasPictureChip, pictureSockets: outputs }) =>
      hasPictureChip ? [{ unit, name, outputs, field: `${unit}.pictureSockets` }] : [],
    ),
  ];
  return monitors.flatMap((monitor) => {
    const joint = joints.find(({ need }) => need.startsWith(`${monitor.unit}/`));
    const root = joint && rootOf(joint, joints);
    const card = root && senders.find(({ unit }) => root.place.startsWith(`${unit}/`));
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
            ? modes.filter((mode) => within(horizontalKhz, mode.horizontalKhz) && within(verticalHz, mode.verticalHz))
            : undefined,
        isFixed: isFixedRate(horizontalKhz),
      },
    ];
  });
}

/** Plugs of monitors from the years of one line rate. */
const olderPlugs: readonly string[] = ['vga', 'de-9'];

/**
 * What is not recorded of a picture that a card or board of today makes: it sends whatever the system asks for, so its
 * modes are nowhere, for a monitor of one line rate; or the rates of a monitor that has older sockets alone.
 */
export const unseenBy = (
  monitors: readonly (Monitor & { readonly sockets: MonitorFields['sockets'] })[],
  scans: readonly Scan[],
  joints: readonly Joint[],
  makers: readonly { readonly unit: string; readonly field: string }[],
): string[] =>
  monitors.flatMap(({ unit, horizontalKhz, sockets = [] }) => {
    const isOpen =
      horizontalKhz === undefined && sockets.length > 0 && sockets.every(({ plug }) => olderPlugs.includes(plug));
    if (!(isOpen || isFixedRate(horizontalKhz)) || scans.some(({ monitor }) => monitor.unit === unit)) return [];
    const joint = joints.find(({ need }) => need.startsWith(`${unit}/`));
    const root = joint && rootOf(joint, joints);
    return makers.flatMap((maker) =>
      root?.place.startsWith(`${maker.unit}/`) ? [isOpen ? `${unit}.horizontalKhz` : maker.field] : [],
    );
  });

const isFixedRate = (horizontalKhz: [number, number] | undefined): boolean =>
  horizontalKhz !== undefined && within([horizontalKhz[0], horizontalKhz[0]], horizontalKhz[1]);

/** What of a scan is not recorded. */
export const missingOf = ({ monitor, card, modes }: Scan): string[] => [
  ...(modes ? [] : [card.field]),
  ...(monitor.horizontalKhz ? [] : [`${monitor.unit}.horizontalKhz`]),
  ...(monitor.verticalHz ? [] : [`${monitor.unit}.verticalHz`]),
];

/** The units of several scans, each once, monitors before what sends to them. */
export const unitsOf = (scans: readonly Scan[]): string[] => [
  ...new Set([...scans.map(({ monitor }) => monitor.unit), ...scans.map(({ card }) => card.unit)]),
];

/** Further monitors that are told with the first, by name. */
export const othersOf = ([first, ...rest]: readonly Scan[]): string[] => [
  ...new Set(rest.map(({ monitor }) => monitor.name).filter((name) => name !== first?.monitor.name)),
];

/** A sentence on those further monitors; nothing when there are none. */
export const alsoTold = (others: readonly string[]): string =>
  others.length === 0 ? '' : ` The same goes for ${list(others)}.`;
