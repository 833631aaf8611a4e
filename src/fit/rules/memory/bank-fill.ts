import { capital, count, inWords, spelled } from '../../../wording/phrases.ts';
import { leftRule } from '../../rule.ts';

export const bankFill = leftRule({
  id: 'memory/bank-fill',
  title: 'The modules fill whole banks',
  severity: 'blocker',
  basis: 'standard',
  sources: ['memory-banks'],
  lesson: 'fit/how-parts-meet',

  left: 'memory-bank',

  say: {
    fits: ({ part }) => `${part} is in a bank that is filled.`,
    doesNotFit: ({ part, reason, places, fill, alike }) => {
      if (reason === 'too-few-alike' && fill !== null && alike !== null)
        return {
          headline: `A bank of ${fill}, ${count(alike, 'module', 'modules')} for it`,
          what: `A bank here takes ${inWords(fill)} modules of one size and speed; of ${part} there ${alike === 1 ? 'is' : 'are'} ${inWords(alike)} left for it, so ${inWords(fill - alike)} ${fill - alike === 1 ? 'is' : 'are'} missing.`,
          why: 'The processor reads a whole bank at once, a few bits from each module. A bank that is part full or mixed is not seen, or the machine does not start.',
          remedy: `Add ${spelled(fill - alike, 'module', 'modules')} of the same size and speed, or take ${alike === 1 ? 'it' : `these ${inWords(alike)}`} off the list, or choose fewer modules that hold more each.`,
        };
      if (reason === 'taken')
        return {
          headline: `More modules than ${count(places, 'bank takes', 'banks take')}`,
          what: `${part} has no bank: ${places === 1 ? 'the one bank is' : `all ${inWords(places)} banks are`} filled by other modules.`,
          why: `${capital(places === 1 ? 'a bank has' : 'banks have')} as many sockets as the board has wires for, and no more.`,
          remedy:
            'Take these modules off the list, or choose fewer that hold more each, or a board or a memory card with another bank.',
        };
      return {
        headline: 'The memory has no bank to go into',
        what: `${part} goes into a bank of sockets; nothing on the list has one that is ready.`,
        why: 'Memory of this kind works only in whole banks on a board or a memory card.',
        remedy: 'Choose a board with banks for such modules.',
      };
    },
    cannotTell: (missing) =>
      missing.length === 0
        ? {
            headline: 'Do the modules fill whole banks?',
            what: 'Not every way of filling the banks was tried, so this is not judged.',
            findOut: 'Sort the modules by size and speed, and fill bank 0 first, with equal ones.',
          }
        : {
            headline: 'How many banks has the board?',
            what: "The board's memory banks are not recorded, so this is not judged.",
            findOut: 'Read the marks beside the sockets: bank 0, bank 1, and count the sockets of each.',
          },
  },

  examples: [
    {
      title: 'four alike for a bank of four',
      shelf: 'vintage',
      parts: { 'bank-module': [{}, {}, {}, {}], motherboard: {} },
      verdict: 'fits',
    },
    {
      title: 'three for a bank of four',
      shelf: 'vintage',
      parts: { 'bank-module': [{}, {}, {}], motherboard: {} },
      verdict: 'does-not-fit',
    },
    {
      title: 'four for a bank of four, one of them of another size',
      shelf: 'vintage',
      parts: { 'bank-module': [{}, {}, {}, { capacityKb: 256 }], motherboard: {} },
      verdict: 'does-not-fit',
    },
    {
      title: 'two more than the only bank takes',
      shelf: 'vintage',
      parts: {
        'bank-module': [{}, {}, {}, {}],
        motherboard: { memoryBanks: [{ id: 'bank-0', slots: 2, pins: '30', largestKb: 4096, slowestNs: 80 }] },
      },
      verdict: 'does-not-fit',
    },
    { title: 'a module and no board', shelf: 'vintage', parts: { 'bank-module': {} }, verdict: 'does-not-fit' },
    {
      title: "the board's banks are not recorded",
      shelf: 'vintage',
      parts: { 'bank-module': {}, motherboard: { memoryBanks: undefined } },
      verdict: 'cannot-tell',
    },
    { title: 'no module on the list', shelf: 'vintage', parts: { motherboard: {} }, verdict: 'does-not-apply' },
  ],
});
