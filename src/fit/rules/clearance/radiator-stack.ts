import { showMm } from '../../../units/amounts.ts';
import { refusesRule } from '../../rule.ts';

export const radiatorStack = refusesRule({
  id: 'clearance/radiator-stack',
  title: 'The radiator and its fans are no thicker than the room behind the panel',
  severity: 'blocker',
  basis: 'maker',
  sources: ['maker-data-sheet'],
  lesson: 'fit/how-parts-meet',

  refuses: { kind: 'radiator-mount', op: 'atMost', need: 'stackMm', place: 'depthMm' },

  say: {
    fits: ({ part, on, need, offered }) =>
      `The radiator of ${part} and its fans are ${showMm(Number(need))} thick; ${on} has ${showMm(Number(offered))} behind that panel.`,
    doesNotFit: ({ part, on, need, offered, difference }) => ({
      headline: `The radiator is ${showMm(Number(difference))} too thick`,
      what: `The radiator of ${part} and its fans are ${showMm(Number(need))} thick together; ${on} has ${showMm(Number(offered))} behind the panel, so ${showMm(Number(difference))} too little.`,
      why: 'The fans meet the board or the side panel before the radiator is flat on its panel.',
      remedy: `Choose a cooler whose radiator and fans are ${showMm(Number(offered))} thick or less, or a case with ${showMm(Number(need))} behind a panel of that length.`,
    }),
    cannotTell: () => ({
      headline: 'How deep is the room behind the panel?',
      what: 'The room behind the panel for the radiator is not recorded, so this fit is not judged.',
      findOut: 'Measure from the panel inwards to the first thing in the way: the edge of the board, a drive, a card.',
    }),
  },

  examples: [
    {
      title: 'exactly as thick as the room',
      parts: {
        cooler: { radiator: { lengthMm: 240, thicknessMm: 27, fanThicknessMm: 25, fanSizeMm: 120, fans: 2 } },
        chassis: {
          fanPanels: [{ id: 'rear', sizesMm: [120], units: 4, radiatorsMm: [240], depthMm: 52 }],
          fittedFans: [],
        },
      },
      verdict: 'fits',
    },
    {
      title: 'one millimetre thicker',
      parts: {
        cooler: { radiator: { lengthMm: 240, thicknessMm: 28, fanThicknessMm: 25, fanSizeMm: 120, fans: 2 } },
        chassis: {
          fanPanels: [{ id: 'rear', sizesMm: [120], units: 4, radiatorsMm: [240], depthMm: 52 }],
          fittedFans: [],
        },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'the room behind the panel is not recorded',
      parts: {
        cooler: { radiator: { lengthMm: 240, thicknessMm: 27, fanThicknessMm: 25, fanSizeMm: 120, fans: 2 } },
        chassis: { fanPanels: [{ id: 'rear', sizesMm: [120], units: 4, radiatorsMm: [240] }], fittedFans: [] },
      },
      verdict: 'cannot-tell',
    },
    {
      title: 'a cooler without a radiator',
      parts: {
        cooler: {},
        chassis: { fanPanels: [{ id: 'rear', sizesMm: [120], units: 4, radiatorsMm: [240], depthMm: 52 }] },
      },
      verdict: 'does-not-apply',
    },
  ],
});
