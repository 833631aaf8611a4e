/** Sockets that a monitor's cable goes into, on a card or a board. */
import type { Place, Resource, UnitId } from '../model.ts';
import { scanMeters } from './scans.ts';

type Socket = {
  plug: string;
  megabits?: number | undefined;
  signal?: 'digital' | 'analog' | undefined;
  isDualMode?: boolean | undefined;
  modes?: readonly { horizontalKhz: number; verticalHz: number }[] | undefined;
};

/** Plugs of which both ends must send and take the same signal. */
const usualSignal: Readonly<Record<string, string>> = { vga: 'analog', 'de-9': 'digital' };
/** What a socket sends or takes; null where the plug alone settles it. */
export const signalOf = ({ plug, signal }: Socket): string | null =>
  plug in usualSignal ? (signal ?? usualSignal[plug] ?? null) : null;

/** Sockets without contacts for an analog picture, however many adapters hang on them. */
const digitalOnly: readonly string[] = ['hdmi', 'displayport', 'dvi-d'];

/** One place and what it meters. A socket whose rate is not recorded sets no limit; the rule about the mode says so. */
export function pictureSocket(
  id: string,
  part: UnitId,
  rank: number,
  socket: Socket,
): { place: Place; resources: Resource[] } {
  const { plug, megabits } = socket;
  const beyond = `beyond-${plug}`;
  const rate: Resource[] =
    megabits === undefined ? [] : [{ id: `${id}/pictureMbps`, capacity: megabits, over: 'lost' }];
  const none: Resource = { id: `${id}-${beyond}`, capacity: 0, over: 'lost' };
  // Only DisplayPort comes in two sorts. A passive adapter goes into either, and the search prefers the one it works on.
  const dualMode = plug === 'displayport' ? socket.isDualMode : null;
  const single: Resource[] = dualMode === false ? [{ id: `${id}/dualMode`, capacity: 0, over: 'lost' }] : [];
  const analog: Resource[] = digitalOnly.includes(plug) ? [{ id: `${id}/analog`, capacity: 0 }] : [];
  const scans = scanMeters(id, socket.modes);
  return {
    place: {
      id,
      part,
      kind: 'picture',
      rank,
      attrs: { plug, megabits, signal: signalOf(socket), dualMode },
      meters: {
        ...(rate[0] ? { pictureMbps: [rate[0].id] } : {}),
        ...(analog[0] ? { analog: [analog[0].id] } : {}),
        ...(single[0] ? { dualMode: [single[0].id] } : {}),
        [beyond]: [none.id],
        ...scans.meters,
      },
    },
    resources: [...rate, none, ...analog, ...single, ...scans.resources],
  };
}
