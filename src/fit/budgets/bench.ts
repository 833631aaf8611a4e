/** The hookup of a list as budgets look at it: who is joined to what, and what that hangs on. */
import type { Hookup, Joint, KindName, Lowered, Need, NeedId, Place, ResourceId, Unit, UnitId } from '../model.ts';

/** A need and the place it is joined to, in the way in use. */
export type Rung = { joint: Joint; need: Need; place: Place };

export type Bench = {
  units: readonly Unit[];
  places: readonly Place[];
  resources: ReadonlyMap<ResourceId, number>;
  used: ReadonlyMap<ResourceId, number>;
  unit(id: UnitId): Unit | undefined;
  rungsOf(kind: KindName): readonly Rung[];
  /** The rung of a need, when it is joined. */
  rungOf(need: NeedId): Rung | undefined;
  /**
   * From a joint towards the machine through whatever stands between, cables and cards among them: as long as the
   * place hangs on needs of one of these kinds. The first is the joint itself.
   */
  chain(rung: Rung, kinds: readonly KindName[]): readonly Rung[];
};

export function layBench(units: readonly Unit[], lowered: Lowered, hookup: Hookup): Bench {
  const needs = new Map(lowered.needs.map((need) => [need.id, need]));
  const ways = new Map(lowered.places.map((place) => [`${place.id} ${place.way ?? ''}`, place]));
  const rungs = new Map<NeedId, Rung>();
  for (const joint of hookup.joints) {
    const need = needs.get(joint.need);
    const place = ways.get(`${joint.place} ${joint.way ?? ''}`);
    if (need && place) rungs.set(need.id, { joint, need, place });
  }
  const unitById = new Map(units.map((unit) => [unit.id, unit]));
  const resources = new Map<ResourceId, number>();
  for (const { id, capacity } of lowered.resources)
    resources.set(id, Math.min(capacity, resources.get(id) ?? capacity));
  const chain = (rung: Rung, kinds: readonly KindName[]): Rung[] => {
    const above = (rung.place.after ?? []).flatMap((need) => rungs.get(need) ?? []);
    return [rung, ...above.filter(({ need }) => kinds.includes(need.kind)).flatMap((one) => chain(one, kinds))];
  };
  return {
    units,
    places: lowered.places,
    resources,
    used: hookup.used,
    unit: (id) => unitById.get(id),
    rungsOf: (kind) => [...rungs.values()].filter(({ need }) => need.kind === kind),
    rungOf: (need) => rungs.get(need),
    chain,
  };
}
