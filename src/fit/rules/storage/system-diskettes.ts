import { disketteUse } from '../../../standards/floppies.ts';
import { list } from '../../../wording/phrases.ts';
import { cannotTell, doesNotApply, doesNotFit, fits, gathersRule } from '../../rule.ts';
import { joined } from '../ends.ts';
import { oneOf } from '../words.ts';

export const systemDiskettes = gathersRule({
  id: 'storage/system-diskettes',
  title: 'A drive of the machine reads the diskettes that the operating system comes on',
  severity: 'blocker',
  basis: 'standard',
  sources: ['floppy-formats', 'diskette-coatings'],
  lesson: 'fit/how-parts-meet',

  gathers: { 'operating-system': ['comesOn'], 'floppy-drive': ['format'] },
  sees: ['drive-data'],
  judge({ 'operating-system': systems, 'floppy-drive': listed }, { joints }) {
    const system = systems.find(({ comesOn }) => comesOn !== undefined);
    const disk = system?.comesOn;
    if (system === undefined || disk === undefined) return doesNotApply;
    const drives = joined(listed, joints);
    const reader = drives.find(({ format }) => format && disketteUse(format, disk).reads);
    const facts = {
      system: system.name,
      disk,
      drives: [...new Set(drives.map(({ name }) => name))],
      reader: reader?.name ?? null,
    };
    if (reader) return fits(facts, [system.unit, reader.unit]);
    const open = drives.filter(({ format }) => format === undefined);
    if (open.length > 0) return cannotTell(...open.map(({ unit }) => `${unit}.format`));
    return doesNotFit(facts, [system.unit, ...drives.map(({ unit }) => unit)]);
  },

  say: {
    fits: ({ system, disk, reader }) => `${system} comes on diskettes of ${oneOf(disk)}, which ${reader} reads.`,
    doesNotFit: ({ system, disk, drives }) => ({
      headline: 'No drive reads the system diskettes',
      what: `${system} comes on diskettes of ${oneOf(disk)}; ${drives.length === 0 ? 'no diskette drive of the machine is joined' : `${list(drives)} ${drives.length === 1 ? 'does' : 'do'} not read them`}.`,
      why: 'The machine starts from the first of these diskettes; without a drive for them nothing can be put on it.',
      remedy: `Choose a drive for diskettes of ${oneOf(disk)}, or a system that comes on others.`,
    }),
    cannotTell: () => ({
      headline: 'Which diskettes does the drive read?',
      what: "The drive's format is not recorded, so it is not judged whether it reads the system's diskettes.",
      findOut: 'Read the label on the drive, or look for HD on its front.',
    }),
  },

  examples: [
    {
      title: 'the drive is made for them',
      shelf: 'vintage',
      parts: {
        'operating-system': { comesOn: '3.5-1440' },
        'floppy-drive': { format: '3.5-1440' },
        'bus-card': {},
        motherboard: {},
      },
      verdict: 'fits',
    },
    {
      title: 'a drive of less density',
      shelf: 'vintage',
      parts: {
        'operating-system': { comesOn: '3.5-1440' },
        'floppy-drive': { format: '3.5-720' },
        'bus-card': {},
        motherboard: {},
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'no diskette drive',
      shelf: 'vintage',
      parts: { 'operating-system': { comesOn: '3.5-1440' }, 'bus-card': {}, motherboard: {} },
      verdict: 'does-not-fit',
    },
    {
      title: "the drive's format is not recorded",
      shelf: 'vintage',
      parts: {
        'operating-system': { comesOn: '3.5-1440' },
        'floppy-drive': { format: undefined },
        'bus-card': {},
        motherboard: {},
      },
      verdict: 'cannot-tell',
    },
    {
      title: 'a system that comes on no diskettes',
      parts: { 'operating-system': {}, motherboard: {} },
      verdict: 'does-not-apply',
    },
  ],
});
