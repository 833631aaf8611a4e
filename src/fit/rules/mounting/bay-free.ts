import { count, spelled } from '../../../wording/phrases.ts';
import { leftRule } from '../../rule.ts';

export const bayFree = leftRule({
  id: 'mounting/bay-free',
  title: 'There is a bay for every drive in a box',
  severity: 'limit',
  basis: 'maker',
  sources: ['maker-data-sheet'],
  lesson: 'fit/how-parts-meet',

  left: 'drive-bay',

  say: {
    fits: ({ part }) => `${part} has a bay.`,
    doesNotFit: ({ part, reason, mating, wanting }) =>
      reason === 'taken'
        ? {
            headline: `${count(wanting, 'drive', 'drives')}, ${mating < wanting ? count(mating, 'bay', 'bays') : 'too few bays'} for them`,
            what: `The list has ${spelled(wanting, 'drive that needs', 'drives that need')} a bay; the case has ${spelled(mating, 'bay', 'bays')} that ${part} goes into, and nothing is free.`,
            why: 'A bay holds one drive. A drive that is not fastened hangs by its leads.',
            remedy:
              'Take one drive off the list, or choose a case with one more bay, or a drive in its place that needs no bay.',
          }
        : {
            headline: 'The drive has no bay',
            what: `${part} needs a bay; nothing on the list offers one.`,
            why: 'A drive that is not fastened hangs by its leads.',
            remedy: 'Choose a case with a bay for it, or a drive in its place that needs no bay.',
          },
    cannotTell: (missing) =>
      missing.length === 0
        ? {
            headline: 'Is there a bay for every drive?',
            what: 'Not every way of placing the drives was tried, so this is not judged.',
            findOut: 'Give each drive a bay, the largest first.',
          }
        : {
            headline: 'How many bays has the case?',
            what: "The case's drive bays are not recorded, so this is not judged.",
            findOut: "Count the bays in the case, behind the board's tray too, or read the case's leaflet.",
          },
  },

  examples: [
    {
      title: 'as many drives as bays',
      parts: {
        'storage-drive': [{ build: '2.5' }, { build: '3.5' }],
        chassis: {
          driveBays: [
            { id: 'bay-1', sizes: ['3.5', '2.5'] },
            { id: 'bay-2', sizes: ['2.5'] },
          ],
        },
      },
      verdict: 'fits',
    },
    {
      title: 'one drive more than bays',
      parts: {
        'storage-drive': [{ build: '2.5' }, { build: '2.5' }],
        chassis: { driveBays: [{ id: 'bay-1', sizes: ['2.5'] }] },
      },
      verdict: 'does-not-fit',
    },
    { title: 'a drive and no case', parts: { 'storage-drive': { build: '2.5' } }, verdict: 'does-not-fit' },
    {
      title: "the case's bays are not recorded",
      parts: { 'storage-drive': { build: '2.5' }, chassis: { driveBays: undefined } },
      verdict: 'cannot-tell',
    },
    {
      title: 'an M.2 drive needs no bay',
      parts: { 'storage-drive': { build: 'm2' }, chassis: { driveBays: [] } },
      verdict: 'does-not-apply',
    },
  ],
});
