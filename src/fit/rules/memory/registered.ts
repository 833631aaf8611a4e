import { refusesRule } from '../../rule.ts';
import { lacks } from '../words.ts';

const kindOf = (value: unknown): string => (value === true ? 'registered' : 'unbuffered');

export const memoryRegistered = refusesRule({
  id: 'memory/registered',
  title: 'The memory is registered or unbuffered, as the board takes it',
  severity: 'blocker',
  basis: 'maker',
  sources: ['maker-data-sheet', 'jesd79-5'],
  lesson: 'fit/how-parts-meet',

  refuses: { kind: 'memory-slot', op: 'shares', need: 'registered', place: 'registered' },

  say: {
    fits: ({ part, on, need }) => `${part} is ${kindOf(need)} memory, which ${on} takes.`,
    doesNotFit: ({ part, on, need, offered }) => ({
      headline: `${need === true ? 'Registered' : 'Unbuffered'} memory, board for ${kindOf(offered)}`,
      what: `${part} is ${kindOf(need)} memory; ${on} takes ${kindOf(offered)} memory.`,
      why: 'Registered modules have an extra chip between the slot and the memory. A board made for one kind does not start with the other, and newer modules do not even go in.',
      remedy: `Choose ${kindOf(offered)} memory, or a board that takes ${kindOf(need)} memory.`,
    }),
    cannotTell: (missing) =>
      lacks(missing, 'memory-module')
        ? {
            headline: 'Is the memory registered or unbuffered?',
            what: 'Whether the module is registered is not recorded, so this fit is not judged.',
            findOut: 'Read the label on the module: RDIMM is registered, UDIMM is unbuffered.',
          }
        : {
            headline: 'Does the board take registered memory?',
            what: 'Whether the board takes registered memory is not recorded, so this fit is not judged.',
            findOut: "Read the page on memory in the board's manual: RDIMM is registered, UDIMM is unbuffered.",
          },
  },

  examples: [
    {
      title: 'unbuffered memory on a board for it',
      parts: {
        'memory-module': { generation: 'ddr5', registered: false, capacityGb: 16 },
        motherboard: {
          memory: { generation: 'ddr5', registered: false, moduleGb: 32, slots: [{ id: 'a2', channel: 'a' }] },
        },
      },
      verdict: 'fits',
    },
    {
      title: 'registered memory on a board for unbuffered',
      parts: {
        'memory-module': { generation: 'ddr5', registered: true, capacityGb: 16 },
        motherboard: {
          memory: { generation: 'ddr5', registered: false, moduleGb: 32, slots: [{ id: 'a2', channel: 'a' }] },
        },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'the module does not say',
      parts: {
        'memory-module': { generation: 'ddr5', registered: undefined, capacityGb: 16 },
        motherboard: {
          memory: { generation: 'ddr5', registered: false, moduleGb: 32, slots: [{ id: 'a2', channel: 'a' }] },
        },
      },
      verdict: 'cannot-tell',
    },
    {
      title: 'the board does not say',
      parts: {
        'memory-module': { generation: 'ddr5', registered: false, capacityGb: 16 },
        motherboard: {
          memory: { generation: 'ddr5', registered: undefined, moduleGb: 32, slots: [{ id: 'a2', channel: 'a' }] },
        },
      },
      verdict: 'cannot-tell',
    },
    { title: 'memory and no board', parts: { 'memory-module': { registered: true } }, verdict: 'does-not-apply' },
  ],
});
