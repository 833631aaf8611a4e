import { count, spelled } from '../../../wording/phrases.ts';
import { leftRule } from '../../rule.ts';

export const supplyBay = leftRule({
  id: 'mounting/supply-bay',
  title: 'The power supply has a place in the case',
  severity: 'blocker',
  basis: 'maker',
  sources: ['maker-data-sheet'],
  lesson: 'parts/what-the-parts-are',

  left: 'supply-mount',

  say: {
    fits: ({ part }) => `${part} has a place in the case.`,
    doesNotFit: ({ part, reason, wanting, places }) =>
      reason === 'taken'
        ? {
            headline: `${count(wanting, 'power supply', 'power supplies')}, ${count(places, 'place', 'places')}`,
            what: `The list has ${spelled(wanting, 'power supply', 'power supplies')} and ${spelled(places, 'place', 'places')} for one, so ${part} is left over.`,
            why: 'A case holds one power supply.',
            remedy: 'Take one power supply off the list.',
          }
        : {
            headline: 'The power supply has no case',
            what: `${part} has nothing to be screwed into: there is no case on the list.`,
            why: 'A loose supply is pulled about by its mains lead and by its own leads.',
            remedy: "Choose a case that takes the supply's shape.",
          },
    cannotTell: () => ({
      headline: 'Is there a place for the supply?',
      what: 'Not every way of placing the supplies was tried, so this is not judged.',
      findOut: 'Count the power supplies and the cases on the list.',
    }),
  },

  examples: [
    {
      title: 'one supply and one case',
      parts: { 'power-supply': { shape: 'atx', lengthMm: 140 }, chassis: { supplyShape: 'atx', supplyLengthMm: 160 } },
      verdict: 'fits',
    },
    {
      title: 'a supply and no case',
      parts: { 'power-supply': { shape: 'atx', lengthMm: 140 } },
      verdict: 'does-not-fit',
    },
    {
      title: 'two supplies and one case',
      parts: {
        'power-supply': [
          { shape: 'atx', lengthMm: 140 },
          { shape: 'atx', lengthMm: 140 },
        ],
        chassis: { supplyShape: 'atx', supplyLengthMm: 160 },
      },
      verdict: 'does-not-fit',
    },
    { title: 'no supply on the list', parts: { chassis: { supplyShape: 'atx' } }, verdict: 'does-not-apply' },
  ],
});
