import { count, spelled } from '../../../wording/phrases.ts';
import { leftRule } from '../../rule.ts';

export const monitorArm = leftRule({
  id: 'mounting/monitor-arm',
  title: 'There is a monitor for every arm',
  severity: 'limit',
  basis: 'maker',
  sources: ['maker-data-sheet'],
  lesson: 'parts/what-the-parts-are',

  left: 'monitor-mount',

  say: {
    fits: ({ part }) => `${part} has a monitor to carry.`,
    doesNotFit: ({ part, reason, wanting, places }) =>
      reason === 'none-offered'
        ? {
            headline: 'The arm has no monitor to carry',
            what: `${part} needs a monitor; there is none on the list.`,
            why: 'An arm carries one monitor at the holes in its back.',
            remedy: 'Choose a monitor with holes for an arm, or take the arm off the list.',
          }
        : {
            headline: `${count(wanting, 'arm', 'arms')}, ${count(places, 'monitor', 'monitors')}`,
            what: `The list has ${spelled(wanting, 'arm', 'arms')} and ${spelled(places, 'monitor', 'monitors')}, so ${part} is left over.`,
            why: 'An arm carries one monitor at the holes in its back.',
            remedy: 'Take one arm off the list, or choose one more monitor.',
          },
    cannotTell: () => ({
      headline: 'Is there a monitor for every arm?',
      what: 'Not every way of pairing arms and monitors was tried, so this is not judged.',
      findOut: 'Give each arm a monitor, the heaviest first.',
    }),
  },

  examples: [
    {
      title: 'one arm and one monitor',
      parts: { 'monitor-arm': {}, monitor: { armHolesMm: [100], grams: 4000 } },
      verdict: 'fits',
    },
    { title: 'an arm and no monitor', parts: { 'monitor-arm': {} }, verdict: 'does-not-fit' },
    {
      title: 'two arms and one monitor',
      parts: { 'monitor-arm': [{}, {}], monitor: { armHolesMm: [100], grams: 4000 } },
      verdict: 'does-not-fit',
    },
    { title: 'no arm on the list', parts: { monitor: {} }, verdict: 'does-not-apply' },
  ],
});
