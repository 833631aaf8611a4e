import { doesNotApply, doesNotFit, fits, jointRule } from '../../rule.ts';
import { partAs } from '../ends.ts';

export const ribbonPositions = jointRule({
  id: 'storage/ribbon-positions',
  title: 'The drive is alone on its ribbon, at the end',
  severity: 'note',
  basis: 'practice',
  sources: ['common-practice', 'st506'],
  lesson: 'fit/how-parts-meet',

  at: 'drive-data',
  reads: { 'floppy-drive': [], 'fixed-disk': ['plug'] },
  judge({ need, place }) {
    const disk = partAs(need.unit, 'fixed-disk');
    const drive = disk ?? partAs(need.unit, 'floppy-drive');
    const at = place.attrs['at'];
    if (drive === undefined || typeof at !== 'string') return doesNotApply;
    // On a 40-pin ribbon a jumper says which is which; on the other two a twist before the end does.
    const facts = { drive: drive.name, byJumper: disk?.plug === 'ata-40', isDiskette: disk === undefined };
    return at === 'end' ? fits(facts) : doesNotFit(facts);
  },

  say: {
    fits: ({ drive, byJumper, isDiskette }) =>
      byJumper
        ? `${drive} is at the end of its ribbon, with its jumper on first.`
        : isDiskette
          ? `${drive} is at the end of its ribbon, after the twist, and is drive A.`
          : `${drive} is at the end of its ribbon, after the twist, and is the first disk.`,
    doesNotFit: ({ drive, byJumper, isDiskette }) => ({
      headline: isDiskette ? 'Drive B is in the middle' : 'The second disk is in the middle',
      what: byJumper
        ? `Two disks hang on one ribbon; ${drive} is at the connector in the middle and is the second.`
        : `Two drives hang on one ribbon; ${drive} is at the connector in the middle, before the twist, and is ${isDiskette ? 'drive B' : 'the second disk'}.`,
      why: byJumper
        ? 'Both disks hear every command; the jumper alone tells each which are its own. Set alike, neither answers.'
        : 'The twist swaps the wires that choose a drive, so two drives set alike answer to different calls.',
      remedy: byJumper
        ? `The jumper of ${drive} should be on second, and that of the disk at the end on first.`
        : `Both drives should be set alike, as the second; the ${isDiskette ? 'drive at the end is A' : 'disk at the end is the first and alone keeps its terminator'}.`,
    }),
    cannotTell: () => ({
      headline: 'Where on the ribbon is the drive?',
      what: 'The place of the drive on its ribbon is not known, so this is not judged.',
      findOut: 'Follow the ribbon from the controller: the connector in the middle, then the one at the end.',
    }),
  },

  examples: [
    {
      title: 'one disk at the end',
      shelf: 'vintage',
      parts: { 'fixed-disk': {}, 'bus-card': {}, motherboard: {} },
      verdict: 'fits',
    },
    {
      title: 'two disks on one ribbon',
      shelf: 'vintage',
      parts: { 'fixed-disk': [{}, {}], 'bus-card': {}, motherboard: {} },
      verdict: 'does-not-fit',
    },
    {
      title: 'one diskette drive is drive A',
      shelf: 'vintage',
      parts: { 'floppy-drive': {}, 'bus-card': {}, motherboard: {} },
      verdict: 'fits',
    },
    {
      title: 'two diskette drives',
      shelf: 'vintage',
      parts: {
        'floppy-drive': [{}, { size: '5.25', format: '5.25-1200', plug: 'floppy-edge', powerPlug: 'peripheral-4' }],
        'bus-card': {},
        motherboard: {},
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'two disks of the older kind',
      shelf: 'vintage',
      parts: {
        'fixed-disk': [{ plug: 'st506' }, { plug: 'st506' }],
        'bus-card': { dataSockets: [{ id: 'disk', plug: 'st506', devices: 2 }] },
        motherboard: {},
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'a SATA drive has a cable to itself',
      parts: { 'storage-drive': { build: '2.5' }, motherboard: {} },
      verdict: 'does-not-apply',
    },
  ],
});
