import { count, inWords, spelled } from '../../../wording/phrases.ts';
import { leftRule } from '../../rule.ts';

export const boardPresent = leftRule({
  id: 'socket/board-present',
  title: 'The processor has a socket of its own',
  severity: 'blocker',
  basis: 'maker',
  sources: ['maker-data-sheet'],
  lesson: 'fit/how-parts-meet',

  left: 'processor-socket',

  say: {
    fits: ({ part }) => `${part} has a socket of its own.`,
    doesNotFit: ({ part, reason, places, wanting }) =>
      reason === 'taken'
        ? {
            headline: `${count(wanting, 'processor', 'processors')}, ${count(places, 'socket', 'sockets')}`,
            what: `The list has ${spelled(wanting, 'processor', 'processors')} and ${spelled(places, 'socket', 'sockets')}, so there ${wanting - places === 1 ? 'is' : 'are'} ${inWords(wanting - places)} too many.`,
            why: 'A socket holds one processor.',
            remedy: 'Take one processor off the list.',
          }
        : {
            headline: 'The processor has no board to go into',
            what: `${part} needs a socket; nothing on the list has one.`,
            why: 'A processor does nothing by itself: its power, its memory and its drives all come through the board.',
            remedy: "Choose a board with the processor's socket.",
          },
    cannotTell: () => ({
      headline: 'Is there a socket for the processor?',
      what: 'Not every way of placing the processors was tried, so this is not judged.',
      findOut: 'Count the sockets on the board and the processors on the list.',
    }),
  },

  examples: [
    {
      title: 'one processor and one board',
      parts: { processor: { socket: 'k4' }, motherboard: { socket: 'k4' } },
      verdict: 'fits',
    },
    { title: 'a processor and no board', parts: { processor: { socket: 'k4' } }, verdict: 'does-not-fit' },
    {
      title: 'two processors for one socket',
      parts: { processor: [{ socket: 'k4' }, { socket: 'k4' }], motherboard: { socket: 'k4' } },
      verdict: 'does-not-fit',
    },
    { title: 'no processor on the list', parts: { motherboard: { socket: 'k4' } }, verdict: 'does-not-apply' },
  ],
});
