/** What stands at the ends of joints. */
import type { Part, PartClass, PartOf } from '../../parts/part.ts';
import type { Joint, Unit, UnitId } from '../model.ts';

const isOf = <C extends PartClass>(part: Part, partClass: C): part is PartOf<C> => part.class === partClass;

/** The unit's part, when it is of that class. */
export const partAs = <C extends PartClass>(unit: Unit, partClass: C): PartOf<C> | undefined =>
  isOf(unit.part, partClass) ? unit.part : undefined;

/** Those memory modules that have a slot: one that goes into none says so itself, and takes no part in what the rest do. */
export const seated = <M extends { unit: UnitId }>(modules: readonly M[], joints: readonly Joint[]): readonly M[] =>
  modules.filter(({ unit }) => joints.some(({ kind, need }) => kind === 'memory-slot' && need.startsWith(`${unit}/`)));
