import { showDeciwatts } from '../../../units/amounts.ts';
import { past } from '../../budgets/total.ts';
import { budgetRule, doesNotApply, doesNotFit, fits } from '../../rule.ts';

export const supplyHeadroom = budgetRule({
  id: 'power/supply-headroom',
  title: 'A fifth of the supply is left free',
  severity: 'limit',
  basis: 'practice',
  sources: ['practice-power-allowance'],
  lesson: 'fit/choosing-for-a-purpose',

  budget: 'power',
  judge(budget) {
    const { used, limit, unknown, about } = budget;
    if (about.length === 0) return doesNotApply;
    // Too small or not known is told by the rule on the load.
    if (limit === undefined || used > limit || unknown.length > 0) return doesNotApply;
    const most = Math.floor((limit * 4) / 5);
    const facts = { used, limit, free: limit - used, most, rating: Math.ceil((used * 5) / 40) * 10 };
    return (past(budget, 5, 4) ?? 0) <= 0 ? fits(facts) : doesNotFit(facts);
  },

  say: {
    fits: ({ limit, free }) => `${showDeciwatts(free)} of ${showDeciwatts(limit)} are left free, a fifth or more.`,
    doesNotFit: ({ used, limit, free, most, rating }) => ({
      headline: `The supply has ${showDeciwatts(free)} to spare`,
      what: `The parts draw ${showDeciwatts(used)} at most of ${showDeciwatts(limit)}, which leaves ${showDeciwatts(free)}; a fifth would be ${showDeciwatts(limit - most)}.`,
      why: 'A supply near its limit runs hot and loud, wears faster and has nothing left for the next part.',
      remedy: `The supply should be rated for ${showDeciwatts(rating)} or more. Change it, or a part that draws much, or leave it as it is: the machine works.`,
    }),
    cannotTell: () => ({
      headline: 'Is a fifth of the supply free?',
      what: 'The load on the supply is not known, so what it has to spare is not judged.',
      findOut: 'Find the missing watts first; they are named beside the load of the supply.',
    }),
  },

  examples: [
    {
      title: 'less than half used',
      parts: {
        processor: { sustainedW: 65, peakW: 90 },
        motherboard: {},
        'power-supply': { ratedW: 550 },
      },
      verdict: 'fits',
    },
    {
      title: 'nearly all used',
      parts: {
        processor: { sustainedW: 200, peakW: 255 },
        'power-supply': { ratedW: 300 },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'more than all used is told by the load',
      parts: { processor: { sustainedW: 300, peakW: 400 }, 'power-supply': { ratedW: 300 } },
      verdict: 'does-not-apply',
    },
    {
      title: "the supply's rating is not recorded",
      parts: { processor: { sustainedW: 65, peakW: 90 }, 'power-supply': { ratedW: undefined } },
      verdict: 'does-not-apply',
    },
  ],
});
