/** What the rest of a list puts in a radiator's way, so that the search picks a panel where nothing is. */
import type { Part } from '../../parts/part.ts';
import { kept } from '../../units/kept.ts';
import type { Lowered, Need, Unit } from '../model.ts';

const measuredBy = kept((_cooler: Lowered) => new Map<string, Lowered>());

/**
 * The cooler's needs with the measures its radiator's place is tested by; the same when it has no radiator, and the same
 * object each time.
 */
export function amongOthers(cooler: Lowered, units: readonly Unit[]): Lowered {
  if (!cooler.needs.some(isRadiator)) return cooler;
  const memoryMm = greatest(units, ({ part }) => (part.class === 'memory-module' ? part.heightMm : null));
  const cardMm = greatest(units, ({ part }) => (isCard(part) ? part.lengthMm : null));
  const known = measuredBy(cooler);
  const key = `${memoryMm} ${cardMm}`;
  const made = known.get(key) ?? measured(cooler, memoryMm, cardMm);
  known.set(key, made);
  return made;
}

type Measure = number | undefined | null;

const measured = (cooler: Lowered, memoryMm: Measure, cardMm: Measure): Lowered => ({
  ...cooler,
  needs: cooler.needs.map((need): Need => {
    if (!isRadiator(need)) return need;
    const stackMm = Number(need.attrs['stackMm']);
    const reachMm = typeof cardMm === 'number' ? cardMm + stackMm : cardMm;
    return { ...need, attrs: { ...need.attrs, memoryMm, reachMm } };
  }),
});

const isRadiator = ({ kind }: Need): boolean => kind === 'radiator-mount';
const isCard = (part: Part) => part.class === 'graphics-card' || part.class === 'expansion-card';

/** Undefined when one of them is not recorded; null when there is none. */
function greatest(units: readonly Unit[], measure: (unit: Unit) => Measure): Measure {
  const measures = units.map(measure).filter((one) => one !== null);
  const known = measures.filter((one) => one !== undefined);
  if (known.length < measures.length) return undefined;
  return known.length === 0 ? null : Math.max(...known);
}
