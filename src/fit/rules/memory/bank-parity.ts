import { cannotTell, doesNotApply, doesNotFit, fits, jointRule } from '../../rule.ts';
import { partAs } from '../ends.ts';
import { lacks } from '../words.ts';

export const bankParity = jointRule({
  id: 'memory/bank-parity',
  title: 'The module has the parity bit that the board looks for',
  severity: 'blocker',
  basis: 'maker',
  sources: ['maker-data-sheet', 'memory-banks'],
  lesson: 'fit/how-parts-meet',

  at: 'memory-bank',
  reads: { 'bank-module': ['hasParity'], motherboard: ['wantsParity'] },
  judge({ need, place }) {
    const module = partAs(need.unit, 'bank-module');
    const board = partAs(place.unit, 'motherboard');
    if (module === undefined || board === undefined) return doesNotApply;
    if (module.hasParity === undefined && board.wantsParity !== false) return cannotTell(`${need.unit.id}.hasParity`);
    if (board.wantsParity === undefined && module.hasParity === false)
      return cannotTell(`${place.unit.id}.wantsParity`);

    const facts = { module: module.name, board: board.name, hasParity: module.hasParity ?? false };
    return facts.hasParity || board.wantsParity === false ? fits(facts) : doesNotFit(facts);
  },

  say: {
    fits: ({ module, board, hasParity }) =>
      hasParity
        ? `${module} has parity, and ${board} finds it.`
        : `${board} does not ask for parity, and ${module} has none.`,
    doesNotFit: ({ module, board }) => ({
      headline: 'The memory has no parity',
      what: `${module} has eight bits to a byte and no ninth for parity; ${board} looks for the ninth.`,
      why: 'The board takes the missing bit for a fault in the memory and stops at start-up.',
      remedy: 'Choose modules with parity, most often nine chips in place of eight, or a board that does without.',
    }),
    cannotTell: (missing) =>
      lacks(missing, 'bank-module')
        ? {
            headline: 'Has the module parity?',
            what: 'Whether the module has parity is not recorded, so this fit is not judged.',
            findOut: 'Count its chips: nine, or two large ones and a small one, have parity; eight have not.',
          }
        : {
            headline: 'Does the board look for parity?',
            what: 'Whether the board looks for parity is not recorded, so this fit is not judged.',
            findOut: "Read the page on memory in the board's manual; some boards have a switch for it.",
          },
  },

  examples: [
    {
      title: 'parity is looked for, and is there',
      shelf: 'vintage',
      parts: { 'bank-module': [{}, {}, {}, {}], motherboard: { wantsParity: true } },
      verdict: 'fits',
    },
    {
      title: 'no parity, and none is looked for',
      shelf: 'vintage',
      parts: {
        'bank-module': { hasParity: false },
        motherboard: {
          wantsParity: false,
          memoryBanks: [{ id: 'bank-0', slots: 1, pins: '30', largestKb: 4096, slowestNs: 80 }],
        },
      },
      verdict: 'fits',
    },
    {
      title: 'no parity, and the board looks for it',
      shelf: 'vintage',
      parts: {
        'bank-module': { hasParity: false },
        motherboard: {
          wantsParity: true,
          memoryBanks: [{ id: 'bank-0', slots: 1, pins: '30', largestKb: 4096, slowestNs: 80 }],
        },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'not recorded whether the module has parity',
      shelf: 'vintage',
      parts: {
        'bank-module': { hasParity: undefined },
        motherboard: {
          wantsParity: true,
          memoryBanks: [{ id: 'bank-0', slots: 1, pins: '30', largestKb: 4096, slowestNs: 80 }],
        },
      },
      verdict: 'cannot-tell',
    },
    {
      title: 'not recorded whether the board looks for it',
      shelf: 'vintage',
      parts: {
        'bank-module': { hasParity: false },
        motherboard: {
          wantsParity: undefined,
          memoryBanks: [{ id: 'bank-0', slots: 1, pins: '30', largestKb: 4096, slowestNs: 80 }],
        },
      },
      verdict: 'cannot-tell',
    },
    { title: 'no module on the list', shelf: 'vintage', parts: { motherboard: {} }, verdict: 'does-not-apply' },
  ],
});
