import type { PartOf } from '../../parts/part.ts';
import type { KindName, Lowered, Need, Place, Resource, Unit, Unrecorded } from '../model.ts';
import { linkMBps } from './amounts.ts';
import { olderOffers, olderUnrecorded } from './motherboard-older.ts';
import { namer } from './names.ts';
import { pictureSocket } from './picture-sockets.ts';
import { kindOfPlug } from './power-supply.ts';

type Board = PartOf<'motherboard'>;
type Named = ReturnType<typeof namer>;
type Offer = { places: Place[]; resources: Resource[] };

/**
 * Cut-outs a row of half slots is counted over. No case has more; what lies below them counts as the last. The
 * thickest card a file may hold covers five.
 */
export const cutOutsCounted = 12;
const cutOutsCovered = 5;
/** `pos-3`: two half slots at the third cut-out from the top. */
export const positionName = (position: number): string => `pos-${Math.min(position, cutOutsCounted)}`;
export const positionNames: readonly string[] = Array.from({ length: cutOutsCounted }, (_, n) => positionName(n + 1));

/** A board's own picture sockets come after every card's. */
const afterCards = 100;

export function lower({ id, part }: Unit<Board>): Lowered {
  const name = namer(id);
  const mount: Need = {
    id: `${id}/mount`,
    part: id,
    kind: 'board-mount',
    left: 'blocker',
    attrs: { formFactor: part.formFactor },
    carries: [...positionNames],
    stands: true,
  };
  const offers = [
    memorySlots(id, part, name),
    expansionSlots(id, part, mount, name),
    moduleSlots(id, part, name),
    dataPorts(id, part),
    fanHeaders(id, part, name),
    frontPins(id, part, name),
    pictureSockets(id, part, name),
    lightPins(id, part, name),
    olderOffers(id, part, mount, name, (position) => `${id}/${positionName(position)}`),
  ];
  return {
    needs: [mount, ...powerNeeds(id, part)],
    places: [
      {
        id: `${id}/socket`,
        part: id,
        kind: 'processor-socket',
        rank: 0,
        attrs: { socket: part.socket, boardSocket: part.socket },
      },
      {
        id: `${id}/cooler-mount`,
        part: id,
        kind: 'cooler-mount',
        rank: 0,
        // A bracket sold apart stands on the board's mounting and takes any cooler; the bare board does not.
        attrs: { mountings: part.coolerMountings, bare: part.coolerMountings },
      },
      ...offers.flatMap(({ places }) => places),
    ],
    resources: offers.flatMap(({ resources }) => resources),
    unrecorded: olderUnrecorded(id, part, unrecorded(id, part)),
  };
}

/** Channels share evenly; what one channel holds beyond its share is lost to balance. */
function memorySlots(id: string, { memory }: Board, name: Named): Offer {
  const channel = (slot: { channel: string }) => `${id}/channel-${slot.channel}`;
  const slots = memory?.slots ?? [];
  return {
    places: slots.map((slot, rank) => ({
      id: name('memory-slot', slot.id),
      part: id,
      kind: 'memory-slot',
      rank,
      attrs: { generation: memory?.generation, registered: memory?.registered, sizeGb: memory?.moduleGb },
      meters: { channelMib: [channel(slot)] },
    })),
    resources: [...new Set(slots.map(channel))].map((resource) => ({
      id: resource,
      capacity: 0,
      over: 'lost',
      even: `${id}/channels`,
    })),
  };
}

/** What a card covers is counted on the board, and through its mount in the case, which may have fewer cut-outs. */
function expansionSlots(id: string, { expansionSlots: slots = [] }: Board, mount: Need, name: Named): Offer {
  const places: Place[] = [];
  const resources: Resource[] = [];
  const covered = new Set<string>();
  for (const [rank, slot] of slots.entries()) {
    const { position, lengthLanes, generation } = slot;
    const placeId = name('expansion-slot', slot.id);
    const row = [...new Set(Array.from({ length: cutOutsCovered }, (_, n) => positionName(position + n)))];
    for (const cutOut of row) covered.add(cutOut);
    const off = slots.flatMap(({ id: other, shares }) => (shares?.slot === slot.id ? [fullUse(other)] : []));
    for (const { way, lanes, draws } of waysOf(slot)) {
      const bus = link(way === undefined ? placeId : `${placeId}-${way}`, linkMBps(lanes, generation));
      const drawn = [...off, ...draws];
      resources.push(...bus);
      places.push({
        id: placeId,
        ...(way === undefined ? {} : { way }),
        part: id,
        kind: 'expansion-slot',
        rank,
        attrs: { bus: 'pcie', lengthLanes, lanes, generation },
        meters: {
          ...busMeter(bus),
          halfSlots: row.map((cutOut) => `${id}/${cutOut}`),
          ...Object.fromEntries(drawn.map((use) => [use, [`${id}/${use}`]])),
        },
        ...(drawn.length > 0 ? { draws: Object.fromEntries(drawn.map((use) => [use, 1])) } : {}),
        after: [mount.id],
      });
    }
    if (slot.shares) resources.push({ id: `${id}/${fullUse(slot.id)}`, capacity: 1 });
  }
  resources.push(...[...covered].map((cutOut) => ({ id: `${id}/${cutOut}`, capacity: 2 })));
  return { places, resources };
}

type Slot = NonNullable<Board['expansionSlots']>[number];

/** What an expansion slot's place is called. */
export const slotPlace = (id: string, slot: string): string => namer(id)('expansion-slot', slot);

/** Either the slot has all its lanes, or the slot it shares them with is used. */
const fullUse = (slot: string): string => `all-lanes-of-${slot}`;

/** A slot that shares its lanes is used with all of them, or with those it keeps, which may be none. */
function waysOf({ id, lanes, shares }: Slot): { way?: string; lanes: number; draws: string[] }[] {
  if (!shares) return [{ lanes, draws: [] }];
  const full = { way: 'full', lanes, draws: [fullUse(id)] };
  return shares.lanes === 0 ? [full] : [full, { way: 'shared', lanes: shares.lanes, draws: [] }];
}

const link = (placeId: string, capacity: number | undefined): Resource[] =>
  capacity === undefined ? [] : [{ id: `${placeId}-busMBps`, capacity, over: 'lost' }];

const busMeter = ([bus]: Resource[]): Record<string, string[]> => (bus ? { busMBps: [bus.id] } : {});

/** A port that a slot switches off is one thing that either of them may hold. */
function moduleSlots(id: string, { moduleSlots: slots = [] }: Board, name: Named): Offer {
  const places: Place[] = [];
  const resources: Resource[] = [];
  for (const [rank, { id: slot, key, lengthsMm, links, lanes, generation, switchesOff = [] }] of slots.entries()) {
    const placeId = name('module-slot', slot);
    const bus = link(placeId, linkMBps(lanes, generation));
    const ports = [...new Set(switchesOff)];
    resources.push(...bus, ...ports.map((port) => ({ id: switchOf(id, port), capacity: 1 })));
    places.push({
      id: placeId,
      part: id,
      kind: 'module-slot',
      rank,
      attrs: { key: [key], lengthsMm, links, lanes, generation },
      meters: { ...busMeter(bus), ...Object.fromEntries(ports.map((port) => [port, [switchOf(id, port)]])) },
      draws: Object.fromEntries(ports.map((port) => [port, 1])),
    });
  }
  return { places, resources };
}

const switchOf = (id: string, port: string) => `${id}/switch-${port}`;

function dataPorts(id: string, { sataPorts = 0, moduleSlots: slots = [] }: Board): Offer {
  const switched = new Set(slots.flatMap(({ switchesOff = [] }) => switchesOff));
  const places = Array.from({ length: sataPorts }, (_, rank): Place => {
    const port = `sata-${rank + 1}`;
    const place: Place = { id: `${id}/${port}`, part: id, kind: 'drive-data', rank, attrs: { plug: 'sata' } };
    return switched.has(port) ? { ...place, draws: { [port]: 1 }, meters: { [port]: [switchOf(id, port)] } } : place;
  });
  return { places, resources: [] };
}

/** The first header is the one for the processor's cooler: a cooler elsewhere counts as loss, and other fans take it last. */
function fanHeaders(id: string, { fanHeaders: headers = [] }: Board, name: Named): Offer {
  const elsewhere = `${id}/beside-cooler-header`;
  const resources: Resource[] = [{ id: elsewhere, capacity: 0, over: 'lost' }];
  const places = headers.map(({ id: header, pins, milliamps }, index): Place => {
    const placeId = name('header', header);
    resources.push({ id: `${placeId}-milliamps`, capacity: milliamps });
    return {
      id: placeId,
      part: id,
      kind: 'fan-header',
      rank: index === 0 ? headers.length : index,
      attrs: { pins },
      meters: { milliamps: [`${placeId}-milliamps`], ...(index === 0 ? {} : { ofCooler: [elsewhere] }) },
    };
  });
  return { places, resources };
}

const frontPins = (id: string, { frontPins: pins = [] }: Board, name: Named): Offer => ({
  places: pins.map((plug, rank) => ({ id: name('front', plug), part: id, kind: 'front-panel', rank, attrs: { plug } })),
  resources: [],
});

function pictureSockets(id: string, { pictureSockets: sockets = [] }: Board, name: Named): Offer {
  const offers = sockets.map((socket, rank) =>
    pictureSocket(name('picture', socket.id), id, afterCards + rank, socket),
  );
  return { places: offers.map(({ place }) => place), resources: offers.flatMap(({ resources }) => resources) };
}

function lightPins(id: string, { lightPins: pins = [] }: Board, name: Named): Offer {
  const resources: Resource[] = [];
  const places = pins.map(({ id: header, plug, milliamps }, rank): Place => {
    const placeId = name('light', header);
    resources.push({ id: `${placeId}-milliamps`, capacity: milliamps });
    return {
      id: placeId,
      part: id,
      kind: 'light-header',
      rank,
      attrs: { plug },
      meters: { milliamps: [`${placeId}-milliamps`] },
    };
  });
  return { places, resources };
}

/** The first socket for a processor lead must be served; the others are for heavy loads, or for cards and drives. */
function powerNeeds(id: string, { powerSockets = [] }: Board): Need[] {
  let served = false;
  return powerSockets.map((plug, index) => {
    const kind = kindOfPlug[plug];
    const needed = kind === 'board-power' || (kind === 'processor-power' && !served);
    served ||= kind === 'processor-power';
    return { id: `${id}/power-${index + 1}`, part: id, kind, left: needed ? 'blocker' : 'note', attrs: { plug } };
  });
}

const places: readonly [keyof Board, KindName][] = [
  ['memory', 'memory-slot'],
  ['expansionSlots', 'expansion-slot'],
  ['moduleSlots', 'module-slot'],
  ['sataPorts', 'drive-data'],
  ['fanHeaders', 'fan-header'],
  ['frontPins', 'front-panel'],
  ['pictureSockets', 'picture'],
  ['lightPins', 'light-header'],
];

function unrecorded(id: string, part: Board): Unrecorded[] {
  const open = places.filter(([field]) => part[field] === undefined);
  const offers = open.map(([field, kind]): Unrecorded => ({ kind, part: id, field: `${id}.${field}`, of: 'places' }));
  if (part.powerSockets) return offers;
  const field = `${id}.powerSockets`;
  return [
    ...offers,
    { kind: 'board-power', part: id, field, of: 'needs' },
    { kind: 'processor-power', part: id, field, of: 'needs' },
  ];
}
