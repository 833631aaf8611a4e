import { count, spelled } from '../../../wording/phrases.ts';
import { leftRule } from '../../rule.ts';

export const fanPlaceFree = leftRule({
  id: 'mounting/fan-place-free',
  title: 'There is a free place in the case for every fan',
  severity: 'limit',
  basis: 'maker',
  sources: ['maker-data-sheet'],
  lesson: 'fit/how-parts-meet',

  left: 'fan-mount',

  say: {
    fits: ({ part }) => `${part} has a place in the case.`,
    doesNotFit: ({ part, reason, wanting }) =>
      reason === 'none-offered'
        ? {
            headline: 'The fan has no place to go',
            what: `${part} needs a place in a case; nothing on the list has one free.`,
            why: 'Fans are screwed to the panels of the case.',
            remedy: 'Choose a case with free places for fans, or take the fan off the list.',
          }
        : {
            headline: `${count(wanting, 'more fan', 'more fans')}, too few places`,
            what: `The list adds ${spelled(wanting, 'fan', 'fans')} to the case; ${part} finds no panel with room left beside the fans there.`,
            why: 'Each panel is only so long: where three fans of 120 mm stand side by side, two of 140 mm do.',
            remedy: 'Take one fan off the list, or choose smaller fans, or a case with more places.',
          },
    cannotTell: (missing) =>
      missing.length === 0
        ? {
            headline: 'Is there a place for every fan?',
            what: 'Not every way of placing the fans was tried, so this is not judged.',
            findOut: 'Lay the fans along the panels of the case, the largest first.',
          }
        : {
            headline: 'How many fans does the case take?',
            what: "The case's places for fans are not recorded, so this is not judged.",
            findOut: "Count the places at the front, rear and top of the case, or read the case's leaflet.",
          },
  },

  examples: [
    {
      title: 'two fans of 120 mm on a panel for two',
      parts: {
        fan: [{ sizeMm: 120 }, { sizeMm: 120 }],
        chassis: { fanPanels: [{ id: 'front', sizesMm: [120], units: 4 }], fittedFans: [] },
      },
      verdict: 'fits',
    },
    {
      title: 'a third fan on a panel for two',
      parts: {
        fan: [{ sizeMm: 120 }, { sizeMm: 120 }, { sizeMm: 120 }],
        chassis: { fanPanels: [{ id: 'front', sizesMm: [120], units: 4 }], fittedFans: [] },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'a fitted fan holds half of the panel',
      parts: {
        fan: [{ sizeMm: 120 }, { sizeMm: 120 }],
        chassis: {
          fanPanels: [{ id: 'front', sizesMm: [120], units: 4 }],
          fittedFans: [{ id: 'front-1', panel: 'front', sizeMm: 120, thicknessMm: 25, pins: 3, milliamps: 180 }],
        },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'three places of 60 mm do not take two fans of 140 mm',
      parts: {
        fan: [{ sizeMm: 140 }, { sizeMm: 140 }],
        chassis: { fanPanels: [{ id: 'front', sizesMm: [140], units: 5 }], fittedFans: [] },
      },
      verdict: 'does-not-fit',
    },
    {
      title: "the case's places are not recorded",
      parts: { fan: { sizeMm: 120 }, chassis: { fanPanels: undefined, fittedFans: [] } },
      verdict: 'cannot-tell',
    },
    { title: 'no fan on the list', parts: { chassis: { fittedFans: [] } }, verdict: 'does-not-apply' },
  ],
});
