import { addressingBytes } from '../../../standards/disks.ts';
import { showRoom } from '../../../units/amounts.ts';
import { cannotTell, doesNotApply, doesNotFit, fits, gathersRule } from '../../rule.ts';
import { joined } from '../ends.ts';
import { lacks } from '../words.ts';

/** Whole megabytes of 10^6 bytes that a way of counting reaches. */
const reachMb = (addressing: keyof typeof addressingBytes): number => Math.floor(addressingBytes[addressing] / 1e6);

export const diskAddressing = gathersRule({
  id: 'storage/disk-addressing',
  title: 'The firmware counts as far as the end of the disk',
  severity: 'limit',
  basis: 'standard',
  sources: ['disk-addressing'],
  lesson: 'fit/how-parts-meet',

  gathers: { 'fixed-disk': ['plug', 'capacityMb'], motherboard: ['firmware'] },
  sees: ['drive-data'],
  judge({ 'fixed-disk': listed, motherboard: boards }, { joints }) {
    // Disks on the older pair of cables are counted by the firmware of their own card.
    const disks = joined(listed, joints).filter(({ plug }) => plug === 'ata-40');
    const [board] = boards;
    if (board === undefined || disks.length === 0) return doesNotApply;
    const addressing = board.firmware?.addressing;
    if (addressing === undefined) return cannotTell(`${board.unit}.firmware.addressing`);
    const unknown = disks.filter(({ capacityMb }) => capacityMb === undefined);

    const reach = reachMb(addressing);
    const largest = disks.reduce((most, one) => ((one.capacityMb ?? 0) > (most.capacityMb ?? 0) ? one : most));
    const holds = largest.capacityMb ?? 0;
    const facts = { disk: largest.name, board: board.name, holds, reach, beyond: Math.max(0, holds - reach) };
    if (facts.beyond > 0) return doesNotFit(facts, [largest.unit, board.unit]);
    return unknown.length > 0 ? cannotTell(...unknown.map(({ unit }) => `${unit}.capacityMb`)) : fits(facts);
  },

  say: {
    fits: ({ disk, board, holds, reach }) =>
      `${disk} holds ${showRoom(holds)}, and ${board} counts as far as ${showRoom(reach)}.`,
    doesNotFit: ({ disk, board, holds, reach, beyond }) => ({
      headline: `${showRoom(beyond)} of disk is out of reach`,
      what: `${disk} holds ${showRoom(holds)}; ${board} counts as far as ${showRoom(reach)}, so ${showRoom(beyond)} is out of reach.`,
      why: 'The firmware has only so many figures for a place on the disk. What lies beyond the last of them is not seen, or the count begins again from the front and writes over what is there.',
      remedy: `Choose a disk of ${showRoom(reach)} or less, or a board or a disk card whose firmware counts farther, or set the disk's own jumper for less, if it has one.`,
    }),
    cannotTell: (missing) =>
      lacks(missing, 'motherboard')
        ? {
            headline: 'How far does the firmware count?',
            what: 'How the firmware counts the places on a disk is not recorded, so this fit is not judged.',
            findOut: "Look for LBA or LARGE on the firmware's page about disks; with neither it stops at 528 MB.",
          }
        : {
            headline: 'How large is the disk?',
            what: "The disk's size is not recorded, so this fit is not judged.",
            findOut: 'Read its label: cylinders times heads times sectors times 512 is its size in bytes.',
          },
  },

  examples: [
    {
      title: 'the last whole megabyte that the oldest count reaches',
      shelf: 'vintage',
      parts: {
        'fixed-disk': { capacityMb: 528 },
        'bus-card': {},
        motherboard: { firmware: { shipped: 1, knows: [], addressing: 'chs' } },
      },
      verdict: 'fits',
    },
    {
      title: 'one megabyte more',
      shelf: 'vintage',
      parts: {
        'fixed-disk': { capacityMb: 529 },
        'bus-card': {},
        motherboard: { firmware: { shipped: 1, knows: [], addressing: 'chs' } },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'that disk with a firmware that translates',
      shelf: 'vintage',
      parts: {
        'fixed-disk': { capacityMb: 8422 },
        'bus-card': {},
        motherboard: { firmware: { shipped: 1, knows: [], addressing: 'chs-large' } },
      },
      verdict: 'fits',
    },
    {
      title: 'beyond what translation reaches',
      shelf: 'vintage',
      parts: {
        'fixed-disk': { capacityMb: 8423 },
        'bus-card': {},
        motherboard: { firmware: { shipped: 1, knows: [], addressing: 'chs-large' } },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'an older disk is counted by its own card',
      shelf: 'vintage',
      parts: {
        'fixed-disk': { plug: 'st506', capacityMb: 40 },
        'bus-card': { dataSockets: [{ id: 'disk', plug: 'st506', devices: 2 }] },
        motherboard: {},
      },
      verdict: 'does-not-apply',
    },
    {
      title: 'how the firmware counts is not recorded',
      shelf: 'vintage',
      parts: {
        'fixed-disk': { capacityMb: 120 },
        'bus-card': {},
        motherboard: { firmware: { shipped: 1, knows: [] } },
      },
      verdict: 'cannot-tell',
    },
    {
      title: "the disk's size is not recorded",
      shelf: 'vintage',
      parts: { 'fixed-disk': { capacityMb: undefined }, 'bus-card': {}, motherboard: {} },
      verdict: 'cannot-tell',
    },
  ],
});
