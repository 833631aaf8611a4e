import { cannotTell, doesNotApply, doesNotFit, fits, jointRule } from '../../rule.ts';
import { partAs } from '../ends.ts';
import { lacks } from '../words.ts';

export const bankSpeed = jointRule({
  id: 'memory/bank-speed',
  title: 'The module answers as soon as the board asks',
  severity: 'blocker',
  basis: 'maker',
  sources: ['maker-data-sheet'],
  lesson: 'fit/how-parts-meet',

  at: 'memory-bank',
  reads: { 'bank-module': ['nanoseconds'] },
  judge({ need, place }) {
    const module = partAs(need.unit, 'bank-module');
    if (module === undefined) return doesNotApply;
    if (module.nanoseconds === undefined) return cannotTell(`${need.unit.id}.nanoseconds`);
    const slowest = place.attrs['slowestNs'];
    if (typeof slowest !== 'number') return cannotTell(`${place.unit.id}.memoryBanks`);

    const facts = {
      module: module.name,
      board: place.unit.part.name,
      takes: module.nanoseconds,
      slowest,
      over: module.nanoseconds - slowest,
    };
    return facts.over <= 0 ? fits(facts) : doesNotFit(facts);
  },

  say: {
    fits: ({ module, board, takes, slowest }) =>
      `${module} answers in ${takes} ns; ${board} allows ${slowest} ns in that bank.`,
    doesNotFit: ({ module, board, takes, slowest, over }) => ({
      headline: `The memory is ${over} ns too slow`,
      what: `${module} answers in ${takes} ns; ${board} allows ${slowest} ns in that bank, so it is ${over} ns too slow.`,
      why: 'The board reads before the module has answered. The machine stops at start-up, or later, with work unsaved.',
      remedy: `Choose modules of ${slowest} ns or less; a smaller number is faster. Or set one more wait state, where the board's maker allows modules of ${takes} ns that way.`,
    }),
    cannotTell: (missing) =>
      lacks(missing, 'bank-module')
        ? {
            headline: 'How fast is the module?',
            what: "The module's access time is not recorded, so this fit is not judged.",
            findOut: 'Read the figures after the dash on its chips: -70 or -7 is 70 ns.',
          }
        : {
            headline: 'How fast are the modules to be?',
            what: 'The slowest module that the bank takes is not recorded, so this fit is not judged.',
            findOut: "Read the table of banks in the board's manual.",
          },
  },

  examples: [
    {
      title: 'exactly as slow as the bank takes',
      shelf: 'vintage',
      parts: {
        'bank-module': { nanoseconds: 80 },
        motherboard: { memoryBanks: [{ id: 'bank-0', slots: 1, pins: '30', largestKb: 4096, slowestNs: 80 }] },
      },
      verdict: 'fits',
    },
    {
      title: 'one nanosecond slower',
      shelf: 'vintage',
      parts: {
        'bank-module': { nanoseconds: 81 },
        motherboard: { memoryBanks: [{ id: 'bank-0', slots: 1, pins: '30', largestKb: 4096, slowestNs: 80 }] },
      },
      verdict: 'does-not-fit',
    },
    {
      title: "the module's access time is not recorded",
      shelf: 'vintage',
      parts: {
        'bank-module': { nanoseconds: undefined },
        motherboard: { memoryBanks: [{ id: 'bank-0', slots: 1, pins: '30', largestKb: 4096, slowestNs: 80 }] },
      },
      verdict: 'cannot-tell',
    },
    {
      title: 'the slowest that the bank takes is not recorded',
      shelf: 'vintage',
      parts: {
        'bank-module': { nanoseconds: 80 },
        motherboard: { memoryBanks: [{ id: 'bank-0', slots: 1, pins: '30', largestKb: 4096 }] },
      },
      verdict: 'cannot-tell',
    },
    { title: 'no module on the list', shelf: 'vintage', parts: { motherboard: {} }, verdict: 'does-not-apply' },
  ],
});
