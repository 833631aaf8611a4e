import { homeBuilt } from '../../../standards/emissions.ts';
import { inWords } from '../../../wording/phrases.ts';
import { doesNotApply, doesNotFit, fits, gathersRule } from '../../rule.ts';

export const builtForSale = gathersRule({
  id: 'emissions/built-for-sale',
  title: 'The machine is built for its builder, and not to be sold',
  severity: 'note',
  basis: 'standard',
  sources: ['cfr-47-15'],
  lesson: 'fit/choosing-for-a-purpose',

  gathers: { motherboard: ['name'] },
  asks: ['forSale'],
  judge({ motherboard: boards }, _, { forSale }) {
    const board = boards[0];
    if (forSale === undefined || board === undefined) return doesNotApply;
    const facts = { board: board.name };
    return forSale ? doesNotFit(facts) : fits(facts);
  },

  say: {
    fits: ({ board }) =>
      `The machine around ${board} is for its builder: up to ${inWords(homeBuilt.machines)} built for one's own use, not from a kit and not sold, need no authorisation under 47 CFR 15.23. Check the rules where you live.`,
    doesNotFit: ({ board }) => ({
      headline: 'A machine for sale has a maker',
      what: `The machine around ${board} is to be sold, so what holds for home-built machines does not cover it.`,
      why: 'Whoever sells a machine answers for it as its maker: in its own right for radio emissions, and in many countries for safety as well.',
      remedy:
        'Before selling, ask the office for radio or product safety of your country what it asks of a maker; keep the labels and instructions of every part. This is 47 CFR 15.23, 15.101 and 15.102, read in copies of 2002 to 2019, and no legal advice; check the rules where you live.',
    }),
    cannotTell: () => ({
      headline: 'Is the machine to be sold?',
      what: 'It is not known whether the machine is to be sold, so this is not judged.',
      findOut: 'Ask whoever it is for, and check the rules where you live.',
    }),
  },

  examples: [
    { title: 'for its builder', parts: { motherboard: {} }, brief: { forSale: false }, verdict: 'fits' },
    { title: 'to be sold', parts: { motherboard: {} }, brief: { forSale: true }, verdict: 'does-not-fit' },
    { title: 'nobody asked', parts: { motherboard: {} }, verdict: 'does-not-apply' },
  ],
});
