/** Sockets that drives are joined to by a ribbon, and the connectors of the ribbon that comes with each. */
import type { BusCard } from '../../parts/classes/bus-card.ts';
import type { NeedId, Place, Resource, UnitId } from '../model.ts';
import type { namer } from './names.ts';

type Socket = NonNullable<BusCard['dataSockets']>[number];
type Plug = Socket['plug'];

/** What the ribbon of a socket has for drives, at each of its places; a socket that is not named takes one drive. */
const onRibbon: Partial<Record<Plug, readonly Plug[]>> = {
  'ata-40': ['ata-40'],
  st506: ['st506'],
  'floppy-34': ['floppy-pins', 'floppy-edge'],
};

/** The end of a ribbon is used first: a ribbon with nothing at its end hangs loose there and echoes. */
const along = ['end', 'middle'] as const;

function connectors({ plug, devices, ribbon }: Socket): { at: string | null; plugs: readonly Plug[] }[] {
  const usual = onRibbon[plug];
  if (!usual || ribbon?.length === 0) return [{ at: null, plugs: [plug] }];
  if (!ribbon) return along.slice(0, devices ?? along.length).map((at) => ({ at, plugs: usual }));
  // The other drives of a ribbon with three connectors for drives have no address left.
  return along.flatMap((at) => ribbon.find((one) => one.at === at) ?? []).slice(0, devices ?? along.length);
}

/** Places in the order of use: the end of every ribbon before the middle of any. */
export function dataPlaces(
  id: UnitId,
  sockets: readonly Socket[],
  name: ReturnType<typeof namer>,
  after: readonly NeedId[] = [],
): { places: Place[]; resources: Resource[] } {
  const places: Place[] = [];
  const resources: Resource[] = [];
  for (const [row, socket] of sockets.entries()) {
    const { kilobits, encodings } = socket;
    const rate = `${name('data', socket.id)}-kilobits`;
    if (kilobits !== undefined) resources.push({ id: rate, capacity: kilobits, over: 'lost' });
    for (const [index, { at, plugs }] of connectors(socket).entries()) {
      places.push({
        id: name('data', at === null ? `${socket.id}-socket` : `${socket.id}-${at}`),
        part: id,
        kind: 'drive-data',
        rank: index * sockets.length + row,
        attrs: { plug: plugs, at, socket: socket.plug, kilobits, encodings },
        ...(kilobits === undefined ? {} : { meters: { kilobits: [rate] } }),
        ...(after.length > 0 ? { after: [...after] } : {}),
      });
    }
  }
  return { places, resources };
}
