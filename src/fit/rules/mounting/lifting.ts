import { showKg } from '../../../units/amounts.ts';
import { budgetRule, cannotTell, doesNotApply, doesNotFit, fits } from '../../rule.ts';

export const lifting = budgetRule({
  id: 'mounting/lifting',
  title: 'One person can lift the finished machine',
  severity: 'note',
  basis: 'standard',
  sources: ['niosh-lifting'],
  lesson: 'safety/static-mains-and-sharp-edges',

  budget: 'weight',
  judge({ used, limit, unknown, working }) {
    if (limit === undefined || used + unknown.length === 0) return doesNotApply;
    const heaviest = working.toSorted((a, b) => b.amount - a.amount).flatMap(({ unit }) => unit ?? []);
    const facts = { grams: used, limit, over: Math.max(0, used - limit) };
    if (facts.over > 0) return doesNotFit(facts, heaviest.slice(0, 1));
    return unknown.length > 0
      ? cannotTell(...unknown.map((unit) => `${unit}.grams`))
      : fits(facts, heaviest.slice(0, 1));
  },

  say: {
    fits: ({ grams, limit }) =>
      `The machine weighs ${showKg(grams)}; one person can lift ${showKg(limit)} held close, at the height of the hips.`,
    doesNotFit: ({ grams, limit, over }) => ({
      headline: `${showKg(over)} too heavy for one`,
      what: `The machine weighs ${showKg(grams)}; the most for one person is ${showKg(limit)} held close, at the height of the hips, so it is ${showKg(over)} too heavy.`,
      why: 'From the floor, or with the arms stretched out, even much less strains a back.',
      remedy: 'Lift it with two people, or put the heaviest parts in where it will stand.',
    }),
    cannotTell: () => ({
      headline: 'How heavy is the machine?',
      what: 'The weight of a part is not recorded, so it is not judged whether one person can lift the machine.',
      findOut: 'Read the weight on the box, or put it on a scale; lift it with two people until it is known.',
    }),
  },

  examples: [
    {
      title: 'exactly the most for one person',
      parts: { chassis: { grams: 21_000 }, 'power-supply': { grams: 2000 } },
      verdict: 'fits',
    },
    {
      title: 'one gram more',
      parts: { chassis: { grams: 21_001 }, 'power-supply': { grams: 2000 } },
      verdict: 'does-not-fit',
    },
    {
      title: 'the weight of the supply is not recorded',
      parts: { chassis: { grams: 21_000 }, 'power-supply': { grams: undefined } },
      verdict: 'cannot-tell',
    },
    { title: 'a monitor alone', parts: { monitor: { grams: 30_000 } }, verdict: 'does-not-apply' },
  ],
});
