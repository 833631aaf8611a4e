import { showWatts } from '../../../units/amounts.ts';
import { doesNotApply, doesNotFit, fits, jointRule } from '../../rule.ts';
import { partAs } from '../ends.ts';
import { isFarOver } from '../heat.ts';

export const coolerReach = jointRule({
  id: 'cooling/cooler-reach',
  title: 'The heat of the processor is not far beyond the rating of the cooler',
  severity: 'blocker',
  basis: 'maker',
  sources: ['maker-data-sheet', 'common-practice'],
  lesson: 'fit/choosing-for-a-purpose',

  at: 'cooling',
  reads: { processor: ['sustainedW'], cooler: ['ratedW'] },
  judge({ need, place }) {
    const makes = partAs(need.unit, 'processor')?.sustainedW;
    const carries = partAs(place.unit, 'cooler')?.ratedW;
    // What is not recorded is asked once, by the rule on the rating.
    if (makes === undefined || carries === undefined) return doesNotApply;
    const facts = { processor: need.unit.part.name, cooler: place.unit.part.name, makes, carries };
    return isFarOver(makes, carries) ? doesNotFit(facts) : fits(facts);
  },

  say: {
    fits: ({ processor, cooler }) => `The heat of ${processor} is not far beyond what ${cooler} carries.`,
    doesNotFit: ({ processor, cooler, makes, carries }) => ({
      headline: `A ${showWatts(carries)} cooler for ${showWatts(makes)}`,
      what: `${processor} makes ${showWatts(makes)} of heat under steady load; ${cooler} carries away ${showWatts(carries)}, so the heat is more than half as much again.`,
      why: 'Slowing down does not save it: under load the processor reaches its highest temperature within a minute and the machine switches itself off.',
      remedy: `Choose a cooler rated for ${showWatts(makes)} or more, or a processor of ${showWatts(carries)} or less.`,
    }),
    cannotTell: () => ({
      headline: 'Is the cooler strong enough?',
      what: "The processor's power or the cooler's rating is not recorded, so this is not judged.",
      findOut: 'Read both on their boxes: watts.',
    }),
  },

  examples: [
    {
      title: 'exactly half as much again',
      parts: {
        processor: { socket: 'k4', sustainedW: 150 },
        motherboard: { socket: 'k4', coolerMountings: ['square-80'] },
        cooler: { mountings: ['square-80'], ratedW: 100 },
      },
      verdict: 'fits',
    },
    {
      title: 'one watt more than that',
      parts: {
        processor: { socket: 'k4', sustainedW: 151 },
        motherboard: { socket: 'k4', coolerMountings: ['square-80'] },
        cooler: { mountings: ['square-80'], ratedW: 100 },
      },
      verdict: 'does-not-fit',
    },
    {
      title: "the cooler's rating is not recorded",
      parts: {
        processor: { socket: 'k4', sustainedW: 150 },
        motherboard: { socket: 'k4', coolerMountings: ['square-80'] },
        cooler: { mountings: ['square-80'], ratedW: undefined },
      },
      verdict: 'does-not-apply',
    },
    { title: 'no cooler on the list', parts: { processor: { sustainedW: 151 } }, verdict: 'does-not-apply' },
  ],
});
