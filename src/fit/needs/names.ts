/** Ids of needs and places: `<unit>/<name>`. */
import type { NeedId, PlaceId, UnitId } from '../model.ts';

/**
 * Gives each need or place of one unit an id of its own. `name('bay', 'bay-1')` is `bay-1`, not `bay-bay-1`;
 * a name met a second time gets `-2`, so two leads of one sort, or a slip in a file, never share an id.
 */
export function namer(unit: UnitId): (prefix: string, id?: string) => string {
  const used = new Set<string>();
  return (prefix, id) => {
    const plain = nameOf(unit, prefix, id);
    let free = plain;
    for (let n = 2; used.has(free); n += 1) free = `${plain}-${n}`;
    used.add(free);
    return free;
  };
}

/** The unit that a need or a place belongs to. */
export const unitOf = (id: NeedId | PlaceId): UnitId => id.slice(0, id.indexOf('/'));

/** The id of a need or place whose name its unit has once. */
export const nameOf = (unit: UnitId, prefix: string, id?: string): string =>
  `${unit}/${id === undefined || id === prefix ? prefix : id.startsWith(`${prefix}-`) ? id : `${prefix}-${id}`}`;
