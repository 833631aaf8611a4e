import { showWatts, tidy } from '../../../units/amounts.ts';
import { cannotTell, doesNotApply, doesNotFit, fits, jointRule } from '../../rule.ts';
import { partAs } from '../ends.ts';
import { lacks } from '../words.ts';

export const powerStage = jointRule({
  id: 'socket/power-stage',
  title: 'The board can feed the processor under steady load',
  severity: 'blocker',
  basis: 'maker',
  sources: ['maker-data-sheet'],
  lesson: 'fit/how-parts-meet',

  at: 'processor-socket',
  reads: { processor: ['sustainedW'], motherboard: ['processorPowerW'] },
  judge({ need, place }) {
    const processor = partAs(need.unit, 'processor');
    const board = partAs(place.unit, 'motherboard');
    if (processor === undefined || board === undefined) return doesNotApply;
    if (processor.sustainedW === undefined) return cannotTell(`${need.unit.id}.sustainedW`);
    if (board.processorPowerW === undefined) return cannotTell(`${place.unit.id}.processorPowerW`);

    const facts = {
      processor: processor.name,
      board: board.name,
      draws: processor.sustainedW,
      allows: board.processorPowerW,
      over: tidy(processor.sustainedW - board.processorPowerW),
    };
    return facts.over <= 0 ? fits(facts) : doesNotFit(facts);
  },

  say: {
    fits: ({ processor, board, draws, allows }) =>
      `${processor} draws ${showWatts(draws)}; ${board} allows ${showWatts(allows)}.`,
    doesNotFit: ({ processor, board, draws, allows, over }) => ({
      headline: `The processor draws ${showWatts(over)} too much`,
      what: `${processor} draws ${showWatts(draws)} under steady load; ${board} allows ${showWatts(allows)}, so it is ${showWatts(over)} too much.`,
      why: "The board's power stage, the row of parts beside the socket, overheats, and the board's maker does not support the pair.",
      remedy: `Choose a processor of ${showWatts(allows)} or less, or a board that allows ${showWatts(draws)} or more.`,
    }),
    cannotTell: (missing) =>
      lacks(missing, 'processor')
        ? {
            headline: 'How much does the processor draw?',
            what: "The processor's power under steady load is not recorded, so this fit is not judged.",
            findOut: "Read the watts on the processor's box or on its maker's sheet.",
          }
        : {
            headline: 'How much does the board allow?',
            what: "The most that the board's power stage gives is not recorded, so this fit is not judged.",
            findOut: "Look up the processor in the list of supported processors on the board maker's page.",
          },
  },

  examples: [
    {
      title: 'exactly at the limit',
      parts: { processor: { socket: 'k4', sustainedW: 105 }, motherboard: { socket: 'k4', processorPowerW: 105 } },
      verdict: 'fits',
    },
    {
      title: 'one watt over',
      parts: { processor: { socket: 'k4', sustainedW: 106 }, motherboard: { socket: 'k4', processorPowerW: 105 } },
      verdict: 'does-not-fit',
    },
    {
      title: "the processor's power is not recorded",
      parts: {
        processor: { socket: 'k4', sustainedW: undefined },
        motherboard: { socket: 'k4', processorPowerW: 105 },
      },
      verdict: 'cannot-tell',
    },
    {
      title: "the board's limit is not recorded",
      parts: {
        processor: { socket: 'k4', sustainedW: 105 },
        motherboard: { socket: 'k4', processorPowerW: undefined },
      },
      verdict: 'cannot-tell',
    },
    {
      title: 'the processor does not go into the socket at all',
      parts: { processor: { socket: 'n9', sustainedW: 106 }, motherboard: { socket: 'k4', processorPowerW: 105 } },
      verdict: 'does-not-apply',
    },
  ],
});
