import type { PartOf } from '../../parts/part.ts';
import type { Lowered, Unit } from '../model.ts';

/** Diskettes are joined to nothing; what reads them is for the rules to say. */
export function lower(_: Unit<PartOf<'diskette'>>): Lowered {
  return { needs: [], places: [], resources: [], unrecorded: [] };
}
