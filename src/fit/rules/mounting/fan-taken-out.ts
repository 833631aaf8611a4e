import { radiatorInstead } from '../../needs/chassis.ts';
import { doesNotApply, doesNotFit, fits, jointRule } from '../../rule.ts';

export const fanTakenOut = jointRule({
  id: 'mounting/fan-taken-out',
  title: 'The fans that come with the case stay where they are',
  severity: 'note',
  basis: 'practice',
  sources: ['common-practice'],
  lesson: 'fit/how-parts-meet',

  at: 'radiator-mount',
  reads: { cooler: [], chassis: [] },
  judge({ joint, need, place }) {
    if (need.unit.part.class !== 'cooler' || place.unit.part.class !== 'chassis') return doesNotApply;
    const panel = joint.place.slice(joint.place.lastIndexOf('-') + 1);
    const facts = { cooler: need.unit.part.name, chassis: place.unit.part.name, panel };
    return joint.way === radiatorInstead ? doesNotFit(facts) : fits(facts);
  },

  say: {
    fits: ({ cooler, chassis, panel }) => `The radiator of ${cooler} has room at the ${panel} of ${chassis}.`,
    doesNotFit: ({ cooler, chassis, panel }) => ({
      headline: 'A fan comes out for the radiator',
      what: `${chassis} is sold with a fan at the ${panel}, where the radiator of ${cooler} goes.`,
      why: 'A radiator is as long as a row of fans and brings fans of its own, so the one behind it has no room and no work.',
      remedy:
        'The fan should be taken out before the radiator goes in: four screws, and its lead off the header, which is then free. Keep it, or put it where the case has a free place.',
    }),
    cannotTell: () => ({
      headline: 'Is there a fan in the way?',
      what: 'Which fans come with the case is not recorded, so it is not said whether one comes out for the radiator.',
      findOut: 'Look at the panel where the radiator goes.',
    }),
  },

  examples: [
    {
      title: 'room for the radiator beside the fan of the case',
      parts: {
        cooler: { radiator: { lengthMm: 240, thicknessMm: 27, fanThicknessMm: 25, fanSizeMm: 120, fans: 2 } },
        chassis: {
          fanPanels: [{ id: 'front', sizesMm: [120], units: 6, radiatorsMm: [240], depthMm: 60 }],
          fittedFans: [{ id: 'front-1', panel: 'front', sizeMm: 120, thicknessMm: 25, pins: 3, milliamps: 200 }],
        },
      },
      verdict: 'fits',
    },
    {
      title: 'the fan of the case where the radiator goes',
      parts: {
        cooler: { radiator: { lengthMm: 360, thicknessMm: 27, fanThicknessMm: 25, fanSizeMm: 120, fans: 3 } },
        chassis: {
          fanPanels: [{ id: 'front', sizesMm: [120], units: 6, radiatorsMm: [360], depthMm: 60 }],
          fittedFans: [{ id: 'front-1', panel: 'front', sizeMm: 120, thicknessMm: 25, pins: 3, milliamps: 200 }],
        },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'another panel that is free',
      parts: {
        cooler: { radiator: { lengthMm: 240, thicknessMm: 27, fanThicknessMm: 25, fanSizeMm: 120, fans: 2 } },
        chassis: {
          fanPanels: [
            { id: 'front', sizesMm: [120], units: 4, radiatorsMm: [240], depthMm: 60 },
            { id: 'top', sizesMm: [120], units: 4, radiatorsMm: [240], depthMm: 60 },
          ],
          fittedFans: [{ id: 'front-1', panel: 'front', sizeMm: 120, thicknessMm: 25, pins: 3, milliamps: 200 }],
        },
      },
      verdict: 'fits',
    },
    {
      title: 'a cooler without a radiator',
      parts: { cooler: {}, chassis: {} },
      verdict: 'does-not-apply',
    },
  ],
});
