import { refusesRule } from '../../rule.ts';
import { lacks, oneOf } from '../words.ts';

export const coprocessorSocket = refusesRule({
  id: 'socket/coprocessor-socket',
  title: 'What goes beside the processor is made for the socket there',
  severity: 'blocker',
  basis: 'maker',
  sources: ['maker-data-sheet'],
  lesson: 'fit/how-parts-meet',

  refuses: { kind: 'coprocessor-socket', op: 'shares', need: 'socket', place: 'socket' },

  say: {
    fits: ({ part, on, need }) => `${part} is made for socket ${oneOf(need)}, which ${on} has beside the processor.`,
    doesNotFit: ({ part, on, need, offered }) => ({
      headline: `Made for socket ${oneOf(need)}, board with ${oneOf(offered)}`,
      what: `${part} is made for socket ${oneOf(need)}; the socket beside the processor of ${on} is ${oneOf(offered)}.`,
      why: 'The pins of two different sockets do not lie in the same places, so it cannot be seated.',
      remedy: `Choose one for socket ${oneOf(offered)}, or a board with socket ${oneOf(need)} beside the processor.`,
    }),
    cannotTell: (missing) =>
      lacks(missing, 'motherboard')
        ? {
            headline: 'Which socket is beside the processor?',
            what: 'The socket beside the processor is not recorded, so this fit is not judged.',
            findOut: "Read its name on the board, or look for the page on coprocessors in the board's manual.",
          }
        : {
            headline: 'Which socket is it made for?',
            what: 'The socket that it is made for is not recorded, so this fit is not judged.',
            findOut: "Read the marking on its top, and look the number up on its maker's sheet.",
          },
  },

  examples: [
    {
      title: 'both are c-68',
      shelf: 'vintage',
      parts: { coprocessor: { socket: 'c-68' }, motherboard: { coprocessorSocket: 'c-68' } },
      verdict: 'fits',
    },
    {
      title: 'a coprocessor for c-40 and a board with c-68',
      shelf: 'vintage',
      parts: { coprocessor: { socket: 'c-40' }, motherboard: { coprocessorSocket: 'c-68' } },
      verdict: 'does-not-fit',
    },
    {
      title: 'a plug-in that leaves the processor in, for another socket',
      shelf: 'vintage',
      parts: {
        'processor-board': { socket: 'c-40', leavesProcessorIn: true },
        motherboard: { coprocessorSocket: 'c-68' },
      },
      verdict: 'does-not-fit',
    },
    {
      title: "the coprocessor's socket is not recorded",
      shelf: 'vintage',
      parts: { coprocessor: { socket: undefined }, motherboard: { coprocessorSocket: 'c-68' } },
      verdict: 'cannot-tell',
    },
    {
      title: 'a coprocessor and no board',
      shelf: 'vintage',
      parts: { coprocessor: { socket: 'c-68' } },
      verdict: 'does-not-apply',
    },
  ],
});
