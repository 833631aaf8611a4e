import { oldTableGb } from '../../../standards/partition-tables.ts';
import { showGb } from '../../../units/amounts.ts';
import { cannotTell, doesNotApply, doesNotFit, fits, gathersRule } from '../../rule.ts';
import { joined } from '../ends.ts';
import { lacks } from '../words.ts';

const [smallSectors, largeSectors] = [512, 4096];

export const partitionTable = gathersRule({
  id: 'storage/partition-table',
  title: 'All of the drive that the machine starts from can be used',
  severity: 'limit',
  basis: 'standard',
  sources: ['uefi'],
  lesson: 'fit/choosing-for-a-purpose',

  gathers: {
    'storage-drive': ['capacityGb', 'sectorBytes'],
    motherboard: ['firmware'],
    'operating-system': ['bootModes'],
  },
  sees: ['module-slot', 'drive-data'],
  judge({ 'storage-drive': listed, motherboard: boards, 'operating-system': systems }, { joints }) {
    const drives = joined(listed, joints);
    const [board, system] = [boards[0], systems[0]];
    if (board === undefined || drives.length === 0) return doesNotApply;
    const unknown = drives.filter(({ capacityGb }) => capacityGb === undefined);
    const least = drives.reduce((a, b) => ((a.capacityGb ?? Infinity) <= (b.capacityGb ?? Infinity) ? a : b));
    const holds = least.capacityGb;
    if (holds === undefined) return cannotTell(...unknown.map(({ unit }) => `${unit}.capacityGb`));

    const reach = oldTableGb(least.sectorBytes ?? smallSectors);
    const facts = { drive: least.name, board: board.name, holds, reach, idle: Math.max(0, holds - reach) };
    // One drive within reach is enough: the machine starts from that one.
    if (holds <= oldTableGb(smallSectors)) return fits(facts, [least.unit, board.unit]);
    if (unknown.length > 0) return cannotTell(...unknown.map(({ unit }) => `${unit}.capacityGb`));
    const modes = board.firmware?.bootModes;
    if (modes === undefined) return cannotTell(`${board.unit}.firmware.bootModes`);
    if (system !== undefined && system.bootModes === undefined) return cannotTell(`${system.unit}.bootModes`);
    if (modes.includes('uefi') && system?.bootModes?.includes('uefi') !== false)
      return fits(facts, [least.unit, board.unit]);
    if (least.sectorBytes === undefined && holds <= oldTableGb(largeSectors))
      return cannotTell(`${least.unit}.sectorBytes`);
    return facts.idle === 0 ? fits(facts, [least.unit, board.unit]) : doesNotFit(facts, [least.unit, board.unit]);
  },

  say: {
    fits: ({ drive, holds }) => `All ${showGb(holds)} of ${drive} can be used by the machine that starts from it.`,
    doesNotFit: ({ drive, holds, reach, idle }) => ({
      headline: `${showGb(idle)} of the drive left idle`,
      what: `${drive} holds ${showGb(holds)}; a machine that starts in the BIOS mode reaches ${showGb(reach)} of it, so ${showGb(idle)} is left idle.`,
      why: 'In that mode the drive is divided up by the older table, which counts sectors in 32 bits and can count no farther.',
      remedy: `Choose a drive of ${showGb(reach)} or less to start from and keep the large one for files, or a board and a system that start in the UEFI mode, or leave the rest idle.`,
    }),
    cannotTell: (missing) => {
      if (lacks(missing, 'motherboard') || lacks(missing, 'operating-system'))
        return {
          headline: 'In which mode does the machine start?',
          what: 'The modes in which board and system start are not recorded, so it is not judged whether all of the drive can be used.',
          findOut: "Look for UEFI in the board's manual and among what the system asks for.",
        };
      return missing.some((field) => field.endsWith('.sectorBytes'))
        ? {
            headline: 'How large are the sectors?',
            what: "The size of the drive's sectors is not recorded, so it is not judged whether all of it can be used.",
            findOut: "Read it on the drive's label: 512e and 512n count sectors of 512 bytes, 4Kn of 4,096.",
          }
        : {
            headline: 'How much does the drive hold?',
            what: 'The size of a drive is not recorded, so it is not judged whether all of it can be used.',
            findOut: "Read it on the drive's label.",
          };
    },
  },

  examples: [
    {
      title: 'exactly as far as the older table reaches',
      parts: {
        'storage-drive': { capacityGb: 2199, sectorBytes: 512 },
        motherboard: { firmware: { shipped: 5, knows: [], bootModes: ['bios'] } },
      },
      verdict: 'fits',
    },
    {
      title: 'one gigabyte farther',
      parts: {
        'storage-drive': { capacityGb: 2200, sectorBytes: 512 },
        motherboard: { firmware: { shipped: 5, knows: [], bootModes: ['bios'] } },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'as far, with sectors of 4,096 bytes',
      parts: {
        'storage-drive': { capacityGb: 2200, sectorBytes: 4096 },
        motherboard: { firmware: { shipped: 5, knows: [], bootModes: ['bios'] } },
      },
      verdict: 'fits',
    },
    {
      title: 'a board that starts in the UEFI mode',
      parts: {
        'storage-drive': { capacityGb: 4000, sectorBytes: 512 },
        motherboard: { firmware: { shipped: 5, knows: [], bootModes: ['bios', 'uefi'] } },
      },
      verdict: 'fits',
    },
    {
      title: 'the same board with a system of the BIOS mode',
      parts: {
        'storage-drive': { capacityGb: 4000, sectorBytes: 512 },
        motherboard: { firmware: { shipped: 5, knows: [], bootModes: ['bios', 'uefi'] } },
        'operating-system': { bootModes: ['bios'] },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'a small drive beside it to start from',
      parts: {
        'storage-drive': [
          { capacityGb: 4000, sectorBytes: 512, build: '3.5' },
          { capacityGb: 500, sectorBytes: 512 },
        ],
        motherboard: { firmware: { shipped: 5, knows: [], bootModes: ['bios'] } },
      },
      verdict: 'fits',
    },
    {
      title: 'not recorded in which mode the board starts',
      parts: {
        'storage-drive': { capacityGb: 4000, sectorBytes: 512 },
        motherboard: { firmware: { shipped: 5, knows: [] } },
      },
      verdict: 'cannot-tell',
    },
    {
      title: 'not recorded in which mode the system starts',
      parts: {
        'storage-drive': { capacityGb: 4000, sectorBytes: 512 },
        motherboard: { firmware: { shipped: 5, knows: [], bootModes: ['uefi'] } },
        'operating-system': { bootModes: undefined },
      },
      verdict: 'cannot-tell',
    },
    {
      title: 'not recorded how large the sectors are',
      parts: {
        'storage-drive': { capacityGb: 4000, sectorBytes: undefined },
        motherboard: { firmware: { shipped: 5, knows: [], bootModes: ['bios'] } },
      },
      verdict: 'cannot-tell',
    },
    {
      title: 'not recorded how much the drive holds',
      parts: {
        'storage-drive': { capacityGb: undefined },
        motherboard: { firmware: { shipped: 5, knows: [], bootModes: ['bios'] } },
      },
      verdict: 'cannot-tell',
    },
    { title: 'no drive on the list', parts: { motherboard: {} }, verdict: 'does-not-apply' },
  ],
});
