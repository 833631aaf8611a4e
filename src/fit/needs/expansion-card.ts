import type { PartOf } from '../../parts/part.ts';
import { plugRatings } from '../../standards/plugs.ts';
import type { Lowered, Need, Place, Resource, Unit, Unrecorded } from '../model.ts';
import { deciwatts, drawing, halfSlots, linkMBps } from './amounts.ts';
import { dataPlaces } from './data-sockets.ts';
import { namer } from './names.ts';
import { kindOfPlug } from './power-supply.ts';

type Card = PartOf<'expansion-card'>;
type Plug = NonNullable<Card['powerSockets']>[number];

/** A card that adds sockets offers them once it is in a slot, and what hangs on them goes through its edge. */
export function lower({ id, part }: Unit<Card>): Lowered {
  const { lanes, generation, slotsThick, powerSockets, dataSockets = [], moduleSlots = [] } = part;
  const name = namer(id);
  const busMBps = linkMBps(lanes, generation);
  const edge: Need = {
    id: `${id}/edge`,
    part: id,
    kind: 'expansion-slot',
    left: 'blocker',
    attrs: { bus: 'pcie', lanes, generation },
    draws: {
      ...(busMBps === undefined ? {} : { busMBps }),
      ...(slotsThick === undefined ? {} : { halfSlots: halfSlots(slotsThick) }),
    },
  };
  const power = (powerSockets ?? []).map(
    (plug, index): Need => ({
      id: `${id}/power-${index + 1}`,
      part: id,
      kind: kindOfPlug[plug],
      left: 'blocker',
      attrs: { plug, ...(kindOfPlug[plug] === 'card-power' ? { drawsW: drawsW(plug, part) } : {}) },
      ...drawing('leadDeciwatts', leadDeciwatts(plug, part)),
    }),
  );
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
  const unrecorded: Unrecorded[] = [];
  if (slotsThick === undefined)
    unrecorded.push({ kind: 'expansion-slot', part: id, field: `${id}.slotsThick`, of: 'draws' });
  if (!powerSockets) unrecorded.push({ kind: 'card-power', part: id, field: `${id}.powerSockets`, of: 'needs' });
  return { needs: [edge, ...power], places: [...sockets, ...slots], resources, unrecorded };
}

/** A board's own sockets and slots come first. */
const afterBoard = 100;

const drawsW = (plug: Plug, { sustainedW }: Card) => (plug === '12v-2x6' ? sustainedW : null);

/** A graphics plug may be asked for what it is rated for; any other lead carries the card's own steady power. */
function leadDeciwatts(plug: Plug, { sustainedW }: Card): number | undefined {
  if (plug === 'pcie-6' || plug === 'pcie-8') return deciwatts(plugRatings[plug].watts);
  return sustainedW === undefined ? undefined : deciwatts(Math.min(sustainedW, plugRatings[plug].watts));
}
