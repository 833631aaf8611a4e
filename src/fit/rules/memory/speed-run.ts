import { channelMBps } from '../../../standards/memory.ts';
import { showMBps, showMts } from '../../../units/amounts.ts';
import { cannotTell, doesNotApply, doesNotFit, fits, gathersRule } from '../../rule.ts';
import { seated } from '../ends.ts';
import { lacks } from '../words.ts';

export const speedRun = gathersRule({
  id: 'memory/speed-run',
  title: 'Every module runs at the speed it was sold for',
  severity: 'note',
  basis: 'maker',
  sources: ['maker-data-sheet', 'jesd79-4', 'jesd79-5'],
  lesson: 'fit/choosing-for-a-purpose',

  gathers: { 'memory-module': ['speedMts'], motherboard: ['memory'] },
  sees: ['memory-slot'],
  judge({ 'memory-module': listed, motherboard: boards }, { joints }) {
    const modules = seated(listed, joints);
    const board = boards[0];
    if (board === undefined || modules.length === 0) return doesNotApply;
    const most = board.memory?.speedMts;
    if (most === undefined) return cannotTell(`${board.unit}.memory.speedMts`);
    const unknown = modules.filter((module) => module.speedMts === undefined);
    if (unknown.length > 0) return cannotTell(...unknown.map(({ unit }) => `${unit}.speedMts`));

    const speeds = modules.map((module) => module.speedMts ?? most);
    const [slowest, fastest] = [Math.min(...speeds), Math.max(...speeds)];
    const runs = Math.min(slowest, most);
    const facts = { board: board.name, most, slowest, fastest, runs, lost: channelMBps(fastest) - channelMBps(runs) };
    const faster = modules.filter((module) => (module.speedMts ?? 0) > runs).map(({ unit }) => unit);
    return faster.length === 0 ? fits(facts) : doesNotFit(facts, [...faster, board.unit]);
  },

  say: {
    fits: ({ runs }) => `The memory runs at ${showMts(runs)}, the speed it was sold for.`,
    doesNotFit: ({ board, most, slowest, fastest, runs, lost }) => ({
      headline: `Memory for ${showMts(fastest)} runs at ${showMts(runs)}`,
      what:
        runs === most
          ? `The fastest module is sold for ${showMts(fastest)}; ${board} runs memory at ${showMts(most)} at most, so each channel carries ${showMBps(lost)} less.`
          : `The fastest module is sold for ${showMts(fastest)} and the slowest for ${showMts(slowest)}, so all run at ${showMts(runs)} and each channel carries ${showMBps(lost)} less.`,
      why: 'All modules run at one speed: the slowest of the modules and the board. The machine works; the faster memory is paid for and not used.',
      remedy:
        runs === most
          ? `Choose memory of ${showMts(runs)} and keep the difference, or a board that runs memory at ${showMts(fastest)}, or leave it as it is.`
          : 'Choose modules of one speed, or leave it as it is.',
    }),
    cannotTell: (missing) =>
      lacks(missing, 'memory-module')
        ? {
            headline: 'How fast is the memory?',
            what: "A module's speed is not recorded, so the speed that all of them run at is not judged.",
            findOut: 'Read the label on the module: the number after DDR4 or DDR5.',
          }
        : {
            headline: 'How fast does the board run memory?',
            what: "The board's fastest memory speed is not recorded, so the speed of the memory is not judged.",
            findOut: "Read the page on memory in the board's manual.",
          },
  },

  examples: [
    {
      title: 'exactly the speed of the board',
      parts: {
        'memory-module': { speedMts: 5600 },
        motherboard: { memory: { generation: 'ddr5', speedMts: 5600, slots: [{ id: 'a1', channel: 'a' }] } },
      },
      verdict: 'fits',
    },
    {
      title: 'one step faster than the board',
      parts: {
        'memory-module': { speedMts: 6000 },
        motherboard: { memory: { generation: 'ddr5', speedMts: 5600, slots: [{ id: 'a1', channel: 'a' }] } },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'two speeds together',
      parts: {
        'memory-module': [{ speedMts: 5600 }, { speedMts: 4800 }],
        motherboard: {
          memory: {
            generation: 'ddr5',
            speedMts: 5600,
            slots: [
              { id: 'a1', channel: 'a' },
              { id: 'b1', channel: 'b' },
            ],
          },
        },
      },
      verdict: 'does-not-fit',
    },
    {
      title: "the module's speed is not recorded",
      parts: {
        'memory-module': { speedMts: undefined },
        motherboard: { memory: { generation: 'ddr5', speedMts: 5600, slots: [{ id: 'a1', channel: 'a' }] } },
      },
      verdict: 'cannot-tell',
    },
    {
      title: "the board's speed is not recorded",
      parts: {
        'memory-module': { speedMts: 5600 },
        motherboard: { memory: { generation: 'ddr5', slots: [{ id: 'a1', channel: 'a' }] } },
      },
      verdict: 'cannot-tell',
    },
    { title: 'no memory on the list', parts: { motherboard: {} }, verdict: 'does-not-apply' },
  ],
});
