import { list } from '../../../wording/phrases.ts';
import { leftRule } from '../../rule.ts';

export const radiatorPlace = leftRule({
  id: 'mounting/radiator-place',
  title: 'There is a free panel in the case for the radiator',
  severity: 'blocker',
  basis: 'maker',
  sources: ['maker-data-sheet'],
  lesson: 'fit/how-parts-meet',

  left: 'radiator-mount',

  say: {
    fits: ({ part }) => `The radiator of ${part} has a panel.`,
    doesNotFit: ({ part, reason, holders }) =>
      reason === 'spent' || reason === 'taken'
        ? {
            headline: 'No panel has room for the radiator',
            what: `The radiator of ${part} finds no panel with enough room left${holders.length > 0 ? `: ${list(holders)} ${holders.length === 1 ? 'takes' : 'take'} it` : ': those that take one of its size are too short'}.`,
            why: 'Radiator and fans share the length of a panel; where a radiator of 240 mm is, two fans of 120 mm are not. Fans that come with the case can be taken out and are not counted.',
            remedy:
              'Take what is in the way off the list, or choose a case with a longer panel, or a cooler with a smaller radiator.',
          }
        : {
            headline: 'The case has no panel for a radiator',
            what: `${part} has a radiator; nothing on the list has a panel that takes one.`,
            why: 'The heat of the processor leaves through the radiator; it is screwed to a panel where air comes through.',
            remedy: 'Choose a case that takes a radiator of that length, or a cooler without a radiator.',
          },
    cannotTell: (missing) =>
      missing.length === 0
        ? {
            headline: 'Is there a panel for the radiator?',
            what: 'Not every way of placing fans and radiators was tried, so this is not judged.',
            findOut: 'Place the radiator first, then the fans, the largest first.',
          }
        : {
            headline: 'Which panels has the case?',
            what: "The case's panels for fans and radiators are not recorded, so this is not judged.",
            findOut: "Read the case's leaflet, or count the places for fans at the front, the rear and the top.",
          },
  },

  examples: [
    {
      title: 'exactly as long as the free panel',
      parts: {
        cooler: { radiator: { lengthMm: 240, thicknessMm: 27, fanThicknessMm: 25, fanSizeMm: 120, fans: 2 } },
        chassis: {
          fanPanels: [{ id: 'rear', sizesMm: [120], units: 4, radiatorsMm: [240], depthMm: 60 }],
          fittedFans: [],
        },
      },
      verdict: 'fits',
    },
    {
      title: 'a fan that comes with the case can be taken out for it',
      parts: {
        cooler: { radiator: { lengthMm: 240, thicknessMm: 27, fanThicknessMm: 25, fanSizeMm: 120, fans: 2 } },
        chassis: {
          fanPanels: [{ id: 'rear', sizesMm: [120], units: 4, radiatorsMm: [240], depthMm: 60 }],
          fittedFans: [{ id: 'rear-1', panel: 'rear', sizeMm: 120, thicknessMm: 25, pins: 3, milliamps: 200 }],
        },
      },
      verdict: 'fits',
    },
    {
      title: 'a panel shorter than the radiator',
      parts: {
        cooler: { radiator: { lengthMm: 240, thicknessMm: 27, fanThicknessMm: 25, fanSizeMm: 120, fans: 2 } },
        chassis: {
          fanPanels: [{ id: 'rear', sizesMm: [120], units: 3, radiatorsMm: [240], depthMm: 60 }],
          fittedFans: [],
        },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'a case without a panel for a radiator',
      parts: {
        cooler: { radiator: { lengthMm: 240, thicknessMm: 27, fanThicknessMm: 25, fanSizeMm: 120, fans: 2 } },
        chassis: { fanPanels: [{ id: 'rear', sizesMm: [120], units: 4 }], fittedFans: [] },
      },
      verdict: 'does-not-fit',
    },
    {
      title: "the case's panels are not recorded",
      parts: {
        cooler: { radiator: { lengthMm: 240, thicknessMm: 27, fanThicknessMm: 25, fanSizeMm: 120, fans: 2 } },
        chassis: { fanPanels: undefined },
      },
      verdict: 'cannot-tell',
    },
    { title: 'a cooler without a radiator', parts: { cooler: {}, chassis: {} }, verdict: 'does-not-apply' },
  ],
});
