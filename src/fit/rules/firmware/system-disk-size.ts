import { showRoom } from '../../../units/amounts.ts';
import { cannotTell, doesNotApply, doesNotFit, fits, gathersRule } from '../../rule.ts';
import { drivesAlike, joined } from '../ends.ts';

const megabytesInGigabyte = 1000;

export const systemDiskSize = gathersRule({
  id: 'firmware/system-disk-size',
  title: 'No drive is larger than the operating system can use',
  severity: 'limit',
  basis: 'maker',
  sources: ['maker-data-sheet'],
  lesson: 'fit/choosing-for-a-purpose',

  gathers: { 'storage-drive': ['capacityGb'], 'fixed-disk': ['capacityMb'], 'operating-system': ['largestDiskGb'] },
  sees: ['module-slot', 'drive-data'],
  judge({ 'storage-drive': drives, 'fixed-disk': disks, 'operating-system': systems }, { joints }) {
    const system = systems[0];
    const all = drivesAlike(joined(drives, joints), joined(disks, joints));
    const [first] = all;
    if (system?.largestDiskGb === undefined || first === undefined) return doesNotApply;

    const uses = system.largestDiskGb * megabytesInGigabyte;
    const largest = all.reduce((a, b) => ((b.holds ?? 0) > (a.holds ?? 0) ? b : a), first);
    const holds = largest.holds ?? 0;
    const facts = { system: system.name, drive: largest.name, uses, holds, idle: Math.max(0, holds - uses) };
    if (facts.idle > 0) return doesNotFit(facts, [largest.unit, system.unit]);
    const unknown = all.filter((drive) => drive.holds === undefined);
    if (unknown.length > 0) return cannotTell(...unknown.map(({ field }) => field));
    return fits(facts, [largest.unit, system.unit]);
  },

  say: {
    fits: ({ system, drive, uses, holds }) =>
      `${drive} holds ${showRoom(holds)}; ${system} can use drives of up to ${showRoom(uses)}.`,
    doesNotFit: ({ system, drive, uses, holds, idle }) => ({
      headline: `${showRoom(idle)} of the drive left idle`,
      what: `${drive} holds ${showRoom(holds)}; ${system} can use drives of up to ${showRoom(uses)}, so ${showRoom(idle)} is left idle.`,
      why: 'The system keeps its list of what is where in numbers that end there, and divides no more of the drive up.',
      remedy: `Choose a drive of ${showRoom(uses)} or less and keep the difference, or a later system, or leave the rest idle.`,
    }),
    cannotTell: () => ({
      headline: 'How much does the drive hold?',
      what: 'The size of a drive is not recorded, so it is not judged whether the system can use all of it.',
      findOut: "Read it on the drive's label.",
    }),
  },

  examples: [
    {
      title: 'exactly the largest that it can use',
      parts: { 'storage-drive': { capacityGb: 500 }, motherboard: {}, 'operating-system': { largestDiskGb: 500 } },
      verdict: 'fits',
    },
    {
      title: 'a gigabyte larger',
      parts: { 'storage-drive': { capacityGb: 501 }, motherboard: {}, 'operating-system': { largestDiskGb: 500 } },
      verdict: 'does-not-fit',
    },
    {
      title: 'a disk of about 1990, larger than its system can use',
      shelf: 'vintage',
      parts: {
        'fixed-disk': { capacityMb: 3000 },
        'bus-card': {},
        motherboard: {},
        'operating-system': { largestDiskGb: 2 },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'not recorded how much the drive holds',
      parts: {
        'storage-drive': { capacityGb: undefined },
        motherboard: {},
        'operating-system': { largestDiskGb: 500 },
      },
      verdict: 'cannot-tell',
    },
    {
      title: 'a system with no such bound',
      parts: { 'storage-drive': { capacityGb: 501 }, motherboard: {}, 'operating-system': {} },
      verdict: 'does-not-apply',
    },
  ],
});
