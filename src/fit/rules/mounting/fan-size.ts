import { showMm } from '../../../units/amounts.ts';
import { either, withArticle } from '../../../wording/phrases.ts';
import type { Fact } from '../../report.ts';
import { refusesRule } from '../../rule.ts';
import { lacks } from '../words.ts';

const sizes = (value: Fact): string =>
  either((Array.isArray(value) ? value : [value]).map((size) => showMm(Number(size))));

export const fanSize = refusesRule({
  id: 'mounting/fan-size',
  title: 'The fan is of a size that the case has holes for',
  severity: 'limit',
  basis: 'maker',
  sources: ['maker-data-sheet'],
  lesson: 'fit/how-parts-meet',

  refuses: { kind: 'fan-mount', op: 'shares', need: 'sizeMm', place: 'sizesMm' },

  say: {
    fits: ({ part, on, need }) => `${part} is ${withArticle(sizes(need))} fan, and ${on} has holes for it.`,
    doesNotFit: ({ part, on, need, offered }) => ({
      headline: `No holes for ${withArticle(sizes(need))} fan`,
      what: `${part} is ${withArticle(sizes(need))} fan; ${on} has holes for ${sizes(offered)}.`,
      why: "The fan's corner holes do not meet those of the case, so it cannot be screwed on.",
      remedy: `Choose a fan of ${sizes(offered)}, or a case with holes for ${sizes(need)}.`,
    }),
    cannotTell: (missing) =>
      lacks(missing, 'fan')
        ? {
            headline: 'How large is the fan?',
            what: "The fan's size is not recorded, so this fit is not judged.",
            findOut: 'Measure one side of its frame: that is its size.',
          }
        : {
            headline: 'Which fans does the case take?',
            what: 'The sizes of fan that the case takes are not recorded, so this fit is not judged.',
            findOut:
              'Measure from hole to hole: 71.5 mm is for an 80 mm fan, 105 mm for a 120 mm fan, 124.5 mm for a 140 mm fan (figures from memory).',
          },
  },

  examples: [
    {
      title: 'one of the two sizes of the panel',
      parts: {
        fan: { sizeMm: 140 },
        chassis: { fanPanels: [{ id: 'front', sizesMm: [120, 140], units: 6 }], fittedFans: [] },
      },
      verdict: 'fits',
    },
    {
      title: 'a size that no panel has',
      parts: {
        fan: { sizeMm: 80 },
        chassis: { fanPanels: [{ id: 'front', sizesMm: [120, 140], units: 6 }], fittedFans: [] },
      },
      verdict: 'does-not-fit',
    },
    {
      title: "the fan's size is not recorded",
      parts: {
        fan: { sizeMm: undefined },
        chassis: { fanPanels: [{ id: 'front', sizesMm: [120, 140], units: 6 }], fittedFans: [] },
      },
      verdict: 'cannot-tell',
    },
    { title: 'a fan and no case', parts: { fan: { sizeMm: 120 } }, verdict: 'does-not-apply' },
  ],
});
