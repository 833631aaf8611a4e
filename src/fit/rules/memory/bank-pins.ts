import { bankModules } from '../../../standards/banks.ts';
import { capital, withArticle } from '../../../wording/phrases.ts';
import type { Fact } from '../../report.ts';
import { refusesRule } from '../../rule.ts';
import { lacks } from '../words.ts';

const named = (pins: Fact): string =>
  Object.entries(bankModules).find(([key]) => key === String(pins))?.[1].name ?? String(pins);

export const bankPins = refusesRule({
  id: 'memory/bank-pins',
  title: 'The module is of the make that the bank takes',
  severity: 'blocker',
  basis: 'maker',
  sources: ['maker-data-sheet', 'memory-banks'],
  lesson: 'fit/how-parts-meet',

  refuses: { kind: 'memory-bank', op: 'shares', need: 'pins', place: 'pins' },

  say: {
    fits: ({ part, on, need }) => `${part} is ${withArticle(named(need))}, and ${on} takes those.`,
    doesNotFit: ({ part, on, need, offered }) => ({
      headline: `${capital(withArticle(named(need)))}, banks for ${named(offered)}s`,
      what: `${part} is ${withArticle(named(need))}; the banks of ${on} take ${named(offered)}s.`,
      why: 'Modules of 30 and of 72 contacts differ in length, and a SIPP has pins in place of contacts; one does not go in where another belongs.',
      remedy: `Choose ${named(offered)}s, or a board that takes ${named(need)}s.`,
    }),
    cannotTell: (missing) =>
      lacks(missing, 'bank-module')
        ? {
            headline: 'How many contacts has the module?',
            what: "The module's make is not recorded, so this fit is not judged.",
            findOut: 'Measure it: about 90 mm long has 30 contacts, about 108 mm has 72; one with pins is a SIPP.',
          }
        : {
            headline: 'Which modules do the banks take?',
            what: 'The make of module that the banks take is not recorded, so this fit is not judged.',
            findOut: "Read it in the board's manual, or measure the sockets: about 90 mm is for 30 contacts.",
          },
  },

  examples: [
    {
      title: 'a 30-pin module and a bank for those',
      shelf: 'vintage',
      parts: {
        'bank-module': { pins: '30' },
        motherboard: { memoryBanks: [{ id: 'bank-0', slots: 1, pins: '30', largestKb: 4096, slowestNs: 80 }] },
      },
      verdict: 'fits',
    },
    {
      title: 'a 72-pin module and a bank for 30',
      shelf: 'vintage',
      parts: {
        'bank-module': { pins: '72' },
        motherboard: { memoryBanks: [{ id: 'bank-0', slots: 1, pins: '30', largestKb: 4096, slowestNs: 80 }] },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'the pins of one are those of the other, at the end of wires',
      shelf: 'vintage',
      parts: {
        'bank-module': { pins: 'sipp-30' },
        motherboard: { memoryBanks: [{ id: 'bank-0', slots: 1, pins: '30', largestKb: 4096, slowestNs: 80 }] },
      },
      verdict: 'does-not-fit',
    },
    {
      title: "the module's make is not recorded",
      shelf: 'vintage',
      parts: {
        'bank-module': { pins: undefined },
        motherboard: { memoryBanks: [{ id: 'bank-0', slots: 1, pins: '30', largestKb: 4096, slowestNs: 80 }] },
      },
      verdict: 'cannot-tell',
    },
    {
      title: 'no module on the list',
      shelf: 'vintage',
      parts: { motherboard: {} },
      verdict: 'does-not-apply',
    },
  ],
});
