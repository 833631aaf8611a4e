import type { PartOf } from '../../parts/part.ts';
import type { Lowered, Unit } from '../model.ts';
import { drawing, panelUnits } from './amounts.ts';
import { lightLead } from './lights.ts';

export function lower({ id, part }: Unit<PartOf<'fan'>>): Lowered {
  const { sizeMm, pins, milliamps, light } = part;
  return {
    needs: [
      {
        id: `${id}/mount`,
        part: id,
        kind: 'fan-mount',
        left: 'limit',
        attrs: { sizeMm },
        ...drawing('panelUnits', sizeMm === undefined ? undefined : panelUnits(sizeMm)),
      },
      {
        id: `${id}/lead`,
        part: id,
        kind: 'fan-header',
        left: 'limit',
        attrs: { pins },
        ...drawing('milliamps', milliamps),
      },
      ...(light ? [lightLead(`${id}/light`, id, light)] : []),
    ],
    places: [],
    resources: [],
    unrecorded:
      milliamps === undefined ? [{ kind: 'fan-header', part: id, field: `${id}.milliamps`, of: 'draws' }] : [],
  };
}
