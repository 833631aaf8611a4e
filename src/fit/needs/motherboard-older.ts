/** What boards of about 1990 offer beside what every board does. */
import type { PartOf } from '../../parts/part.ts';
import type { KindName, Need, Place, Resource, Unrecorded } from '../model.ts';
import { busLine, highLine } from './bus-lines.ts';
import { busMBps, busNames, isShort } from './buses.ts';
import { dataPlaces } from './data-sockets.ts';
import { inputPlaces } from './input-sockets.ts';
import { bankPlaces } from './memory-banks.ts';
import type { namer } from './names.ts';

type Board = PartOf<'motherboard'>;
type Named = ReturnType<typeof namer>;
type Offer = { places: Place[]; resources: Resource[] };

/** `cutOut` names the resource of a cut-out. */
export function olderOffers(
  id: string,
  part: Board,
  mount: Need,
  name: Named,
  cutOut: (position: number) => string,
): Offer {
  const slots = busSlots(id, part, mount, name, cutOut);
  const data = dataPlaces(id, part.dataSockets ?? [], name);
  const inputs = inputPlaces(id, part.inputSockets ?? [], name);
  const { coprocessorSocket } = part;
  return {
    places: [
      ...slots.places,
      ...bankPlaces(id, part.memoryBanks ?? [], name),
      ...(coprocessorSocket === null || coprocessorSocket === undefined
        ? []
        : [
            {
              id: `${id}/coprocessor-socket`,
              part: id,
              kind: 'coprocessor-socket' as const,
              rank: 0,
              attrs: { socket: coprocessorSocket },
            },
          ]),
      ...data.places,
      ...inputs.places,
    ],
    resources: [
      ...slots.resources,
      // A line that the board keeps has nothing left for a card.
      ...(part.takenLines ?? []).map((line) => ({ id: busLine(line), capacity: 0 })),
      ...data.resources,
      ...inputs.resources,
    ],
  };
}

/** A card covers its own cut-out. A short slot passes no line of the long part of the bus. */
function busSlots(
  id: string,
  { busSlots: slots = [] }: Board,
  mount: Need,
  name: Named,
  cutOut: (position: number) => string,
): Offer {
  const places: Place[] = [];
  const resources: Resource[] = [];
  for (const [rank, { id: slot, position, buses }] of slots.entries()) {
    const placeId = name('bus-slot', slot);
    const speed = `${placeId}-busMBps`;
    const high = `${placeId}/${highLine}`;
    resources.push({ id: speed, capacity: busMBps(buses), over: 'lost' }, { id: cutOut(position), capacity: 2 });
    if (isShort(buses)) resources.push({ id: high, capacity: 0 });
    places.push({
      id: placeId,
      part: id,
      kind: 'expansion-slot',
      rank,
      attrs: { bus: busNames(buses), lengthLanes: null },
      meters: {
        busMBps: [speed],
        halfSlots: [cutOut(position)],
        ...(isShort(buses) ? { [highLine]: [high] } : {}),
      },
      after: [mount.id],
    });
  }
  return { places, resources };
}

/** Each says how many of a kind there are; a board that records another of its row says that it has none of these. */
const rows: readonly [readonly (keyof Board)[], readonly KindName[]][] = [
  [
    ['memory', 'memoryBanks'],
    ['memory-slot', 'memory-bank'],
  ],
  [['expansionSlots', 'busSlots'], ['expansion-slot']],
  [['sataPorts', 'dataSockets'], ['drive-data']],
];

/** `usual` is what is not recorded of the fields that every board has. */
export function olderUnrecorded(id: string, part: Board, usual: readonly Unrecorded[]): Unrecorded[] {
  const places = (field: keyof Board, kind: KindName): Unrecorded => ({
    kind,
    part: id,
    field: `${id}.${field}`,
    of: 'places',
  });
  const said = rows.filter(([fields]) => fields.some((field) => part[field] !== undefined));
  const settled = new Set(said.flatMap(([, kinds]) => kinds));
  return [
    ...usual.filter(({ kind, of }) => of !== 'places' || !settled.has(kind)),
    ...(settled.has('memory-bank') ? [] : [places('memoryBanks', 'memory-bank')]),
    ...(part.coprocessorSocket === undefined ? [places('coprocessorSocket', 'coprocessor-socket')] : []),
    ...(part.inputSockets === undefined ? [places('inputSockets', 'keyboard'), places('inputSockets', 'pointer')] : []),
    ...(part.busSlots && part.busSlots.length > 0 && part.takenLines === undefined
      ? [{ kind: 'setting', part: id, field: `${id}.takenLines`, of: 'limits' } as const]
      : []),
  ];
}
