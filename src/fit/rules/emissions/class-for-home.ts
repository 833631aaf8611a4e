import { list } from '../../../wording/phrases.ts';
import { cannotTell, doesNotApply, doesNotFit, fits, gathersRule } from '../../rule.ts';

export const classForHome = gathersRule({
  id: 'emissions/class-for-home',
  title: 'What is used at home is of class B for radio emissions',
  severity: 'note',
  basis: 'standard',
  sources: ['cfr-47-15'],
  lesson: 'fit/choosing-for-a-purpose',

  gathers: {
    motherboard: ['emissionClass'],
    'graphics-card': ['emissionClass'],
    'power-supply': ['emissionClass'],
    monitor: ['emissionClass'],
    'bus-card': ['emissionClass'],
    'expansion-card': ['emissionClass'],
  },
  asks: ['usedAt'],
  judge(parts, _, { usedAt }) {
    if (usedAt !== 'home') return doesNotApply;
    const all = [
      ...parts.motherboard,
      ...parts['graphics-card'],
      ...parts['power-supply'],
      ...parts.monitor,
      ...parts['bus-card'],
      ...parts['expansion-card'],
    ];
    const ofA = all.filter(({ emissionClass }) => emissionClass === 'a');
    const facts = { ofA: [...new Set(ofA.map(({ name }) => name))] };
    if (ofA.length > 0)
      return doesNotFit(
        facts,
        ofA.map(({ unit }) => unit),
      );
    const unknown = all.filter(({ emissionClass }) => emissionClass === undefined);
    if (unknown.length > 0) return cannotTell(...unknown.map(({ unit }) => `${unit}.emissionClass`));
    return fits(facts);
  },

  say: {
    fits: () => 'Every part that has a class for radio emissions is of class B, the class for homes.',
    doesNotFit: ({ ofA }) => ({
      headline: 'Class A equipment in a home',
      what: `${list(ofA)} ${ofA.length === 1 ? 'is' : 'are'} of class A for radio emissions, which is for offices and workshops; the machine is for a home, for which class B is made.`,
      why: 'Class A may send out more than class B. In a home the neighbours and their receivers are near, and a radio or television may be disturbed.',
      remedy:
        'Choose a part of class B, or use the machine at work. The classes are those of 47 CFR 15.3 and their limits those of 15.109 in the edition of 2010; check the rules where you live.',
    }),
    cannotTell: () => ({
      headline: 'Of which emission class are the parts?',
      what: 'The class for radio emissions of a part is not recorded, so it is not judged whether it is made for homes.',
      findOut: 'Read the label on the part or the first pages of its manual, and check the rules where you live.',
    }),
  },

  examples: [
    {
      title: 'class B throughout, at home',
      parts: { motherboard: { emissionClass: 'b' }, 'power-supply': { emissionClass: 'b' } },
      brief: { usedAt: 'home' },
      verdict: 'fits',
    },
    {
      title: 'a card of class A at home',
      parts: { motherboard: { emissionClass: 'b' }, 'graphics-card': { emissionClass: 'a' } },
      brief: { usedAt: 'home' },
      verdict: 'does-not-fit',
    },
    {
      title: 'the same card in a business',
      parts: { motherboard: { emissionClass: 'b' }, 'graphics-card': { emissionClass: 'a' } },
      brief: { usedAt: 'business' },
      verdict: 'does-not-apply',
    },
    {
      title: 'older cards and a monitor of class B',
      shelf: 'vintage',
      parts: { 'bus-card': { emissionClass: 'b' }, monitor: { emissionClass: 'b' } },
      brief: { usedAt: 'home' },
      verdict: 'fits',
    },
    {
      title: 'the class of a part is not recorded',
      parts: { motherboard: { emissionClass: 'b' }, 'expansion-card': { emissionClass: undefined } },
      brief: { usedAt: 'home' },
      verdict: 'cannot-tell',
    },
    {
      title: 'nobody said where it will stand',
      parts: { motherboard: { emissionClass: 'a' } },
      verdict: 'does-not-apply',
    },
  ],
});
