import type { PartOf } from '../../parts/part.ts';
import type { Lowered, Unit } from '../model.ts';

export function lower(_unit: Unit<PartOf<'bus-card'>>): Lowered {
  return { needs: [], places: [], resources: [], unrecorded: [] };
}
