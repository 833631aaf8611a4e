/** Makes the records of needs, places and resources, once each. */
import type { KindName, Kinds, Need, Place, Resource, ResourceId } from '../model.ts';
import { levelLeft } from './cost.ts';
import { type Mating, mate } from './mating.ts';
import { Turns } from './order.ts';
import {
  type Declaration,
  type Draw,
  type KindCard,
  type Look,
  type NeedName,
  newSpot,
  type PlaceName,
  type Row,
  type Seeker,
  type Store,
  type Way,
} from './records.ts';

const none: readonly never[] = [];
/** More entries than any class of parts comes to. Beyond it all is forgotten. */
const mostEntries = 60_000;

export class Ledger {
  round = 0;
  readonly kinds: readonly KindCard[];
  entries = 0;
  readonly #turns = new Turns();
  readonly #kindOf: ReadonlyMap<KindName, KindCard>;
  readonly #numbers = new Map<string, number>();
  readonly #needNames = new Map<string, NeedName>();
  readonly #placeNames = new Map<string, PlaceName>();
  readonly #stores = new Map<ResourceId, Store>();
  readonly #seekers = new WeakMap<Need, Seeker>();
  readonly #ways = new WeakMap<Place, Way>();
  readonly #declarations = new WeakMap<Resource, Declaration>();

  constructor(kinds: Kinds) {
    this.kinds = (Object.keys(kinds) as KindName[]).map((name) => ({
      name,
      tests: kinds[name].tests,
      hungry: kinds[name].hungry ?? '',
      looks: new Map(),
      wayLooks: new Map(),
      incoming: [],
      met: 0,
      isChanged: false,
      version: 0,
      state: 0,
      ways: none,
      spots: none,
      stores: none,
      capacities: [],
    }));
    this.#kindOf = new Map(this.kinds.map((kind) => [kind.name, kind]));
  }

  seeker(need: Need): Seeker {
    return this.#seekers.get(need) ?? this.#enterNeed(need);
  }

  way(place: Place): Way {
    return this.#ways.get(place) ?? this.#enterPlace(place);
  }

  declaration(resource: Resource): Declaration {
    return this.#declarations.get(resource) ?? this.#enterResource(resource);
  }

  /** What a need of this look makes of a way. */
  mating(look: Look, way: Way): Mating {
    const known = look.matings[way.look];
    if (known) return known;
    this.entries += 1;
    const mating = mate(way.kind.tests, look.attrs, way.place.attrs);
    look.matings[way.look] = mating;
    return mating;
  }

  #enterNeed(need: Need): Seeker {
    const kind = this.#kind(need.kind);
    const seeker: Omit<Seeker, 'parent'> & { parent?: Seeker } = {
      need,
      name: this.#needName(need.id),
      turn: this.#turns.of(need.id),
      kind,
      look: this.#look(kind, need.attrs),
      drawn: this.#number(`draws ${keyOf(need.draws)}`),
      draws: this.#draws(need),
      carries: need.carries?.map((name) => this.#number(name)) ?? none,
      hunger: need.draws?.[kind.hungry] ?? 0,
      level: levelLeft(need),
      isIdle: need.left === 'spare' && !need.stands,
      index: 0,
      awaited: false,
      open: none,
      placed: undefined,
      isCertain: false,
      joint: undefined,
      component: -1,
      mark: 0,
    };
    seeker.parent = seeker as Seeker;
    this.#seekers.set(need, seeker as Seeker);
    return seeker as Seeker;
  }

  #enterPlace(place: Place): Way {
    const kind = this.#kind(place.kind);
    const rank = whole(place.rank, place.id);
    const way: Way = {
      place,
      name: this.#placeName(place.id),
      way: this.#turns.of(place.way ?? ''),
      kind,
      rank,
      look: this.#wayLook(kind, place.attrs),
      fill: place.fill ?? 1,
      draws: this.#draws(place),
      rows: this.#rows(place),
      after: place.after?.map((id) => this.#needName(id)) ?? none,
      above: [],
      order: 0,
      spot: nowhere,
    };
    this.#ways.set(place, way);
    return way;
  }

  #enterResource(resource: Resource): Declaration {
    const declaration = { store: this.#store(resource.id), resource };
    whole(resource.capacity, resource.id);
    this.#declarations.set(resource, declaration);
    return declaration;
  }

  #kind(name: KindName): KindCard {
    const kind = this.#kindOf.get(name);
    if (!kind) throw new RangeError(`Nothing says what a ${name} is`);
    return kind;
  }

  #number(text: string): number {
    return this.#enter(this.#numbers, text, () => this.#numbers.size);
  }

  #needName(id: string): NeedName {
    return this.#enter(this.#needNames, id, () => ({ id, round: 0, seeker: undefined }));
  }

  #placeName(id: string): PlaceName {
    return this.#enter(this.#placeNames, id, () => ({ id, turn: this.#turns.of(id), round: 0, kind: undefined }));
  }

  #store(id: ResourceId): Store {
    return this.#enter(this.#stores, id, () => ({
      id,
      turn: this.#turns.of(id),
      local: this.#number(id.slice(id.lastIndexOf('/') + 1)),
      round: 0,
      capacity: 0,
      lost: false,
      isShared: false,
      sharers: none,
      binds: false,
      used: 0,
      sum: 0,
      row: 0,
      most: 0,
      drawer: undefined,
    }));
  }

  #look(kind: KindCard, attrs: Need['attrs']): Look {
    return this.#enter(kind.looks, keyOf(attrs), () => ({
      attrs,
      matings: [],
      version: -1,
      mates: none,
      isWaiting: false,
      isDrawing: false,
      offered: -1,
      offers: new Map(),
    }));
  }

  #wayLook(kind: KindCard, attrs: Place['attrs']): number {
    return this.#enter(kind.wayLooks, keyOf(attrs), () => kind.wayLooks.size);
  }

  #draws({ id, draws }: Need | Place): readonly Draw[] {
    if (!draws) return none;
    return Object.entries(draws).map(([name, amount]) => ({
      quantity: this.#number(name),
      amount: whole(amount, id),
    }));
  }

  #rows({ meters }: Place): readonly Row[] {
    if (!meters) return none;
    const rows = Object.entries(meters).map(([name, ids]) => ({
      quantity: this.#number(name),
      stores: ids.map((id) => this.#store(id)),
    }));
    return rows.filter(({ stores }) => stores.length > 0);
  }

  #enter<T>(entries: Map<string, T>, key: string, make: () => T): T {
    const known = entries.get(key);
    if (known !== undefined) return known;
    this.entries += 1;
    const made = make();
    entries.set(key, made);
    return made;
  }
}

const nowhere = newSpot(1);

function whole(amount: number, of: string): number {
  if (Number.isSafeInteger(amount) && amount >= 0) return amount;
  throw new RangeError(`${of} has the amount ${amount}; amounts are whole and not below 0`);
}

/** Equal for equal attributes or equal draws; one that is undefined is the same as one that is absent. */
function keyOf(record: Need['attrs'] = {}): string {
  const names = Object.keys(record).filter((name) => record[name] !== undefined);
  return names
    .sort()
    .map((name) => `${JSON.stringify(name)}:${JSON.stringify(record[name], numbersAsText)}`)
    .join();
}

/** JSON has no word for numbers without end. */
const numbersAsText = (_: string, value: unknown): unknown =>
  typeof value === 'number' && !Number.isFinite(value) ? [String(value)] : value;

const ledgers = new WeakMap<Kinds, Ledger>();

/** The ledger of these kinds. One that has grown beyond all bounds is begun again. */
export function ledgerOf(kinds: Kinds): Ledger {
  const known = ledgers.get(kinds);
  if (known && known.entries < mostEntries) return known;
  const ledger = new Ledger(kinds);
  ledgers.set(kinds, ledger);
  return ledger;
}
