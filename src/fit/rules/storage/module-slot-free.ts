import { count, list, spelled } from '../../../wording/phrases.ts';
import { leftRule } from '../../rule.ts';

export const moduleSlotFree = leftRule({
  id: 'storage/module-slot-free',
  title: 'There is an M.2 slot for every M.2 drive',
  severity: 'blocker',
  basis: 'maker',
  sources: ['maker-data-sheet'],
  lesson: 'fit/how-parts-meet',

  left: 'module-slot',

  say: {
    fits: ({ part }) => `${part} has an M.2 slot.`,
    doesNotFit: ({ part, reason, mating, wanting, holders }) => {
      if (reason === 'taken')
        return {
          headline: `${count(wanting, 'M.2 drive', 'M.2 drives')}, ${count(mating, 'slot', 'slots')} for them`,
          what: `The list has ${spelled(wanting, 'M.2 drive', 'M.2 drives')}; the board has ${spelled(mating, 'slot', 'slots')} that ${part} goes into, and nothing is free.`,
          why: 'An M.2 slot holds one drive.',
          remedy:
            'Take one M.2 drive off the list, or choose one drive that holds more, or a board with one more M.2 slot.',
        };
      if (reason === 'spent')
        return {
          headline: 'The M.2 slot shares with a port',
          what: `${part} has no M.2 slot left: the free slot works only while data ports are unused that ${list(holders)} ${holders.length === 1 ? 'needs' : 'need'}.`,
          why: 'The board has one set of wires for the slot and the ports, and one of them is off while the other is used.',
          remedy: 'Take one drive off the list, or choose a board with more data ports or one more M.2 slot.',
        };
      return {
        headline: 'The M.2 drive has no slot',
        what: `${part} needs an M.2 slot; nothing on the list offers one.`,
        why: 'An M.2 drive is a bare module; it has no plug for a cable and goes straight into the board.',
        remedy: 'Choose a board with an M.2 slot, or a drive in a box.',
      };
    },
    cannotTell: (missing) =>
      missing.length === 0
        ? {
            headline: 'Is there a slot for every drive?',
            what: 'Not every way of placing the drives was tried, so this is not judged.',
            findOut:
              'Give each M.2 drive a slot, one by one, with the table of slots and ports in the manual beside you.',
          }
        : {
            headline: 'How many M.2 slots has the board?',
            what: "The board's M.2 slots are not recorded, so this is not judged.",
            findOut: 'Count them on the board, under its metal covers too, or read the page on M.2 in its manual.',
          },
  },

  examples: [
    {
      title: 'one drive and one slot',
      parts: {
        'storage-drive': { build: 'm2', key: 'm', lengthMm: 80, link: 'pcie' },
        motherboard: {
          moduleSlots: [{ id: 'm2-1', key: 'm', lengthsMm: [80], links: ['pcie'], lanes: 4, generation: 4 }],
        },
      },
      verdict: 'fits',
    },
    {
      title: 'two drives and one slot',
      parts: {
        'storage-drive': [
          { build: 'm2', key: 'm', lengthMm: 80, link: 'pcie' },
          { build: 'm2', key: 'm', lengthMm: 80, link: 'pcie' },
        ],
        motherboard: {
          moduleSlots: [{ id: 'm2-1', key: 'm', lengthsMm: [80], links: ['pcie'], lanes: 4, generation: 4 }],
        },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'a board without M.2 slots',
      parts: {
        'storage-drive': { build: 'm2', key: 'm', lengthMm: 80, link: 'pcie' },
        motherboard: { moduleSlots: [] },
      },
      verdict: 'does-not-fit',
    },
    {
      title: "the board's slots are not recorded",
      parts: {
        'storage-drive': { build: 'm2', key: 'm', lengthMm: 80, link: 'pcie' },
        motherboard: { moduleSlots: undefined },
      },
      verdict: 'cannot-tell',
    },
    { title: 'a drive in a box', parts: { 'storage-drive': { build: '2.5' } }, verdict: 'does-not-apply' },
  ],
});
