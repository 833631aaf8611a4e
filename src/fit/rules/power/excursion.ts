import { showDeciwatts } from '../../../units/amounts.ts';
import { loadField } from '../../budgets/loads.ts';
import { budgetRule, cannotTell, doesNotApply, doesNotFit, fits } from '../../rule.ts';
import { lacks } from '../words.ts';

export const excursion = budgetRule({
  id: 'power/excursion',
  title: 'The supply bears what the graphics card draws for an instant',
  severity: 'limit',
  basis: 'standard',
  sources: ['atx-3-excursions', 'atx-3-design-guide'],
  lesson: 'fit/choosing-for-a-purpose',

  budget: 'excursion',
  judge({ used, limit, unknown, about, working }) {
    // Only graphics cards draw so much more for so short a time.
    const hasCard = [...working.map(({ unit = '' }) => unit), ...unknown].some((unit) =>
      unit.startsWith('graphics-card-'),
    );
    if (about.length === 0 || !hasCard) return doesNotApply;
    if (limit === undefined) return cannotTell('power-supply.bearsExcursions');
    const facts = { used, limit, over: used - limit };
    if (used > limit) return doesNotFit(facts);
    const fieldOf = (unit: string) => (unit.startsWith('graphics-card-') ? 'excursionW' : loadField(unit));
    return unknown.length > 0 ? cannotTell(...unknown.map((unit) => `${unit}.${fieldOf(unit)}`)) : fits(facts);
  },

  say: {
    fits: ({ used, limit }) =>
      `For 100 microseconds at a time the parts draw ${showDeciwatts(used)} at most; the supply bears ${showDeciwatts(limit)} that long.`,
    doesNotFit: ({ used, limit, over }) => ({
      headline: `An instant of ${showDeciwatts(over)} too much`,
      what: `For 100 microseconds at a time the parts draw ${showDeciwatts(used)}; the supply bears ${showDeciwatts(limit)} that long, so ${showDeciwatts(over)} too much.`,
      why: 'A graphics card draws far more than its steady power for an instant, many times a second. A supply that does not bear it switches off in the middle of a game and starts again as if nothing had been.',
      remedy: `Choose a supply that bears ${showDeciwatts(used)} for 100 microseconds, which is one of a higher rating or of the third ATX generation, or a card with lower excursions.`,
    }),
    cannotTell: (missing) =>
      lacks(missing, 'power-supply')
        ? {
            headline: 'Does the supply bear excursions?',
            what: 'The rating of the supply, or what it bears for an instant, is not recorded, so this is not judged.',
            findOut: "Look on its box for the third ATX generation, or for a table of excursions on the maker's sheet.",
          }
        : {
            headline: 'What does the card draw in an instant?',
            what: 'What a card draws in an excursion is not recorded, so it is not judged whether the supply bears it; the sum shown is the least it can be.',
            findOut:
              "Look for the excursion, or the peak of 100 microseconds, on the card maker's sheet or in a measured test.",
          },
  },

  examples: [
    {
      title: 'exactly what a supply bears that promises nothing beyond its rating',
      parts: {
        'graphics-card': { sustainedW: 220, peakW: 300, excursionW: 400 },
        'power-supply': { ratedW: 400, bearsExcursions: false },
      },
      verdict: 'fits',
    },
    {
      title: 'one watt more',
      parts: {
        'graphics-card': { sustainedW: 220, peakW: 300, excursionW: 401 },
        'power-supply': { ratedW: 400, bearsExcursions: false },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'half as much again, from a supply of the third generation',
      parts: {
        'graphics-card': { sustainedW: 220, peakW: 300, excursionW: 600 },
        'power-supply': { ratedW: 400, bearsExcursions: true },
      },
      verdict: 'fits',
    },
    {
      title: 'what the supply bears is not recorded',
      parts: {
        'graphics-card': { sustainedW: 220, peakW: 300, excursionW: 400 },
        'power-supply': { ratedW: 400, bearsExcursions: undefined },
      },
      verdict: 'cannot-tell',
    },
    {
      title: 'a supply of about 1990, of which nobody promised more than its rating',
      shelf: 'vintage',
      parts: {
        'graphics-card': { sustainedW: 100, peakW: 150, excursionW: 201 },
        'power-supply': { ratedW: 200, bearsExcursions: undefined },
      },
      verdict: 'does-not-fit',
    },
    {
      title: "the card's excursion is not recorded",
      parts: {
        'graphics-card': { sustainedW: 220, peakW: 300, excursionW: undefined },
        'power-supply': { ratedW: 400, bearsExcursions: false },
      },
      verdict: 'cannot-tell',
    },
    {
      title: 'no card on the list',
      parts: { 'power-supply': { bearsExcursions: undefined } },
      verdict: 'does-not-apply',
    },
  ],
});
