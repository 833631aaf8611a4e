import { showNumber } from '../../../units/money.ts';
import { refusesRule } from '../../rule.ts';

const kilograms = (grams: unknown): string => `${showNumber(Number(grams) / 1000)} kg`;

export const armWeight = refusesRule({
  id: 'mounting/arm-weight',
  title: 'The arm carries the weight of the monitor',
  severity: 'hazard',
  basis: 'maker',
  sources: ['maker-data-sheet', 'vesa-mounting'],
  lesson: 'safety/static-mains-and-sharp-edges',

  refuses: { kind: 'monitor-mount', op: 'atLeast', need: 'carriesGrams', place: 'grams' },

  say: {
    fits: ({ part, on, need, offered }) =>
      need === null || offered === null
        ? `${part} carries any monitor.`
        : `${part} carries ${kilograms(need)}; ${on} weighs ${kilograms(offered)}.`,
    doesNotFit: ({ part, on, need, offered, difference }) => ({
      headline: `The monitor is ${kilograms(difference)} too heavy`,
      what: `${on} weighs ${kilograms(offered)}; ${part} carries ${kilograms(need)}, so it is ${kilograms(difference)} too heavy.`,
      why: 'The arm sinks under the monitor, or a joint lets go, and the monitor comes down on the desk or on a hand.',
      remedy: `Choose an arm that carries ${kilograms(offered)} or more, or a lighter monitor, or leave this one on its foot.`,
    }),
    cannotTell: (missing) =>
      missing.some((field) => field.endsWith('.carriesGrams'))
        ? {
            headline: 'How much does the arm carry?',
            what: 'The weight that the arm carries is not recorded, so this is not judged.',
            findOut: "Read it on the arm's leaflet or label. Do not hang a monitor on it before.",
          }
        : {
            headline: 'How heavy is the monitor?',
            what: "The monitor's weight is not recorded, so it is not judged whether the arm carries it.",
            findOut: "Read the weight without the foot on the maker's sheet, or put it on a scale.",
          },
  },

  examples: [
    {
      title: 'exactly what the arm carries',
      parts: { 'monitor-arm': { carriesGrams: 9000 }, monitor: { armHolesMm: [100], grams: 9000 } },
      verdict: 'fits',
    },
    {
      title: 'one gram heavier',
      parts: { 'monitor-arm': { carriesGrams: 9000 }, monitor: { armHolesMm: [100], grams: 9001 } },
      verdict: 'does-not-fit',
    },
    {
      title: "the monitor's weight is not recorded",
      parts: { 'monitor-arm': { carriesGrams: 9000 }, monitor: { armHolesMm: [100], grams: undefined } },
      verdict: 'cannot-tell',
    },
    {
      title: 'what the arm carries is not recorded',
      parts: { 'monitor-arm': { carriesGrams: undefined }, monitor: { armHolesMm: [100], grams: 9000 } },
      verdict: 'cannot-tell',
    },
    { title: 'no arm on the list', parts: { monitor: { grams: 9000 } }, verdict: 'does-not-apply' },
  ],
});
