import { showMm, tidy } from '../../../units/amounts.ts';
import { bayPlace } from '../../needs/chassis.ts';
import { cannotTell, doesNotApply, doesNotFit, fits, gathersRule } from '../../rule.ts';

export const supplyBehindCage = gathersRule({
  id: 'clearance/supply-behind-cage',
  title: 'The supply leaves room for the drive in the cage in front of it',
  severity: 'blocker',
  basis: 'maker',
  sources: ['maker-data-sheet'],
  lesson: 'fit/how-parts-meet',

  gathers: { 'power-supply': ['lengthMm'], chassis: ['driveBays'] },
  sees: ['drive-bay', 'supply-mount'],
  judge({ 'power-supply': supplies, chassis: cases }, { joints }) {
    // The supply in this case, and the narrowest of its bays that holds a drive.
    const mounted = supplies.flatMap((supply) =>
      joints
        .filter(({ kind, need }) => kind === 'supply-mount' && need.startsWith(`${supply.unit}/`))
        .flatMap(({ place }) => cases.filter(({ unit }) => place.startsWith(`${unit}/`)))
        .map((housing) => ({ supply, housing })),
    );
    for (const { supply, housing } of mounted) {
      const limits = (housing.driveBays ?? [])
        .filter(({ id }) => joints.some(({ place }) => place === bayPlace(housing.unit, id)))
        .flatMap(({ supplyLengthMm }) => supplyLengthMm ?? []);
      if (limits.length === 0) continue;
      if (supply.lengthMm === undefined) return cannotTell(`${supply.unit}.lengthMm`);
      const limit = Math.min(...limits);
      const facts = { supply: supply.name, length: supply.lengthMm, limit, over: tidy(supply.lengthMm - limit) };
      return facts.over <= 0
        ? fits(facts, [supply.unit, housing.unit])
        : doesNotFit(facts, [supply.unit, housing.unit]);
    }
    return doesNotApply;
  },

  say: {
    fits: ({ supply, length, limit }) =>
      `${supply} is ${showMm(length)} long; with a drive in the cage in front of it the case takes ${showMm(limit)}.`,
    doesNotFit: ({ supply, length, limit, over }) => ({
      headline: `The supply is ${showMm(over)} too long here`,
      what: `${supply} is ${showMm(length)} long; with a drive in the cage in front of it the case takes ${showMm(limit)}, so it is ${showMm(over)} too long.`,
      why: 'The far end of the supply, where its leads come out, meets the drive in the cage.',
      remedy: `Choose a supply of ${showMm(limit)} or less, or take that drive off the list, or choose an M.2 drive in its place.`,
    }),
    cannotTell: () => ({
      headline: 'How long is the power supply?',
      what: "The supply's length is not recorded, so it is not judged whether a drive in the cage is in its way.",
      findOut: 'Measure it from the face with the mains socket to the far end.',
    }),
  },

  examples: [
    {
      title: 'exactly what the drive leaves',
      parts: {
        'power-supply': { shape: 'atx', lengthMm: 150 },
        'storage-drive': { build: '3.5' },
        chassis: { supplyLengthMm: 180, driveBays: [{ id: 'bay-1', sizes: ['3.5'], supplyLengthMm: 150 }] },
      },
      verdict: 'fits',
    },
    {
      title: 'one millimetre more than the drive leaves',
      parts: {
        'power-supply': { shape: 'atx', lengthMm: 151 },
        'storage-drive': { build: '3.5' },
        chassis: { supplyLengthMm: 180, driveBays: [{ id: 'bay-1', sizes: ['3.5'], supplyLengthMm: 150 }] },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'a bay elsewhere is filled first',
      parts: {
        'power-supply': { shape: 'atx', lengthMm: 151 },
        'storage-drive': { build: '3.5' },
        chassis: {
          supplyLengthMm: 180,
          driveBays: [
            { id: 'bay-1', sizes: ['3.5'], supplyLengthMm: 150 },
            { id: 'bay-2', sizes: ['3.5'] },
          ],
        },
      },
      verdict: 'does-not-apply',
    },
    {
      title: "the supply's length is not recorded",
      parts: {
        'power-supply': { shape: 'atx', lengthMm: undefined },
        'storage-drive': { build: '3.5' },
        chassis: { supplyLengthMm: 180, driveBays: [{ id: 'bay-1', sizes: ['3.5'], supplyLengthMm: 150 }] },
      },
      verdict: 'cannot-tell',
    },
  ],
});
