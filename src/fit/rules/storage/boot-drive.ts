import { either, list } from '../../../wording/phrases.ts';
import { cannotTell, doesNotApply, doesNotFit, fits, gathersRule } from '../../rule.ts';
import { bootDeviceOf, joined } from '../ends.ts';
import { lacks } from '../words.ts';

const deviceNames: Readonly<Record<string, string>> = {
  nvme: 'an M.2 drive over PCIe',
  sata: 'a SATA drive',
  ata: 'a 40-pin disk',
  st506: 'a disk on two ribbons',
  diskette: 'a diskette',
  usb: 'a USB stick',
};
const named = (devices: readonly string[]): string => either(devices.map((device) => deviceNames[device] ?? device));

export const bootDrive = gathersRule({
  id: 'storage/boot-drive',
  title: 'The machine can start from a drive on the list',
  severity: 'blocker',
  basis: 'maker',
  sources: ['maker-data-sheet'],
  lesson: 'fit/how-parts-meet',

  gathers: {
    motherboard: ['firmware'],
    'storage-drive': ['build', 'link'],
    'fixed-disk': ['plug'],
    'floppy-drive': [],
    'bus-card': ['bootsFrom'],
  },
  sees: ['module-slot', 'drive-data'],
  judge(parts, { joints }) {
    const board = parts.motherboard[0];
    if (board === undefined) return doesNotApply;
    const drives = [
      ...joined(parts['storage-drive'], joints).map((drive) => ({ ...drive, device: bootDeviceOf(drive) })),
      ...joined(parts['fixed-disk'], joints).map(({ unit, name, plug }) => ({
        unit,
        name,
        device: plug === 'ata-40' ? 'ata' : plug,
      })),
      ...joined(parts['floppy-drive'], joints).map(({ unit, name }) => ({ unit, name, device: 'diskette' })),
    ];
    if (drives.length === 0) return doesNotApply;

    const own = board.firmware?.bootsFrom;
    const from: string[] = [...(own ?? []), ...parts['bus-card'].flatMap(({ bootsFrom }) => bootsFrom ?? [])];
    const able = drives.find(({ device }) => device !== undefined && from.includes(device));
    const facts = {
      board: board.name,
      drive: able?.name ?? null,
      drives: [...new Set(drives.map(({ name }) => name))],
      from: [...new Set(from)],
    };
    if (able) return fits(facts, [able.unit, board.unit]);
    if (own === undefined) return cannotTell(`${board.unit}.firmware.bootsFrom`);
    const unknown = drives.filter(({ device }) => device === undefined);
    if (unknown.length > 0) return cannotTell(...unknown.map(({ unit }) => `${unit}.link`));
    return doesNotFit(facts, [...drives.map(({ unit }) => unit), board.unit]);
  },

  say: {
    fits: ({ board, drive }) => `${board} can start from ${drive}.`,
    doesNotFit: ({ board, drives, from }) => ({
      headline: 'The machine cannot start from its drives',
      what: `${board} starts from ${from.length === 0 ? 'no drive at all' : `${named(from)} alone`}; the list has ${list(drives)}.`,
      why: 'The firmware looks for a system on the drives that it knows how to read from, finds none, and stops. Once a system runs, it reads the other drives as well.',
      remedy: `Choose ${from.length === 0 ? 'a board' : `${named(from)} for the system, or a board`} whose firmware starts from ${list(drives)}.`,
    }),
    cannotTell: (missing) =>
      lacks(missing, 'motherboard')
        ? {
            headline: 'Which drives does the board start from?',
            what: "The drives that the board's firmware starts from are not recorded, so this is not judged.",
            findOut: "Read the page on starting up in the board's manual.",
          }
        : {
            headline: 'How is the drive linked?',
            what: 'Whether the drive speaks PCIe or SATA is not recorded, so it is not judged whether the machine starts from it.',
            findOut: "Read it on the drive's label or on its maker's sheet.",
          },
  },

  examples: [
    {
      title: 'an M.2 drive over PCIe, and firmware that starts from it',
      parts: {
        'storage-drive': { build: 'm2', link: 'pcie' },
        motherboard: { firmware: { shipped: 5, knows: [], bootsFrom: ['nvme'] } },
      },
      verdict: 'fits',
    },
    {
      title: 'the same drive, and firmware that starts from SATA alone',
      parts: {
        'storage-drive': { build: 'm2', link: 'pcie' },
        motherboard: { firmware: { shipped: 5, knows: [], bootsFrom: ['sata', 'usb'] } },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'a SATA drive beside it',
      parts: {
        'storage-drive': [{ build: 'm2', link: 'pcie' }, { build: '2.5' }],
        motherboard: { firmware: { shipped: 5, knows: [], bootsFrom: ['sata', 'usb'] } },
      },
      verdict: 'fits',
    },
    {
      title: 'firmware that starts from no drive',
      parts: {
        'storage-drive': { build: '2.5' },
        motherboard: { firmware: { shipped: 5, knows: [], bootsFrom: [] } },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'a card whose own firmware starts from its disk',
      shelf: 'vintage',
      parts: {
        'fixed-disk': { plug: 'ata-40' },
        'bus-card': { bootsFrom: ['ata'] },
        motherboard: { firmware: { shipped: 1, knows: [], bootsFrom: [] } },
      },
      verdict: 'fits',
    },
    {
      title: 'a board and a card that start from diskettes alone',
      shelf: 'vintage',
      parts: {
        'fixed-disk': { plug: 'ata-40' },
        'bus-card': { bootsFrom: ['diskette'] },
        motherboard: { firmware: { shipped: 1, knows: [], bootsFrom: ['diskette'] } },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'and a diskette drive beside the disk',
      shelf: 'vintage',
      parts: {
        'fixed-disk': { plug: 'ata-40' },
        'floppy-drive': {},
        'bus-card': { bootsFrom: ['diskette'] },
        motherboard: { firmware: { shipped: 1, knows: [], bootsFrom: ['diskette'] } },
      },
      verdict: 'fits',
    },
    {
      title: 'not recorded what the firmware starts from',
      parts: {
        'storage-drive': { build: 'm2', link: 'pcie' },
        motherboard: { firmware: { shipped: 5, knows: [] } },
      },
      verdict: 'cannot-tell',
    },
    {
      title: 'not recorded what the drive speaks',
      parts: {
        'storage-drive': { build: 'm2', link: undefined },
        motherboard: { firmware: { shipped: 5, knows: [], bootsFrom: ['sata'] } },
      },
      verdict: 'cannot-tell',
    },
    {
      title: 'no drive on the list',
      parts: { motherboard: { firmware: { shipped: 5, knows: [], bootsFrom: ['sata'] } } },
      verdict: 'does-not-apply',
    },
  ],
});
