import type { PartOf } from '../../parts/part.ts';
import type { Lowered, Need, Unit } from '../model.ts';

export function lower({ id, part }: Unit<PartOf<'cooler'>>): Lowered {
  const mount: Need = {
    id: `${id}/mount`,
    part: id,
    kind: 'cooler-mount',
    left: 'blocker',
    attrs: { mountings: part.mountings },
  };
  // A board stops at start-up when the cooler's fan does not turn.
  const fan: Need[] = part.fan
    ? [
        {
          id: `${id}/fan`,
          part: id,
          kind: 'fan-header',
          left: 'blocker',
          attrs: { pins: part.fan.pins },
          draws: { milliamps: part.fan.milliamps, ofCooler: 1 },
        },
      ]
    : [];
  return {
    needs: [mount, ...fan],
    places: [{ id: `${id}/cooling`, part: id, kind: 'cooling', rank: 0, attrs: {}, after: [mount.id] }],
    resources: [],
    unrecorded: [],
  };
}
