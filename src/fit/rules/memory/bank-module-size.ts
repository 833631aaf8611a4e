import { showMemory } from '../../../units/amounts.ts';
import { refusesRule } from '../../rule.ts';
import { lacks } from '../words.ts';

const size = (value: unknown): string => showMemory(Number(value));

export const bankModuleSize = refusesRule({
  id: 'memory/bank-module-size',
  title: 'The module is no larger than the bank takes',
  severity: 'blocker',
  basis: 'maker',
  sources: ['maker-data-sheet'],
  lesson: 'fit/how-parts-meet',

  refuses: { kind: 'memory-bank', op: 'atMost', need: 'capacityKb', place: 'largestKb' },

  say: {
    fits: ({ part, on, need, offered }) =>
      `${part} holds ${size(need)}; ${on} takes modules of up to ${size(offered)} there.`,
    doesNotFit: ({ part, on, need, offered, difference }) => ({
      headline: `The module is ${size(difference)} too large`,
      what: `${part} holds ${size(need)}; ${on} takes modules of up to ${size(offered)} there, so it is ${size(difference)} too large.`,
      why: 'The board has too few address wires to that bank: it sees part of the module, or does not start.',
      remedy: `Choose modules of ${size(offered)} or less, or a board that takes ${size(need)} or more.`,
    }),
    cannotTell: (missing) =>
      lacks(missing, 'bank-module')
        ? {
            headline: 'How much does the module hold?',
            what: "The module's size is not recorded, so this fit is not judged.",
            findOut: 'Look up the number on its chips: eight or nine chips of 1 megabit make 1 MB.',
          }
        : {
            headline: 'How large a module does the bank take?',
            what: 'The largest module that the bank takes is not recorded, so this fit is not judged.',
            findOut: "Read the table of banks in the board's manual.",
          },
  },

  examples: [
    {
      title: 'exactly the largest',
      shelf: 'vintage',
      parts: {
        'bank-module': { capacityKb: 4096 },
        motherboard: { memoryBanks: [{ id: 'bank-0', slots: 1, pins: '30', largestKb: 4096 }] },
      },
      verdict: 'fits',
    },
    {
      title: 'one kilobyte more than the bank takes',
      shelf: 'vintage',
      parts: {
        'bank-module': { capacityKb: 4097 },
        motherboard: { memoryBanks: [{ id: 'bank-0', slots: 1, pins: '30', largestKb: 4096 }] },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'a module four times as large',
      shelf: 'vintage',
      parts: {
        'bank-module': { capacityKb: 4096 },
        motherboard: { memoryBanks: [{ id: 'bank-0', slots: 1, pins: '30', largestKb: 1024 }] },
      },
      verdict: 'does-not-fit',
    },
    {
      title: "the module's size is not recorded",
      shelf: 'vintage',
      parts: {
        'bank-module': { capacityKb: undefined },
        motherboard: { memoryBanks: [{ id: 'bank-0', slots: 1, pins: '30', largestKb: 4096 }] },
      },
      verdict: 'cannot-tell',
    },
    {
      title: 'the largest that the bank takes is not recorded',
      shelf: 'vintage',
      parts: {
        'bank-module': { capacityKb: 4096 },
        motherboard: { memoryBanks: [{ id: 'bank-0', slots: 1, pins: '30' }] },
      },
      verdict: 'cannot-tell',
    },
    { title: 'no module on the list', shelf: 'vintage', parts: { motherboard: {} }, verdict: 'does-not-apply' },
  ],
});
