import { leftRule } from '../../rule.ts';

export const coprocessorPlace = leftRule({
  id: 'socket/coprocessor-place',
  title: 'There is a socket beside the processor for what goes there',
  severity: 'blocker',
  basis: 'maker',
  sources: ['maker-data-sheet'],
  lesson: 'fit/how-parts-meet',

  left: 'coprocessor-socket',

  say: {
    fits: ({ part }) => `${part} has the socket beside the processor.`,
    doesNotFit: ({ part, reason, holders }) =>
      reason === 'taken'
        ? {
            headline: 'The socket beside the processor is taken',
            what: `${part} goes into the socket beside the processor, and so does ${holders[0] ?? 'another part'}.`,
            why: 'There is one such socket, and it holds one part.',
            remedy: 'Take one of the two off the list.',
          }
        : {
            headline: 'No socket beside the processor',
            what: `${part} goes into a socket beside the processor; nothing on the list has one.`,
            why: 'It works only there, joined to the processor wire by wire.',
            remedy: 'Choose a board with such a socket, or take the part off the list: the machine works without it.',
          },
    cannotTell: (missing) =>
      missing.length === 0
        ? {
            headline: 'Is there a socket for it?',
            what: 'Not every way of placing the parts was tried, so this is not judged.',
            findOut: 'Count the sockets beside the processor and the parts that go there.',
          }
        : {
            headline: 'Is there a socket beside the processor?',
            what: 'Whether the board has a socket beside the processor is not recorded, so this is not judged.',
            findOut: 'Look for an empty square socket close to the processor.',
          },
  },

  examples: [
    {
      title: 'a board with the socket',
      shelf: 'vintage',
      parts: { coprocessor: { socket: 'c-68' }, motherboard: { coprocessorSocket: 'c-68' } },
      verdict: 'fits',
    },
    {
      title: 'a board without one',
      shelf: 'vintage',
      parts: { coprocessor: { socket: 'c-68' }, motherboard: { coprocessorSocket: null } },
      verdict: 'does-not-fit',
    },
    {
      title: 'two coprocessors and one socket',
      shelf: 'vintage',
      parts: { coprocessor: [{}, {}], motherboard: {} },
      verdict: 'does-not-fit',
    },
    {
      title: 'a coprocessor and a plug-in that wants the same socket',
      shelf: 'vintage',
      parts: {
        coprocessor: { socket: 'c-68' },
        'processor-board': { socket: 'c-68', leavesProcessorIn: true },
        motherboard: { coprocessorSocket: 'c-68' },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'not recorded whether the board has one',
      shelf: 'vintage',
      parts: { coprocessor: { socket: 'c-68' }, motherboard: { coprocessorSocket: undefined } },
      verdict: 'cannot-tell',
    },
    { title: 'no coprocessor on the list', shelf: 'vintage', parts: { motherboard: {} }, verdict: 'does-not-apply' },
  ],
});
