import type { PartOf } from '../../parts/part.ts';
import { driveBoxes } from '../../standards/outlines.ts';
import type { Lowered, Unit } from '../model.ts';
import { drawing } from './amounts.ts';

/** Bays that a disk of each size is fastened in; its own first. */
const bays = {
  '3.5': ['3.5', '3.5-open'],
  '5.25': ['5.25', '5.25-full'],
  '5.25-full': ['5.25-full'],
} as const;

/** A lead must carry what the disk draws while it starts to turn. */
export function lower({ id, part }: Unit<PartOf<'fixed-disk'>>): Lowered {
  const { size, plug, milliwatts, spinUpMilliwatts = milliwatts } = part;
  return {
    needs: [
      { id: `${id}/data`, part: id, kind: 'drive-data', left: 'blocker', attrs: { plug } },
      {
        id: `${id}/power`,
        part: id,
        kind: 'drive-power',
        left: 'blocker',
        attrs: { plug: 'peripheral-4' },
        ...drawing('leadDeciwatts', spinUpMilliwatts === undefined ? undefined : Math.ceil(spinUpMilliwatts / 100)),
      },
      {
        id: `${id}/bay`,
        part: id,
        kind: 'drive-bay',
        // Its board lies bare beneath it, and it turns only where it is fastened.
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
