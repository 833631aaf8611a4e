import { showDeciwatts } from '../../../units/amounts.ts';
import { loadField } from '../../budgets/loads.ts';
import { budgetRule, cannotTell, doesNotApply, doesNotFit, fits } from '../../rule.ts';
import { lacks } from '../words.ts';

export const supplyLoad = budgetRule({
  id: 'power/supply-load',
  title: 'All parts together draw no more than the supply is rated for',
  severity: 'blocker',
  basis: 'maker',
  sources: ['maker-data-sheet', 'practice-power-allowance'],
  lesson: 'fit/choosing-for-a-purpose',

  budget: 'power',
  judge({ used, limit, unknown, about }) {
    if (about.length === 0) return doesNotApply;
    if (limit === undefined) return cannotTell('power-supply.ratedW');
    const facts = { used, limit, over: used - limit };
    if (used > limit) return doesNotFit(facts);
    return unknown.length > 0 ? cannotTell(...unknown.map((unit) => `${unit}.${loadField(unit)}`)) : fits(facts);
  },

  say: {
    fits: ({ used, limit }) =>
      `The parts draw ${showDeciwatts(used)} at most; the supply is rated for ${showDeciwatts(limit)}.`,
    doesNotFit: ({ used, limit, over }) => ({
      headline: `The power supply is ${showDeciwatts(over)} too small`,
      what: `The parts draw ${showDeciwatts(used)} at most; the supply is rated for ${showDeciwatts(limit)}, so it is ${showDeciwatts(over)} too small.`,
      why: 'When everything works at once the supply switches itself off, and the machine goes dark in the middle of its work.',
      remedy: `Choose a supply of ${showDeciwatts(used)} or more, or parts that draw less.`,
    }),
    cannotTell: (missing) =>
      lacks(missing, 'power-supply')
        ? {
            headline: 'What is the power supply rated for?',
            what: "The supply's rating is not recorded, so its load is not judged.",
            findOut: 'Read the label on the supply: total power, in watts. Leave the supply itself closed.',
          }
        : {
            headline: 'How much do the parts draw?',
            what: 'The power of a part is not recorded, so the load on the supply is not judged; the sum shown is the least it can be.',
            findOut: "Read the watts on the maker's sheet of each part that has no number in the sum.",
          },
  },

  examples: [
    {
      title: 'well within the rating',
      parts: {
        processor: { sustainedW: 65, peakW: 90 },
        motherboard: {},
        'graphics-card': { sustainedW: 115, peakW: 160 },
        'power-supply': { ratedW: 550 },
      },
      verdict: 'fits',
    },
    {
      title: 'the card alone takes more than the rating',
      parts: {
        processor: { sustainedW: 105, peakW: 142 },
        motherboard: {},
        'graphics-card': { sustainedW: 320, peakW: 450 },
        'power-supply': { ratedW: 450 },
      },
      verdict: 'does-not-fit',
    },
    {
      title: "the supply's rating is not recorded",
      parts: { processor: { sustainedW: 65, peakW: 90 }, 'power-supply': { ratedW: undefined } },
      verdict: 'cannot-tell',
    },
    {
      title: "the card's power is not recorded",
      parts: {
        processor: { sustainedW: 65, peakW: 90 },
        'graphics-card': { sustainedW: undefined, peakW: undefined },
        'power-supply': { ratedW: 550 },
      },
      verdict: 'cannot-tell',
    },
    {
      title: 'no supply on the list',
      parts: { processor: { sustainedW: 65, peakW: 90 } },
      verdict: 'does-not-apply',
    },
  ],
});
