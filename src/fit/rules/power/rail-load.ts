import { showAmps, showDeciwatts } from '../../../units/amounts.ts';
import { budgetRule, cannotTell, doesNotApply, doesNotFit, fits } from '../../rule.ts';
import { lacks } from '../words.ts';

const names: Readonly<Record<string, string>> = {
  '12v': '12 V',
  '5v': '5 V',
  '3.3v': '3.3 V',
  '3.3v+5v': '3.3 V and 5 V together',
};

const show = (unit: string, amount: number): string => (unit === 'milliamp' ? showAmps(amount) : showDeciwatts(amount));

export const railLoad = budgetRule({
  id: 'power/rail-load',
  title: 'No rail of the supply has to give more than it can',
  severity: 'limit',
  basis: 'maker',
  sources: ['maker-data-sheet', 'practice-power-allowance'],
  lesson: 'fit/choosing-for-a-purpose',

  budget: 'rail',
  judge({ of, unit, used, limit, unknown, about }) {
    if (about.length === 0 || of === undefined) return doesNotApply;
    if (limit === undefined) return cannotTell(of === '3.3v+5v' ? 'power-supply.combinedLowW' : 'power-supply.rails');
    const facts = { rail: names[of] ?? of, unit, used, limit, over: used - limit };
    if (used > limit) return doesNotFit(facts);
    return unknown.length > 0 ? cannotTell(...unknown.map((one) => `${one}.sustainedW`)) : fits(facts);
  },

  say: {
    fits: ({ rail, unit, used, limit }) =>
      `At ${rail} the parts draw ${show(unit, used)} at most under steady load; the supply gives ${show(unit, limit)}. Every other rail has enough as well.`,
    doesNotFit: ({ rail, unit, used, limit, over }) => ({
      headline: `${show(unit, over)} too little at ${rail}`,
      what: `At ${rail} the parts may draw ${show(unit, used)} under steady load; the supply gives ${show(unit, limit)}, so ${show(unit, over)} may be missing, however much it is rated for in all.`,
      why: 'A supply is rated in all and for each of its voltages. When one of them is drawn on too hard it sags or the supply switches off, whatever is left on the others.',
      remedy: `Choose a supply that gives ${show(unit, used)} or more at ${rail}, or parts that draw less there.`,
    }),
    cannotTell: (missing) =>
      lacks(missing, 'power-supply')
        ? {
            headline: 'What does each rail give?',
            what: 'What the supply gives at each of its voltages is not recorded, so the load on its rails is not judged.',
            findOut: 'Read the table on its label: volts above, amps below. Leave the supply itself closed.',
          }
        : {
            headline: 'How much do the parts draw?',
            what: 'The steady power of a part is not recorded, so the load on the rails is not judged; the sum shown is the least it can be.',
            findOut: "Read the watts on the maker's sheet of each part that has no number in the sum.",
          },
  },

  examples: [
    {
      title: 'exactly what the rail gives',
      parts: {
        processor: { sustainedW: 120 },
        'power-supply': { combinedLowW: 100, rails: [{ id: '12v', milliamps: 10_000 }] },
      },
      verdict: 'fits',
    },
    {
      title: 'a watt more than the rail gives',
      parts: {
        processor: { sustainedW: 121 },
        'power-supply': { combinedLowW: 100, rails: [{ id: '12v', milliamps: 10_000 }] },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'a large supply of the older sort, and too little at 12 V',
      parts: {
        processor: { sustainedW: 105 },
        'graphics-card': { sustainedW: 220 },
        'power-supply': {
          ratedW: 550,
          combinedLowW: 200,
          rails: [
            { id: '3.3v', milliamps: 30_000 },
            { id: '5v', milliamps: 40_000 },
            { id: '12v', milliamps: 22_000 },
          ],
        },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'the rails are not recorded',
      parts: { processor: { sustainedW: 120 }, 'power-supply': { rails: undefined } },
      verdict: 'cannot-tell',
    },
    {
      title: "the processor's power is not recorded",
      parts: {
        processor: { sustainedW: undefined },
        'power-supply': { combinedLowW: 100, rails: [{ id: '12v', milliamps: 10_000 }] },
      },
      verdict: 'cannot-tell',
    },
    { title: 'no supply on the list', parts: { processor: { sustainedW: 120 } }, verdict: 'does-not-apply' },
  ],
});
