import type { PartOf } from '../../parts/part.ts';
import type { Lowered, Need, Unit } from '../model.ts';
import { drawing, linkMBps } from './amounts.ts';

const notches = { m: ['m'], b: ['b'], 'b+m': ['b', 'm'] } as const;

export function lower({ id, part }: Unit<PartOf<'storage-drive'>>): Lowered {
  const needs = part.build === 'm2' ? [edge(id, part)] : boxNeeds(id, part);
  return { needs, places: [], resources: [], unrecorded: [] };
}

/** A SATA module draws no share of a PCIe link. */
function edge(id: string, part: PartOf<'storage-drive'>): Need {
  const { key, lengthMm, link, lanes, generation } = part;
  return {
    id: `${id}/edge`,
    part: id,
    kind: 'module-slot',
    left: 'blocker',
    attrs: { key: key && notches[key], lengthMm, link, lanes, generation },
    ...drawing('busMBps', link === 'pcie' ? linkMBps(lanes, generation) : undefined),
  };
}

const boxNeeds = (id: string, { build, milliwatts, heightMm, lengthMm }: PartOf<'storage-drive'>): Need[] => [
  { id: `${id}/data`, part: id, kind: 'drive-data', left: 'blocker', attrs: { plug: 'sata' } },
  {
    id: `${id}/power`,
    part: id,
    kind: 'drive-power',
    left: 'blocker',
    attrs: { plug: 'sata-power' },
    ...drawing('leadDeciwatts', milliwatts === undefined ? undefined : Math.ceil(milliwatts / 100)),
  },
  { id: `${id}/bay`, part: id, kind: 'drive-bay', left: 'limit', attrs: { bay: build, heightMm, lengthMm } },
];
