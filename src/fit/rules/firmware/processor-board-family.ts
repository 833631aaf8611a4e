import { cannotTell, doesNotFit, fits, joinsRule } from '../../rule.ts';
import { lacks } from '../words.ts';

export const processorBoardFamily = joinsRule({
  id: 'firmware/processor-board-family',
  title: 'The firmware on the board as sold knows the processor board',
  severity: 'blocker',
  basis: 'maker',
  sources: ['maker-data-sheet'],
  lesson: 'fit/how-parts-meet',

  joins: { 'processor-board': ['name', 'family'], motherboard: ['name', 'firmware'] },
  judge({ 'processor-board': plugIn, motherboard: board }) {
    if (plugIn.family === undefined) return cannotTell('processor-board.family');
    if (board.firmware === undefined) return cannotTell('motherboard.firmware');

    const { shipped, knows } = board.firmware;
    const from = knows.find(({ family }) => family === plugIn.family)?.from ?? null;
    const facts = { plugIn: plugIn.name ?? '', board: board.name ?? '', shipped, from };
    return from !== null && from <= shipped ? fits(facts) : doesNotFit(facts);
  },

  say: {
    fits: ({ plugIn, board, shipped, from }) =>
      `${board} is sold with firmware ${shipped}; ${plugIn} needs ${from} or later.`,
    doesNotFit: ({ plugIn, board, shipped, from }) => ({
      headline:
        from === null
          ? 'No firmware here knows the processor board'
          : `Firmware ${shipped} on the board, ${from} needed`,
      what:
        from === null
          ? `${board} is sold with firmware ${shipped}; its maker lists no version that knows ${plugIn}.`
          : `${board} is sold with firmware ${shipped}; ${plugIn} needs ${from} or later, so the firmware is too old.`,
      why: 'The firmware meets a processor that it does not know where the old one was, and the machine does not start.',
      remedy:
        from === null
          ? "Choose a processor board from the list of the motherboard's maker, or a motherboard whose list names this one."
          : `Ask the motherboard's maker for the firmware chip of version ${from}, or choose a processor board that it knows already.`,
    }),
    cannotTell: (missing) =>
      lacks(missing, 'processor-board')
        ? {
            headline: 'Which processor is on the plug-in?',
            what: "The family of the processor board is not recorded, so it is not judged whether the motherboard's firmware knows it.",
            findOut: 'Read the marking on its largest chip, or the first page of its leaflet.',
          }
        : {
            headline: 'Which firmware has the board?',
            what: "The motherboard's firmware is not recorded, so it is not judged whether it knows the processor board.",
            findOut:
              'Read the label on the firmware chip, and the line that shows first when the machine is switched on.',
          },
  },

  examples: [
    {
      title: 'sold with exactly the version needed',
      shelf: 'vintage',
      parts: {
        'processor-board': { family: 'velm-486' },
        motherboard: { firmware: { shipped: 3, knows: [{ family: 'velm-486', from: 3 }] } },
      },
      verdict: 'fits',
    },
    {
      title: 'one version behind',
      shelf: 'vintage',
      parts: {
        'processor-board': { family: 'velm-486' },
        motherboard: { firmware: { shipped: 2, knows: [{ family: 'velm-486', from: 3 }] } },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'no version knows the family, in the socket beside the processor too',
      shelf: 'vintage',
      parts: {
        'processor-board': { family: 'velm-486', socket: 'c-68', leavesProcessorIn: true },
        motherboard: { firmware: { shipped: 3, knows: [{ family: 'velm-386', from: 1 }] } },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'the family is not recorded',
      shelf: 'vintage',
      parts: { 'processor-board': { family: undefined }, motherboard: {} },
      verdict: 'cannot-tell',
    },
    {
      title: "the motherboard's firmware is not recorded",
      shelf: 'vintage',
      parts: { 'processor-board': { family: 'velm-486' }, motherboard: { firmware: undefined } },
      verdict: 'cannot-tell',
    },
    { title: 'no motherboard yet', shelf: 'vintage', parts: { 'processor-board': {} }, verdict: 'does-not-apply' },
  ],
});
