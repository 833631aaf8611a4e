import { capital, withArticle } from '../../../wording/phrases.ts';
import { refusesRule } from '../../rule.ts';
import { lacks, oneOf } from '../words.ts';

export const supplyShape = refusesRule({
  id: 'mounting/supply-shape',
  title: 'The power supply has the shape that the case takes',
  severity: 'blocker',
  basis: 'standard',
  sources: ['atx12v-design-guide'],
  lesson: 'fit/how-parts-meet',

  refuses: { kind: 'supply-mount', op: 'shares', need: 'shape', place: 'shape' },

  say: {
    fits: ({ part, on, need }) => `${part} is ${withArticle(oneOf(need))} supply, and ${on} takes that shape.`,
    doesNotFit: ({ part, on, need, offered }) => ({
      headline: `${capital(withArticle(oneOf(need)))} supply, a case for ${oneOf(offered)}`,
      what: `${part} is ${withArticle(oneOf(need))} supply; ${on} takes ${oneOf(offered)}.`,
      why: "The four screws of the supply must meet the four holes at the back of the case; another shape's do not.",
      remedy: `Choose ${withArticle(oneOf(offered))} supply, or a case that takes ${oneOf(need)}.`,
    }),
    cannotTell: (missing) =>
      lacks(missing, 'power-supply')
        ? {
            headline: 'Which shape is the supply?',
            what: "The supply's shape is not recorded, so this fit is not judged.",
            findOut: 'Measure the face with the socket and the fan: 150 by 86 mm is ATX, 125 by 63.5 mm is SFX.',
          }
        : {
            headline: 'Which supply does the case take?',
            what: 'The shape of supply that the case takes is not recorded, so this fit is not judged.',
            findOut:
              'Measure the opening at the back of the case: about 150 by 86 mm is ATX, about 125 by 63.5 mm is SFX.',
          },
  },

  examples: [
    {
      title: 'both are ATX',
      parts: { 'power-supply': { shape: 'atx', lengthMm: 140 }, chassis: { supplyShape: 'atx', supplyLengthMm: 160 } },
      verdict: 'fits',
    },
    {
      title: 'an ATX supply and a case for SFX',
      parts: { 'power-supply': { shape: 'atx', lengthMm: 140 }, chassis: { supplyShape: 'sfx', supplyLengthMm: 160 } },
      verdict: 'does-not-fit',
    },
    {
      title: "the supply's shape is not recorded",
      parts: {
        'power-supply': { shape: undefined, lengthMm: 140 },
        chassis: { supplyShape: 'atx', supplyLengthMm: 160 },
      },
      verdict: 'cannot-tell',
    },
    {
      title: "the case's shape is not recorded",
      parts: {
        'power-supply': { shape: 'atx', lengthMm: 140 },
        chassis: { supplyShape: undefined, supplyLengthMm: 160 },
      },
      verdict: 'cannot-tell',
    },
    { title: 'a supply and no case', parts: { 'power-supply': { shape: 'atx' } }, verdict: 'does-not-apply' },
  ],
});
