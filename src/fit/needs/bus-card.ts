import type { PartOf } from '../../parts/part.ts';
import type { KindName, Lowered, Need, Unit, Unrecorded } from '../model.ts';
import { blocksOf, highLine, lowerBlocks, switchedSockets } from './bus-lines.ts';
import { busMBps, busNames } from './buses.ts';
import { dataPlaces } from './data-sockets.ts';
import { inputPlaces } from './input-sockets.ts';
import { bankPlaces } from './memory-banks.ts';
import { namer } from './names.ts';
import { pictureSocket } from './picture-sockets.ts';

type Card = PartOf<'bus-card'>;

/** One slot thick. */
const halfSlots = 2;

export function lower({ id, part }: Unit<Card>): Lowered {
  const name = namer(id);
  const edge: Need = {
    id: name('edge'),
    part: id,
    kind: 'expansion-slot',
    left: 'blocker',
    attrs: { bus: part.buses && busNames(part.buses), lanes: null },
    draws: { halfSlots, ...(part.buses ? { busMBps: busMBps(part.buses) } : {}) },
    carries: [highLine],
  };
  const after = [edge.id];
  const switched = switchedSockets(part);
  const lines = lowerBlocks(id, edge, blocksOf(id, part), switched);
  const sockets = (part.outputs ?? []).map((output, rank) => {
    const { place, resources } = pictureSocket(name('output', output.id), id, rank, output);
    return { place: { ...place, after }, resources };
  });
  const data = dataPlaces(id, part.dataSockets ?? [], name, after);
  const inputs = inputPlaces(id, part.inputSockets ?? [], name, after, switched);
  return {
    needs: [edge, ...lines.needs],
    places: [
      ...lines.places,
      ...sockets.map(({ place }) => place),
      ...data.places,
      ...inputs.places,
      ...bankPlaces(id, part.memoryBanks ?? [], name, after),
    ],
    resources: [
      ...lines.resources,
      ...sockets.flatMap(({ resources }) => resources),
      ...data.resources,
      ...inputs.resources,
    ],
    unrecorded: unrecorded(id, part),
  };
}

type Role = NonNullable<Card['roles']>[number];

/** What a card offers by what it does: a card for sound has no bank of memory, whatever its file leaves out. */
const offers: readonly [keyof Card, readonly KindName[], readonly Role[]][] = [
  ['outputs', ['picture'], ['display']],
  ['dataSockets', ['drive-data'], ['disk', 'floppy']],
  ['inputSockets', ['keyboard', 'pointer'], ['ports']],
  ['memoryBanks', ['memory-bank'], ['memory']],
];

/** These settle their lines among themselves and have no jumpers. */
const selfSet: ReadonlySet<string> = new Set(['pci-5v', 'pci-3v', 'agp']);

function unrecorded(id: string, part: Card): Unrecorded[] {
  const { roles, buses } = part;
  const does = (role: Role) => roles === undefined || roles.includes(role);
  const open = offers
    .filter(([field, , by]) => part[field] === undefined && by.some(does))
    .flatMap(([field, kinds]) =>
      kinds.map((kind): Unrecorded => ({ kind, part: id, field: `${id}.${field}`, of: 'places' })),
    );
  if (buses?.every((bus) => selfSet.has(bus))) return open;
  const lines = (['settings', 'lines'] as const).filter((field) => part[field] === undefined);
  return [
    ...open,
    ...lines.map((field): Unrecorded => ({ kind: 'setting', part: id, field: `${id}.${field}`, of: 'needs' })),
  ];
}
