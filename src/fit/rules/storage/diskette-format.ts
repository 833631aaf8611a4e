import { disketteUse } from '../../../standards/floppies.ts';
import { list } from '../../../wording/phrases.ts';
import { cannotTell, doesNotApply, doesNotFit, fits, gathersRule } from '../../rule.ts';
import { lacks, oneOf } from '../words.ts';

export const disketteFormat = gathersRule({
  id: 'storage/diskette-format',
  title: 'A drive on the list reads the diskettes',
  severity: 'blocker',
  basis: 'standard',
  sources: ['floppy-formats', 'diskette-coatings'],
  lesson: 'fit/how-parts-meet',

  gathers: { diskette: ['format'], 'floppy-drive': ['format'] },
  judge({ diskette: boxes, 'floppy-drive': drives }) {
    if (boxes.length === 0) return doesNotApply;
    const open = drives.filter(({ format }) => format === undefined);
    const told = boxes.map((box) => {
      const reader =
        box.format && drives.find((drive) => drive.format && box.format && disketteUse(drive.format, box.format).reads);
      return { box, reader };
    });
    const [unread] = told.filter(({ box, reader }) => box.format !== undefined && reader === undefined);
    const [unknown] = boxes.filter(({ format }) => format === undefined);
    const about = unread ?? told[0];
    const facts = {
      box: about?.box.name ?? '',
      format: about?.box.format ?? null,
      drives: [...new Set(drives.map(({ name }) => name))],
      reader: about?.reader?.name ?? null,
    };
    if (unread && open.length > 0) return cannotTell(...open.map(({ unit }) => `${unit}.format`));
    if (unread) return doesNotFit(facts, [unread.box.unit, ...drives.map(({ unit }) => unit)]);
    return unknown ? cannotTell(`${unknown.unit}.format`) : fits(facts);
  },

  say: {
    fits: ({ box, format, reader }) => `${box} holds diskettes of ${oneOf(format)}, and ${reader} reads them.`,
    doesNotFit: ({ box, format, drives }) => ({
      headline: 'No drive reads these diskettes',
      what: `${box} holds diskettes of ${oneOf(format)}; ${drives.length === 0 ? 'there is no diskette drive on the list' : `${list(drives)} ${drives.length === 1 ? 'does' : 'do'} not read them`}.`,
      why: 'A diskette of the other size does not go in, and one of greater density is written too finely, or on too hard a coating, for the drive.',
      remedy: `Add a drive for diskettes of ${oneOf(format)}, or have the files copied on a machine that reads them.`,
    }),
    cannotTell: (missing) =>
      lacks(missing, 'diskette')
        ? {
            headline: 'Which diskettes are they?',
            what: 'The format of the diskettes is not recorded, so this is not judged.',
            findOut: 'Look at their size, and for HD on the shutter or a second hole in the corner.',
          }
        : {
            headline: 'Which diskettes does the drive read?',
            what: "The drive's format is not recorded, so this is not judged.",
            findOut: 'Read the label on the drive, or look for HD on its front.',
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
