import type { PartOf } from '../../parts/part.ts';
import type { Lowered, Place, Resource, Unit } from '../model.ts';
import { linkMBps } from './amounts.ts';
import { dataPlaces } from './data-sockets.ts';
import { namer } from './names.ts';
import { cardNeeds } from './pcie-card.ts';

/** A card that adds sockets offers them once it is in a slot, and what hangs on them goes through its edge. */
export function lower({ id, part }: Unit<PartOf<'expansion-card'>>): Lowered {
  const { dataSockets = [], moduleSlots = [] } = part;
  const name = namer(id);
  const { edge, power, unrecorded } = cardNeeds(id, part);
  const data = dataPlaces(id, dataSockets, name, [edge.id]);
  const sockets = data.places.map((place): Place => ({ ...place, rank: afterBoard + place.rank }));
  const resources: Resource[] = [...data.resources];
  const slots = moduleSlots.map((slot, rank): Place => {
    const placeId = name('module-slot', slot.id);
    const capacity = linkMBps(slot.lanes, slot.generation);
    if (capacity !== undefined) resources.push({ id: `${placeId}/busMBps`, capacity, over: 'lost' });
    return {
      id: placeId,
      part: id,
      kind: 'module-slot',
      rank: afterBoard + rank,
      attrs: { key: ['m'], lengthsMm: slot.lengthsMm, links: ['pcie'], lanes: slot.lanes, generation: slot.generation },
      ...(capacity === undefined ? {} : { meters: { busMBps: [`${placeId}/busMBps`] } }),
      after: [edge.id],
    };
  });
  return { needs: [edge, ...power], places: [...sockets, ...slots], resources, unrecorded };
}

/** A board's own sockets and slots come first. */
const afterBoard = 100;
