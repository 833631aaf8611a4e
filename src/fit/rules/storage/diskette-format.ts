import { list } from '../../../wording/phrases.ts';
import { cannotTell, doesNotApply, doesNotFit, fits, gathersRule } from '../../rule.ts';
import { readingOf } from '../diskettes.ts';
import { lacks, oneOf } from '../words.ts';

export const disketteFormat = gathersRule({
  id: 'storage/diskette-format',
  title: 'A drive on the list reads the diskettes',
  severity: 'blocker',
  basis: 'standard',
  sources: ['floppy-formats', 'diskette-coatings'],
  lesson: 'fit/how-parts-meet',

  gathers: {
    diskette: ['format'],
    'floppy-drive': ['format'],
    'bus-card': ['dataSockets'],
    motherboard: ['dataSockets'],
  },
  sees: ['drive-data'],
  judge({ diskette: boxes, 'floppy-drive': drives, 'bus-card': cards, motherboard: boards }, { joints }) {
    if (boxes.length === 0) return doesNotApply;
    const told = boxes.map((box) => ({
      box,
      reading: box.format && readingOf(box.format, drives, [...cards, ...boards], joints),
    }));
    const unread =
      told.find(({ reading }) => reading && !reading.reader && reading.open.length === 0) ??
      told.find(({ reading }) => reading && !reading.reader);
    const [unknown] = boxes.filter(({ format }) => format === undefined);
    const about = unread ?? told[0];
    const slow = about?.reading?.slow;
    const facts = {
      box: about?.box.name ?? '',
      format: about?.box.format ?? null,
      drives: [...new Set(drives.map(({ name }) => name))],
      reader: (about?.reading?.reader ?? slow?.drive)?.name ?? null,
      controller: slow?.controller.name ?? null,
      wants: slow?.wants ?? null,
      reads: slow?.reads ?? null,
    };
    if (unread?.reading && unread.reading.open.length > 0) return cannotTell(...unread.reading.open);
    if (unread)
      return doesNotFit(facts, [
        unread.box.unit,
        ...(slow ? [slow.controller.unit, slow.drive.unit] : drives.map(({ unit }) => unit)),
      ]);
    return unknown ? cannotTell(`${unknown.unit}.format`) : fits(facts);
  },

  say: {
    fits: ({ box, format, reader }) => `${box} holds diskettes of ${oneOf(format)}, and ${reader} reads them.`,
    doesNotFit: ({ box, format, drives, reader, controller, wants, reads }) =>
      controller === null
        ? {
            headline: 'No drive reads these diskettes',
            what: `${box} holds diskettes of ${oneOf(format)}; ${drives.length === 0 ? 'there is no diskette drive on the list' : `${list(drives)} ${drives.length === 1 ? 'does' : 'do'} not read them`}.`,
            why: 'A diskette of the other size does not go in, and one of greater density is written too finely, or on too hard a coating, for the drive.',
            remedy: `Add a drive for diskettes of ${oneOf(format)}, or have the files copied on a machine that reads them.`,
          }
        : {
            headline: 'The controller is too slow for these diskettes',
            what: `${box} holds diskettes of ${oneOf(format)}, for which ${reader} needs ${wants} kbit/s; ${controller} reads up to ${reads} kbit/s.`,
            why: 'The bits come from the diskette faster than the controller takes them.',
            remedy: `Choose a controller of ${wants} kbit/s or more, or have the files copied on a machine that reads them.`,
          },
    cannotTell: (missing) =>
      lacks(missing, 'diskette')
        ? {
            headline: 'Which diskettes are they?',
            what: 'The format of the diskettes is not recorded, so this is not judged.',
            findOut: 'Look at their size, and for HD on the shutter or a second hole in the corner.',
          }
        : lacks(missing, 'floppy-drive')
          ? {
              headline: 'Which diskettes does the drive read?',
              what: "The drive's format is not recorded, so this is not judged.",
              findOut: 'Read the label on the drive, or look for HD on its front.',
            }
          : {
              headline: 'How fast is the diskette controller?',
              what: "The controller's data rate is not recorded, so it is not judged whether the diskettes can be read.",
              findOut: "Read in the card's leaflet which drives it takes: those of 1.2 M and 1.44 M need 500 kbit/s.",
            },
  },

  examples: [
    {
      title: 'the format that the drive is made for',
      shelf: 'vintage',
      parts: { diskette: { format: '3.5-1440' }, 'floppy-drive': { format: '3.5-1440' } },
      verdict: 'fits',
    },
    {
      title: 'a drive of high density reads double density',
      shelf: 'vintage',
      parts: { diskette: { format: '3.5-720' }, 'floppy-drive': { format: '3.5-1440' } },
      verdict: 'fits',
    },
    {
      title: 'a drive of double density and diskettes of high density',
      shelf: 'vintage',
      parts: { diskette: { format: '5.25-1200' }, 'floppy-drive': { size: '5.25', format: '5.25-360' } },
      verdict: 'does-not-fit',
    },
    {
      title: 'diskettes of the other size',
      shelf: 'vintage',
      parts: { diskette: { format: '5.25-360' }, 'floppy-drive': { format: '3.5-1440' } },
      verdict: 'does-not-fit',
    },
    {
      title: 'the drive reads them, its controller does not keep up',
      shelf: 'vintage',
      parts: {
        diskette: { format: '5.25-1200' },
        'floppy-drive': { size: '5.25', format: '5.25-1200', plug: 'floppy-edge', powerPlug: 'peripheral-4' },
        'bus-card': { dataSockets: [{ id: 'floppy', plug: 'floppy-34', kilobits: 300 }] },
        motherboard: {},
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'a quick-turning drive reads double density at 300 kbit/s, just what the controller has',
      shelf: 'vintage',
      parts: {
        diskette: { format: '5.25-360' },
        'floppy-drive': { size: '5.25', format: '5.25-1200', plug: 'floppy-edge', powerPlug: 'peripheral-4' },
        'bus-card': { dataSockets: [{ id: 'floppy', plug: 'floppy-34', kilobits: 300 }] },
        motherboard: {},
      },
      verdict: 'fits',
    },
    {
      title: 'and not at 250',
      shelf: 'vintage',
      parts: {
        diskette: { format: '5.25-360' },
        'floppy-drive': { size: '5.25', format: '5.25-1200', plug: 'floppy-edge', powerPlug: 'peripheral-4' },
        'bus-card': { dataSockets: [{ id: 'floppy', plug: 'floppy-34', kilobits: 250 }] },
        motherboard: {},
      },
      verdict: 'does-not-fit',
    },
    {
      title: "the controller's rate is not recorded",
      shelf: 'vintage',
      parts: {
        diskette: { format: '3.5-1440' },
        'floppy-drive': { format: '3.5-1440' },
        'bus-card': { dataSockets: [{ id: 'floppy', plug: 'floppy-34' }] },
        motherboard: {},
      },
      verdict: 'cannot-tell',
    },
    { title: 'no drive at all', shelf: 'vintage', parts: { diskette: { format: '3.5-720' } }, verdict: 'does-not-fit' },
    {
      title: 'the format of the diskettes is not recorded',
      shelf: 'vintage',
      parts: { diskette: { format: undefined }, 'floppy-drive': { format: '3.5-1440' } },
      verdict: 'cannot-tell',
    },
    {
      title: "the drive's format is not recorded",
      shelf: 'vintage',
      parts: { diskette: { format: '3.5-720' }, 'floppy-drive': { format: undefined } },
      verdict: 'cannot-tell',
    },
    { title: 'no diskettes on the list', shelf: 'vintage', parts: { 'floppy-drive': {} }, verdict: 'does-not-apply' },
  ],
});
