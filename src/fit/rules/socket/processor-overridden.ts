import { cannotTell, doesNotApply, doesNotFit, fits, gathersRule } from '../../rule.ts';
import { joined } from '../ends.ts';

export const processorOverridden = gathersRule({
  id: 'socket/processor-overridden',
  title: 'Every processor on the list does some work',
  severity: 'note',
  basis: 'maker',
  sources: ['maker-data-sheet'],
  lesson: 'fit/choosing-for-a-purpose',

  gathers: { 'processor-board': ['leavesProcessorIn'], processor: [] },
  sees: ['processor-socket', 'coprocessor-socket'],
  judge({ 'processor-board': listed, processor: processors }, { joints }) {
    const [board] = joined(listed, joints);
    if (board === undefined) return doesNotApply;
    if (board.leavesProcessorIn === undefined) return cannotTell(`${board.unit}.leavesProcessorIn`);

    const [idle] = board.leavesProcessorIn ? joined(processors, joints) : [];
    const facts = { board: board.name, idle: idle?.name ?? null };
    return idle === undefined ? fits(facts, [board.unit]) : doesNotFit(facts, [idle.unit, board.unit]);
  },

  say: {
    fits: ({ board }) => `${board} is the only processor at work, and no other sits idle.`,
    doesNotFit: ({ board, idle }) => ({
      headline: 'The old processor stays in, switched off',
      what: `${board} takes over, and ${idle} stays in its socket and does nothing.`,
      why: 'A board of this kind holds the old processor still from the socket beside it; what the old one could do no longer counts.',
      remedy: `Leave ${idle} where it is, or sell it and choose a processor board that goes into its socket.`,
    }),
    cannotTell: () => ({
      headline: 'Does the old processor stay in?',
      what: 'Whether the processor board leaves the old processor in its socket is not recorded, so this is not judged.',
      findOut: "Read the first step in the processor board's leaflet: it says whether the old processor comes out.",
    }),
  },

  examples: [
    {
      title: 'a plug-in in the place of the processor',
      shelf: 'vintage',
      parts: { 'processor-board': { leavesProcessorIn: false }, motherboard: {} },
      verdict: 'fits',
    },
    {
      title: 'a plug-in that holds the processor beside it still',
      shelf: 'vintage',
      parts: { 'processor-board': { socket: 'c-68', leavesProcessorIn: true }, processor: {}, motherboard: {} },
      verdict: 'does-not-fit',
    },
    {
      title: 'not recorded whether the processor stays in',
      shelf: 'vintage',
      parts: { 'processor-board': { leavesProcessorIn: undefined }, motherboard: {} },
      verdict: 'cannot-tell',
    },
    {
      title: 'no plug-in on the list',
      shelf: 'vintage',
      parts: { processor: {}, motherboard: {} },
      verdict: 'does-not-apply',
    },
  ],
});
