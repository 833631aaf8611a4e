import { showMm, tidy } from '../../../units/amounts.ts';
import { cannotTell, doesNotFit, fits, joinsRule } from '../../rule.ts';
import { lacks } from '../words.ts';

export const cardHeight = joinsRule({
  id: 'clearance/card-height',
  title: 'The graphics card rises no higher than the case allows',
  severity: 'blocker',
  basis: 'maker',
  sources: ['maker-data-sheet'],
  lesson: 'fit/how-parts-meet',

  joins: { 'graphics-card': ['heightMm'], chassis: ['cardHeightMm'] },
  judge({ 'graphics-card': card, chassis }) {
    if (card.heightMm === undefined) return cannotTell('graphics-card.heightMm');
    if (chassis.cardHeightMm === undefined) return cannotTell('chassis.cardHeightMm');

    const facts = {
      height: card.heightMm,
      limit: chassis.cardHeightMm,
      over: tidy(card.heightMm - chassis.cardHeightMm),
    };
    return facts.over <= 0 ? fits(facts) : doesNotFit(facts);
  },

  say: {
    fits: ({ height, limit, over }) =>
      `The graphics card rises ${showMm(height)} above the board; the case allows ${showMm(limit)}, which leaves ${showMm(-over)} for the bend of its leads.`,
    doesNotFit: ({ height, limit, over }) => ({
      headline: `The graphics card is ${showMm(over)} too high`,
      what: `The graphics card rises ${showMm(height)} above the board; the case allows ${showMm(limit)}, so it is ${showMm(over)} too high.`,
      why: 'The side panel meets the edge of the card first, so the case cannot be closed; a lead on that edge needs more room still.',
      remedy: `Choose a card of ${showMm(limit)} or less, or a case that allows ${showMm(height)} or more.`,
    }),
    cannotTell: (missing) =>
      lacks(missing, 'graphics-card')
        ? {
            headline: 'How high is the graphics card?',
            what: "The graphics card's height is not recorded, so this fit is not judged.",
            findOut: "Read it on the maker's sheet, or measure from the edge with the contacts to the far edge.",
          }
        : {
            headline: 'How high a card does the case allow?',
            what: "The case's limit for the height of a card is not recorded, so this fit is not judged.",
            findOut: 'Measure from the board to the edge that the side panel rests on.',
          },
  },

  examples: [
    {
      title: 'exactly at the limit',
      parts: { 'graphics-card': { heightMm: 140 }, chassis: { cardHeightMm: 140 } },
      verdict: 'fits',
    },
    {
      title: 'one millimetre over',
      parts: { 'graphics-card': { heightMm: 141 }, chassis: { cardHeightMm: 140 } },
      verdict: 'does-not-fit',
    },
    {
      title: "the card's height is not recorded",
      parts: { 'graphics-card': { heightMm: undefined }, chassis: { cardHeightMm: 140 } },
      verdict: 'cannot-tell',
    },
    {
      title: "the case's limit is not recorded",
      parts: { 'graphics-card': { heightMm: 140 }, chassis: { cardHeightMm: undefined } },
      verdict: 'cannot-tell',
    },
    { title: 'no card on the list', parts: { chassis: { cardHeightMm: 140 } }, verdict: 'does-not-apply' },
  ],
});
