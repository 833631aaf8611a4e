import { showMm } from '../../../units/amounts.ts';
import { refusesRule } from '../../rule.ts';
import { lacks } from '../words.ts';

export const supplyLength = refusesRule({
  id: 'clearance/supply-length',
  title: 'The power supply is no longer than the case allows',
  severity: 'blocker',
  basis: 'maker',
  sources: ['maker-data-sheet'],
  lesson: 'fit/how-parts-meet',

  refuses: { kind: 'supply-mount', op: 'atMost', need: 'lengthMm', place: 'lengthMm' },

  say: {
    fits: ({ part, on, need, offered }) =>
      `${part} is ${showMm(Number(need))} long; ${on} allows ${showMm(Number(offered))}.`,
    doesNotFit: ({ part, on, need, offered, difference }) => ({
      headline: `The power supply is ${showMm(Number(difference))} too long`,
      what: `${part} is ${showMm(Number(need))} long; ${on} allows ${showMm(Number(offered))}, so it is ${showMm(Number(difference))} too long.`,
      why: 'The supply, or the leads that leave its far end, meets the bays before its screws meet their holes.',
      remedy: `Choose a supply of ${showMm(Number(offered))} or less, or a case that allows ${showMm(Number(need))} or more.`,
    }),
    cannotTell: (missing) =>
      lacks(missing, 'power-supply')
        ? {
            headline: 'How long is the power supply?',
            what: "The supply's length is not recorded, so this fit is not judged.",
            findOut: "Measure it from the face with the mains socket to the far end, or read it on the maker's sheet.",
          }
        : {
            headline: 'How long a supply does the case take?',
            what: 'The longest supply that the case takes is not recorded, so this fit is not judged.',
            findOut:
              'Measure from the back of the case to the first thing in the way, and take off 20 mm for the leads.',
          },
  },

  examples: [
    {
      title: 'exactly at the limit',
      parts: { 'power-supply': { shape: 'atx', lengthMm: 160 }, chassis: { supplyShape: 'atx', supplyLengthMm: 160 } },
      verdict: 'fits',
    },
    {
      title: 'one millimetre over',
      parts: { 'power-supply': { shape: 'atx', lengthMm: 161 }, chassis: { supplyShape: 'atx', supplyLengthMm: 160 } },
      verdict: 'does-not-fit',
    },
    {
      title: "the supply's length is not recorded",
      parts: {
        'power-supply': { shape: 'atx', lengthMm: undefined },
        chassis: { supplyShape: 'atx', supplyLengthMm: 160 },
      },
      verdict: 'cannot-tell',
    },
    {
      title: "the case's limit is not recorded",
      parts: {
        'power-supply': { shape: 'atx', lengthMm: 160 },
        chassis: { supplyShape: 'atx', supplyLengthMm: undefined },
      },
      verdict: 'cannot-tell',
    },
    {
      title: 'another shape is refused before its length is looked at',
      parts: { 'power-supply': { shape: 'atx', lengthMm: 161 }, chassis: { supplyShape: 'sfx', supplyLengthMm: 160 } },
      verdict: 'does-not-apply',
    },
  ],
});
