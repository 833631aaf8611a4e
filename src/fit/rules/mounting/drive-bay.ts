import { refusesRule } from '../../rule.ts';
import { lacks, oneOf } from '../words.ts';

export const driveBay = refusesRule({
  id: 'mounting/drive-bay',
  title: 'The drive is of a size that a bay takes',
  severity: 'limit',
  basis: 'maker',
  sources: ['maker-data-sheet'],
  lesson: 'fit/how-parts-meet',

  refuses: { kind: 'drive-bay', op: 'shares', need: 'bay', place: 'bays' },

  say: {
    fits: ({ part, on, need }) => `${part} is a ${oneOf(need)} drive, and ${on} has a bay for it.`,
    doesNotFit: ({ part, on, need, offered }) => ({
      headline: `A ${oneOf(need)} drive, bays for ${oneOf(offered)}`,
      what: `${part} is a ${oneOf(need)} drive; the bay left in ${on} takes ${oneOf(offered)}.`,
      why: "The drive's screw holes do not meet those of the bay, so it cannot be fastened and hangs by its leads.",
      remedy: `Choose a ${oneOf(offered)} drive or an M.2 drive, or a case with a bay for ${oneOf(need)}.`,
    }),
    cannotTell: (missing) =>
      lacks(missing, 'storage-drive')
        ? {
            headline: 'Which size is the drive?',
            what: "The drive's size is not recorded, so this fit is not judged.",
            findOut: 'Measure its width: about 70 mm is a 2.5 inch drive, about 102 mm a 3.5 inch drive.',
          }
        : {
            headline: 'Which drives do the bays take?',
            what: 'The sizes that the bays take are not recorded, so this fit is not judged.',
            findOut: "Look at the bays in the case, or read the page on drives in the case's leaflet.",
          },
  },

  examples: [
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
