import { count, list, spelled } from '../../../wording/phrases.ts';
import { leftRule } from '../../rule.ts';

export const slotFree = leftRule({
  id: 'expansion/slot-free',
  title: 'There is a free slot for every card, and cut-outs beside it',
  severity: 'blocker',
  basis: 'maker',
  sources: ['maker-data-sheet'],
  lesson: 'fit/how-parts-meet',

  left: 'expansion-slot',

  say: {
    fits: ({ part }) => `${part} has a slot, and cut-outs for all of its thickness.`,
    doesNotFit: ({ part, reason, mating, wanting, holders }) => {
      if (reason === 'taken')
        return {
          headline: `${count(wanting, 'card', 'cards')}, ${count(mating, 'slot', 'slots')} for them`,
          what: `The list has ${spelled(wanting, 'card', 'cards')}; the board has ${spelled(mating, 'slot', 'slots')} that ${part} goes into, and nothing is free.`,
          why: 'A slot holds one card.',
          remedy: 'Take one card off the list, or choose a board with one more slot.',
        };
      if (reason === 'spent')
        return holders.length > 0
          ? {
              headline: `${count(holders.length, 'card covers', 'cards cover')} the slot of another`,
              what: `${part} has no slot left: what is free is covered by ${list(holders)}.`,
              why: 'A card thicker than one slot lies over the slots below its own. They are still there, and nothing goes into them.',
              remedy: 'Choose a thinner card, or a board whose slots lie farther apart, or take one card off the list.',
            }
          : {
              headline: 'The case has too few cut-outs',
              what: `${part} reaches below the last cut-out at the back of the case, whichever slot it is put in.`,
              why: "The card's bracket meets solid metal where a cut-out would be, so the card does not go down into its slot.",
              remedy: 'Choose a thinner card, or a case with more cut-outs, or a board with a slot higher up.',
            };
      return {
        headline: 'The card has no slot to go into',
        what: `${part} needs a slot; nothing on the list offers one.`,
        why: 'A card gets its power and its data through a slot on the board.',
        remedy: 'Choose a board with a slot for the card, or take the card off the list.',
      };
    },
    cannotTell: (missing) =>
      missing.length === 0
        ? {
            headline: 'Is there a slot for every card?',
            what: 'Not every way of placing the cards was tried, so this is not judged.',
            findOut: 'Lay the cards out beside the board and give each one a slot, the thickest first.',
          }
        : {
            headline: 'Is there room for the card?',
            what: "The card's thickness, the board's slots or the case's cut-outs are not recorded, so this is not judged.",
            findOut:
              'Count the slots on the board and the cut-outs at the back of the case; they stand about 20 mm apart, so a card 50 mm thick takes 2.5.',
          },
  },

  examples: [
    {
      title: 'a card two slots thick and two cut-outs',
      parts: {
        'graphics-card': { lanes: 16, slotsThick: 2 },
        motherboard: {
          formFactor: 'micro-atx',
          expansionSlots: [{ id: 'x16-1', position: 1, lengthLanes: 16, lanes: 16, generation: 4 }],
        },
        chassis: { formFactors: ['micro-atx'], cutOuts: 2 },
      },
      verdict: 'fits',
    },
    {
      title: 'half a slot more than the cut-outs',
      parts: {
        'graphics-card': { lanes: 16, slotsThick: 2.5 },
        motherboard: {
          formFactor: 'micro-atx',
          expansionSlots: [{ id: 'x16-1', position: 1, lengthLanes: 16, lanes: 16, generation: 4 }],
        },
        chassis: { formFactors: ['micro-atx'], cutOuts: 2 },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'two cards and one slot',
      parts: {
        'graphics-card': [
          { lanes: 16, slotsThick: 1 },
          { lanes: 16, slotsThick: 1 },
        ],
        motherboard: { expansionSlots: [{ id: 'x16-1', position: 1, lengthLanes: 16, lanes: 16, generation: 4 }] },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'one card covers the slot of the other',
      parts: {
        'graphics-card': [
          { lanes: 16, slotsThick: 2.5 },
          { lanes: 16, slotsThick: 2.5 },
        ],
        motherboard: {
          expansionSlots: [
            { id: 'x16-1', position: 1, lengthLanes: 16, lanes: 16, generation: 4 },
            { id: 'x16-2', position: 3, lengthLanes: 16, lanes: 4, generation: 3 },
          ],
        },
      },
      verdict: 'does-not-fit',
    },
    { title: 'a card and no board', parts: { 'graphics-card': { lanes: 16 } }, verdict: 'does-not-fit' },
    {
      title: "the board's slots are not recorded",
      parts: { 'graphics-card': { lanes: 16 }, motherboard: { expansionSlots: undefined } },
      verdict: 'cannot-tell',
    },
    { title: 'no card on the list', parts: { motherboard: {} }, verdict: 'does-not-apply' },
  ],
});
