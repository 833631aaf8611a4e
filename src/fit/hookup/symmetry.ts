import type { Draw, Seeker, Spot, Store, Way } from './records.ts';
import type { Choice, Trial } from './trial.ts';

/** An adapter with one lead whose places are like those of others: it can be exchanged for them with all it holds. */
type Splitter = { row: number; seats: readonly number[]; key: string };

/**
 * Choices that need not be tried, because exchanging two things that are alike gives a hookup that costs
 * no more and comes earlier in the order of ties. Needs are decided in order, so what is decided is all
 * that comes before.
 */
export class Symmetry {
  readonly #trial: Trial;
  readonly #stores: ReadonlyMap<Store, ReadonlySet<Spot>>;
  /** By seat, the nearest place before that is like it, and its class; -1 for none. */
  readonly #before: number[];
  readonly #classOf: number[];
  readonly #splitters: readonly Splitter[];
  /** By seat, the splitter that it is a place of. */
  readonly #ownerOf: (Splitter | undefined)[];

  constructor(trial: Trial) {
    this.#trial = trial;
    this.#stores = storesOf(trial);
    const classes = new Map<string, number>();
    this.#before = trial.spots.map(() => -1);
    this.#classOf = trial.spots.map(() => -1);
    for (const seat of [...trial.spots.keys()].sort((a, b) => this.#orderOf(a) - this.#orderOf(b))) {
      const spot = trial.spots[seat] as Spot;
      const way = onlyWay(spot);
      if (!way) continue;
      const above = way.above.map((one) => one?.index).join();
      const key = `${this.#keyOf(way, new Set([spot]), [])} ${above}`;
      this.#before[seat] = classes.get(key) ?? -1;
      const first = this.#classOf[this.#before[seat] as number] ?? seat;
      this.#classOf[seat] = first;
      classes.set(key, seat);
    }
    this.#splitters = trial.seekers.flatMap((seeker, row) => this.#splitter(seeker, row));
    this.#ownerOf = trial.spots.map((_, seat) => this.#splitters.find(({ seats }) => seats.includes(seat)));
  }

  /** Whether the next need must be tried with this choice; `trial.cost()` having been asked. */
  isNeeded(row: number, choice: Choice): boolean {
    const { taken } = this.#trial;
    const before = this.#before[choice.seat] ?? -1;
    if (before >= 0 && taken[before] === 0) return false;
    return !this.#isExchanged(row, choice) && !this.#isBesideFresh(choice);
  }

  /** The splitters in order: each at a place not before that of the one like it. */
  #isExchanged(row: number, choice: Choice): boolean {
    const { chosen } = this.#trial;
    const own = this.#splitters.find((one) => one.row === row);
    const other = own && this.#splitters.findLast((one) => one.row < row && one.key === own.key);
    if (!other || other.seats.includes(choice.seat)) return false;
    if (turnOf(choice) >= turnOf(chosen[other.row])) return false;
    for (let at = 0; at < other.row; at += 1) {
      const seat = chosen[at]?.seat ?? -1;
      if (own.seats.includes(seat) || other.seats.includes(seat)) return false;
    }
    return true;
  }

  /** Of two splitters alike at places alike, neither of them begun, the one that comes first is begun. */
  #isBesideFresh({ seat }: Choice): boolean {
    const { chosen } = this.#trial;
    const owner = this.#ownerOf[seat];
    if (!owner || !this.#isFresh(owner)) return false;
    const at = owner.seats.indexOf(seat);
    const place = this.#classOf[chosen[owner.row]?.seat ?? -1] ?? -1;
    return this.#splitters.some(
      (other) =>
        other.key === owner.key &&
        place >= 0 &&
        this.#classOf[chosen[other.row]?.seat ?? -1] === place &&
        this.#orderOf(other.seats[at] as number) < this.#orderOf(seat) &&
        this.#isFresh(other),
    );
  }

  #isFresh({ seats }: Splitter): boolean {
    return seats.every((seat) => this.#trial.taken[seat] === 0);
  }

  #orderOf(seat: number): number {
    return this.#trial.spots[seat]?.ways[0]?.order ?? 0;
  }

  #splitter(seeker: Seeker, row: number): Splitter[] {
    const { need, awaited, isCertain } = seeker;
    if (!awaited || need.stands || isCertain) return [];
    const spots = this.#trial.spots.filter(({ ways }) => ways.some(({ above }) => above.includes(seeker)));
    const group = new Set(spots);
    const met: Store[] = [];
    const keys: string[] = [];
    spots.sort((a, b) => (a.ways[0]?.order ?? 0) - (b.ways[0]?.order ?? 0));
    for (const spot of spots) {
      const way = onlyWay(spot);
      if (way?.above.length !== 1) return [];
      keys.push(`${way.rank} ${way.way.at} ${this.#keyOf(way, group, met)}`);
    }
    const lead = [need.kind, need.left, seeker.drawn, [...seeker.carries].sort().join(), lookOf(this.#trial, seeker)];
    return [{ row, seats: spots.map(({ seat }) => seat), key: [...lead, ...keys].join('; ') }];
  }

  /** Equal for places at which joints come to the same, save where they are and what they wait for. */
  #keyOf(way: Way, group: ReadonlySet<Spot>, met: Store[]): string {
    const rows = [...way.rows]
      .sort((a, b) => a.quantity - b.quantity)
      .map(({ quantity, stores }) => `${quantity}: ${stores.map((store) => this.#storeKey(store, group, met)).join()}`);
    return `${way.kind.name} ${way.look} ${drawsKey(way.draws)} ${rows.join(' ')}`;
  }

  /** Resources on which these places alone draw are alike when their capacities are. */
  #storeKey(store: Store, group: ReadonlySet<Spot>, met: Store[]): string {
    const spots = this.#stores.get(store);
    if (store.binds && spots && [...spots].some((spot) => !group.has(spot))) return store.id;
    if (!met.includes(store)) met.push(store);
    return `${store.local}/${store.capacity}/${store.lost}/${met.indexOf(store)}`;
  }
}

const turnOf = (choice: Choice | undefined): number => choice?.mate?.way.order ?? Infinity;

const onlyWay = ({ ways, fill }: Spot): Way | undefined => (ways.length === 1 && fill === 1 ? ways[0] : undefined);

const drawsKey = (draws: readonly Draw[]): string =>
  draws
    .map(({ quantity, amount }) => `${quantity}=${amount}`)
    .sort()
    .join();

/** The first need that looks the same. */
const lookOf = ({ seekers }: Trial, { look }: Seeker): number => seekers.findIndex((other) => other.look === look);

/** By resource, the places that meter with it. */
function storesOf({ spots }: Trial): ReadonlyMap<Store, ReadonlySet<Spot>> {
  const found = new Map<Store, Set<Spot>>();
  for (const spot of spots) {
    for (const { rows } of spot.ways) {
      for (const { stores } of rows)
        for (const store of stores) found.set(store, (found.get(store) ?? new Set()).add(spot));
    }
  }
  return found;
}
