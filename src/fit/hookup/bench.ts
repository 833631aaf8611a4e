/**
 * A problem laid out for the search: needs and places in the order of ties, numbered, with every
 * name looked up. From here on the order of the input is gone.
 */
import type { JointId, Need, NeedId, Place, Problem, Quantity, Resource, ResourceId } from '../model.ts';
import { mate, sameRecord } from './mating.ts';
import { compareIds, compareText, idKey } from './order.ts';

export type Draw = readonly [quantity: Quantity, amount: number];

/** A resource. What it passes on goes under its local name, the last piece of its id: `pos-3` of `motherboard-1/pos-3`. */
export type Store = {
  index: number;
  id: ResourceId;
  local: Quantity;
  capacity: number;
  lost: boolean;
  /** Numbers of the needs that count in its even share. */
  sharers: readonly number[];
};

/** One way of using one place. Ways of one place share its spot. */
export type Way = {
  /** Its turn among all ways. */
  order: number;
  place: Place;
  spot: number;
  fill: number;
  draws: readonly Draw[];
  rows: ReadonlyMap<Quantity, readonly Store[]>;
  /** Numbers of the needs that must be joined before it exists; -1 for a need that is not in the problem. */
  after: readonly number[];
};

/** A way that a need mates with. */
export type Mate = { way: Way; unknown: boolean };

export type Seeker = {
  index: number;
  need: Need;
  /** Sorts by id. */
  key: string;
  draws: readonly Draw[];
  /** Some place waits for it. */
  awaited: boolean;
  /** Equal for needs of one kind with equal attributes. */
  looks: number;
  /** In the order in which it would take them. */
  mates: readonly Mate[];
};

type Asking = Pick<Seeker, 'need' | 'key' | 'draws' | 'awaited'>;

export type Bench = {
  seekers: readonly Seeker[];
  /** By spot; the ways of one place in order. */
  spots: readonly (readonly Way[])[];
  stores: readonly Store[];
  indexOf: ReadonlyMap<NeedId, number>;
};

const noRows: Way['rows'] = new Map();
const noDraws: readonly Draw[] = [];

function whole(amount: number, of: string): number {
  if (Number.isSafeInteger(amount) && amount >= 0) return amount;
  throw new RangeError(`${of} has the amount ${amount}; amounts are whole and not below 0`);
}

const listDraws = ({ id, draws }: Need | Place): readonly Draw[] =>
  draws ? Object.entries(draws).map(([quantity, amount]) => [quantity, whole(amount, id)] as const) : noDraws;

/** Of a resource declared twice the smaller capacity holds; to refuse is stricter than to lose. */
function declare(resources: readonly Resource[]): Map<ResourceId, Store> {
  const stores = new Map<ResourceId, Store>();
  for (const { id, capacity, over } of resources) {
    const known = stores.get(id);
    if (known) {
      known.capacity = Math.min(known.capacity, whole(capacity, id));
      known.lost &&= over === 'lost';
    } else {
      const local = id.slice(id.lastIndexOf('/') + 1);
      const lost = over === 'lost';
      stores.set(id, { index: stores.size, id, local, capacity: whole(capacity, id), lost, sharers: [] });
    }
  }
  return stores;
}

function layRows({ id, meters }: Place, stores: ReadonlyMap<ResourceId, Store>): Way['rows'] {
  if (!meters) return noRows;
  const rows = new Map<Quantity, Store[]>();
  for (const [quantity, ids] of Object.entries(meters)) {
    const row = ids.map((resource) => {
      const store = stores.get(resource);
      if (!store) throw new RangeError(`${id} meters ${quantity} with ${resource}, which nobody declared`);
      return store;
    });
    if (row.length > 0) rows.set(quantity, row);
  }
  return rows;
}

/**
 * Members of a group share evenly what all needs together could draw on it: for each need, the most
 * it draws at one place it mates with. A need left over counts too, so the shares never move.
 */
function shareEvenly(
  resources: readonly Resource[],
  stores: ReadonlyMap<ResourceId, Store>,
  seekers: readonly Seeker[],
) {
  const groups = new Map<string, Set<Store>>();
  for (const { id, even } of resources) {
    const store = stores.get(id);
    if (even === undefined || !store) continue;
    groups.set(even, (groups.get(even) ?? new Set()).add(store));
  }
  for (const members of groups.values()) {
    const drawn = ({ draws }: Seeker, { way }: Mate) => {
      const reaching = draws.filter(([quantity]) => way.rows.get(quantity)?.some((store) => members.has(store)));
      return reaching.reduce((sum, [, amount]) => sum + amount, 0);
    };
    const most = seekers.map((seeker) => Math.max(0, ...seeker.mates.map((mate) => drawn(seeker, mate))));
    const share = Math.ceil(most.reduce((sum, amount) => sum + amount, 0) / members.size);
    for (const store of members) {
      store.capacity = share;
      store.sharers = [...most.keys()].filter((index) => most[index]);
    }
  }
}

/** Needs that others hang on first, then the hungriest, then by id. */
function orderNeeds({ needs, places, kinds }: Problem): readonly Asking[] {
  const awaited = new Set(places.flatMap((place) => place.after ?? []));
  const asking = needs.map((need) => ({
    need,
    key: idKey(need.id),
    draws: listDraws(need),
    awaited: awaited.has(need.id),
    hunger: need.draws?.[kinds[need.kind].hungry ?? ''] ?? 0,
  }));
  return asking.sort(
    (a, b) =>
      Number(b.awaited) - Number(a.awaited) ||
      b.hunger - a.hunger ||
      compareText(a.key, b.key) ||
      compareText(a.need.id, b.need.id),
  );
}

/** Places by rank, then id, then way; a spot has the turn of its first way. */
function laySpots(
  places: readonly Place[],
  stores: ReadonlyMap<ResourceId, Store>,
  indexOf: Bench['indexOf'],
): readonly (readonly Way[])[] {
  const spots = new Map<string, Way[]>();
  const ordered = places
    .map((place) => ({ place, key: idKey(place.id), rank: whole(place.rank, place.id) }))
    .sort(
      (a, b) =>
        a.rank - b.rank ||
        compareText(a.key, b.key) ||
        compareText(a.place.id, b.place.id) ||
        compareIds(a.place.way ?? '', b.place.way ?? ''),
    );
  for (const [order, { place }] of ordered.entries()) {
    const ways = spots.get(place.id) ?? [];
    const { id, fill = 1 } = place;
    for (const { place: other } of ways) {
      if (other.way === place.way) throw new RangeError(`The place ${id} is there twice in one way`);
      if ((other.fill ?? 1) !== fill || other.kind !== place.kind) {
        throw new RangeError(`Ways of ${id} differ in kind or fill`);
      }
    }
    ways.push({
      order,
      place,
      spot: ways[0]?.spot ?? spots.size,
      fill,
      draws: listDraws(place),
      rows: layRows(place, stores),
      after: place.after?.map((need) => indexOf.get(need) ?? -1) ?? [],
    });
    spots.set(id, ways);
  }
  return [...spots.values()];
}

/** Finds what each need mates with. */
function seek(asking: readonly Asking[], spots: Bench['spots'], kinds: Problem['kinds']): Seeker[] {
  const seekers: Seeker[] = [];
  const matesOf: (readonly Mate[])[] = [];
  for (const [index, { need, key, draws, awaited }] of asking.entries()) {
    const twin = seekers.find((other) => other.need.kind === need.kind && sameRecord(other.need.attrs, need.attrs));
    const all = (twin && matesOf[twin.looks]) ?? findMates(need, spots, kinds);
    matesOf.push(all);
    const mates = awaited ? all.filter(({ way }) => !isOwnOutlet(index, spots[way.spot] ?? [])) : all;
    seekers.push({ index, need, key, draws, awaited, looks: twin?.looks ?? index, mates });
  }
  return seekers;
}

function findMates({ kind, attrs }: Need, spots: Bench['spots'], kinds: Problem['kinds']): Mate[] {
  const mates: Mate[] = [];
  for (const ways of spots) {
    if (ways[0]?.place.kind !== kind) continue;
    for (const way of ways) {
      const mating = mate(kinds[kind].tests, attrs, way.place.attrs);
      if (mating !== 'no') mates.push({ way, unknown: mating === 'unknown' });
    }
  }
  return mates.sort((a, b) => a.way.order - b.way.order);
}

/**
 * Throws a RangeError that names the fault when a need id or a way of a place is repeated, when a
 * meter names a resource nobody declared, or when an amount is not a whole number from 0 up.
 */
export function layOut(problem: Problem): Bench {
  const stores = declare(problem.resources);
  const asking = orderNeeds(problem);
  const indexOf = new Map(asking.map(({ need }, index) => [need.id, index]));
  const repeated = asking.find(({ need }, index) => indexOf.get(need.id) !== index);
  if (repeated) throw new RangeError(`The need ${repeated.need.id} is there twice`);
  const spots = laySpots(problem.places, stores, indexOf);
  const seekers = seek(asking, spots, problem.kinds);
  shareEvenly(problem.resources, stores, seekers);
  return { seekers, spots, stores: [...stores.values()], indexOf };
}

/** A place one of whose ways waits for this need: joined there, it would hang on itself. */
export const isOwnOutlet = (index: number, ways: readonly Way[]): boolean =>
  ways.some((way) => way.after.includes(index));

export const jointId = (need: Need, place: Place): JointId => `${need.id} → ${place.id}`;
