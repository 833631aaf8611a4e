import { disketteUse } from '../../../standards/floppies.ts';
import { cannotTell, doesNotApply, doesNotFit, fits, gathersRule } from '../../rule.ts';
import { lacks, oneOf } from '../words.ts';

export const disketteWriting = gathersRule({
  id: 'storage/diskette-writing',
  title: 'A drive on the list writes the diskettes so that others can read them',
  severity: 'limit',
  basis: 'standard',
  sources: ['floppy-formats', 'diskette-coatings'],
  lesson: 'fit/how-parts-meet',

  gathers: { diskette: ['format'], 'floppy-drive': ['format'] },
  judge({ diskette: boxes, 'floppy-drive': drives }) {
    const told = boxes.flatMap((box) => {
      const uses = drives.flatMap((drive) =>
        drive.format && box.format ? [{ drive, use: disketteUse(drive.format, box.format) }] : [],
      );
      const readers = uses.filter(({ use }) => use.reads || use.writes !== 'no');
      const best = readers.find(({ use }) => use.writes === 'well') ?? readers[0];
      return best ? [{ box, ...best }] : [];
    });
    const poor = told.find(({ use }) => use.writes !== 'well');
    const one = poor ?? told[0];
    if (one === undefined) {
      if (boxes.length === 0 || drives.length === 0) return doesNotApply;
      const [box] = boxes.filter(({ format }) => format === undefined);
      const [drive] = drives.filter(({ format }) => format === undefined);
      const open = box ?? drive;
      return open ? cannotTell(`${open.unit}.format`) : doesNotApply;
    }
    const open = drives.filter(({ format }) => format === undefined);
    if (poor && open.length > 0) return cannotTell(...open.map(({ unit }) => `${unit}.format`));
    const { box, drive, use } = one;
    const facts = { box: box.name, format: box.format ?? null, drive: drive.name, note: use.note, reads: use.reads };
    return poor ? doesNotFit(facts, [box.unit, drive.unit]) : fits(facts, [box.unit, drive.unit]);
  },

  say: {
    fits: ({ box, format, drive }) =>
      `${drive} writes diskettes of ${oneOf(format)}, such as those of ${box}, as well as it reads them.`,
    doesNotFit: ({ box, format, drive, note, reads }) => ({
      headline: reads ? 'Read these diskettes, do not write them' : 'Do not write these diskettes',
      what: `${drive} does not reliably write diskettes of ${oneOf(format)}, such as those of ${box}: ${note}.`,
      why: 'The file seems to be saved, and on another machine the diskette cannot be read.',
      remedy: `Use a drive for ${oneOf(format)} to write them, or write on diskettes that ${drive} is made for${reads ? ', or on ones that are new or wiped' : ''}.`,
    }),
    cannotTell: (missing) =>
      lacks(missing, 'diskette')
        ? {
            headline: 'Which diskettes are they?',
            what: 'The format of the diskettes is not recorded, so this is not judged.',
            findOut: 'Look at their size, and for HD on the shutter or a second hole in the corner.',
          }
        : {
            headline: 'Which diskettes does the drive write?',
            what: "The drive's format is not recorded, so this is not judged.",
            findOut: 'Read the label on the drive, or look for HD on its front.',
          },
  },

  examples: [
    {
      title: 'a 3.5 inch drive of high density writes double density as well',
      shelf: 'vintage',
      parts: { diskette: { format: '3.5-720' }, 'floppy-drive': { format: '3.5-1440' } },
      verdict: 'fits',
    },
    {
      title: 'a 5.25 inch drive of high density does not',
      shelf: 'vintage',
      parts: { diskette: { format: '5.25-360' }, 'floppy-drive': { size: '5.25', format: '5.25-1200' } },
      verdict: 'does-not-fit',
    },
    {
      title: 'a second drive, made for them, writes them',
      shelf: 'vintage',
      parts: {
        diskette: { format: '5.25-360' },
        'floppy-drive': [
          { size: '5.25', format: '5.25-1200' },
          { size: '5.25', format: '5.25-360' },
        ],
      },
      verdict: 'fits',
    },
    {
      title: 'the format of the diskettes is not recorded',
      shelf: 'vintage',
      parts: { diskette: { format: undefined }, 'floppy-drive': { format: '3.5-1440' } },
      verdict: 'cannot-tell',
    },
    {
      title: 'diskettes of the other size are told elsewhere',
      shelf: 'vintage',
      parts: { diskette: { format: '5.25-360' }, 'floppy-drive': { format: '3.5-1440' } },
      verdict: 'does-not-apply',
    },
  ],
});
