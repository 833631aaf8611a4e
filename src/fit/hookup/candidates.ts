import { type Bench, isOwnOutlet } from './bench.ts';
import { charged, chargeThere, clearCharges, rowOf } from './charge.ts';
import type { Candidate, Seeker, Store, Way } from './records.ts';

/**
 * Finds what each need could be joined to. Left out are places that wait for a need which can be
 * joined nowhere, and joints that would overdraw a refused resource on their own.
 */
export function findCandidates({ seekers }: Bench): void {
  const waiting: Seeker[] = [];
  for (const seeker of seekers) {
    const offer = offerOf(seeker);
    const isOutside = ({ way }: Candidate) => !isOwnOutlet(seeker, way);
    seeker.open = !seeker.awaited || offer.every(isOutside) ? offer : offer.filter(isOutside);
    if (seeker.look.isWaiting) waiting.push(seeker);
  }
  for (let changed = waiting.length > 0; changed; ) {
    changed = false;
    for (const seeker of waiting) {
      if (seeker.open.every(canExist)) continue;
      seeker.open = seeker.open.filter(canExist);
      changed = true;
    }
  }
  for (const seeker of waiting) {
    if (seeker.draws.length > 0 || seeker.look.isDrawing) {
      seeker.open = seeker.open.map((candidate) => climb(seeker, candidate));
    }
  }
}

function canExist({ way }: Candidate): boolean {
  for (const above of way.above) if (!above || !(above.need.stands || above.open.length > 0)) return false;
  return true;
}

/** What a need could be joined to if all places existed; needs that look and draw alike have it in common. */
function offerOf(seeker: Seeker): readonly Candidate[] {
  const { look, kind, draws, drawn } = seeker;
  if (draws.length === 0 && !look.isDrawing) return look.mates;
  if (look.offered !== kind.state) {
    look.offered = kind.state;
    look.offers.clear();
  }
  const known = look.offers.get(drawn);
  if (known) return known;
  const offer: Candidate[] = [];
  for (const mate of look.mates) {
    const candidate = mate.way.rows.length === 0 ? mate : weigh(seeker, mate);
    if (candidate) offer.push(candidate);
  }
  look.offers.set(drawn, offer);
  return offer;
}

/** What one joint takes at its own place; undefined when that alone overdraws. */
function weigh({ draws }: Seeker, mate: Candidate): Candidate | undefined {
  const { way, unknown } = mate;
  const isShared = way.fill > 1 && way.draws.length > 0;
  let loss = 0;
  if (isShared) {
    // What a place with `fill` draws is shared by its needs, so no single joint makes that loss.
    chargeThere(way, draws);
    loss = ownLoss();
    clearCharges();
  }
  chargeThere(way, draws);
  chargeThere(way, way.draws);
  let isOver = false;
  const stores: Store[] = [];
  const amounts: number[] = [];
  for (const store of charged) {
    stores.push(store);
    amounts.push(store.used);
    isOver ||= !store.lost && store.used > store.capacity;
  }
  if (!isShared) loss = ownLoss();
  clearCharges();
  if (isOver) return undefined;
  return stores.length === 0 ? mate : { way, unknown, loss, stores, amounts, through: mate.through };
}

function ownLoss(): number {
  let loss = 0;
  for (const store of charged) if (store.lost && store.used > store.capacity) loss += store.used - store.capacity;
  return loss;
}

/** Adds what the joint could put on resources further up: of each draw, what is passed on of that draw. */
function climb({ draws }: Seeker, candidate: Candidate): Candidate {
  const { way } = candidate;
  if (way.above.length === 0 || draws.length + way.draws.length === 0) return candidate;
  const stores = [...candidate.stores];
  const amounts = [...candidate.amounts];
  const through: Seeker[] = [];
  for (const all of [draws, way.draws]) {
    for (const { quantity, amount } of all) {
      const climber = new Climber();
      climber.meet(undefined, way, quantity);
      for (const above of climber.through) if (!through.includes(above)) through.push(above);
      const passing = amount + climber.rounding();
      for (const store of climber.stores) {
        const at = stores.indexOf(store);
        if (at < 0) {
          stores.push(store);
          amounts.push(passing);
        } else amounts[at] = (amounts[at] as number) + passing;
      }
    }
  }
  return through.length === 0 ? candidate : { ...candidate, stores, amounts, through };
}

/** Where a draw at a way could end up, wherever the needs above it are joined. */
class Climber {
  /** The needs they may pass through. */
  readonly through: Seeker[] = [];
  /** A resource is here once for each need that could bring them to it. */
  readonly stores: Store[] = [];
  readonly #bringers: Seeker[] = [];
  /** The needs that bring something, and the most pieces that it could break into where they are joined. */
  readonly #split: (Seeker | undefined)[] = [];
  readonly #pieces: number[] = [];
  readonly #seen: Seeker[] = [];
  readonly #names: number[] = [];
  #isSplit = false;

  meet(bringer: Seeker | undefined, way: Way, quantity: number): void {
    const row = rowOf(way, quantity);
    if (!row) {
      this.#pass(bringer, way, quantity, 1);
      return;
    }
    if (bringer) for (const store of row.stores) this.#bring(bringer, store);
    for (const { local } of row.stores) this.#pass(bringer, way, local, row.stores.length);
  }

  /** How much the rounding up of shares could add. */
  rounding(): number {
    return this.#isSplit ? this.#pieces.reduce((product, count) => product * count, 1) : 0;
  }

  #bring(bringer: Seeker, store: Store): void {
    for (let at = 0; at < this.stores.length; at += 1) {
      if (this.stores[at] === store && this.#bringers[at] === bringer) return;
    }
    this.stores.push(store);
    this.#bringers.push(bringer);
  }

  #pass(bringer: Seeker | undefined, way: Way, name: number, names: number): void {
    let count = 0;
    for (const above of way.above) if (above?.carries.includes(name)) count += 1;
    if (count === 0) return;
    this.#isSplit ||= count > 1;
    const at = this.#split.indexOf(bringer);
    if (at < 0) {
      this.#split.push(bringer);
      this.#pieces.push(names * count);
    } else this.#pieces[at] = Math.max(this.#pieces[at] as number, names * count);
    for (const above of way.above) {
      if (!above?.carries.includes(name)) continue;
      if (!this.through.includes(above)) this.through.push(above);
      if (this.#isKnown(above, name)) continue;
      for (const { way: further } of above.open) this.meet(above, further, name);
    }
  }

  #isKnown(above: Seeker, name: number): boolean {
    for (let at = 0; at < this.#seen.length; at += 1) {
      if (this.#seen[at] === above && this.#names[at] === name) return true;
    }
    this.#seen.push(above);
    this.#names.push(name);
    return false;
  }
}
