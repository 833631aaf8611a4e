import { list } from '../../../wording/phrases.ts';
import { cannotTell, doesNotApply, doesNotFit, fits, gathersRule } from '../../rule.ts';
import { readingOf } from '../diskettes.ts';
import { joined } from '../ends.ts';
import { lacks, oneOf } from '../words.ts';

export const systemDiskettes = gathersRule({
  id: 'storage/system-diskettes',
  title: 'A drive of the machine reads the diskettes that the operating system comes on',
  severity: 'blocker',
  basis: 'standard',
  sources: ['floppy-formats', 'diskette-coatings'],
  lesson: 'fit/how-parts-meet',

  gathers: {
    'operating-system': ['comesOn'],
    'floppy-drive': ['format'],
    'bus-card': ['dataSockets', 'roles'],
    motherboard: ['dataSockets'],
  },
  sees: ['drive-data'],
  judge({ 'operating-system': systems, 'floppy-drive': listed, 'bus-card': cards, motherboard: boards }, { joints }) {
    const system = systems.find(({ comesOn }) => comesOn !== undefined);
    const disk = system?.comesOn;
    if (system === undefined || disk === undefined) return doesNotApply;
    const drives = joined(listed, joints);
    const { reader, slow, open: unread } = readingOf(disk, drives, [...cards, ...boards], joints);
    // A drive waits for a controller whose sockets nobody recorded.
    const unseen = cards.filter(({ dataSockets, roles }) => !dataSockets && (!roles || roles.includes('floppy')));
    const open = [...unread, ...(listed.length > drives.length ? unseen.map(({ unit }) => `${unit}.dataSockets`) : [])];
    const facts = {
      system: system.name,
      disk,
      drives: [...new Set(drives.map(({ name }) => name))],
      reader: (reader ?? slow?.drive)?.name ?? null,
      controller: slow?.controller.name ?? null,
      wants: slow?.wants ?? null,
      reads: slow?.reads ?? null,
    };
    if (reader) return fits(facts, [system.unit, reader.unit]);
    if (open.length > 0) return cannotTell(...open);
    return doesNotFit(facts, [
      system.unit,
      ...(slow ? [slow.controller.unit, slow.drive.unit] : drives.map(({ unit }) => unit)),
    ]);
  },

  say: {
    fits: ({ system, disk, reader }) => `${system} comes on diskettes of ${oneOf(disk)}, which ${reader} reads.`,
    doesNotFit: ({ system, disk, drives, reader, controller, wants, reads }) => ({
      headline: controller === null ? 'No drive reads the system diskettes' : 'Too slow for the system diskettes',
      what:
        controller === null
          ? `${system} comes on diskettes of ${oneOf(disk)}; ${drives.length === 0 ? 'no diskette drive of the machine is joined' : `${list(drives)} ${drives.length === 1 ? 'does' : 'do'} not read them`}.`
          : `${system} comes on diskettes of ${oneOf(disk)}, for which ${reader} needs ${wants} kbit/s; ${controller} reads up to ${reads} kbit/s.`,
      why: 'The machine starts from the first of these diskettes; where it cannot read them nothing can be put on it.',
      remedy:
        controller === null
          ? `Choose a drive for diskettes of ${oneOf(disk)}, or a system that comes on others.`
          : `Choose a controller of ${wants} kbit/s or more, or a system that comes on other diskettes.`,
    }),
    cannotTell: (missing) =>
      lacks(missing, 'floppy-drive')
        ? {
            headline: 'Which diskettes does the drive read?',
            what: "The drive's format is not recorded, so it is not judged whether it reads the system's diskettes.",
            findOut: 'Read the label on the drive, or look for HD on its front.',
          }
        : {
            headline: 'How fast is the diskette controller?',
            what: "The controller's sockets, or how fast it reads, are not recorded, so it is not judged whether the system's diskettes can be read.",
            findOut: "Read in the card's leaflet which drives it takes: those of 1.2 M and 1.44 M need 500 kbit/s.",
          },
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
      title: 'the right drive, on a controller of half its rate',
      shelf: 'vintage',
      parts: {
        'operating-system': { comesOn: '3.5-1440' },
        'floppy-drive': { format: '3.5-1440' },
        'bus-card': { dataSockets: [{ id: 'floppy', plug: 'floppy-34', kilobits: 250 }] },
        motherboard: {},
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'diskettes of less density, on that same controller',
      shelf: 'vintage',
      parts: {
        'operating-system': { comesOn: '3.5-720' },
        'floppy-drive': { format: '3.5-1440' },
        'bus-card': { dataSockets: [{ id: 'floppy', plug: 'floppy-34', kilobits: 250 }] },
        motherboard: {},
      },
      verdict: 'fits',
    },
    {
      title: "the controller's rate is not recorded",
      shelf: 'vintage',
      parts: {
        'operating-system': { comesOn: '3.5-1440' },
        'floppy-drive': { format: '3.5-1440' },
        'bus-card': { dataSockets: [{ id: 'floppy', plug: 'floppy-34' }] },
        motherboard: {},
      },
      verdict: 'cannot-tell',
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
      title: "the controller's sockets are not recorded",
      shelf: 'vintage',
      parts: {
        'operating-system': { comesOn: '3.5-1440' },
        'floppy-drive': { format: '3.5-1440' },
        'bus-card': { dataSockets: undefined },
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
