/** The two parts of a joint, as the classes a rule expects there. */
import type { Part, PartClass, PartOf } from '../../parts/part.ts';
import type { Unit } from '../model.ts';

const isOf = <C extends PartClass>(part: Part, partClass: C): part is PartOf<C> => part.class === partClass;

/** The unit's part, when it is of that class. */
export const partAs = <C extends PartClass>(unit: Unit, partClass: C): PartOf<C> | undefined =>
  isOf(unit.part, partClass) ? unit.part : undefined;
