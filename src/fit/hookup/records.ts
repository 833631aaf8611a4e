/**
 * What is kept of needs, places and resources from one problem to the next: everything that does not
 * depend on the rest of the list. Needs, places and resources are known by their identity and must not
 * change once they have been met; a lowering that hands the same ones out again spares the search its
 * set-up.
 *
 * The records also carry fields "of the problem at hand", which `layOut` and the search write. They
 * hold until the next problem is laid out.
 */
import type { Joint, KindName, Need, Place, PlaceId, Resource, ResourceId, Test } from '../model.ts';
import type { Mating } from './mating.ts';
import type { Turn } from './order.ts';

/** Quantities have numbers. */
export type Draw = { readonly quantity: number; readonly amount: number };
export type Row = { readonly quantity: number; readonly stores: readonly Store[] };

/** A resource id. What it passes on goes under its local name, the last piece: `pos-3` of `motherboard-1/pos-3`. */
export type Store = {
  readonly id: ResourceId;
  readonly turn: Turn;
  /** The number of its local name. */
  readonly local: number;

  // Of the problem at hand.
  /** The latest round that declared it. */
  round: number;
  capacity: number;
  lost: boolean;
  isShared: boolean;
  /** The needs that count in its even share. */
  sharers: readonly Seeker[];
  /** The needs could overdraw it between them. */
  binds: boolean;
  /** What is charged to it; see `charge`. */
  used: number;
  /** The most that each need could put on it, summed; and one need's. `row`: where its places are counted. */
  sum: number;
  row: number;
  most: number;
  drawer: Seeker | undefined;
};

/** How one resource declares its store. */
export type Declaration = { readonly store: Store; readonly resource: Resource };

/** A need id: in the problem at hand its seeker, if the round is the latest. */
export type NeedName = { readonly id: string; round: number; seeker: Seeker | undefined };
export type PlaceName = { readonly id: PlaceId; readonly turn: Turn; round: number; kind: KindCard | undefined };

/** A need. */
export type Seeker = {
  readonly need: Need;
  readonly name: NeedName;
  readonly turn: Turn;
  readonly kind: KindCard;
  /** The same for needs of one kind with equal attributes. */
  readonly look: Look;
  /** Equal for equal draws. */
  readonly drawn: number;
  readonly draws: readonly Draw[];
  readonly carries: readonly number[];
  readonly hunger: number;
  /** The level of cost at which it counts left over; -1 for none. */
  readonly level: number;
  /** Left over it costs nothing. */
  readonly isIdle: boolean;

  // Of the problem at hand.
  index: number;
  /** Some place waits for it. */
  awaited: boolean;
  /** What it could be joined to, in the order in which it would take them. */
  open: readonly Candidate[];
  /** What it is joined to; null when it is left over, undefined while that is open. */
  placed: Candidate | null | undefined;
  isCertain: boolean;
  /** The joint that it was given last. */
  joint: Joint | undefined;
  /** Towards the one that stands for its component, which has the component's number. */
  parent: Seeker;
  component: number;
  /** A mark of the walk that looks at it. */
  mark: number;
};

/** One way of using one place. */
export type Way = {
  readonly place: Place;
  readonly name: PlaceName;
  readonly way: Turn;
  readonly kind: KindCard;
  readonly rank: number;
  /** The number of its attributes within the kind. */
  readonly look: number;
  readonly fill: number;
  readonly draws: readonly Draw[];
  readonly rows: readonly Row[];
  readonly after: readonly NeedName[];

  // Of the problem at hand.
  /** The needs that must be joined before it exists; undefined for one that is not in the problem. */
  readonly above: (Seeker | undefined)[];
  /** Its turn among the ways of its kind. */
  order: number;
  spot: Spot;
};

/** A place: its ways, in order. */
export type Spot = {
  readonly ways: Way[];
  readonly fill: number;

  // Of the problem at hand.
  /** Among all places. */
  number: number;
  /** How many needs have a candidate here, the first and the latest met. */
  wanters: number;
  first: Seeker | undefined;
  latest: Seeker | undefined;
  /** Its number in the component that is being solved, how many are joined there, and the first of them. */
  seat: number;
  taken: number;
  holder: Seeker | undefined;
  mark: number;
};

/** A way that a need mates with. */
export type Mate = { readonly way: Way; readonly unknown: boolean };

/** A mate that some hookup could use. */
export type Candidate = Mate & {
  /** Loss that this joint makes at its own place whatever else is joined. */
  readonly loss: number;
  /** The most this joint could put on each resource, wherever the needs above it are joined. */
  readonly stores: readonly Store[];
  readonly amounts: readonly number[];
  /** Needs that what is drawn here may pass through. */
  readonly through: readonly Seeker[];
};

/** The attributes of needs of one kind. */
export type Look = {
  readonly attrs: Need['attrs'];
  /** By look of the way. */
  readonly matings: (Mating | undefined)[];
  /** In the version of the kind's places, what it mates with, in order; whether one waits, and one draws. */
  version: number;
  mates: readonly Candidate[];
  isWaiting: boolean;
  isDrawing: boolean;
  /** In the state of the kind's places, what there is for needs of this look, by what they draw. */
  offered: number;
  readonly offers: Map<number, readonly Candidate[]>;
};

/** A kind, with the places of the problem at hand. */
export type KindCard = {
  readonly name: KindName;
  readonly tests: readonly Test[];
  readonly hungry: string;
  readonly looks: Map<string, Look>;
  readonly wayLooks: Map<string, number>;
  /** As they came, so many of them met in this round. */
  readonly incoming: Way[];
  met: number;
  isChanged: boolean;
  /** Rises when the places change; and when those or what they meter with change. */
  version: number;
  state: number;
  /** In order. */
  ways: readonly Way[];
  spots: readonly Spot[];
  /** What the places meter with, and the capacity of each, below 0 for a lost one. */
  stores: readonly Store[];
  capacities: number[];
};

/** A place with no way yet. */
export const newSpot = (fill: number): Spot => ({
  ways: [],
  fill,
  number: 0,
  wanters: 0,
  first: undefined,
  latest: undefined,
  seat: 0,
  taken: 0,
  holder: undefined,
  mark: 0,
});
