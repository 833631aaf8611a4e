import type { PartOf } from '../../parts/part.ts';
import { disketteFormats } from '../../standards/floppies.ts';
import { driveBoxes } from '../../standards/outlines.ts';
import type { Lowered, Unit } from '../model.ts';
import { drawing } from './amounts.ts';

/** Bays with an opening to the front: without it no diskette goes in. */
const bays = { '3.5': ['3.5-open'], '5.25': ['5.25', '5.25-full'] } as const;

export function lower({ id, part }: Unit<PartOf<'floppy-drive'>>): Lowered {
  const { size, format, plug, powerPlug, milliwatts } = part;
  const kilobits = format && disketteFormats[format].kilobits;
  return {
    needs: [
      {
        id: `${id}/data`,
        part: id,
        kind: 'drive-data',
        left: 'blocker',
        attrs: { plug, kilobits },
        ...drawing('kilobits', kilobits),
      },
      {
        id: `${id}/power`,
        part: id,
        kind: 'drive-power',
        left: 'blocker',
        attrs: { plug: powerPlug },
        ...drawing('leadDeciwatts', milliwatts === undefined ? undefined : Math.ceil(milliwatts / 100)),
      },
      {
        id: `${id}/bay`,
        part: id,
        kind: 'drive-bay',
        // Outside a bay no diskette goes in.
        left: 'blocker',
        // Drives of those years are as tall as their size allows.
        attrs: { bay: size && [...bays[size]], heightMm: size && driveBoxes[size].height },
      },
    ],
    places: [],
    resources: [],
    unrecorded: [],
  };
}
