import { showWatts, tidy } from '../../../units/amounts.ts';
import { cannotTell, doesNotFit, fits, joinsRule } from '../../rule.ts';
import { lacks } from '../words.ts';

export const processorBoardPower = joinsRule({
  id: 'socket/processor-board-power',
  title: 'The board can feed the processor board under steady load',
  severity: 'blocker',
  basis: 'maker',
  sources: ['maker-data-sheet'],
  lesson: 'fit/how-parts-meet',

  joins: { 'processor-board': ['name', 'sustainedW'], motherboard: ['name', 'processorPowerW'] },
  judge({ 'processor-board': plugIn, motherboard: board }) {
    if (plugIn.sustainedW === undefined) return cannotTell('processor-board.sustainedW');
    if (board.processorPowerW === undefined) return cannotTell('motherboard.processorPowerW');

    const facts = {
      plugIn: plugIn.name ?? '',
      board: board.name ?? '',
      draws: plugIn.sustainedW,
      allows: board.processorPowerW,
      over: tidy(plugIn.sustainedW - board.processorPowerW),
    };
    return facts.over <= 0 ? fits(facts) : doesNotFit(facts);
  },

  say: {
    fits: ({ plugIn, board, draws, allows }) =>
      `${plugIn} draws ${showWatts(draws)}; ${board} allows ${showWatts(allows)}.`,
    doesNotFit: ({ plugIn, board, draws, allows, over }) => ({
      headline: `The processor board draws ${showWatts(over)} too much`,
      what: `${plugIn} draws ${showWatts(draws)} under steady load; ${board} allows ${showWatts(allows)} at the processor's socket, so it is ${showWatts(over)} too much.`,
      why: "The wires to the socket are made for the old processor. With more through them the voltage sinks, and the board's maker does not support the pair.",
      remedy: `Choose a processor board of ${showWatts(allows)} or less, or a motherboard that allows ${showWatts(draws)} or more.`,
    }),
    cannotTell: (missing) =>
      lacks(missing, 'processor-board')
        ? {
            headline: 'How much does the processor board draw?',
            what: "The processor board's power under steady load is not recorded, so this fit is not judged.",
            findOut: 'Read the watts, or the amperes at 5 V and multiply them by five, in its leaflet.',
          }
        : {
            headline: 'How much does the board allow?',
            what: "The most that the motherboard gives at the processor's socket is not recorded, so this fit is not judged.",
            findOut:
              "Look for the processor board in the list of plug-ins in the motherboard's manual, or ask its maker.",
          },
  },

  examples: [
    {
      title: 'exactly at the limit',
      shelf: 'vintage',
      parts: { 'processor-board': { sustainedW: 5 }, motherboard: { processorPowerW: 5 } },
      verdict: 'fits',
    },
    {
      title: 'a tenth of a watt over',
      shelf: 'vintage',
      parts: { 'processor-board': { sustainedW: 5.1 }, motherboard: { processorPowerW: 5 } },
      verdict: 'does-not-fit',
    },
    {
      title: "the processor board's power is not recorded",
      shelf: 'vintage',
      parts: { 'processor-board': { sustainedW: undefined }, motherboard: { processorPowerW: 5 } },
      verdict: 'cannot-tell',
    },
    {
      title: "the motherboard's limit is not recorded",
      shelf: 'vintage',
      parts: { 'processor-board': { sustainedW: 5 }, motherboard: { processorPowerW: undefined } },
      verdict: 'cannot-tell',
    },
    { title: 'no motherboard yet', shelf: 'vintage', parts: { 'processor-board': {} }, verdict: 'does-not-apply' },
  ],
});
