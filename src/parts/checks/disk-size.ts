import { ofClass, type SenseCheck } from './check.ts';

const sectorBytes = 512;
/** Makers round, and count millions in more ways than one. */
const slackPercent = 6;

/** A fixed disk holds what its cylinders, heads and sectors make. */
export const diskSize: SenseCheck = {
  id: 'disk-size',
  check: (parts) =>
    ofClass(parts, 'fixed-disk').flatMap(({ id, capacityMb, cylinders, heads, sectorsPerTrack }) => {
      if (!capacityMb || !cylinders || !heads || !sectorsPerTrack) return [];
      const made = (cylinders * heads * sectorsPerTrack * sectorBytes) / 1e6;
      if (Math.abs(made - capacityMb) * 100 <= slackPercent * made) return [];
      const expected = `about ${Math.round(made)} MB, which its cylinders, heads and sectors make`;
      return [{ part: id, path: ['capacityMb'], actual: `${capacityMb} MB`, expected }];
    }),
};
