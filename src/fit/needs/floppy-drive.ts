import type { PartOf } from '../../parts/part.ts';
import type { Lowered, Unit } from '../model.ts';

export function lower(_unit: Unit<PartOf<'floppy-drive'>>): Lowered {
  return { needs: [], places: [], resources: [], unrecorded: [] };
}
