/** Which parts make up one machine, when a list holds more than one board or case. */
import { partClasses } from '../../parts/part.ts';
import type { KindName, Unit, UnitId } from '../model.ts';
import { unitOf } from '../needs/names.ts';
import { kindNumber } from './plan.ts';
import type { Table } from './table.ts';

/** Joints by which a part belongs to a board or a case. A lead, a picture or a plug on the desk makes nobody a member. */
const belongs: readonly KindName[] = [
  'board-mount',
  'supply-mount',
  'fan-mount',
  'radiator-mount',
  'drive-bay',
  'drive-data',
  'processor-socket',
  'coprocessor-socket',
  'cooler-mount',
  'memory-slot',
  'memory-bank',
  'expansion-slot',
  'module-slot',
];
const [cases, boards] = (['chassis', 'motherboard'] as const).map((of) => partClasses.indexOf(of)) as [number, number];

/** The units of each machine; undefined when all are of one. */
export type Machines = readonly ReadonlySet<UnitId>[] | undefined;

/**
 * The units of each machine, by case and then by board without one. What belongs to none could be for any, and is in
 * each. Undefined when the list is of one machine: no more than one case and one board.
 */
export function machinesOf(table: Table): Machines {
  const unitsOf = (at: number): readonly Unit[] => table.classes[at]?.units ?? [];
  if (unitsOf(cases).length < 2 && unitsOf(boards).length < 2) return undefined;

  const owners = new Map<UnitId, UnitId>();
  for (const kind of belongs) {
    for (const { need, place } of table.joints[kindNumber(kind)] ?? []) {
      // Cards and adapters pass on to whoever they sit in; the first joint of a unit decides.
      if (!owners.has(need.part)) owners.set(need.part, unitOf(place.id));
    }
  }
  const roots = [...unitsOf(cases), ...unitsOf(boards)].filter(({ id }) => !owners.has(id));
  const machines = new Map(roots.map(({ id }) => [id, new Set<UnitId>()]));
  const loose: UnitId[] = [];
  for (const { ids } of table.groups) {
    for (const id of ids) {
      let top = id;
      for (let up = owners.get(top), steps = 0; up !== undefined && steps < owners.size; steps += 1) {
        top = up;
        up = owners.get(top);
      }
      const machine = machines.get(top);
      if (machine) machine.add(id);
      else loose.push(id);
    }
  }
  for (const machine of machines.values()) for (const id of loose) machine.add(id);
  return [...machines.values()];
}
