import { st506 } from '../../../standards/disks.ts';
import { cannotTell, doesNotApply, doesNotFit, fits, jointRule } from '../../rule.ts';
import { encodingsAt, partAs } from '../ends.ts';
import { lacks } from '../words.ts';

export const diskEncoding = jointRule({
  id: 'storage/disk-encoding',
  title: 'The disk card writes no denser than the disk is made for',
  severity: 'blocker',
  basis: 'maker',
  sources: ['maker-data-sheet', 'st506'],
  lesson: 'fit/how-parts-meet',

  at: 'drive-data',
  reads: { 'fixed-disk': ['plug', 'encoding'] },
  judge({ need, place }) {
    const disk = partAs(need.unit, 'fixed-disk');
    if (disk === undefined || disk.plug !== 'st506') return doesNotApply;
    if (disk.encoding === undefined) return cannotTell(`${need.unit.id}.encoding`);
    const writes = encodingsAt(place);
    if (writes === undefined) return cannotTell(`${place.unit.id}.dataSockets`);

    const facts = {
      disk: disk.name,
      card: place.unit.part.name,
      made: st506[disk.encoding].sectorsPerTrack,
      least: Math.min(...writes.map((encoding) => st506[encoding].sectorsPerTrack)),
    };
    return facts.least <= facts.made ? fits(facts) : doesNotFit(facts);
  },

  say: {
    fits: ({ disk, card, made, least }) => `${disk} is made for ${made} sectors a track; ${card} can write ${least}.`,
    doesNotFit: ({ disk, card, made, least }) => ({
      headline: `Made for ${made} sectors a track, not ${least}`,
      what: `${disk} is made for ${made} sectors a track; ${card} writes ${least}, which is half as many again.`,
      why: 'Written so closely the coating of the disk does not hold what is on it: the disk seems to work, and weeks later files cannot be read.',
      remedy: `Choose a card that writes ${made} sectors a track, or a disk made for ${least}. Never set the machine to format this pair.`,
    }),
    cannotTell: (missing) =>
      lacks(missing, 'fixed-disk')
        ? {
            headline: 'Is the disk made for MFM or RLL?',
            what: 'How densely the disk may be written is not recorded, so it is not judged beside its card.',
            findOut: "Read the disk's label or its maker's list: MFM has 17 sectors a track, RLL 26.",
          }
        : {
            headline: 'Does the disk card write MFM or RLL?',
            what: 'How densely the disk card writes is not recorded, so it is not judged beside the disk.',
            findOut: 'Read it on the card or in its leaflet: MFM has 17 sectors a track, RLL 26.',
          },
  },

  examples: [
    {
      title: 'both MFM',
      shelf: 'vintage',
      parts: {
        'fixed-disk': { plug: 'st506', encoding: 'mfm' },
        'bus-card': { dataSockets: [{ id: 'disk', plug: 'st506', encodings: ['mfm'] }] },
        motherboard: {},
      },
      verdict: 'fits',
    },
    {
      title: 'a disk for MFM on a card for RLL alone',
      shelf: 'vintage',
      parts: {
        'fixed-disk': { plug: 'st506', encoding: 'mfm' },
        'bus-card': { dataSockets: [{ id: 'disk', plug: 'st506', encodings: ['rll'] }] },
        motherboard: {},
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'a disk for MFM on a card that does both',
      shelf: 'vintage',
      parts: {
        'fixed-disk': { plug: 'st506', encoding: 'mfm' },
        'bus-card': { dataSockets: [{ id: 'disk', plug: 'st506', encodings: ['mfm', 'rll'] }] },
        motherboard: {},
      },
      verdict: 'fits',
    },
    {
      title: 'not recorded what the disk is made for',
      shelf: 'vintage',
      parts: {
        'fixed-disk': { plug: 'st506', encoding: undefined },
        'bus-card': { dataSockets: [{ id: 'disk', plug: 'st506', encodings: ['mfm'] }] },
        motherboard: {},
      },
      verdict: 'cannot-tell',
    },
    {
      title: 'not recorded how the card writes',
      shelf: 'vintage',
      parts: {
        'fixed-disk': { plug: 'st506', encoding: 'mfm' },
        'bus-card': { dataSockets: [{ id: 'disk', plug: 'st506' }] },
        motherboard: {},
      },
      verdict: 'cannot-tell',
    },
    {
      title: 'a disk of 40 pins',
      shelf: 'vintage',
      parts: { 'fixed-disk': {}, 'bus-card': {}, motherboard: {} },
      verdict: 'does-not-apply',
    },
  ],
});
