import { type DisketteFormat, disketteFormats, disketteUse } from '../../../standards/floppies.ts';
import { cannotTell, doesNotApply, doesNotFit, fits, jointRule } from '../../rule.ts';
import { partAs } from '../ends.ts';
import { lacks, oneOf } from '../words.ts';

/** Whether a drive reads any diskette at that rate: one of 1.2 M turns faster, and reads 360 K at 300 kbit/s. */
const readsAny = (drive: DisketteFormat, kilobits: number): boolean =>
  Object.keys(disketteFormats).some((disk) => {
    const use = disketteUse(drive, disk as DisketteFormat);
    return use.reads && use.kilobits !== undefined && use.kilobits <= kilobits;
  });

export const floppyRate = jointRule({
  id: 'storage/floppy-rate',
  title: 'The controller reads as fast as the diskette drive',
  severity: 'limit',
  basis: 'standard',
  sources: ['floppy-formats'],
  lesson: 'fit/how-parts-meet',

  at: 'drive-data',
  reads: { 'floppy-drive': ['format'] },
  judge({ need, place }) {
    const drive = partAs(need.unit, 'floppy-drive');
    if (drive === undefined) return doesNotApply;
    if (drive.format === undefined) return cannotTell(`${need.unit.id}.format`);
    const reads = place.attrs['kilobits'];
    if (typeof reads !== 'number') return cannotTell(`${place.unit.id}.dataSockets`);

    const wants = disketteFormats[drive.format].kilobits;
    const facts = {
      drive: drive.name,
      controller: place.unit.part.name,
      format: drive.format,
      wants,
      reads,
      less: wants - reads,
      readsAny: readsAny(drive.format, reads),
    };
    return reads >= wants ? fits(facts) : doesNotFit(facts);
  },

  say: {
    fits: ({ drive, controller, wants, reads }) =>
      `${drive} needs ${wants} kbit/s; ${controller} reads up to ${reads} kbit/s.`,
    doesNotFit: ({ drive, controller, format, wants, reads, less, readsAny }) => ({
      headline: `The controller is ${less} kbit/s too slow`,
      what: `${drive} needs ${wants} kbit/s for diskettes of ${oneOf(format)}; ${controller} reads up to ${reads} kbit/s, so it is ${less} kbit/s too slow.`,
      why: `The bits come from the diskette faster than the controller takes them. ${readsAny ? 'Diskettes of less density can be read, those of full density cannot.' : 'This drive turns faster than others, so not even diskettes of less density can be read.'}`,
      remedy: `Choose a controller of ${wants} kbit/s or more, or a drive of less density${readsAny ? ', or use diskettes of less density alone' : ''}.`,
    }),
    cannotTell: (missing) =>
      lacks(missing, 'floppy-drive')
        ? {
            headline: 'Which diskettes is the drive for?',
            what: "The drive's format is not recorded, so it is not judged whether the controller is fast enough.",
            findOut: 'Read the label on the drive, or look for HD on its front.',
          }
        : {
            headline: 'How fast is the diskette controller?',
            what: "The controller's data rate is not recorded, so it is not judged whether it is fast enough.",
            findOut: "Read in the card's leaflet which drives it takes: those of 1.2 M and 1.44 M need 500 kbit/s.",
          },
  },

  examples: [
    {
      title: 'exactly as fast as the drive',
      shelf: 'vintage',
      parts: {
        'floppy-drive': { format: '3.5-1440' },
        'bus-card': { dataSockets: [{ id: 'floppy', plug: 'floppy-34', kilobits: 500 }] },
        motherboard: {},
      },
      verdict: 'fits',
    },
    {
      title: 'an early controller and a drive of high density',
      shelf: 'vintage',
      parts: {
        'floppy-drive': { format: '3.5-1440' },
        'bus-card': { dataSockets: [{ id: 'floppy', plug: 'floppy-34', kilobits: 250 }] },
        motherboard: {},
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'an early controller and a drive that turns faster',
      shelf: 'vintage',
      parts: {
        'floppy-drive': { size: '5.25', format: '5.25-1200', plug: 'floppy-edge', powerPlug: 'peripheral-4' },
        'bus-card': { dataSockets: [{ id: 'floppy', plug: 'floppy-34', kilobits: 250 }] },
        motherboard: {},
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'extra density wants twice as much again',
      shelf: 'vintage',
      parts: {
        'floppy-drive': { format: '3.5-2880' },
        'bus-card': { dataSockets: [{ id: 'floppy', plug: 'floppy-34', kilobits: 500 }] },
        motherboard: {},
      },
      verdict: 'does-not-fit',
    },
    {
      title: "the controller's rate is not recorded",
      shelf: 'vintage',
      parts: {
        'floppy-drive': { format: '3.5-1440' },
        'bus-card': { dataSockets: [{ id: 'floppy', plug: 'floppy-34' }] },
        motherboard: {},
      },
      verdict: 'cannot-tell',
    },
    {
      title: "the drive's format is not recorded",
      shelf: 'vintage',
      parts: {
        'floppy-drive': { format: undefined },
        'bus-card': { dataSockets: [{ id: 'floppy', plug: 'floppy-34', kilobits: 500 }] },
        motherboard: {},
      },
      verdict: 'cannot-tell',
    },
    {
      title: 'a drive and no controller',
      shelf: 'vintage',
      parts: { 'floppy-drive': {}, motherboard: {} },
      verdict: 'does-not-apply',
    },
  ],
});
