/** What slots carry for the cards of one list: both ends of a link settle on the lesser generation. */
import { kept } from '../../units/kept.ts';
import type { Lowered, Unit } from '../model.ts';
import { linkMBps } from './amounts.ts';
import { isOf } from './units.ts';

const slowedTo = kept((_board: Lowered) => new Map<number, Lowered>());

/** The fastest generation among the cards; undefined when there is none, or one of which it is not recorded. */
export function fastestCard(units: readonly Unit[]): number | undefined {
  const generations = units
    .filter((unit) => isOf('graphics-card')(unit) || isOf('expansion-card')(unit))
    .map(({ part }) => ('generation' in part ? part.generation : undefined));
  const known = generations.filter((one) => one !== undefined);
  return known.length > 0 && known.length === generations.length ? Math.max(...known) : undefined;
}

/**
 * The board with slots no faster than that generation. Eight lanes of a later one carry as much as sixteen of this, but
 * not to a card of this one: so counted, a card would be thought to lose nothing where it has half its lanes. The same
 * object each time.
 */
export function asFastAs(board: Lowered, generation: number | undefined): Lowered {
  if (generation === undefined) return board;
  const known = slowedTo(board);
  const made = known.get(generation) ?? slowed(board, generation);
  known.set(generation, made);
  return made;
}

function slowed(board: Lowered, generation: number): Lowered {
  const capacities = new Map<string, number>();
  for (const { kind, attrs, meters } of board.places) {
    const link = meters?.['busMBps']?.[0];
    const { lanes, generation: own } = attrs;
    if (kind !== 'expansion-slot' || link === undefined || typeof lanes !== 'number') continue;
    const capacity = typeof own === 'number' && own > generation ? linkMBps(lanes, generation) : undefined;
    if (capacity !== undefined) capacities.set(link, capacity);
  }
  if (capacities.size === 0) return board;
  const resources = board.resources.map((one) => ({ ...one, capacity: capacities.get(one.id) ?? one.capacity }));
  return { ...board, resources };
}
