import { showGb } from '../../../units/amounts.ts';
import { cannotTell, doesNotApply, doesNotFit, fits, gathersRule } from '../../rule.ts';
import { seated } from '../ends.ts';
import { lacks } from '../words.ts';

export const totalCapacity = gathersRule({
  id: 'memory/total-capacity',
  title: 'All memory together is no more than the board can use',
  severity: 'blocker',
  basis: 'maker',
  sources: ['maker-data-sheet'],
  lesson: 'fit/choosing-for-a-purpose',

  gathers: { 'memory-module': ['capacityGb'], motherboard: ['memory'] },
  sees: ['memory-slot'],
  judge({ 'memory-module': listed, motherboard: boards }, { joints }) {
    const modules = seated(listed, joints);
    const board = boards[0];
    if (board === undefined || modules.length === 0) return doesNotApply;
    const limit = board.memory?.totalGb;
    if (limit === undefined) return cannotTell(`${board.unit}.memory.totalGb`);

    const known = modules.reduce((sum, module) => sum + (module.capacityGb ?? 0), 0);
    const unknown = modules.filter((module) => module.capacityGb === undefined);
    const facts = { board: board.name, modules: modules.length, total: known, limit, over: known - limit };
    if (known > limit) return doesNotFit(facts, [...modules.map(({ unit }) => unit), board.unit]);
    if (unknown.length > 0) return cannotTell(...unknown.map(({ unit }) => `${unit}.capacityGb`));
    return fits(facts);
  },

  say: {
    fits: ({ board, total, limit }) => `The memory is ${showGb(total)} in all; ${board} can use ${showGb(limit)}.`,
    doesNotFit: ({ board, total, limit, over }) => ({
      headline: `The memory is ${showGb(over)} too much`,
      what: `The memory is ${showGb(total)} in all; ${board} can use ${showGb(limit)}, so it is ${showGb(over)} too much.`,
      why: 'With more than it can use, the board does not start or leaves the rest of the memory idle.',
      remedy: `Choose ${showGb(limit)} of memory or less, or a board that can use ${showGb(total)} or more.`,
    }),
    cannotTell: (missing) =>
      lacks(missing, 'memory-module')
        ? {
            headline: 'How much memory is it in all?',
            what: 'The size of a module is not recorded, so the sum is not judged.',
            findOut: 'Read the label on each module: the number before GB. Then add them up.',
          }
        : {
            headline: 'How much memory can the board use?',
            what: 'The most memory that the board can use is not recorded, so the sum is not judged.',
            findOut: "Read the page on memory in the board's manual.",
          },
  },

  examples: [
    {
      title: 'exactly at the limit',
      parts: {
        'memory-module': [{ capacityGb: 32 }, { capacityGb: 32 }],
        motherboard: {
          memory: {
            generation: 'ddr5',
            totalGb: 64,
            slots: [
              { id: 'a1', channel: 'a' },
              { id: 'b1', channel: 'b' },
            ],
          },
        },
      },
      verdict: 'fits',
    },
    {
      title: 'one size over',
      parts: {
        'memory-module': [{ capacityGb: 32 }, { capacityGb: 48 }],
        motherboard: {
          memory: {
            generation: 'ddr5',
            totalGb: 64,
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
      title: "one module's size is not recorded",
      parts: {
        'memory-module': [{ capacityGb: 32 }, { capacityGb: undefined }],
        motherboard: {
          memory: {
            generation: 'ddr5',
            totalGb: 64,
            slots: [
              { id: 'a1', channel: 'a' },
              { id: 'b1', channel: 'b' },
            ],
          },
        },
      },
      verdict: 'cannot-tell',
    },
    {
      title: "the board's limit is not recorded",
      parts: {
        'memory-module': { capacityGb: 32 },
        motherboard: { memory: { generation: 'ddr5', slots: [{ id: 'a1', channel: 'a' }] } },
      },
      verdict: 'cannot-tell',
    },
    { title: 'no memory on the list', parts: { motherboard: {} }, verdict: 'does-not-apply' },
  ],
});
