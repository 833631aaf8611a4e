import { refusesRule } from '../../rule.ts';
import { lacks, oneOf } from '../words.ts';

export const processorSocket = refusesRule({
  id: 'socket/processor-socket',
  title: 'The processor and the board have the same socket',
  severity: 'blocker',
  basis: 'maker',
  sources: ['maker-data-sheet'],
  lesson: 'fit/how-parts-meet',

  refuses: { kind: 'processor-socket', op: 'shares', need: 'socket', place: 'socket' },

  say: {
    fits: ({ part, on, need }) => `${part} has socket ${oneOf(need)}, and so has ${on}.`,
    doesNotFit: ({ part, on, need, offered }) => ({
      headline: `Processor for socket ${oneOf(need)}, board with ${oneOf(offered)}`,
      what: `${part} is made for socket ${oneOf(need)}; ${on} has socket ${oneOf(offered)}.`,
      why: 'The contacts of two different sockets do not lie in the same places, so the processor cannot be seated.',
      remedy: `Choose a processor for socket ${oneOf(offered)}, or a board with socket ${oneOf(need)}.`,
    }),
    cannotTell: (missing) =>
      lacks(missing, 'processor')
        ? {
            headline: 'Which socket is the processor made for?',
            what: "The processor's socket is not recorded, so this fit is not judged.",
            findOut: "Read the socket on the processor's box, or look up the model on its maker's sheet.",
          }
        : {
            headline: 'Which socket has the board?',
            what: "The board's socket is not recorded, so this fit is not judged.",
            findOut:
              "Read the socket on the board's box or in its manual. Leave the cover on the socket while you look.",
          },
  },

  examples: [
    { title: 'both are k4', parts: { processor: { socket: 'k4' }, motherboard: { socket: 'k4' } }, verdict: 'fits' },
    {
      title: 'a k4 processor and an n9 board',
      parts: { processor: { socket: 'k4' }, motherboard: { socket: 'n9' } },
      verdict: 'does-not-fit',
    },
    {
      title: "the processor's socket is not recorded",
      parts: { processor: { socket: undefined }, motherboard: { socket: 'k4' } },
      verdict: 'cannot-tell',
    },
    {
      title: "the board's socket is not recorded",
      parts: { processor: { socket: 'k4' }, motherboard: { socket: undefined } },
      verdict: 'cannot-tell',
    },
    { title: 'a board without a processor', parts: { motherboard: { socket: 'k4' } }, verdict: 'does-not-apply' },
  ],
});
