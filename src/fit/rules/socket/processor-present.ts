import { doesNotApply, doesNotFit, fits, gathersRule } from '../../rule.ts';

export const processorPresent = gathersRule({
  id: 'socket/processor-present',
  title: 'The board has a processor',
  severity: 'blocker',
  basis: 'maker',
  sources: ['maker-data-sheet'],
  lesson: 'fit/how-parts-meet',

  gathers: { motherboard: [], processor: [], 'processor-board': [] },
  judge({ motherboard: boards, processor: processors, 'processor-board': besides }) {
    const board = boards[0];
    if (board === undefined) return doesNotApply;
    const processor = processors[0] ?? besides[0];
    const facts = { board: board.name, processor: processor?.name ?? null };
    return processor ? fits(facts, [processor.unit, board.unit]) : doesNotFit(facts, [board.unit]);
  },

  say: {
    fits: ({ board, processor }) => `${board} has a processor to go with it: ${processor}.`,
    doesNotFit: ({ board }) => ({
      headline: 'The board has no processor',
      what: `There is no processor on the list for ${board}.`,
      why: 'Nothing starts without one: the fans may turn, and the screen stays dark.',
      remedy: 'Choose a processor for the socket of the board.',
    }),
    cannotTell: () => ({
      headline: 'Is there a processor?',
      what: 'Whether the board has a processor is not recorded, so this is not judged.',
      findOut: 'Look at the socket: it is under the cooler.',
    }),
  },

  examples: [
    { title: 'a board and a processor', parts: { motherboard: {}, processor: {} }, verdict: 'fits' },
    {
      title: 'a board and all but a processor',
      parts: { motherboard: {}, cooler: {}, 'memory-module': {}, 'power-supply': {} },
      verdict: 'does-not-fit',
    },
    {
      title: 'a processor on a board of its own',
      shelf: 'vintage',
      parts: { motherboard: {}, 'processor-board': {} },
      verdict: 'fits',
    },
    { title: 'no board yet', parts: { cooler: {}, 'memory-module': {} }, verdict: 'does-not-apply' },
  ],
});
