/** Sockets that a monitor's cable goes into, on a card or a board. */
import type { Place, Resource, UnitId } from '../model.ts';

type Socket = { plug: string; megabits?: number | undefined };

/** One place and what it meters. A socket whose rate is not recorded sets no limit; the rule about the mode says so. */
export function pictureSocket(
  id: string,
  part: UnitId,
  rank: number,
  { plug, megabits }: Socket,
): { place: Place; resources: Resource[] } {
  const beyond = `beyond-${plug}`;
  const rate: Resource[] =
    megabits === undefined ? [] : [{ id: `${id}-pictureMbps`, capacity: megabits, over: 'lost' }];
  const none: Resource = { id: `${id}-${beyond}`, capacity: 0, over: 'lost' };
  return {
    place: {
      id,
      part,
      kind: 'picture',
      rank,
      attrs: { plug, megabits },
      meters: { ...(rate[0] ? { pictureMbps: [rate[0].id] } : {}), [beyond]: [none.id] },
    },
    resources: [...rate, none],
  };
}
