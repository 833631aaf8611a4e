import { showRoom } from '../../../units/amounts.ts';
import { cannotTell, doesNotApply, doesNotFit, fits, gathersRule } from '../../rule.ts';
import { drivesAlike, joined } from '../ends.ts';
import { lacks } from '../words.ts';

/** `drive` is null where the list has no drive at all. */
type Facts = { system: string; drive: string | null; wanted: number; holds: number; short: number };

export const systemStorage = gathersRule({
  id: 'firmware/system-storage',
  title: 'One drive has room for the operating system',
  severity: 'blocker',
  basis: 'maker',
  sources: ['maker-data-sheet'],
  lesson: 'fit/choosing-for-a-purpose',

  gathers: {
    'storage-drive': ['capacityGb'],
    'fixed-disk': ['capacityMb'],
    'floppy-drive': [],
    motherboard: [],
    'operating-system': ['storageMb'],
  },
  sees: ['module-slot', 'drive-data'],
  judge(parts, { joints }) {
    const { 'storage-drive': drives, 'fixed-disk': disks, 'operating-system': systems } = parts;
    const system = systems[0];
    const drivesInAll = drives.length + disks.length + parts['floppy-drive'].length;
    if (system?.storageMb !== undefined && parts.motherboard.length > 0 && drivesInAll === 0) {
      const wanted = system.storageMb;
      return doesNotFit<Facts>({ system: system.name, drive: null, wanted, holds: 0, short: wanted }, [system.unit]);
    }
    const all = drivesAlike(joined(drives, joints), joined(disks, joints));
    const [first] = all;
    if (system === undefined || first === undefined) return doesNotApply;
    if (system.storageMb === undefined) return cannotTell(`${system.unit}.storageMb`);

    const largest = all.reduce((a, b) => ((b.holds ?? 0) > (a.holds ?? 0) ? b : a), first);
    const holds = largest.holds ?? 0;
    const facts: Facts = {
      system: system.name,
      drive: largest.name,
      wanted: system.storageMb,
      holds,
      short: Math.max(0, system.storageMb - holds),
    };
    if (facts.short === 0) return fits(facts, [largest.unit, system.unit]);
    const unknown = all.filter((drive) => drive.holds === undefined);
    if (unknown.length > 0) return cannotTell(...unknown.map(({ field }) => field));
    return doesNotFit(facts, [largest.unit, system.unit]);
  },

  say: {
    fits: ({ system, drive, wanted, holds }) =>
      `${system} asks for ${showRoom(wanted)} on a drive; ${drive} holds ${showRoom(holds)}.`,
    doesNotFit: ({ system, drive, wanted, holds, short }) =>
      drive === null
        ? {
            headline: 'The system has no drive to go on',
            what: `${system} asks for ${showRoom(wanted)} on a drive; there is no drive on the list.`,
            why: 'The machine comes as far as its firmware, and there is nowhere to put the system.',
            remedy: `Choose a drive of ${showRoom(wanted)} or more, and more again for your own files.`,
          }
        : {
            headline: `${showRoom(short)} too little room for the system`,
            what: `${system} asks for ${showRoom(wanted)} on a drive; the largest, ${drive}, holds ${showRoom(holds)}, so ${showRoom(short)} too little.`,
            why: 'A system goes on one drive, and putting it on stops when the drive is full.',
            remedy: `Choose a drive of ${showRoom(wanted)} or more, and more again for your own files, or a system that asks for ${showRoom(holds)} or less.`,
          },
    cannotTell: (missing) =>
      lacks(missing, 'operating-system')
        ? {
            headline: 'How much room does the system take?',
            what: 'The room that the operating system asks for on a drive is not recorded, so this is not judged.',
            findOut: "Read what the system asks of a machine on its maker's page or on its box.",
          }
        : {
            headline: 'How much does the drive hold?',
            what: 'The size of a drive is not recorded, so it is not judged whether the system goes on it.',
            findOut: "Read it on the drive's label.",
          },
  },

  examples: [
    {
      title: 'exactly as much as it asks for',
      parts: { 'storage-drive': { capacityGb: 64 }, motherboard: {}, 'operating-system': { storageMb: 64_000 } },
      verdict: 'fits',
    },
    {
      title: 'a megabyte more asked for',
      parts: { 'storage-drive': { capacityGb: 64 }, motherboard: {}, 'operating-system': { storageMb: 64_001 } },
      verdict: 'does-not-fit',
    },
    {
      title: 'two drives of half the room',
      parts: {
        'storage-drive': [{ capacityGb: 32 }, { capacityGb: 32, build: '2.5' }],
        motherboard: {},
        'operating-system': { storageMb: 64_000 },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'a disk of about 1990, exactly as large',
      shelf: 'vintage',
      parts: {
        'fixed-disk': { capacityMb: 40 },
        'bus-card': {},
        motherboard: {},
        'operating-system': { storageMb: 40 },
      },
      verdict: 'fits',
    },
    {
      title: 'not recorded how much the drive holds',
      parts: { 'storage-drive': { capacityGb: undefined }, motherboard: {}, 'operating-system': { storageMb: 64_000 } },
      verdict: 'cannot-tell',
    },
    {
      title: 'not recorded what the system asks for',
      parts: { 'storage-drive': { capacityGb: 64 }, motherboard: {}, 'operating-system': { storageMb: undefined } },
      verdict: 'cannot-tell',
    },
    { title: 'no drive on the list', parts: { motherboard: {}, 'operating-system': {} }, verdict: 'does-not-fit' },
    {
      title: 'a diskette drive alone',
      shelf: 'vintage',
      parts: { motherboard: {}, 'floppy-drive': {}, 'operating-system': {} },
      verdict: 'does-not-apply',
    },
    { title: 'no board yet', parts: { 'operating-system': {} }, verdict: 'does-not-apply' },
  ],
});
