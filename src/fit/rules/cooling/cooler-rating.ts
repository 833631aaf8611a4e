import { showWatts, tidy } from '../../../units/amounts.ts';
import { cannotTell, doesNotApply, doesNotFit, fits, jointRule } from '../../rule.ts';
import { partAs } from '../ends.ts';
import { lacks } from '../words.ts';

export const coolerRating = jointRule({
  id: 'cooling/cooler-rating',
  title: 'The cooler carries away the heat of the processor',
  severity: 'limit',
  basis: 'maker',
  sources: ['maker-data-sheet'],
  lesson: 'fit/choosing-for-a-purpose',

  at: 'cooling',
  reads: { processor: ['sustainedW'], cooler: ['ratedW'] },
  judge({ need, place }) {
    const processor = partAs(need.unit, 'processor');
    const cooler = partAs(place.unit, 'cooler');
    if (processor === undefined || cooler === undefined) return doesNotApply;
    if (processor.sustainedW === undefined) return cannotTell(`${need.unit.id}.sustainedW`);
    if (cooler.ratedW === undefined) return cannotTell(`${place.unit.id}.ratedW`);

    const facts = {
      processor: processor.name,
      cooler: cooler.name,
      makes: processor.sustainedW,
      carries: cooler.ratedW,
      over: tidy(processor.sustainedW - cooler.ratedW),
    };
    return facts.over <= 0 ? fits(facts) : doesNotFit(facts);
  },

  say: {
    fits: ({ processor, cooler, makes, carries }) =>
      `${processor} makes ${showWatts(makes)} of heat; ${cooler} carries away ${showWatts(carries)}.`,
    doesNotFit: ({ processor, cooler, makes, carries, over }) => ({
      headline: `The cooler is ${showWatts(over)} too weak`,
      what: `${processor} makes ${showWatts(makes)} of heat under steady load; ${cooler} carries away ${showWatts(carries)}, so it is ${showWatts(over)} too weak.`,
      why: 'The processor slows itself down to stay below its highest temperature, and the fan is loud all the time.',
      remedy: `Choose a cooler rated for ${showWatts(makes)} or more, or a processor of ${showWatts(carries)} or less.`,
    }),
    cannotTell: (missing) =>
      lacks(missing, 'processor')
        ? {
            headline: 'How much heat does the processor make?',
            what: "The processor's power under steady load is not recorded, so its cooling is not judged.",
            findOut: "Read the watts on the processor's box or on its maker's sheet.",
          }
        : {
            headline: 'How much heat does the cooler carry?',
            what: "The cooler's rating is not recorded, so the cooling is not judged.",
            findOut: "Read the watts on the cooler's box, or look up the processor in the cooler maker's list.",
          },
  },

  examples: [
    {
      title: 'exactly at the rating',
      parts: {
        processor: { socket: 'k4', sustainedW: 95 },
        motherboard: { socket: 'k4', coolerMountings: ['square-80'] },
        cooler: { mountings: ['square-80'], ratedW: 95 },
      },
      verdict: 'fits',
    },
    {
      title: 'one watt over',
      parts: {
        processor: { socket: 'k4', sustainedW: 96 },
        motherboard: { socket: 'k4', coolerMountings: ['square-80'] },
        cooler: { mountings: ['square-80'], ratedW: 95 },
      },
      verdict: 'does-not-fit',
    },
    {
      title: "the cooler's rating is not recorded",
      parts: {
        processor: { socket: 'k4', sustainedW: 95 },
        motherboard: { socket: 'k4', coolerMountings: ['square-80'] },
        cooler: { mountings: ['square-80'], ratedW: undefined },
      },
      verdict: 'cannot-tell',
    },
    {
      title: "the processor's power is not recorded",
      parts: {
        processor: { socket: 'k4', sustainedW: undefined },
        motherboard: { socket: 'k4', coolerMountings: ['square-80'] },
        cooler: { mountings: ['square-80'], ratedW: 95 },
      },
      verdict: 'cannot-tell',
    },
    { title: 'no cooler on the list', parts: { processor: { sustainedW: 96 } }, verdict: 'does-not-apply' },
  ],
});
