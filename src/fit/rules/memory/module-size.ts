import { showGb } from '../../../units/amounts.ts';
import { refusesRule } from '../../rule.ts';
import { lacks } from '../words.ts';

export const moduleSize = refusesRule({
  id: 'memory/module-size',
  title: 'No module holds more than one slot of the board takes',
  severity: 'blocker',
  basis: 'maker',
  sources: ['maker-data-sheet'],
  lesson: 'fit/how-parts-meet',

  refuses: { kind: 'memory-slot', op: 'atMost', need: 'sizeGb', place: 'sizeGb' },

  say: {
    fits: ({ part, on, need, offered }) =>
      `${part} holds ${showGb(Number(need))}; ${on} allows ${showGb(Number(offered))} on one module.`,
    doesNotFit: ({ part, on, need, offered, difference }) => ({
      headline: `The module is ${showGb(Number(difference))} too large`,
      what: `${part} holds ${showGb(Number(need))}; ${on} allows ${showGb(Number(offered))} on one module, so it is ${showGb(Number(difference))} too large.`,
      why: 'The module goes into the slot, but the board does not start with it or sees only a part of it.',
      remedy: `Choose modules of ${showGb(Number(offered))} or less, or a board that allows ${showGb(Number(need))} on one module.`,
    }),
    cannotTell: (missing) =>
      lacks(missing, 'memory-module')
        ? {
            headline: 'How much does the module hold?',
            what: "The module's size is not recorded, so this fit is not judged.",
            findOut: 'Read the label on the module: the number before GB.',
          }
        : {
            headline: 'How large a module does the board take?',
            what: 'The largest module that the board takes is not recorded, so this fit is not judged.',
            findOut: "Read the page on memory in the board's manual, or its maker's list of tested modules.",
          },
  },

  examples: [
    {
      title: 'exactly at the limit',
      parts: {
        'memory-module': { generation: 'ddr5', registered: false, capacityGb: 32 },
        motherboard: {
          memory: { generation: 'ddr5', registered: false, moduleGb: 32, slots: [{ id: 'a2', channel: 'a' }] },
        },
      },
      verdict: 'fits',
    },
    {
      title: 'one size over',
      parts: {
        'memory-module': { generation: 'ddr5', registered: false, capacityGb: 48 },
        motherboard: {
          memory: { generation: 'ddr5', registered: false, moduleGb: 32, slots: [{ id: 'a2', channel: 'a' }] },
        },
      },
      verdict: 'does-not-fit',
    },
    {
      title: "the module's size is not recorded",
      parts: {
        'memory-module': { generation: 'ddr5', registered: false, capacityGb: undefined },
        motherboard: {
          memory: { generation: 'ddr5', registered: false, moduleGb: 32, slots: [{ id: 'a2', channel: 'a' }] },
        },
      },
      verdict: 'cannot-tell',
    },
    {
      title: "the board's limit is not recorded",
      parts: {
        'memory-module': { generation: 'ddr5', registered: false, capacityGb: 32 },
        motherboard: {
          memory: { generation: 'ddr5', registered: false, moduleGb: undefined, slots: [{ id: 'a2', channel: 'a' }] },
        },
      },
      verdict: 'cannot-tell',
    },
    {
      title: 'a module of another generation is refused before its size is looked at',
      parts: {
        'memory-module': { generation: 'ddr4', registered: false, capacityGb: 48 },
        motherboard: {
          memory: { generation: 'ddr5', registered: false, moduleGb: 32, slots: [{ id: 'a2', channel: 'a' }] },
        },
      },
      verdict: 'does-not-apply',
    },
  ],
});
