import { showMm } from '../../../units/amounts.ts';
import { refusesRule } from '../../rule.ts';
import { lacks } from '../words.ts';

export const radiatorCard = refusesRule({
  id: 'clearance/radiator-card',
  title: 'A radiator at the front leaves room for the length of the card',
  severity: 'blocker',
  basis: 'maker',
  sources: ['maker-data-sheet'],
  lesson: 'fit/how-parts-meet',

  refuses: { kind: 'radiator-mount', op: 'atMost', need: 'reachMm', place: 'cardRoomMm' },

  say: {
    fits: ({ part, on, need, offered }) =>
      need === null || offered === null
        ? `The radiator of ${part} is not in the way of a card.`
        : `The longest card, the radiator of ${part} and its fans are ${showMm(Number(need))} together; ${on} has ${showMm(Number(offered))}.`,
    doesNotFit: ({ part, on, need, offered, difference }) => ({
      headline: `Card and radiator are ${showMm(Number(difference))} too long`,
      what: `The longest card, the radiator of ${part} and its fans are ${showMm(Number(need))} together; from the rear bracket to the front ${on} has ${showMm(Number(offered))}, so ${showMm(Number(difference))} too little. No other panel takes the radiator.`,
      why: 'The far end of the card meets the fans of the radiator before its bracket reaches the back of the case.',
      remedy: `Choose a card that is ${showMm(Number(difference))} shorter, or a case that takes the radiator at the top or has ${showMm(Number(need))} for both, or a cooler without a radiator.`,
    }),
    cannotTell: (missing) =>
      lacks(missing, 'chassis')
        ? {
            headline: 'How long a card does the case allow?',
            what: 'The room for a card is not recorded, so it is not judged whether a radiator at the front leaves enough of it.',
            findOut: 'Measure inside the case from the rear bracket to the front wall.',
          }
        : {
            headline: 'How long is the card?',
            what: "A card's length is not recorded, so it is not judged whether the radiator at the front is in its way.",
            findOut: "Read it on the maker's sheet, or measure from the bracket to the far end.",
          },
  },

  examples: [
    {
      title: 'card, radiator and fans are exactly as long as the case',
      parts: {
        cooler: { radiator: { lengthMm: 240, thicknessMm: 27, fanThicknessMm: 25, fanSizeMm: 120, fans: 2 } },
        'graphics-card': { lengthMm: 268 },
        chassis: {
          cardLengthMm: 320,
          frontFansTakeCardRoom: true,
          fanPanels: [{ id: 'front', sizesMm: [120], units: 4, radiatorsMm: [240], depthMm: 60 }],
          fittedFans: [],
        },
      },
      verdict: 'fits',
    },
    {
      title: 'one millimetre too long',
      parts: {
        cooler: { radiator: { lengthMm: 240, thicknessMm: 27, fanThicknessMm: 25, fanSizeMm: 120, fans: 2 } },
        'graphics-card': { lengthMm: 269 },
        chassis: {
          cardLengthMm: 320,
          frontFansTakeCardRoom: true,
          fanPanels: [{ id: 'front', sizesMm: [120], units: 4, radiatorsMm: [240], depthMm: 60 }],
          fittedFans: [],
        },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'what is at the front is not in the way of a card',
      parts: {
        cooler: { radiator: { lengthMm: 240, thicknessMm: 27, fanThicknessMm: 25, fanSizeMm: 120, fans: 2 } },
        'graphics-card': { lengthMm: 269 },
        chassis: {
          cardLengthMm: 320,
          frontFansTakeCardRoom: false,
          fanPanels: [{ id: 'front', sizesMm: [120], units: 4, radiatorsMm: [240], depthMm: 60 }],
          fittedFans: [],
        },
      },
      verdict: 'fits',
    },
    {
      title: "the card's length is not recorded",
      parts: {
        cooler: { radiator: { lengthMm: 240, thicknessMm: 27, fanThicknessMm: 25, fanSizeMm: 120, fans: 2 } },
        'graphics-card': { lengthMm: undefined },
        chassis: {
          cardLengthMm: 320,
          frontFansTakeCardRoom: true,
          fanPanels: [{ id: 'front', sizesMm: [120], units: 4, radiatorsMm: [240], depthMm: 60 }],
          fittedFans: [],
        },
      },
      verdict: 'cannot-tell',
    },
    {
      title: 'a cooler without a radiator',
      parts: { cooler: {}, 'graphics-card': { lengthMm: 269 }, chassis: { cardLengthMm: 320 } },
      verdict: 'does-not-apply',
    },
  ],
});
