import { refusesRule } from '../../rule.ts';
import { lacks } from '../words.ts';

export const slotLength = refusesRule({
  id: 'expansion/slot-length',
  title: 'The card is no longer at its edge than a slot',
  severity: 'blocker',
  basis: 'standard',
  sources: ['pci-express-base'],
  lesson: 'fit/how-parts-meet',

  refuses: { kind: 'expansion-slot', op: 'atMost', need: 'lanes', place: 'lengthLanes' },

  say: {
    fits: ({ part, need, offered }) => `${part} has an edge for x${need}, and its slot takes x${offered}.`,
    doesNotFit: ({ part, on, need, offered }) => ({
      headline: `An x${need} card, and slots for x${offered}`,
      what: `${part} has an edge for x${need}; the longest slot left on ${on} takes x${offered}.`,
      why: 'A card must go into a slot as long as its edge or longer; the end of a shorter slot stops it.',
      remedy: `Choose a card for x${offered} or less, or a board with one more slot for x${need}.`,
    }),
    cannotTell: (missing) =>
      lacks(missing, 'graphics-card')
        ? {
            headline: 'How long is the edge of the card?',
            what: 'The number of lanes at the edge of the card is not recorded, so this fit is not judged.',
            findOut:
              "Read it on the card's maker's sheet, or hold the edge beside a slot: one of 25 mm is x1, 39 mm x4, 56 mm x8, 89 mm x16.",
          }
        : {
            headline: 'How long are the slots of the board?',
            what: "The length of the board's slots is not recorded, so this fit is not judged.",
            findOut: 'Measure the slots: 25 mm is x1, 39 mm x4, 56 mm x8, 89 mm x16.',
          },
  },

  examples: [
    {
      title: 'an x16 card in an x16 slot',
      parts: {
        'graphics-card': { lanes: 16, slotsThick: 1 },
        motherboard: { expansionSlots: [{ id: 'x16-1', position: 1, lengthLanes: 16, lanes: 16, generation: 4 }] },
      },
      verdict: 'fits',
    },
    {
      title: 'an x4 card in an x16 slot',
      parts: {
        'graphics-card': { lanes: 4, slotsThick: 1 },
        motherboard: { expansionSlots: [{ id: 'x16-1', position: 1, lengthLanes: 16, lanes: 16, generation: 4 }] },
      },
      verdict: 'fits',
    },
    {
      title: 'an x16 card and only an x8 slot',
      parts: {
        'graphics-card': { lanes: 16, slotsThick: 1 },
        motherboard: { expansionSlots: [{ id: 'x8-1', position: 1, lengthLanes: 8, lanes: 8, generation: 4 }] },
      },
      verdict: 'does-not-fit',
    },
    {
      title: "the card's lanes are not recorded",
      parts: {
        'graphics-card': { lanes: undefined, slotsThick: 1 },
        motherboard: { expansionSlots: [{ id: 'x16-1', position: 1, lengthLanes: 16, lanes: 16, generation: 4 }] },
      },
      verdict: 'cannot-tell',
    },
    { title: 'a card and no board', parts: { 'graphics-card': { lanes: 16 } }, verdict: 'does-not-apply' },
  ],
});
