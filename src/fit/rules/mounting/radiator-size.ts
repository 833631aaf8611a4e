import { showMm } from '../../../units/amounts.ts';
import { either } from '../../../wording/phrases.ts';
import type { Fact } from '../../report.ts';
import { refusesRule } from '../../rule.ts';
import { lacks } from '../words.ts';

const sizes = (value: Fact): string =>
  either((Array.isArray(value) ? value : [value]).map((size) => showMm(Number(size))));

export const radiatorSize = refusesRule({
  id: 'mounting/radiator-size',
  title: 'A panel of the case has holes for a radiator of that length',
  severity: 'blocker',
  basis: 'maker',
  sources: ['maker-data-sheet'],
  lesson: 'fit/how-parts-meet',

  refuses: { kind: 'radiator-mount', op: 'shares', need: 'lengthMm', place: 'radiatorsMm' },

  say: {
    fits: ({ part, on, need }) => `${part} has a radiator for ${sizes(need)} of fans, and a panel of ${on} takes that.`,
    doesNotFit: ({ part, on, need, offered }) => ({
      headline: `No panel for a ${sizes(need)} radiator`,
      what: `${part} has a radiator for ${sizes(need)} of fans; the panel of ${on} that comes nearest takes ${sizes(offered)}.`,
      why: 'The holes of the radiator do not meet those of the panel, or its ends do not go between the walls.',
      remedy: `Choose a cooler with a radiator for ${sizes(offered)}, or one without, or a case that takes ${sizes(need)}.`,
    }),
    cannotTell: (missing) =>
      lacks(missing, 'cooler')
        ? {
            headline: 'How long is the radiator?',
            what: "The radiator's length is not recorded, so this fit is not judged.",
            findOut: 'Add up the fans along it: two of 120 mm make a 240 mm radiator.',
          }
        : {
            headline: 'Which radiators does the case take?',
            what: 'The lengths of radiator that a panel takes are not recorded, so this fit is not judged.',
            findOut: "Read them in the case's leaflet, or count the places for fans side by side.",
          },
  },

  examples: [
    {
      title: 'one of the lengths of the panel',
      parts: {
        cooler: { radiator: { lengthMm: 240, thicknessMm: 27, fanThicknessMm: 25, fanSizeMm: 120, fans: 2 } },
        chassis: {
          fanPanels: [{ id: 'rear', sizesMm: [120], units: 6, radiatorsMm: [240, 360], depthMm: 60 }],
          fittedFans: [],
        },
      },
      verdict: 'fits',
    },
    {
      title: 'a length that no panel takes',
      parts: {
        cooler: { radiator: { lengthMm: 280, thicknessMm: 27, fanThicknessMm: 25, fanSizeMm: 140, fans: 2 } },
        chassis: {
          fanPanels: [{ id: 'rear', sizesMm: [120], units: 6, radiatorsMm: [240, 360], depthMm: 60 }],
          fittedFans: [],
        },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'a bracket whose holes are not recorded',
      parts: {
        cooler: { radiator: { lengthMm: 280, thicknessMm: 27, fanThicknessMm: 25, fanSizeMm: 140, fans: 2 } },
        adapter: {
          form: 'bracket',
          ins: [],
          outs: [
            { id: 'out', kind: 'radiator-mount', attrs: { depthMm: null, memoryHeightMm: null, cardRoomMm: null } },
          ],
        },
      },
      verdict: 'cannot-tell',
    },
    {
      title: 'a cooler without a radiator',
      parts: { cooler: {}, chassis: {} },
      verdict: 'does-not-apply',
    },
  ],
});
