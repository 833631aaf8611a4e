import { spelled } from '../../../wording/phrases.ts';
import { cannotTell, doesNotApply, doesNotFit, fits, gathersRule } from '../../rule.ts';
import { drawsAir } from '../air.ts';

export const passivePart = gathersRule({
  id: 'cooling/passive-part',
  title: 'A cooler without a fan has moving air from the case',
  severity: 'limit',
  basis: 'practice',
  sources: ['common-practice'],
  lesson: 'fit/choosing-for-a-purpose',

  gathers: { cooler: ['isPassive'], chassis: ['fittedFans', 'supplyShape'] },
  sees: ['fan-mount', 'cooler-mount'],
  judge({ cooler: coolers, chassis: cases }, { joints }) {
    const passive = coolers.filter(
      ({ unit, isPassive }) => isPassive && joints.some(({ need }) => need === `${unit}/mount`),
    );
    const [cooler] = passive;
    const housing = cases[0];
    if (cooler === undefined || housing === undefined || drawsAir(housing.supplyShape)) return doesNotApply;
    const added = joints.filter(({ kind, place }) => kind === 'fan-mount' && place.startsWith(`${housing.unit}/`));
    const fans = (housing.fittedFans?.length ?? 0) + added.length;
    const facts = { cooler: cooler.name, chassis: housing.name, fans };
    const about = [cooler.unit, housing.unit];
    if (fans > 0) return fits(facts, about);
    return housing.fittedFans === undefined ? cannotTell(`${housing.unit}.fittedFans`) : doesNotFit(facts, about);
  },

  say: {
    fits: ({ cooler, fans }) =>
      `${cooler} has no fan of its own; ${spelled(fans, 'fan', 'fans')} of the case ${fans === 1 ? 'moves' : 'move'} the air round it.`,
    doesNotFit: ({ cooler, chassis }) => ({
      headline: 'No moving air for the fanless cooler',
      what: `${cooler} has no fan of its own, and ${chassis} has none either.`,
      why: 'Fins give their heat to the air between them. Where that air stands still it is soon as warm as they are, and the processor slows itself down.',
      remedy: 'One fan at the rear or top, near the cooler, should be added, or a cooler with a fan chosen.',
    }),
    cannotTell: () => ({
      headline: 'Which fans come with the case?',
      what: 'The fans that come with the case are not recorded, so it is not judged whether air moves round the fanless cooler.',
      findOut: 'Take the side panel off and look for fans at the front, the rear and the top.',
    }),
  },

  examples: [
    {
      title: 'one fan fitted at the rear',
      parts: {
        motherboard: {},
        cooler: { isPassive: true, fan: undefined },
        chassis: {
          fittedFans: [{ id: 'rear-1', panel: 'rear', sizeMm: 120, thicknessMm: 25, pins: 3, milliamps: 180 }],
        },
      },
      verdict: 'fits',
    },
    {
      title: 'no fan in the case',
      parts: { motherboard: {}, cooler: { isPassive: true, fan: undefined }, chassis: { fittedFans: [] } },
      verdict: 'does-not-fit',
    },
    {
      title: 'no fan in the case, and one added',
      parts: {
        motherboard: {},
        cooler: { isPassive: true, fan: undefined },
        chassis: { fittedFans: [] },
        fan: {},
      },
      verdict: 'fits',
    },
    {
      title: 'fitted fans not recorded',
      parts: { motherboard: {}, cooler: { isPassive: true, fan: undefined }, chassis: { fittedFans: undefined } },
      verdict: 'cannot-tell',
    },
    {
      title: 'fins in a case of about 1990, whose supply draws the air through it',
      shelf: 'vintage',
      parts: {
        motherboard: { coolerMountings: ['clip-168'] },
        cooler: { mountings: ['clip-168'], isPassive: true, fan: undefined },
        chassis: {},
      },
      verdict: 'does-not-apply',
    },
    {
      title: 'a cooler with a fan',
      parts: { motherboard: {}, cooler: {}, chassis: { fittedFans: [] } },
      verdict: 'does-not-apply',
    },
  ],
});
