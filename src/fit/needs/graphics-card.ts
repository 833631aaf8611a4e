import type { PartOf } from '../../parts/part.ts';
import { plugRatings } from '../../standards/plugs.ts';
import type { Lowered, Need, Place, Resource, Unit, Unrecorded } from '../model.ts';
import { deciwatts, halfSlots, linkMBps } from './amounts.ts';
import { namer } from './names.ts';
import { pictureSocket } from './picture-sockets.ts';

type Card = PartOf<'graphics-card'>;
type Plug = NonNullable<Card['powerSockets']>[number];

export function lower({ id, part }: Unit<Card>): Lowered {
  const { lanes, generation, slotsThick, powerSockets, outputs } = part;
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
  const name = namer(id);
  const power = (powerSockets ?? []).map((plug, index): Need => {
    const draw = plugDraw(plug, part);
    return {
      id: `${id}/power-${index + 1}`,
      part: id,
      kind: 'card-power',
      left: 'blocker',
      attrs: { plug, drawsW: plug === '12v-2x6' ? part.sustainedW : null },
      ...(draw === undefined ? {} : { draws: { leadDeciwatts: draw } }),
    };
  });
  const heads: Resource[] = part.heads === undefined ? [] : [{ id: `${id}/heads`, capacity: part.heads }];
  const withHeads = ({ meters }: Place) => ({ meters: { ...meters, ...(heads[0] ? { heads: [heads[0].id] } : {}) } });
  const sockets = (outputs ?? []).map((output, rank) => {
    const { place, resources } = pictureSocket(name('output', output.id), id, rank, output);
    return { place: { ...place, ...withHeads(place), after: [edge.id] }, resources };
  });
  const unrecorded: Unrecorded[] = [];
  if (slotsThick === undefined)
    unrecorded.push({ kind: 'expansion-slot', part: id, field: `${id}.slotsThick`, of: 'draws' });
  if (!powerSockets) unrecorded.push({ kind: 'card-power', part: id, field: `${id}.powerSockets`, of: 'needs' });
  if (!outputs) unrecorded.push({ kind: 'picture', part: id, field: `${id}.outputs`, of: 'places' });
  return {
    needs: [edge, ...power],
    places: sockets.map(({ place }) => place),
    resources: [...heads, ...sockets.flatMap(({ resources }) => resources)],
    unrecorded,
  };
}

/**
 * Deciwatts a socket may draw from its lead. A 6-pin or 8-pin socket may draw what its plug is rated for; the 16-pin
 * plug comes in several strengths, so the card's own steady power counts.
 */
function plugDraw(plug: Plug, { sustainedW }: Card): number | undefined {
  if (plug === 'pcie-6' || plug === 'pcie-8') return deciwatts(plugRatings[plug].watts);
  if (plug !== '12v-2x6' || sustainedW === undefined) return undefined;
  return deciwatts(Math.min(sustainedW, plugRatings[plug].watts));
}
