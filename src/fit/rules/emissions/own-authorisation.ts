import { list } from '../../../wording/phrases.ts';
import { cannotTell, doesNotApply, doesNotFit, fits, gathersRule } from '../../rule.ts';

export const ownAuthorisation = gathersRule({
  id: 'emissions/own-authorisation',
  title: 'Board and supply each carry an authorisation of their own',
  severity: 'note',
  basis: 'standard',
  sources: ['cfr-47-15'],
  lesson: 'fit/choosing-for-a-purpose',

  gathers: { motherboard: ['isAuthorised'], 'power-supply': ['isAuthorised'] },
  asks: ['usedAt', 'forSale'],
  judge({ motherboard: boards, 'power-supply': supplies }, _, { usedAt, forSale }) {
    if (usedAt === undefined && forSale === undefined) return doesNotApply;
    const all = [...boards, ...supplies];
    const bare = all.filter(({ isAuthorised }) => isAuthorised === false);
    const names = [...new Set((bare.length > 0 ? bare : all).map(({ name }) => name))];
    if (bare.length > 0)
      return doesNotFit(
        { names },
        bare.map(({ unit }) => unit),
      );
    const unknown = all.filter(({ isAuthorised }) => isAuthorised === undefined);
    if (unknown.length > 0) return cannotTell(...unknown.map(({ unit }) => `${unit}.isAuthorised`));
    return fits({ names });
  },

  say: {
    fits: ({ names }) => `${list(names)} ${names.length === 1 ? 'carries' : 'carry'} an authorisation mark.`,
    doesNotFit: ({ names }) => ({
      headline: 'A part without an authorisation of its own',
      what: `${list(names)} ${names.length === 1 ? 'carries' : 'carry'} no authorisation mark.`,
      why: 'A machine put together from a board and a supply that are each authorised, by their instructions and with their labels kept, needs no test of the whole; one without them does not have that way open.',
      remedy:
        'Choose a board and a supply that carry their mark, and keep labels and instructions. This is 47 CFR 15.101 and 15.102 read in copies of 2002 to 2019, and no legal advice; check the rules where you live.',
    }),
    cannotTell: () => ({
      headline: 'Does the part carry its own mark?',
      what: 'Whether the board or the supply carries an authorisation mark is not recorded, so this is not judged.',
      findOut: 'Look for the mark on the label of the part and in its manual, and check the rules where you live.',
    }),
  },

  examples: [
    {
      title: 'board and supply carry their mark',
      parts: { motherboard: { isAuthorised: true }, 'power-supply': { isAuthorised: true } },
      brief: { usedAt: 'home' },
      verdict: 'fits',
    },
    {
      title: 'the supply carries none',
      parts: { motherboard: { isAuthorised: true }, 'power-supply': { isAuthorised: false } },
      brief: { usedAt: 'home' },
      verdict: 'does-not-fit',
    },
    {
      title: 'the board carries none, in a machine for sale',
      parts: { motherboard: { isAuthorised: false }, 'power-supply': { isAuthorised: true } },
      brief: { forSale: true },
      verdict: 'does-not-fit',
    },
    {
      title: 'not recorded for the board',
      parts: { motherboard: { isAuthorised: undefined }, 'power-supply': { isAuthorised: true } },
      brief: { usedAt: 'home' },
      verdict: 'cannot-tell',
    },
    {
      title: 'nobody said what the machine is for',
      parts: { motherboard: { isAuthorised: false }, 'power-supply': { isAuthorised: false } },
      verdict: 'does-not-apply',
    },
  ],
});
