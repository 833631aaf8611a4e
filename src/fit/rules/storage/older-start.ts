import { list } from '../../../wording/phrases.ts';
import { doesNotApply, doesNotFit, fits, gathersRule } from '../../rule.ts';
import { bootDeviceOf, joined } from '../ends.ts';

export const olderStart = gathersRule({
  id: 'storage/older-start',
  title: 'A machine that starts in the old way has a drive that the old way reads',
  severity: 'limit',
  basis: 'practice',
  sources: ['common-practice'],
  lesson: 'fit/how-parts-meet',

  gathers: {
    motherboard: ['firmware'],
    'operating-system': ['bootModes'],
    'storage-drive': ['build', 'link'],
  },
  sees: ['module-slot', 'drive-data'],
  judge({ motherboard: boards, 'operating-system': systems, 'storage-drive': drives }, { joints }) {
    const board = boards[0];
    const modes = board?.firmware?.bootModes;
    // What is not recorded is asked by the rules on how the system starts and from what.
    if (board === undefined || modes === undefined || !modes.includes('bios')) return doesNotApply;
    const old = modes.includes('uefi')
      ? systems.find(({ bootModes }) => bootModes !== undefined && !bootModes.includes('uefi'))
      : board;
    const from: readonly string[] = board.firmware?.bootsFrom ?? [];
    const there = joined(drives, joints).map((drive) => ({ ...drive, device: bootDeviceOf(drive) }));
    const starts = there.filter(({ device }) => device !== undefined && from.includes(device));
    if (old === undefined || starts.length === 0) return doesNotApply;
    const facts = {
      board: board.name,
      old: old.name,
      drives: [...new Set(starts.map(({ name }) => name))],
    };
    const about = [...starts.map(({ unit }) => unit), board.unit];
    return starts.every(({ device }) => device === 'nvme') ? doesNotFit(facts, about) : fits(facts, about);
  },

  say: {
    fits: ({ board, drives }) =>
      `${board} can start in the old way from a drive that is no NVMe drive: ${list(drives)}.`,
    doesNotFit: ({ old, drives }) => ({
      headline: 'BIOS seldom starts from an NVMe drive',
      what: `${old} starts by BIOS alone; the list has ${list(drives)}, which ${drives.length === 1 ? 'speaks' : 'speak'} PCIe, and no drive that speaks SATA.`,
      why: 'To read an M.2 drive over PCIe before a system runs is work for newer firmware; set to BIOS, most boards pass such a drive by.',
      remedy:
        'The system should go on a SATA drive. Add one, or choose a system that starts by UEFI, or ask the maker of the board whether it starts from NVMe by BIOS.',
    }),
    cannotTell: () => ({
      headline: 'Does the old way read the drive?',
      what: 'How the machine starts is not recorded, so this is not judged.',
      findOut: "Read the page on starting up in the board's manual.",
    }),
  },

  examples: [
    {
      title: 'a system that starts by BIOS alone, and an NVMe drive alone',
      parts: {
        motherboard: { firmware: { shipped: 5, knows: [], bootModes: ['bios', 'uefi'], bootsFrom: ['sata', 'nvme'] } },
        'operating-system': { bootModes: ['bios'] },
        'storage-drive': { build: 'm2', link: 'pcie' },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'a SATA drive beside it',
      parts: {
        motherboard: { firmware: { shipped: 5, knows: [], bootModes: ['bios', 'uefi'], bootsFrom: ['sata', 'nvme'] } },
        'operating-system': { bootModes: ['bios'] },
        'storage-drive': [{ build: 'm2', link: 'pcie' }, { build: '2.5' }],
      },
      verdict: 'fits',
    },
    {
      title: 'a system that starts either way',
      parts: {
        motherboard: { firmware: { shipped: 5, knows: [], bootModes: ['bios', 'uefi'], bootsFrom: ['sata', 'nvme'] } },
        'operating-system': { bootModes: ['bios', 'uefi'] },
        'storage-drive': { build: 'm2', link: 'pcie' },
      },
      verdict: 'does-not-apply',
    },
    {
      title: 'firmware of the old sort alone',
      parts: {
        motherboard: { firmware: { shipped: 5, knows: [], bootModes: ['bios'], bootsFrom: ['sata', 'nvme'] } },
        'storage-drive': { build: 'm2', link: 'pcie' },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'firmware that starts from SATA alone, which storage/boot-drive tells',
      parts: {
        motherboard: { firmware: { shipped: 5, knows: [], bootModes: ['bios'], bootsFrom: ['sata'] } },
        'storage-drive': { build: 'm2', link: 'pcie' },
      },
      verdict: 'does-not-apply',
    },
  ],
});
