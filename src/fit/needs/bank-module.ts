import type { PartOf } from '../../parts/part.ts';
import type { Lowered, Unit } from '../model.ts';

/** Modules fill a bank together when all of this is the same. */
export function lower({ id, part }: Unit<PartOf<'bank-module'>>): Lowered {
  const { pins, capacityKb, dataBits, hasParity, nanoseconds } = part;
  return {
    needs: [
      {
        id: `${id}/edge`,
        part: id,
        kind: 'memory-bank',
        left: 'blocker',
        attrs: { pins, capacityKb, dataBits, hasParity, nanoseconds },
      },
    ],
    places: [],
    resources: [],
    unrecorded: [],
  };
}
