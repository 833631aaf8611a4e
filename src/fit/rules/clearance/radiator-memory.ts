import { showMm } from '../../../units/amounts.ts';
import { refusesRule } from '../../rule.ts';
import { lacks } from '../words.ts';

export const radiatorMemory = refusesRule({
  id: 'clearance/radiator-memory',
  title: 'The memory is no taller than a radiator at the top leaves room for',
  severity: 'blocker',
  basis: 'maker',
  sources: ['maker-data-sheet'],
  lesson: 'fit/how-parts-meet',

  refuses: { kind: 'radiator-mount', op: 'atMost', need: 'memoryMm', place: 'memoryHeightMm' },

  say: {
    fits: ({ part, on, need, offered }) =>
      need === null || offered === null
        ? `The radiator of ${part} hangs clear of the memory.`
        : `The tallest memory is ${showMm(Number(need))}; under the radiator of ${part}, at the top of ${on}, ${showMm(Number(offered))} are free.`,
    doesNotFit: ({ part, on, need, offered, difference }) => ({
      headline: `The memory is ${showMm(Number(difference))} too tall`,
      what: `The tallest memory is ${showMm(Number(need))}; with the radiator of ${part} at the top of ${on}, ${showMm(Number(offered))} are free, so it is ${showMm(Number(difference))} too tall. No other panel takes the radiator.`,
      why: 'The fans of the radiator come down on the modules before its screws meet the panel.',
      remedy: `Choose memory of ${showMm(Number(offered))} or less, or a case that takes the radiator at the front, or a cooler with a smaller radiator or none.`,
    }),
    cannotTell: (missing) =>
      lacks(missing, 'chassis')
        ? {
            headline: 'How much room is above the memory?',
            what: 'The room that a radiator at the top leaves above the memory is not recorded, so this fit is not judged.',
            findOut: "Read it in the case's leaflet, or hold the radiator in place and measure down to the slots.",
          }
        : {
            headline: 'How tall is the memory?',
            what: 'The height of the memory is not recorded, so it is not judged whether it goes under the radiator.',
            findOut: 'Measure a module from the edge with the contacts to the top of its metal.',
          },
  },

  examples: [
    {
      title: 'exactly as tall as the room',
      parts: {
        cooler: { radiator: { lengthMm: 240, thicknessMm: 27, fanThicknessMm: 25, fanSizeMm: 120, fans: 2 } },
        'memory-module': { heightMm: 35 },
        chassis: {
          fanPanels: [{ id: 'top', sizesMm: [120], units: 4, radiatorsMm: [240], depthMm: 55, memoryHeightMm: 35 }],
          fittedFans: [],
        },
      },
      verdict: 'fits',
    },
    {
      title: 'one millimetre taller',
      parts: {
        cooler: { radiator: { lengthMm: 240, thicknessMm: 27, fanThicknessMm: 25, fanSizeMm: 120, fans: 2 } },
        'memory-module': { heightMm: 36 },
        chassis: {
          fanPanels: [{ id: 'top', sizesMm: [120], units: 4, radiatorsMm: [240], depthMm: 55, memoryHeightMm: 35 }],
          fittedFans: [],
        },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'the radiator goes to the front instead',
      parts: {
        cooler: { radiator: { lengthMm: 240, thicknessMm: 27, fanThicknessMm: 25, fanSizeMm: 120, fans: 2 } },
        'memory-module': { heightMm: 36 },
        chassis: {
          fanPanels: [
            { id: 'top', sizesMm: [120], units: 4, radiatorsMm: [240], depthMm: 55, memoryHeightMm: 35 },
            { id: 'front', sizesMm: [120], units: 4, radiatorsMm: [240], depthMm: 55 },
          ],
          fittedFans: [],
        },
      },
      verdict: 'fits',
    },
    {
      title: "the module's height is not recorded",
      parts: {
        cooler: { radiator: { lengthMm: 240, thicknessMm: 27, fanThicknessMm: 25, fanSizeMm: 120, fans: 2 } },
        'memory-module': { heightMm: undefined },
        chassis: {
          fanPanels: [{ id: 'top', sizesMm: [120], units: 4, radiatorsMm: [240], depthMm: 55, memoryHeightMm: 35 }],
          fittedFans: [],
        },
      },
      verdict: 'cannot-tell',
    },
    {
      title: 'a cooler without a radiator',
      parts: { cooler: {}, 'memory-module': { heightMm: 36 }, chassis: {} },
      verdict: 'does-not-apply',
    },
  ],
});
