import { showMemory } from '../../../units/amounts.ts';
import { cannotTell, doesNotApply, doesNotFit, fits, gathersRule } from '../../rule.ts';
import { lacks } from '../words.ts';

export const bankTotal = gathersRule({
  id: 'memory/bank-total',
  title: 'The banks of the board hold no more than it can use',
  severity: 'blocker',
  basis: 'maker',
  sources: ['maker-data-sheet'],
  lesson: 'fit/choosing-for-a-purpose',

  gathers: { 'bank-module': ['capacityKb'], motherboard: ['memoryTotalKb'] },
  sees: ['memory-bank'],
  judge({ 'bank-module': listed, motherboard: boards }, { joints }) {
    const [board] = boards;
    if (board === undefined) return doesNotApply;
    // A memory card reaches its own modules through a window; they take none of the board's address wires.
    const modules = listed.filter(({ unit }) =>
      joints.some(({ need, place }) => need.startsWith(`${unit}/`) && place.startsWith(`${board.unit}/`)),
    );
    if (modules.length === 0) return doesNotApply;
    if (board.memoryTotalKb === undefined) return cannotTell(`${board.unit}.memoryTotalKb`);

    const total = modules.reduce((sum, { capacityKb }) => sum + (capacityKb ?? 0), 0);
    const limit = board.memoryTotalKb;
    const facts = { board: board.name, total, limit, over: total - limit };
    if (total > limit) return doesNotFit(facts, [...modules.map(({ unit }) => unit), board.unit]);
    const unknown = modules.filter(({ capacityKb }) => capacityKb === undefined);
    return unknown.length > 0 ? cannotTell(...unknown.map(({ unit }) => `${unit}.capacityKb`)) : fits(facts);
  },

  say: {
    fits: ({ board, total, limit }) =>
      `The banks of the board hold ${showMemory(total)} in all; ${board} can use ${showMemory(limit)}.`,
    doesNotFit: ({ board, total, limit, over }) => ({
      headline: `The memory is ${showMemory(over)} too much`,
      what: `The banks of the board hold ${showMemory(total)} in all; ${board} can use ${showMemory(limit)}, so it is ${showMemory(over)} too much.`,
      why: 'The board counts no further than it has address wires: the rest of the memory is not seen, or the machine does not start.',
      remedy: `Choose ${showMemory(limit)} of memory or less for the board, or a board that can use ${showMemory(total)} or more.`,
    }),
    cannotTell: (missing) =>
      lacks(missing, 'bank-module')
        ? {
            headline: 'How much memory is it in all?',
            what: 'The size of a module is not recorded, so the sum is not judged.',
            findOut: 'Look up the number on its chips: eight or nine chips of 1 megabit make 1 MB.',
          }
        : {
            headline: 'How much memory can the board use?',
            what: 'The most memory that the board can use is not recorded, so the sum is not judged.',
            findOut: "Read the page on memory in the board's manual.",
          },
  },

  examples: [
    {
      title: 'exactly as much as the board can use',
      shelf: 'vintage',
      parts: { 'bank-module': [{}, {}, {}, {}], motherboard: { memoryTotalKb: 4096 } },
      verdict: 'fits',
    },
    {
      title: 'one kilobyte more',
      shelf: 'vintage',
      parts: { 'bank-module': [{}, {}, {}, {}], motherboard: { memoryTotalKb: 4095 } },
      verdict: 'does-not-fit',
    },
    {
      title: 'modules on a memory card are beside it',
      shelf: 'vintage',
      parts: {
        'bank-module': [{}, {}, {}, {}, {}, {}],
        motherboard: {
          memoryTotalKb: 4096,
          memoryBanks: [{ id: 'bank-0', slots: 4, pins: '30', largestKb: 1024, slowestNs: 80 }],
        },
        'bus-card': {
          roles: ['memory'],
          memoryBanks: [{ id: 'bank-8', slots: 2, pins: '30', largestKb: 1024, slowestNs: 100 }],
        },
      },
      verdict: 'fits',
    },
    {
      title: 'a memory card does not make room on the board',
      shelf: 'vintage',
      parts: {
        'bank-module': [{}, {}, {}, {}, {}, {}],
        motherboard: {
          memoryTotalKb: 2048,
          memoryBanks: [{ id: 'bank-0', slots: 4, pins: '30', largestKb: 1024, slowestNs: 80 }],
        },
        'bus-card': {
          roles: ['memory'],
          memoryBanks: [{ id: 'bank-8', slots: 2, pins: '30', largestKb: 1024, slowestNs: 100 }],
        },
      },
      verdict: 'does-not-fit',
    },
    {
      title: "the module's size is not recorded",
      shelf: 'vintage',
      parts: {
        'bank-module': { capacityKb: undefined },
        motherboard: {
          memoryTotalKb: 4096,
          memoryBanks: [{ id: 'bank-0', slots: 1, pins: '30', largestKb: 4096, slowestNs: 80 }],
        },
      },
      verdict: 'cannot-tell',
    },
    {
      title: 'what the board can use is not recorded',
      shelf: 'vintage',
      parts: { 'bank-module': [{}, {}, {}, {}], motherboard: { memoryTotalKb: undefined } },
      verdict: 'cannot-tell',
    },
    { title: 'no module on the list', shelf: 'vintage', parts: { motherboard: {} }, verdict: 'does-not-apply' },
  ],
});
