import type { Fact } from '../../report.ts';
import { refusesRule } from '../../rule.ts';
import { lacks, oneOf } from '../words.ts';

/** A drive's own size, where it also goes into larger bays. */
const sizeOf = (need: Fact): string => oneOf(Array.isArray(need) ? need.slice(0, 1) : need);

export const driveBay = refusesRule({
  id: 'mounting/drive-bay',
  title: 'The drive is of a size that a bay takes',
  severity: 'limit',
  basis: 'maker',
  sources: ['maker-data-sheet'],
  lesson: 'fit/how-parts-meet',

  refuses: { kind: 'drive-bay', op: 'shares', need: 'bay', place: 'bays' },

  say: {
    fits: ({ part, on }) => `${on} has a bay of the size of ${part}.`,
    doesNotFit: ({ part, on, need, offered }) => ({
      headline: "No bay of the drive's size",
      what: `${part} needs a bay of ${sizeOf(need)}; the bay left in ${on} takes ${oneOf(offered)}.`,
      why: "The drive's screw holes do not meet those of the bay, or there is no opening for its diskettes. It cannot be fastened and hangs by its leads.",
      remedy: `Choose a drive of ${oneOf(offered)}, or a case with a bay of ${sizeOf(need)}, or a frame that makes one fit the other.`,
    }),
    cannotTell: (missing) =>
      (['storage-drive', 'floppy-drive', 'fixed-disk'] as const).some((each) => lacks(missing, each))
        ? {
            headline: 'Which size is the drive?',
            what: "The drive's size is not recorded, so this fit is not judged.",
            findOut:
              'Measure its width: about 70 mm is a 2.5 inch drive, about 102 mm one of 3.5 inch, about 146 mm one of 5.25 inch.',
          }
        : {
            headline: 'Which drives do the bays take?',
            what: 'The sizes that the bays take are not recorded, so this fit is not judged.',
            findOut: "Look at the bays in the case, or read the page on drives in the case's leaflet.",
          },
  },

  examples: [
    {
      title: 'a diskette drive and a bay with an opening',
      shelf: 'vintage',
      parts: { 'floppy-drive': {}, chassis: { driveBays: [{ id: 'bay-1', sizes: ['3.5-open'] }] } },
      verdict: 'fits',
    },
    {
      title: 'a diskette drive and a bay behind the closed front',
      shelf: 'vintage',
      parts: { 'floppy-drive': {}, chassis: { driveBays: [{ id: 'bay-1', sizes: ['3.5'] }] } },
      verdict: 'does-not-fit',
    },
    {
      title: 'a fixed disk needs no opening and may have one',
      shelf: 'vintage',
      parts: { 'fixed-disk': {}, chassis: { driveBays: [{ id: 'bay-1', sizes: ['3.5-open'] }] } },
      verdict: 'fits',
    },
    {
      title: 'a disk of full height in a bay of half',
      shelf: 'vintage',
      parts: { 'fixed-disk': { size: '5.25-full' }, chassis: { driveBays: [{ id: 'bay-1', sizes: ['5.25'] }] } },
      verdict: 'does-not-fit',
    },
    {
      title: "the disk's size is not recorded",
      shelf: 'vintage',
      parts: { 'fixed-disk': { size: undefined }, chassis: {} },
      verdict: 'cannot-tell',
    },
    {
      title: 'a 2.5 inch drive in a bay for both',
      parts: { 'storage-drive': { build: '2.5' }, chassis: { driveBays: [{ id: 'bay-1', sizes: ['3.5', '2.5'] }] } },
      verdict: 'fits',
    },
    {
      title: 'a 3.5 inch drive and a bay for 2.5 inch',
      parts: { 'storage-drive': { build: '3.5' }, chassis: { driveBays: [{ id: 'bay-1', sizes: ['2.5'] }] } },
      verdict: 'does-not-fit',
    },
    {
      title: 'an M.2 drive needs no bay',
      parts: { 'storage-drive': { build: 'm2' }, chassis: { driveBays: [{ id: 'bay-1', sizes: ['2.5'] }] } },
      verdict: 'does-not-apply',
    },
  ],
});
