/** Everything on the table while one list is judged, found by its id. */
import type { PartId } from '../../parts/part.ts';
import { ordinal } from '../../wording/ordinals.ts';
import { list } from '../../wording/phrases.ts';
import type {
  Hookup,
  Joint,
  KindName,
  Lowered,
  Need,
  NeedId,
  Place,
  PlaceId,
  ResourceId,
  Unit,
  UnitId,
  WhyLeft,
} from '../model.ts';

export type Table = {
  units: readonly Unit[];
  lowered: Lowered;
  hookup: Hookup;
  why: ReadonlyMap<NeedId, WhyLeft>;
  unit(id: UnitId): Unit;
  need(id: NeedId): Need;
  joint(id: string): Joint | undefined;
  /** The way in use, when the joint says which. */
  place(id: PlaceId, way?: string): Place;
  /** One record for each place of the kind, whatever its ways. */
  placesOf(kind: KindName): readonly Place[];
  needsOf(kind: KindName): readonly Need[];
  /** What was wanted beyond what can pass, for a resource that counts loss. */
  overflow(resource: ResourceId): number | undefined;
  /** "Tammer 16", or "Tammer 16 (2nd)" when the list has more of them than these. All are units of one part. */
  nameOf(units: readonly UnitId[]): string;
};

export function layTable(units: readonly Unit[], lowered: Lowered, hookup: Hookup, why: readonly WhyLeft[]): Table {
  const unitById = new Map(units.map((unit) => [unit.id, unit]));
  const needById = new Map(lowered.needs.map((need) => [need.id, need]));
  const jointById = new Map(hookup.joints.map((joint) => [joint.id, joint]));
  const ways = groupBy(lowered.places, ({ id }) => id);
  const needsByKind = groupBy(lowered.needs, ({ kind }) => kind);
  const placesByKind = groupBy(
    [...ways.values()].flatMap((records) => records[0] ?? []),
    ({ kind }) => kind,
  );
  const equal = groupBy(units, ({ part }) => part.id);
  const lossy = new Map<ResourceId, number>();
  for (const { id, capacity, over, even } of lowered.resources) {
    if (over === 'lost' && even === undefined) lossy.set(id, Math.min(capacity, lossy.get(id) ?? capacity));
  }

  return {
    units,
    lowered,
    hookup,
    why: new Map(why.map((one) => [one.need, one])),
    unit: (id) => found(unitById.get(id), id),
    need: (id) => found(needById.get(id), id),
    joint: (id) => jointById.get(id),
    place: (id, way) => {
      const records = ways.get(id) ?? [];
      return found(way === undefined ? records[0] : records.find((record) => record.way === way), id);
    },
    placesOf: (kind) => placesByKind.get(kind) ?? [],
    needsOf: (kind) => needsByKind.get(kind) ?? [],
    overflow: (resource) => {
      const capacity = lossy.get(resource);
      return capacity === undefined ? undefined : Math.max(0, (hookup.used.get(resource) ?? 0) - capacity);
    },
    nameOf: (ids) => {
      const { part } = found(unitById.get(ids[0] ?? ''), 'a unit');
      return `${part.name}${which(ids, equal.get(part.id) ?? [])}`;
    },
  };
}

/** " (2nd)" when `ids` are only some of the equal units. */
function which(ids: readonly UnitId[], equal: readonly Unit[]): string {
  if (equal.length === 1 || equal.every(({ id }) => ids.includes(id))) return '';
  const ordinals = equal.flatMap(({ id }, index) => (ids.includes(id) ? [ordinal(index + 1)] : []));
  return ` (${list(ordinals)})`;
}

function found<T>(value: T | undefined, id: string): T {
  if (value === undefined) throw new RangeError(`${id} is not on the table`);
  return value;
}

/** By key, in the order in which the keys come up first. */
export function groupBy<T, K>(items: readonly T[], keyOf: (item: T) => K): Map<K, T[]> {
  const groups = new Map<K, T[]>();
  for (const item of items) {
    const key = keyOf(item);
    const group = groups.get(key);
    if (group) group.push(item);
    else groups.set(key, [item]);
  }
  return groups;
}

/** Units of equal parts together, in order. */
export const byPart = (units: readonly Unit[]): Map<PartId, Unit[]> => groupBy(units, ({ part }) => part.id);
