import { showMm, tidy } from '../../../units/amounts.ts';
import { cannotTell, doesNotFit, fits, joinsRule } from '../../rule.ts';
import { lacks } from '../words.ts';

export const addedCard = joinsRule({
  id: 'clearance/added-card',
  title: 'An expansion card is no higher and no longer than the case allows',
  severity: 'blocker',
  basis: 'maker',
  sources: ['maker-data-sheet'],
  lesson: 'fit/how-parts-meet',

  joins: { 'expansion-card': ['heightMm', 'lengthMm'], chassis: ['cardHeightMm', 'cardLengthMm'] },
  judge({ 'expansion-card': card, chassis }) {
    const sides = [
      { size: card.heightMm, limit: chassis.cardHeightMm, side: 'high' },
      { size: card.lengthMm, limit: chassis.cardLengthMm, side: 'long' },
    ];
    for (const { size, limit, side } of sides) {
      if (size !== undefined && limit !== undefined && size > limit)
        return doesNotFit({ side, size, limit, over: tidy(size - limit) });
    }
    if (card.heightMm === undefined) return cannotTell('expansion-card.heightMm');
    if (card.lengthMm === undefined) return cannotTell('expansion-card.lengthMm');
    if (chassis.cardHeightMm === undefined) return cannotTell('chassis.cardHeightMm');
    if (chassis.cardLengthMm === undefined) return cannotTell('chassis.cardLengthMm');
    return fits({ side: '', size: card.heightMm, limit: chassis.cardHeightMm, over: 0 });
  },

  say: {
    fits: ({ size, limit }) =>
      `The expansion card rises ${showMm(size)} above the board; the case allows ${showMm(limit)}, and there is room for its length.`,
    doesNotFit: ({ side, size, limit, over }) => ({
      headline: `The expansion card is ${showMm(over)} too ${side}`,
      what: `The expansion card is ${showMm(size)} ${side}; the case allows ${showMm(limit)}, so it is ${showMm(over)} too ${side}.`,
      why:
        side === 'high'
          ? 'The side panel, or the lid of a low case, meets the edge of the card and cannot be closed.'
          : 'The far end of the card meets the front of the case before its bracket reaches the back.',
      remedy: `Choose a card of ${showMm(limit)} or less${side === 'high' ? ' with a low bracket' : ''}, or a case that allows ${showMm(size)} or more.`,
    }),
    cannotTell: (missing) =>
      lacks(missing, 'expansion-card')
        ? {
            headline: 'How large is the expansion card?',
            what: "The expansion card's height or length is not recorded, so this fit is not judged.",
            findOut: 'Measure it from the edge with the contacts to the far edge, and from the bracket to the far end.',
          }
        : {
            headline: 'How large a card does the case allow?',
            what: "The case's room for a card is not recorded, so this fit is not judged.",
            findOut:
              'Measure from the board to the edge that the side panel rests on, and from the rear bracket to the front.',
          },
  },

  examples: [
    {
      title: 'exactly as high and as long as the room',
      parts: {
        'expansion-card': { heightMm: 69, lengthMm: 168 },
        chassis: { cardHeightMm: 69, cardLengthMm: 168 },
      },
      verdict: 'fits',
    },
    {
      title: 'one millimetre too high for a low case',
      parts: {
        'expansion-card': { heightMm: 70, lengthMm: 168 },
        chassis: { cardHeightMm: 69, cardLengthMm: 168 },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'one millimetre too long',
      parts: {
        'expansion-card': { heightMm: 69, lengthMm: 169 },
        chassis: { cardHeightMm: 69, cardLengthMm: 168 },
      },
      verdict: 'does-not-fit',
    },
    {
      title: "the card's height is not recorded",
      parts: {
        'expansion-card': { heightMm: undefined, lengthMm: 168 },
        chassis: { cardHeightMm: 69, cardLengthMm: 168 },
      },
      verdict: 'cannot-tell',
    },
    {
      title: "the case's room is not recorded",
      parts: {
        'expansion-card': { heightMm: 69, lengthMm: 168 },
        chassis: { cardHeightMm: undefined, cardLengthMm: 168 },
      },
      verdict: 'cannot-tell',
    },
    { title: 'no such card on the list', parts: { chassis: { cardHeightMm: 69 } }, verdict: 'does-not-apply' },
  ],
});
