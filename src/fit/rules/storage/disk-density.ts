import { st506 } from '../../../standards/disks.ts';
import { showRoom } from '../../../units/amounts.ts';
import { cannotTell, doesNotApply, doesNotFit, fits, jointRule } from '../../rule.ts';
import { encodingsAt, partAs } from '../ends.ts';

export const diskDensity = jointRule({
  id: 'storage/disk-density',
  title: 'The disk card writes as densely as the disk allows',
  severity: 'limit',
  basis: 'standard',
  sources: ['st506'],
  lesson: 'fit/choosing-for-a-purpose',

  at: 'drive-data',
  reads: { 'fixed-disk': ['encoding', 'capacityMb'] },
  judge({ need, place }) {
    const disk = partAs(need.unit, 'fixed-disk');
    const writes = encodingsAt(place);
    // What is not recorded of either, and what is written too densely, is told by storage/disk-encoding.
    if (disk?.encoding !== 'rll' || writes === undefined) return doesNotApply;
    if (disk.capacityMb === undefined) return cannotTell(`${need.unit.id}.capacityMb`);

    const facts = {
      disk: disk.name,
      card: place.unit.part.name,
      holds: disk.capacityMb,
      left: Math.floor((disk.capacityMb * st506.mfm.sectorsPerTrack) / st506.rll.sectorsPerTrack),
      made: st506.rll.sectorsPerTrack,
      written: st506.mfm.sectorsPerTrack,
    };
    return writes.includes('rll') ? fits(facts) : doesNotFit(facts);
  },

  say: {
    fits: ({ disk, card, made }) => `${card} writes ${made} sectors a track, which is all that ${disk} is made for.`,
    doesNotFit: ({ disk, card, holds, left, made, written }) => ({
      headline: `The disk holds ${showRoom(left)}, not ${showRoom(holds)}`,
      what: `${disk} is sold for ${showRoom(holds)} with ${made} sectors a track; ${card} writes ${written}, so it holds about ${showRoom(left)}.`,
      why: 'The card decides how closely the bits are written. The disk works; a third of it is not used.',
      remedy: `Choose a card that writes ${made} sectors a track (RLL), or a cheaper disk of ${showRoom(left)}, or leave it as it is.`,
    }),
    cannotTell: () => ({
      headline: 'How much does the disk hold?',
      what: "The disk's size is not recorded, so it is not said how much of it this card uses.",
      findOut: "Read it on the disk's label.",
    }),
  },

  examples: [
    {
      title: 'both RLL',
      shelf: 'vintage',
      parts: {
        'fixed-disk': { plug: 'st506', encoding: 'rll', capacityMb: 60 },
        'bus-card': { dataSockets: [{ id: 'disk', plug: 'st506', encodings: ['rll'] }] },
        motherboard: {},
      },
      verdict: 'fits',
    },
    {
      title: 'a disk for RLL on a card for MFM alone',
      shelf: 'vintage',
      parts: {
        'fixed-disk': { plug: 'st506', encoding: 'rll', capacityMb: 60 },
        'bus-card': { dataSockets: [{ id: 'disk', plug: 'st506', encodings: ['mfm'] }] },
        motherboard: {},
      },
      verdict: 'does-not-fit',
    },
    {
      title: "the disk's size is not recorded",
      shelf: 'vintage',
      parts: {
        'fixed-disk': { plug: 'st506', encoding: 'rll', capacityMb: undefined },
        'bus-card': { dataSockets: [{ id: 'disk', plug: 'st506', encodings: ['mfm'] }] },
        motherboard: {},
      },
      verdict: 'cannot-tell',
    },
    {
      title: 'a disk for MFM',
      shelf: 'vintage',
      parts: {
        'fixed-disk': { plug: 'st506', encoding: 'mfm' },
        'bus-card': { dataSockets: [{ id: 'disk', plug: 'st506', encodings: ['mfm'] }] },
        motherboard: {},
      },
      verdict: 'does-not-apply',
    },
  ],
});
