import type { PartOf } from '../../parts/part.ts';
import type { Lowered, Place, Resource, Unit } from '../model.ts';
import { namer } from './names.ts';
import { cardNeeds } from './pcie-card.ts';
import { pictureSocket } from './picture-sockets.ts';

export function lower({ id, part }: Unit<PartOf<'graphics-card'>>): Lowered {
  const { outputs } = part;
  const { edge, power, unrecorded } = cardNeeds(id, part);
  const name = namer(id);
  const heads: Resource[] = part.heads === undefined ? [] : [{ id: `${id}/heads`, capacity: part.heads }];
  const withHeads = ({ meters }: Place) => ({ meters: { ...meters, ...(heads[0] ? { heads: [heads[0].id] } : {}) } });
  const sockets = (outputs ?? []).map((output, rank) => {
    const { place, resources } = pictureSocket(name('output', output.id), id, rank, output);
    return { place: { ...place, ...withHeads(place), after: [edge.id] }, resources };
  });
  if (!outputs) unrecorded.push({ kind: 'picture', part: id, field: `${id}.outputs`, of: 'places' });
  return {
    needs: [edge, ...power],
    places: sockets.map(({ place }) => place),
    resources: [...heads, ...sockets.flatMap(({ resources }) => resources)],
    unrecorded,
  };
}
