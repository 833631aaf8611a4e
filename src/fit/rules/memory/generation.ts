import { refusesRule } from '../../rule.ts';
import { lacks, oneOf } from '../words.ts';

export const memoryGeneration = refusesRule({
  id: 'memory/generation',
  title: 'The memory is of the generation that the board takes',
  severity: 'blocker',
  basis: 'standard',
  sources: ['jesd79-4', 'jesd79-5'],
  lesson: 'fit/how-parts-meet',

  refuses: { kind: 'memory-slot', op: 'shares', need: 'generation', place: 'generation' },

  say: {
    fits: ({ part, on, need }) => `${part} is ${oneOf(need)}, and ${on} takes ${oneOf(need)}.`,
    doesNotFit: ({ part, on, need, offered }) => ({
      headline: `${oneOf(need)} memory, ${oneOf(offered)} slots`,
      what: `${part} is ${oneOf(need)}; the slots of ${on} take ${oneOf(offered)}.`,
      why: "The notch in the module's edge does not lie over the bridge in the slot, so the module does not go in; the two also run at different voltages.",
      remedy: `Choose ${oneOf(offered)} memory, or a board that takes ${oneOf(need)}. A module must never be forced.`,
    }),
    cannotTell: (missing) =>
      lacks(missing, 'memory-module')
        ? {
            headline: 'Which generation is the memory?',
            what: "The module's generation is not recorded, so this fit is not judged.",
            findOut: 'Read the label on the module: it says DDR4 or DDR5.',
          }
        : {
            headline: 'Which memory does the board take?',
            what: 'The generation of memory that the board takes is not recorded, so this fit is not judged.',
            findOut: "Read it on the board beside the slots, or in the board's manual.",
          },
  },

  examples: [
    {
      title: 'DDR5 in a DDR5 slot',
      parts: {
        'memory-module': { generation: 'ddr5', registered: false, capacityGb: 16 },
        motherboard: {
          memory: { generation: 'ddr5', registered: false, moduleGb: 32, slots: [{ id: 'a2', channel: 'a' }] },
        },
      },
      verdict: 'fits',
    },
    {
      title: 'DDR4 at a DDR5 slot',
      parts: {
        'memory-module': { generation: 'ddr4', registered: false, capacityGb: 16 },
        motherboard: {
          memory: { generation: 'ddr5', registered: false, moduleGb: 32, slots: [{ id: 'a2', channel: 'a' }] },
        },
      },
      verdict: 'does-not-fit',
    },
    {
      title: "the module's generation is not recorded",
      parts: {
        'memory-module': { generation: undefined, registered: false, capacityGb: 16 },
        motherboard: {
          memory: { generation: 'ddr5', registered: false, moduleGb: 32, slots: [{ id: 'a2', channel: 'a' }] },
        },
      },
      verdict: 'cannot-tell',
    },
    {
      title: "the board's generation is not recorded",
      parts: {
        'memory-module': { generation: 'ddr5', registered: false, capacityGb: 16 },
        motherboard: {
          memory: { generation: undefined, registered: false, moduleGb: 32, slots: [{ id: 'a2', channel: 'a' }] },
        },
      },
      verdict: 'cannot-tell',
    },
    { title: 'memory and no board', parts: { 'memory-module': { generation: 'ddr4' } }, verdict: 'does-not-apply' },
  ],
});
