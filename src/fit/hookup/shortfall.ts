import { chargeJoints, clearCharges, rowOf } from './charge.ts';
import type { Seeker, Store, Way } from './records.ts';
import type { Trial } from './trial.ts';

/** Of the needs in these rows at least so many will be left over. */
export type Shortfall = { count: number; among: readonly number[] };

/** Stores that share what one row of a place takes; their room is one. */
type Pool = { stores: Store[]; room: number; seats: number };

/**
 * The bound from total draw against total capacity. Of one quantity: some needs draw on refused
 * resources wherever they are joined. When what is left of those resources, and of what the free places
 * can bring to them, is less than all of them draw, some are left over.
 */
export class Supply {
  readonly #trial: Trial;
  readonly #quantity: number;
  /** By row, what it draws wherever it is joined; 0 for a need that might draw nothing here. */
  readonly #weights: readonly number[];
  readonly #pools: readonly Pool[];
  readonly #poolOf: ReadonlyMap<Store, Pool>;
  /** A draw may be shared out between pools. */
  #isSplit = false;

  constructor(trial: Trial, quantity: number) {
    this.#trial = trial;
    this.#quantity = quantity;
    const rows: (readonly Store[])[] = [];
    this.#weights = trial.seekers.map((seeker) => {
      let weight = 0;
      for (const draw of seeker.draws) if (draw.quantity === quantity) weight += draw.amount;
      const seen = new Set<Seeker>();
      const isSure = weight > 0 && seeker.open.every(({ way }) => this.#lands(way, seen, rows));
      return isSure ? weight : 0;
    });
    this.#pools = poolsOf(rows);
    this.#poolOf = new Map(this.#pools.flatMap((pool) => pool.stores.map((store) => [store, pool] as const)));
  }

  /** Whether it could ever say more than nothing. */
  get isUseful(): boolean {
    return this.#pools.some(({ stores }) => stores.some(({ binds }) => binds));
  }

  /** Whether all that meets a way comes to refused resources, whatever is joined; adds their rows. */
  #lands(way: Way, seen: Set<Seeker>, rows: (readonly Store[])[]): boolean {
    const row = rowOf(way, this.#quantity);
    if (row) {
      rows.push(row.stores);
      return row.stores.every(({ lost }) => !lost);
    }
    const carriers = this.#carriersOf(way);
    if (carriers.length > 1) this.#isSplit = true;
    return carriers.length > 0 && carriers.every((one) => this.#passes(one, seen, rows));
  }

  #passes(carrier: Seeker, seen: Set<Seeker>, rows: (readonly Store[])[]): boolean {
    if (seen.size === seen.add(carrier).size) return true;
    return !carrier.need.stands && carrier.open.every(({ way }) => this.#lands(way, seen, rows));
  }

  #carriersOf({ above }: Way): Seeker[] {
    return above.filter((one) => one !== undefined).filter(({ carries }) => carries.includes(this.#quantity));
  }

  /** From the need `first` on, those before it being decided and `trial.cost()` having been asked. */
  shortfall(first: number): Shortfall {
    const among: number[] = [];
    for (let row = first; row < this.#trial.size; row += 1) if (this.#weights[row]) among.push(row);
    if (among.length === 0) return { count: 0, among };
    this.#measure(among);
    const ascending = among.map((row) => this.#weights[row] as number).sort((a, b) => a - b);
    let supply = 0;
    for (const pool of this.#pools) supply += this.#supplyOf(pool, ascending);
    let served = 0;
    for (const weight of ascending) {
      supply -= weight;
      if (supply < 0) break;
      served += 1;
    }
    return { count: among.length - served, among };
  }

  /** By pool, the room that is left, and how many free places could bring draws to it. */
  #measure(among: readonly number[]): void {
    const { seekers, choices, spots, taken } = this.#trial;
    chargeJoints(seekers);
    for (const pool of this.#pools) {
      pool.seats = 0;
      pool.room = 0;
      for (const { capacity, used } of pool.stores) pool.room += Math.max(0, capacity - used);
    }
    clearCharges();
    const reached = new Map<number, Set<Pool>>();
    for (const row of among) {
      for (const { mate, seat } of choices[row] ?? []) {
        if (!mate || (taken[seat] as number) >= mate.way.fill) continue;
        const pools = reached.get(seat) ?? new Set();
        reached.set(seat, pools);
        this.#reach(mate.way, new Set(), pools);
      }
    }
    for (const [seat, pools] of reached) {
      const free = (spots[seat]?.fill as number) - (taken[seat] as number);
      for (const pool of pools) pool.seats += free;
    }
  }

  /** The pools that a joint at a way could draw on, as far as is decided. */
  #reach(way: Way, seen: Set<Seeker>, pools: Set<Pool>): void {
    const row = rowOf(way, this.#quantity);
    if (row) {
      const pool = this.#poolOf.get(row.stores[0] as Store);
      if (pool) pools.add(pool);
      return;
    }
    for (const one of this.#carriersOf(way)) {
      if (seen.size === seen.add(one).size || one.placed === null) continue;
      if (one.placed) this.#reach(one.placed.way, seen, pools);
      else for (const above of one.open) this.#reach(above.way, seen, pools);
    }
  }

  /** The most that needs of these weights can take from a pool, one at each of its places. */
  #supplyOf({ room, seats }: Pool, ascending: readonly number[]): number {
    let sum = 0;
    let free = seats;
    for (let at = ascending.length - 1; at >= 0 && free > 0 && sum < room; at -= 1) {
      const weight = ascending[at] as number;
      if (weight > room && !this.#isSplit) continue;
      sum += weight;
      free -= 1;
    }
    return Math.min(sum, room);
  }
}

/** Stores that stand in one row are one pool. */
function poolsOf(rows: readonly (readonly Store[])[]): Pool[] {
  let pools: Pool[] = [];
  for (const row of rows) {
    const met = pools.filter(({ stores }) => stores.some((store) => row.includes(store)));
    const stores = [...new Set([...met.flatMap((pool) => pool.stores), ...row])];
    pools = [...pools.filter((pool) => !met.includes(pool)), { stores, room: 0, seats: 0 }];
  }
  return pools;
}

/** One for each quantity of which the needs of a trial could run short. */
export function suppliesOf(trial: Trial): Supply[] {
  const quantities = new Set(trial.seekers.flatMap(({ draws }) => draws.map(({ quantity }) => quantity)));
  return [...quantities].map((quantity) => new Supply(trial, quantity)).filter((supply) => supply.isUseful);
}
