import { showMm, tidy } from '../../../units/amounts.ts';
import { cannotTell, doesNotFit, fits, joinsRule } from '../../rule.ts';
import { lacks } from '../words.ts';

export const coolerHeight = joinsRule({
  id: 'clearance/cooler-height',
  title: 'The cooler stands no taller than the case allows',
  severity: 'blocker',
  basis: 'maker',
  sources: ['maker-data-sheet'],
  lesson: 'fit/how-parts-meet',

  joins: { cooler: ['heightMm'], chassis: ['coolerHeightMm'] },
  judge({ cooler, chassis }) {
    if (cooler.heightMm === undefined) return cannotTell('cooler.heightMm');
    if (chassis.coolerHeightMm === undefined) return cannotTell('chassis.coolerHeightMm');

    const facts = {
      height: cooler.heightMm,
      limit: chassis.coolerHeightMm,
      over: tidy(cooler.heightMm - chassis.coolerHeightMm),
    };
    return facts.over <= 0 ? fits(facts) : doesNotFit(facts);
  },

  say: {
    fits: ({ height, limit }) => `The cooler is ${showMm(height)} tall; the case allows ${showMm(limit)}.`,
    doesNotFit: ({ height, limit, over }) => ({
      headline: `The cooler is ${showMm(over)} too tall`,
      what: `The cooler is ${showMm(height)} tall; the case allows ${showMm(limit)}, so it is ${showMm(over)} too tall.`,
      why: 'The side panel meets the cooler first, so the case cannot be closed.',
      remedy: `Choose a cooler of ${showMm(limit)} or less, or a case that allows ${showMm(height)} or more.`,
    }),
    cannotTell: (missing) =>
      lacks(missing, 'cooler')
        ? {
            headline: 'How tall is the cooler?',
            what: "The cooler's height is not recorded, so this fit is not judged.",
            findOut: "Read it on the maker's sheet, or measure from the face that meets the processor to the top.",
          }
        : {
            headline: 'How tall a cooler does the case allow?',
            what: "The case's limit for the cooler is not recorded, so this fit is not judged.",
            findOut:
              "Measure from the processor's lid to the edge that the side panel rests on, and keep 3 mm free. Or read it in the case's leaflet.",
          },
  },

  examples: [
    {
      title: 'exactly at the limit',
      parts: { cooler: { heightMm: 158 }, chassis: { coolerHeightMm: 158 } },
      verdict: 'fits',
    },
    {
      title: 'one millimetre over',
      parts: { cooler: { heightMm: 159 }, chassis: { coolerHeightMm: 158 } },
      verdict: 'does-not-fit',
    },
    {
      title: "the cooler's height is not recorded",
      parts: { cooler: { heightMm: undefined }, chassis: { coolerHeightMm: 158 } },
      verdict: 'cannot-tell',
    },
    {
      title: "the case's limit is not recorded",
      parts: { cooler: { heightMm: 158 }, chassis: { coolerHeightMm: undefined } },
      verdict: 'cannot-tell',
    },
    { title: 'no cooler on the list', parts: { chassis: { coolerHeightMm: 158 } }, verdict: 'does-not-apply' },
  ],
});
