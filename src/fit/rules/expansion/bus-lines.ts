import { list } from '../../../wording/phrases.ts';
import { termName } from '../../../wording/terms.ts';
import { leftRule } from '../../rule.ts';
import { lacks } from '../words.ts';

export const busLines = leftRule({
  id: 'expansion/bus-lines',
  title: 'No two cards want the same line of the bus',
  severity: 'blocker',
  basis: 'standard',
  sources: ['bus-peaks', 'from-memory'],
  lesson: 'fit/how-parts-meet',

  left: 'setting',
  plugTest: { need: 'block', place: 'block' },

  say: {
    fits: ({ part }) => `The lines that ${part} uses are its own.`,
    doesNotFit: ({ part, needName, resource, capacity, holders }) => {
      const isFixed = needName === 'lines';
      if (resource === 'high-line')
        return {
          headline: 'The slot has not that interrupt',
          what: `${part} asks for a line that only the long part of a 16-bit slot has, and it is in a short slot.`,
          why: 'The wire ends at the long part of the slot, so what the card calls is never heard.',
          remedy: 'Free a long slot for it, or choose a card with a lower interrupt.',
        };
      const line = resource === null ? 'a line that is free' : termName(resource);
      const by = holders.filter((name) => name !== part);
      return {
        headline: isFixed ? 'Two want one line of the bus' : 'No position of the jumper is free',
        what: `${part} ${isFixed ? 'keeps' : 'wants'} ${line}${isFixed ? ', with no jumper to move it' : ' in every position that is left'}; ${
          capacity === 0
            ? 'the board keeps it for itself'
            : by.length > 0
              ? `${list(by)} ${by.length === 1 ? 'has' : 'have'} it`
              : 'another card of the same make has it'
        }.`,
        why: 'When two call on one wire, neither is heard for certain: the machine hangs, or one of the two does nothing.',
        remedy: isFixed
          ? 'Take one of the two off the list, or choose a card with a jumper for that line.'
          : 'No setting of all the jumpers works. Take one card off the list, or choose one with more positions.',
      };
    },
    cannotTell: (missing) =>
      missing.length === 0
        ? {
            headline: 'Do the jumpers have a setting that works?',
            what: 'Not every setting of the jumpers was tried, so this is not judged.',
            findOut: 'Write down the lines of every card in a table, the cards without jumpers first.',
          }
        : lacks(missing, 'motherboard')
          ? {
              headline: 'Which lines does the board keep?',
              what: 'The lines that the board keeps for itself are not recorded, so clashes are not judged.',
              findOut: "Read the table of interrupts in the board's manual.",
            }
          : {
              headline: 'Which lines does the card use?',
              what: 'The lines that the card uses, or its jumpers, are not recorded, so clashes are not judged.',
              findOut: "Look for pairs of pins with a cap on them, and read their table in the card's leaflet.",
            },
  },

  examples: [
    {
      title: 'a card with lines of its own',
      shelf: 'vintage',
      parts: { 'bus-card': {}, motherboard: {} },
      verdict: 'fits',
    },
    {
      title: 'two that want interrupt 5, and one of them can move',
      shelf: 'vintage',
      parts: {
        'bus-card': [
          { buses: ['isa-8'], lines: ['irq-5'], settings: [] },
          {
            buses: ['isa-8'],
            lines: [],
            settings: [
              {
                id: 'irq',
                says: 'interrupt',
                positions: [
                  { id: '5', lines: ['irq-5'] },
                  { id: '3', lines: ['irq-3'] },
                ],
              },
            ],
          },
        ],
        motherboard: {},
      },
      verdict: 'fits',
    },
    {
      title: 'two that want interrupt 5, and neither can move',
      shelf: 'vintage',
      parts: {
        'bus-card': [
          { buses: ['isa-8'], lines: ['irq-5'], settings: [] },
          { buses: ['isa-8'], lines: ['irq-5', 'io-300'], settings: [] },
        ],
        motherboard: {},
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'the only position of a jumper is a line that the board keeps',
      shelf: 'vintage',
      parts: {
        'bus-card': {
          buses: ['isa-8'],
          lines: [],
          settings: [{ id: 'irq', says: 'interrupt', positions: [{ id: '2', lines: ['irq-2'] }] }],
        },
        motherboard: { takenLines: ['irq-2'] },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'interrupt 10 in a short slot',
      shelf: 'vintage',
      parts: {
        'bus-card': { buses: ['isa-16', 'isa-16-short'], lines: ['irq-10'], settings: [] },
        motherboard: { busSlots: [{ id: 'short-1', position: 1, buses: ['isa-8'] }] },
      },
      verdict: 'does-not-fit',
    },
    {
      title: "the card's jumpers are not recorded",
      shelf: 'vintage',
      parts: { 'bus-card': { settings: undefined }, motherboard: {} },
      verdict: 'cannot-tell',
    },
    {
      title: 'what the board keeps is not recorded',
      shelf: 'vintage',
      parts: { 'bus-card': {}, motherboard: { takenLines: undefined } },
      verdict: 'cannot-tell',
    },
    { title: 'no card on the list', shelf: 'vintage', parts: { motherboard: {} }, verdict: 'does-not-apply' },
  ],
});
