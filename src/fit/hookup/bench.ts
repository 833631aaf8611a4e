/**
 * A problem laid out for the search: needs and places in the order of ties, with every name looked
 * up. From here on the order of the input is gone.
 */
import type { JointId, Need, Place, Problem } from '../model.ts';
import { rowOf } from './charge.ts';
import { type Ledger, ledgerOf } from './ledger.ts';
import { sortInPlace } from './order.ts';
import { type Candidate, type KindCard, newSpot, type Seeker, type Spot, type Store, type Way } from './records.ts';

export type Bench = {
  /** In order. */
  readonly seekers: readonly Seeker[];
  readonly stores: readonly Store[];
  readonly kinds: readonly KindCard[];
};

/**
 * Holds until the next problem of the same kinds is laid out.
 *
 * Throws a RangeError that names the fault when a need id or a way of a place is repeated, when a
 * meter names a resource nobody declared, or when an amount is not a whole number from 0 up.
 */
export function layOut(problem: Problem): Bench {
  const ledger = ledgerOf(problem.kinds);
  ledger.round += 1;
  const groups = new Map<string, Store[]>();
  const stores = declare(ledger, problem, groups);
  const seekers = enterNeeds(ledger, problem);
  enterPlaces(ledger, problem);
  for (const kind of ledger.kinds) {
    if (kind.isChanged || kind.incoming.length !== kind.met) arrange(kind);
    for (const store of kind.stores) if (store.round !== ledger.round) throw undeclared(kind, ledger.round);
  }
  sortInPlace(seekers, isBefore);
  for (let index = 0; index < seekers.length; index += 1) {
    const seeker = seekers[index] as Seeker;
    seeker.index = index;
    if (seeker.look.version !== seeker.kind.version) findMates(ledger, seeker);
  }
  for (const members of groups.values()) shareEvenly(members, seekers);
  for (const kind of ledger.kinds) noteCapacities(kind);
  return { seekers, stores, kinds: ledger.kinds };
}

/** Of a resource declared twice the smaller capacity holds; to refuse is stricter than to lose. */
function declare(ledger: Ledger, { resources }: Problem, groups: Map<string, Store[]>): Store[] {
  const stores: Store[] = [];
  for (const one of resources) {
    const { store, resource } = ledger.declaration(one);
    const isLost = resource.over === 'lost';
    if (store.round === ledger.round) {
      store.capacity = Math.min(store.capacity, resource.capacity);
      store.lost &&= isLost;
    } else {
      store.round = ledger.round;
      store.capacity = resource.capacity;
      store.lost = isLost;
      store.isShared = false;
      store.sharers = nobody;
      stores.push(store);
    }
    if (resource.even === undefined) continue;
    store.isShared = true;
    const group = groups.get(resource.even);
    if (!group) groups.set(resource.even, [store]);
    else if (!group.includes(store)) group.push(store);
  }
  return stores;
}

function enterNeeds(ledger: Ledger, { needs }: Problem): Seeker[] {
  const seekers: Seeker[] = [];
  for (const need of needs) {
    const seeker = ledger.seeker(need);
    const { name } = seeker;
    if (name.round === ledger.round) throw new RangeError(`The need ${name.id} is there twice`);
    name.round = ledger.round;
    name.seeker = seeker;
    seeker.awaited = false;
    seekers.push(seeker);
  }
  return seekers;
}

function enterPlaces(ledger: Ledger, { places }: Problem): void {
  for (const kind of ledger.kinds) kind.met = 0;
  for (const place of places) {
    const way = ledger.way(place);
    const { name, kind, after } = way;
    if (name.round === ledger.round && name.kind !== kind) throw unlikeWays(name.id);
    name.round = ledger.round;
    name.kind = kind;
    if (kind.incoming[kind.met] !== way) {
      kind.incoming[kind.met] = way;
      kind.isChanged = true;
    }
    kind.met += 1;
    for (let at = 0; at < after.length; at += 1) {
      const above = after[at]?.round === ledger.round ? after[at]?.seeker : undefined;
      way.above[at] = above;
      if (above) above.awaited = true;
    }
  }
}

const unlikeWays = (id: string) => new RangeError(`Ways of ${id} differ in kind or fill`);

/** Puts a kind's places in order: by rank, then id, then way; a spot has the turn of its first way. */
function arrange(kind: KindCard): void {
  kind.isChanged = true;
  kind.incoming.length = kind.met;
  const ways = [...kind.incoming];
  sortInPlace(ways, (a, b) => (a.rank - b.rank || a.name.turn.at - b.name.turn.at || a.way.at - b.way.at) < 0);
  const spots = new Map<string, Spot>();
  const stores = new Set<Store>();
  for (const [order, way] of ways.entries()) {
    const { id } = way.name;
    const spot = spots.get(id) ?? newSpot(way.fill);
    if (spot.fill !== way.fill) throw unlikeWays(id);
    if (spot.ways.some((other) => other.place.way === way.place.way)) {
      throw new RangeError(`The place ${id} is there twice in one way`);
    }
    spot.ways.push(way);
    spots.set(id, spot);
    way.order = order;
    way.spot = spot;
    for (const row of way.rows) for (const store of row.stores) stores.add(store);
  }
  kind.ways = ways;
  kind.spots = [...spots.values()];
  kind.stores = [...stores];
  kind.version += 1;
  kind.state += 1;
  kind.capacities = [];
  kind.isChanged = false;
}

function noteCapacities(kind: KindCard): void {
  const { stores, capacities } = kind;
  let isSame = true;
  for (let at = 0; at < stores.length; at += 1) {
    const { lost, capacity } = stores[at] as Store;
    const noted = lost ? -1 - capacity : capacity;
    if (capacities[at] === noted) continue;
    capacities[at] = noted;
    isSame = false;
  }
  if (!isSame) kind.state += 1;
}

/** Names the first of a kind's meters that no store of this round stands behind. */
function undeclared({ ways, stores }: KindCard, round: number): RangeError {
  const missing = new Set(stores.filter((store) => store.round !== round).map(({ id }) => id));
  for (const { place } of ways) {
    for (const [quantity, ids] of Object.entries(place.meters ?? {})) {
      const id = ids.find((one) => missing.has(one));
      if (id) return new RangeError(`${place.id} meters ${quantity} with ${id}, which nobody declared`);
    }
  }
  throw new Error('Every store of a kind is metered by one of its ways');
}

/** Needs that others hang on first, then the hungriest, then by id. */
function isBefore(a: Seeker, b: Seeker): boolean {
  if (a.awaited !== b.awaited) return a.awaited;
  if (a.hunger !== b.hunger) return a.hunger > b.hunger;
  return a.turn.at < b.turn.at;
}

const nothing: readonly never[] = [];
const nobody: readonly Seeker[] = nothing;

function findMates(ledger: Ledger, { look, kind }: Seeker): void {
  const mates: Candidate[] = [];
  look.isWaiting = false;
  look.isDrawing = false;
  for (const way of kind.ways) {
    const mating = ledger.mating(look, way);
    if (mating === 'no') continue;
    mates.push({ way, unknown: mating === 'unknown', loss: 0, stores: nothing, amounts: nothing, through: nothing });
    look.isWaiting ||= way.after.length > 0;
    look.isDrawing ||= way.draws.length > 0;
  }
  look.mates = mates;
  look.version = kind.version;
}

/**
 * Members of a group share evenly what all needs together could draw on it: for each need, the most
 * it draws at one place it mates with. A need left over counts too, so the shares never move.
 */
function shareEvenly(members: readonly Store[], seekers: readonly Seeker[]): void {
  const sharers: Seeker[] = [];
  let sum = 0;
  for (const seeker of seekers) {
    if (seeker.draws.length === 0 || !seeker.kind.stores.some((store) => store.isShared)) continue;
    let most = 0;
    for (const { way } of seeker.look.mates) {
      if (isOwnOutlet(seeker, way)) continue;
      let drawn = 0;
      for (const { quantity, amount } of seeker.draws) {
        if (rowOf(way, quantity)?.stores.some((store) => members.includes(store))) drawn += amount;
      }
      most = Math.max(most, drawn);
    }
    if (most === 0) continue;
    sum += most;
    sharers.push(seeker);
  }
  for (const store of members) {
    store.capacity = Math.ceil(sum / members.length);
    store.sharers = sharers;
  }
}

/** A place one of whose ways waits for this need: joined there, it would hang on itself. */
export function isOwnOutlet(seeker: Seeker, { spot }: Way): boolean {
  if (!seeker.awaited) return false;
  for (const way of spot.ways) if (way.above.includes(seeker)) return true;
  return false;
}

/** What a need mates with, in order. */
export const matesOf = (seeker: Seeker): readonly Candidate[] =>
  seeker.awaited ? seeker.look.mates.filter(({ way }) => !isOwnOutlet(seeker, way)) : seeker.look.mates;

export const jointId = (need: Need, place: Place): JointId => `${need.id} → ${place.id}`;
