import { count, spelled } from '../../../wording/phrases.ts';
import { leftRule } from '../../rule.ts';

export const coolerInUse = leftRule({
  id: 'cooling/cooler-in-use',
  title: 'The cooler has a place to be mounted',
  severity: 'blocker',
  basis: 'maker',
  sources: ['maker-data-sheet'],
  lesson: 'fit/how-parts-meet',

  left: 'cooler-mount',

  say: {
    fits: ({ part }) => `${part} has a place to be mounted.`,
    doesNotFit: ({ part, reason, wanting, places }) =>
      reason === 'taken'
        ? {
            headline: `${count(wanting, 'cooler', 'coolers')}, ${count(places, 'place', 'places')} to mount one`,
            what: `The list has ${spelled(wanting, 'cooler', 'coolers')} and ${spelled(places, 'place', 'places')} to mount one, so ${part} is left over.`,
            why: 'A processor carries one cooler.',
            remedy: 'Take one cooler off the list.',
          }
        : {
            headline: 'The cooler has nothing to be mounted on',
            what: `${part} needs a board to be mounted on; there is none on the list.`,
            why: 'A cooler is screwed to the board, round the socket of the processor.',
            remedy: 'Choose a board that takes one of its mountings, or take the cooler off the list.',
          },
    cannotTell: () => ({
      headline: 'Is there a place for the cooler?',
      what: 'Not every way of placing the coolers was tried, so this is not judged.',
      findOut: 'Count the sockets on the board and the coolers on the list.',
    }),
  },

  examples: [
    {
      title: 'one cooler on one board',
      parts: { cooler: { mountings: ['square-80'] }, motherboard: { coolerMountings: ['square-80'] } },
      verdict: 'fits',
    },
    { title: 'a cooler and no board', parts: { cooler: { mountings: ['square-80'] } }, verdict: 'does-not-fit' },
    {
      title: 'two coolers on one board',
      parts: {
        cooler: [{ mountings: ['square-80'] }, { mountings: ['square-80'] }],
        motherboard: { coolerMountings: ['square-80'] },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'no cooler on the list',
      parts: { motherboard: { coolerMountings: ['square-80'] } },
      verdict: 'does-not-apply',
    },
  ],
});
