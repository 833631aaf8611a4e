/** What stands at the ends of joints. */
import type { PartClass } from '../../parts/part.ts';
import type { Joint, UnitId } from '../model.ts';

/** The unit's part, when it is of that class. */
export const partAs = <P extends { readonly class: PartClass }, C extends P['class']>(
  unit: { readonly part: P },
  partClass: C,
): Extract<P, { class: C }> | undefined =>
  unit.part.class === partClass ? (unit.part as Extract<P, { class: C }>) : undefined;

/** Those memory modules that have a slot: one that goes into none says so itself, and takes no part in what the rest do. */
export const seated = <M extends { unit: UnitId }>(modules: readonly M[], joints: readonly Joint[]): readonly M[] =>
  modules.filter(({ unit }) => joints.some(({ kind, need }) => kind === 'memory-slot' && need.startsWith(`${unit}/`)));
