import { showMm } from '../../../units/amounts.ts';
import { either } from '../../../wording/phrases.ts';
import type { Fact } from '../../report.ts';
import { refusesRule } from '../../rule.ts';

const distances = (value: Fact): string =>
  either((Array.isArray(value) ? value : [value]).map((size) => showMm(Number(size))));

const none = (value: Fact): boolean => Array.isArray(value) && value.length === 0;

export const armHoles = refusesRule({
  id: 'mounting/arm-holes',
  title: "The plate of the arm has holes where the monitor's are",
  severity: 'limit',
  basis: 'standard',
  sources: ['vesa-mounting', 'maker-data-sheet'],
  lesson: 'fit/how-parts-meet',

  refuses: { kind: 'monitor-mount', op: 'shares', need: 'holesMm', place: 'armHolesMm' },

  say: {
    fits: ({ part, on, offered }) => `${part} takes ${on}, whose holes are ${distances(offered)} apart.`,
    doesNotFit: ({ part, on, need, offered }) => ({
      headline: none(offered)
        ? 'The monitor has no holes for arms'
        : `Holes ${distances(offered)} apart, another plate`,
      what: `${part} has a plate for holes ${distances(need)} apart; ${on} has ${none(offered) ? 'no holes for an arm' : `holes ${distances(offered)} apart`}.`,
      why: 'Four screws hold the monitor to the plate, and none of them meets its hole.',
      remedy: none(offered)
        ? `Choose a monitor with holes ${distances(need)} apart, or leave this one on its foot.`
        : `Choose an arm for ${distances(offered)}, or a monitor with holes ${distances(need)} apart.`,
    }),
    cannotTell: (missing) =>
      missing.some((field) => field.endsWith('.armHolesMm'))
        ? {
            headline: 'Where are the holes of the monitor?',
            what: 'The holes at the back of the monitor are not recorded, so this fit is not judged.',
            findOut: 'Look for four threaded holes in a square at its back and measure from one to the next.',
          }
        : {
            headline: 'Which plate has the arm?',
            what: "The holes of the arm's plate are not recorded, so this fit is not judged.",
            findOut: 'Measure from hole to hole on its plate: 75 and 100 mm are usual.',
          },
  },

  examples: [
    {
      title: 'one of the two squares of the plate',
      parts: { 'monitor-arm': { holesMm: [75, 100] }, monitor: { armHolesMm: [100], grams: 4000 } },
      verdict: 'fits',
    },
    {
      title: 'a wider square than the plate has',
      parts: { 'monitor-arm': { holesMm: [75, 100] }, monitor: { armHolesMm: [200], grams: 4000 } },
      verdict: 'does-not-fit',
    },
    {
      title: 'a monitor without holes',
      parts: { 'monitor-arm': { holesMm: [75, 100] }, monitor: { armHolesMm: [], grams: 4000 } },
      verdict: 'does-not-fit',
    },
    {
      title: "the monitor's holes are not recorded",
      parts: { 'monitor-arm': { holesMm: [75, 100] }, monitor: { armHolesMm: undefined, grams: 4000 } },
      verdict: 'cannot-tell',
    },
    {
      title: "the arm's plate is not recorded",
      parts: { 'monitor-arm': { holesMm: undefined }, monitor: { armHolesMm: [100], grams: 4000 } },
      verdict: 'cannot-tell',
    },
    { title: 'no arm on the list', parts: { monitor: { armHolesMm: [100] } }, verdict: 'does-not-apply' },
  ],
});
