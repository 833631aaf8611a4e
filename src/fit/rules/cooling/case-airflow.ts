import { capital, spelled } from '../../../wording/phrases.ts';
import { cannotTell, doesNotApply, doesNotFit, fits, gathersRule } from '../../rule.ts';
import { drawsAir } from '../air.ts';

export const caseAirflow = gathersRule({
  id: 'cooling/case-airflow',
  title: 'Air comes in at one end of the case and goes out at another',
  severity: 'limit',
  basis: 'practice',
  sources: ['common-practice'],
  lesson: 'fit/choosing-for-a-purpose',

  gathers: { chassis: ['fittedFans', 'fanPanels', 'supplyShape'], fan: [] },
  sees: ['fan-mount', 'radiator-mount'],
  judge({ chassis }, { joints }) {
    const housing = chassis[0];
    // A case for an older supply, or with no place for a fan, is one whose supply draws the air through it.
    if (housing === undefined || housing.fanPanels?.length === 0 || drawsAir(housing.supplyShape)) return doesNotApply;

    const added = joints.map((joint) => joint.place);
    const at = (panels: readonly string[]) =>
      (housing.fittedFans ?? []).filter((fan) => panels.includes(fan.panel)).length +
      // A radiator has fans of its own; it counts once.
      added.filter((place) =>
        panels.some((panel) => place.includes(`/fan-${panel}-`) || place.endsWith(`/radiator-${panel}`)),
      ).length;
    const facts = { chassis: housing.name, in: at(['front']), out: at(['rear', 'top']) };
    if (facts.in > 0 && facts.out > 0) return fits(facts, [housing.unit]);
    if (housing.fittedFans === undefined) return cannotTell(`${housing.unit}.fittedFans`);
    return doesNotFit(facts, [housing.unit]);
  },

  say: {
    fits: ({ in: inwards, out }) =>
      `${capital(spelled(inwards, 'fan', 'fans'))} at the front ${inwards === 1 ? 'brings' : 'bring'} air in, and ${spelled(out, 'fan', 'fans')} at the rear or top ${out === 1 ? 'takes' : 'take'} it out.`,
    doesNotFit: ({ chassis, in: inwards, out }) => ({
      headline:
        inwards > 0 ? 'No fan takes the warm air out' : out > 0 ? 'No fan brings cool air in' : 'The case has no fan',
      what: `${chassis} has ${spelled(inwards, 'fan', 'fans')} at the front for air in and ${spelled(out, 'fan', 'fans')} at the rear or top for air out; one of each is the usual least.`,
      why: 'Warm air stays in the case, so everything in it runs hotter and the fans of the cooler and the card run louder.',
      remedy:
        inwards > 0
          ? 'Add a fan that blows out at the rear or the top, or choose a case that comes with one.'
          : out > 0
            ? 'Add a fan that blows in at the front, or choose a case that comes with one.'
            : 'Add one fan at the front that blows in and one at the rear that blows out, or choose a case that comes with both.',
    }),
    cannotTell: () => ({
      headline: 'Which fans come with the case?',
      what: 'The fans that come with the case are not recorded, so the way of the air is not judged.',
      findOut: 'Take the side panel off and look: a fan at the front for air in, one at the rear or top for air out.',
    }),
  },

  examples: [
    {
      title: 'one fan fitted at each end',
      parts: {
        chassis: {
          fittedFans: [
            { id: 'front-1', panel: 'front', sizeMm: 120, thicknessMm: 25, pins: 3, milliamps: 180 },
            { id: 'rear-1', panel: 'rear', sizeMm: 120, thicknessMm: 25, pins: 3, milliamps: 180 },
          ],
        },
      },
      verdict: 'fits',
    },
    {
      title: 'one fitted at the rear and one added at the front',
      parts: {
        chassis: {
          fanPanels: [{ id: 'front', sizesMm: [120], units: 4 }],
          fittedFans: [{ id: 'rear-1', panel: 'rear', sizeMm: 120, thicknessMm: 25, pins: 3, milliamps: 180 }],
        },
        fan: { sizeMm: 120 },
      },
      verdict: 'fits',
    },
    {
      title: 'one fan at the rear only',
      parts: {
        chassis: {
          fittedFans: [{ id: 'rear-1', panel: 'rear', sizeMm: 120, thicknessMm: 25, pins: 3, milliamps: 180 }],
        },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'a fan at the front and a radiator with its fans at the top',
      parts: {
        cooler: { radiator: { lengthMm: 240, thicknessMm: 27, fanThicknessMm: 25, fanSizeMm: 120, fans: 2 } },
        chassis: {
          fanPanels: [{ id: 'top', sizesMm: [120], units: 4, radiatorsMm: [240], depthMm: 60 }],
          fittedFans: [{ id: 'front-1', panel: 'front', sizeMm: 120, thicknessMm: 25, pins: 3, milliamps: 180 }],
        },
      },
      verdict: 'fits',
    },
    { title: 'no fan at all', parts: { chassis: { fittedFans: [] } }, verdict: 'does-not-fit' },
    { title: 'fitted fans not recorded', parts: { chassis: { fittedFans: undefined } }, verdict: 'cannot-tell' },
    {
      title: 'a case that leaves the air to the supply',
      shelf: 'vintage',
      parts: { chassis: {} },
      verdict: 'does-not-apply',
    },
    {
      title: 'a tower of about 1990 with a place for a fan and none in it',
      shelf: 'vintage',
      parts: { chassis: { supplyShape: 'full-at', fanPanels: [{ id: 'front', sizesMm: [80], units: 2 }] } },
      verdict: 'does-not-apply',
    },
    { title: 'no case on the list', parts: { fan: { sizeMm: 120 } }, verdict: 'does-not-apply' },
  ],
});
