/** Sockets for a keyboard or a mouse. */
import type { Motherboard } from '../../parts/classes/motherboard.ts';
import type { NeedId, Place, Resource, UnitId } from '../model.ts';
import { portOn } from './bus-lines.ts';
import type { namer } from './names.ts';

/**
 * One place for each use of a socket. A socket for either is one thing that both its places draw on. One that a jumper
 * can switch off is live only while the jumper leaves it on.
 */
export function inputPlaces(
  id: UnitId,
  sockets: NonNullable<Motherboard['inputSockets']>,
  name: ReturnType<typeof namer>,
  after: readonly NeedId[] = [],
  switched: readonly string[] = [],
): { places: Place[]; resources: Resource[] } {
  const places: Place[] = [];
  const resources: Resource[] = [];
  for (const [rank, socket] of sockets.entries()) {
    const uses = [...new Set(socket.for)];
    const either = name('input', socket.id);
    if (uses.length > 1) resources.push({ id: either, capacity: 1 });
    const takes = [
      ...(uses.length > 1 ? [['inputs', either] as const] : []),
      ...(switched.includes(socket.id) ? [[portOn(socket.id), `${id}/${portOn(socket.id)}`] as const] : []),
    ];
    for (const kind of uses) {
      places.push({
        id: uses.length > 1 ? name('input', `${socket.id}-${kind}`) : either,
        part: id,
        kind,
        // A socket with one use comes first, so that one for either is left for what has no other.
        rank: rank + (uses.length > 1 ? sockets.length : 0),
        attrs: { plug: socket.plug },
        ...(takes.length > 0
          ? {
              draws: Object.fromEntries(takes.map(([quantity]) => [quantity, 1])),
              meters: Object.fromEntries(takes.map(([quantity, resource]) => [quantity, [resource]])),
            }
          : {}),
        ...(after.length > 0 ? { after: [...after] } : {}),
      });
    }
  }
  return { places, resources };
}
