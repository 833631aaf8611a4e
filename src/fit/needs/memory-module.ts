import type { PartOf } from '../../parts/part.ts';
import type { Lowered, Unit } from '../model.ts';
import { drawing } from './amounts.ts';

export function lower({ id, part }: Unit<PartOf<'memory-module'>>): Lowered {
  const { generation, registered, capacityGb } = part;
  return {
    needs: [
      {
        id: `${id}/edge`,
        part: id,
        kind: 'memory-slot',
        left: 'blocker',
        attrs: { generation, registered, sizeGb: capacityGb },
        ...drawing('channelMib', capacityGb === undefined ? undefined : capacityGb * 1024),
      },
    ],
    places: [],
    resources: [],
    unrecorded: [],
  };
}
