import { count, inWords, spelled } from '../../../wording/phrases.ts';
import { leftRule } from '../../rule.ts';

export const memorySlotsFree = leftRule({
  id: 'memory/slots-free',
  title: 'There is a slot for every memory module',
  severity: 'blocker',
  basis: 'maker',
  sources: ['maker-data-sheet'],
  lesson: 'fit/how-parts-meet',

  left: 'memory-slot',

  say: {
    fits: ({ part }) => `${part} has a memory slot.`,
    doesNotFit: ({ part, reason, places, wanting }) =>
      reason === 'taken'
        ? {
            headline: `${count(wanting, 'memory module', 'memory modules')}, ${count(places, 'slot', 'slots')}`,
            what: `The list has ${spelled(wanting, 'memory module', 'memory modules')} and the board ${spelled(places, 'slot', 'slots')}, so there ${wanting - places === 1 ? 'is' : 'are'} ${inWords(wanting - places)} too many.`,
            why: 'A slot holds one module.',
            remedy: `Take ${spelled(wanting - places, 'module', 'modules')} off the list, or choose fewer modules that hold more each, or a board with ${inWords(wanting)} slots or more.`,
          }
        : {
            headline: 'The memory has no slot to go into',
            what: `${part} needs a memory slot; nothing on the list offers one.`,
            why: 'Memory goes into slots on the board.',
            remedy: 'Choose a board that takes this kind of memory.',
          },
    cannotTell: (missing) =>
      missing.length === 0
        ? {
            headline: 'Is there a slot for every module?',
            what: 'Not every way of placing the modules was tried, so this is not judged.',
            findOut: 'Count the memory slots on the board and the modules on the list.',
          }
        : {
            headline: 'How many memory slots has the board?',
            what: "The board's memory slots are not recorded, so this is not judged.",
            findOut: 'Count the long slots beside the processor socket, or read the number in the manual.',
          },
  },

  examples: [
    {
      title: 'as many modules as slots',
      parts: {
        'memory-module': [
          { generation: 'ddr5', registered: false, capacityGb: 16 },
          { generation: 'ddr5', registered: false, capacityGb: 16 },
        ],
        motherboard: {
          memory: {
            generation: 'ddr5',
            registered: false,
            moduleGb: 32,
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
      title: 'one module more than slots',
      parts: {
        'memory-module': [
          { generation: 'ddr5', registered: false, capacityGb: 16 },
          { generation: 'ddr5', registered: false, capacityGb: 16 },
        ],
        motherboard: {
          memory: { generation: 'ddr5', registered: false, moduleGb: 32, slots: [{ id: 'a1', channel: 'a' }] },
        },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'memory and no board',
      parts: { 'memory-module': { generation: 'ddr5', registered: false, capacityGb: 16 } },
      verdict: 'does-not-fit',
    },
    {
      title: "the board's slots are not recorded",
      parts: {
        'memory-module': { generation: 'ddr5', registered: false, capacityGb: 16 },
        motherboard: { memory: undefined },
      },
      verdict: 'cannot-tell',
    },
    { title: 'no memory on the list', parts: { motherboard: {} }, verdict: 'does-not-apply' },
  ],
});
