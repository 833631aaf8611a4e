import { refusesRule } from '../../rule.ts';
import { lacks, oneOf } from '../words.ts';

export const processorBoardSocket = refusesRule({
  id: 'socket/processor-board-socket',
  title: 'The processor board is made for the socket that the processor came out of',
  severity: 'blocker',
  basis: 'maker',
  sources: ['maker-data-sheet'],
  lesson: 'fit/how-parts-meet',

  refuses: { kind: 'processor-socket', op: 'shares', need: 'boardSocket', place: 'boardSocket' },

  say: {
    fits: ({ part, on, need }) => `${part} is made for socket ${oneOf(need)}, and ${on} has that socket.`,
    doesNotFit: ({ part, on, need, offered }) => ({
      headline: `Plug-in for socket ${oneOf(need)}, board with ${oneOf(offered)}`,
      what: `${part} is made for socket ${oneOf(need)}; ${on} has socket ${oneOf(offered)}.`,
      why: 'A processor board goes where the old processor was, pin for pin; pins that do not lie in the same places bend.',
      remedy: `Choose a processor board for socket ${oneOf(offered)}, or a motherboard with socket ${oneOf(need)}.`,
    }),
    cannotTell: (missing) =>
      lacks(missing, 'processor-board')
        ? {
            headline: 'Which socket is the plug-in for?',
            what: "The processor board's socket is not recorded, so this fit is not judged.",
            findOut: 'Read in its leaflet which processor it takes the place of.',
          }
        : {
            headline: 'Which socket has the board?',
            what: "The motherboard's socket is not recorded, so this fit is not judged.",
            findOut: "Read the number of pins of the old processor in the motherboard's manual.",
          },
  },

  examples: [
    {
      title: 'both are p-132',
      shelf: 'vintage',
      parts: { 'processor-board': { socket: 'p-132' }, motherboard: { socket: 'p-132' } },
      verdict: 'fits',
    },
    {
      title: 'a plug-in for p-132 and a board with p-100',
      shelf: 'vintage',
      parts: { 'processor-board': { socket: 'p-132' }, motherboard: { socket: 'p-100' } },
      verdict: 'does-not-fit',
    },
    {
      title: "the plug-in's socket is not recorded",
      shelf: 'vintage',
      parts: { 'processor-board': { socket: undefined }, motherboard: { socket: 'p-132' } },
      verdict: 'cannot-tell',
    },
    {
      title: "the motherboard's socket is not recorded",
      shelf: 'vintage',
      parts: { 'processor-board': { socket: 'p-132' }, motherboard: { socket: undefined } },
      verdict: 'cannot-tell',
    },
    {
      title: 'an ordinary processor',
      shelf: 'vintage',
      parts: { processor: { socket: 'p-132' }, motherboard: { socket: 'p-132' } },
      verdict: 'does-not-apply',
    },
  ],
});
