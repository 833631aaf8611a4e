import { pcieGenerations, pcieMBps } from '../../../standards/pcie.ts';
import { showMBps } from '../../../units/amounts.ts';
import { cannotTell, doesNotApply, doesNotFit, fits, jointRule } from '../../rule.ts';
import { partAs } from '../ends.ts';
import { lacks } from '../words.ts';

export const moduleLinkSpeed = jointRule({
  id: 'storage/module-link-speed',
  title: 'The M.2 slot carries as much as the drive can',
  severity: 'note',
  basis: 'standard',
  sources: ['pci-express-base', 'm2'],
  lesson: 'fit/choosing-for-a-purpose',

  at: 'module-slot',
  reads: { 'storage-drive': ['link', 'lanes', 'generation'] },
  judge({ need, place }) {
    const drive = partAs(need.unit, 'storage-drive');
    if (drive === undefined || drive.link !== 'pcie') return doesNotApply;
    if (drive.lanes === undefined) return cannotTell(`${need.unit.id}.lanes`);
    if (drive.generation === undefined || !(drive.generation in pcieGenerations))
      return cannotTell(`${need.unit.id}.generation`);
    const slot = { lanes: Number(place.attrs['lanes']), generation: Number(place.attrs['generation']) };
    if (!(slot.generation in pcieGenerations)) return cannotTell(`${place.unit.id}.generation`);

    const can = pcieMBps(drive.lanes, drive.generation);
    // The lesser of each: eight lanes at half the speed are not four at full speed.
    const passes = pcieMBps(Math.min(drive.lanes, slot.lanes), Math.min(drive.generation, slot.generation));
    const less = can - passes;
    const facts = { drive: drive.name, board: place.unit.part.name, can, passes, less };
    return less === 0 ? fits(facts) : doesNotFit(facts);
  },

  say: {
    fits: ({ drive, can }) => `${drive} has a link of ${showMBps(can)}, and its slot carries all of it.`,
    doesNotFit: ({ drive, board, can, passes, less }) => ({
      headline: `The M.2 slot carries ${showMBps(less)} less`,
      what: `${drive} has a link of ${showMBps(can)}; its slot on ${board} carries ${showMBps(passes)}, so ${showMBps(less)} less.`,
      why: 'Drive and slot settle on the most that both can do. The drive works; only very large copies take longer.',
      remedy:
        'Choose a slower drive and keep the difference, or a board with a faster M.2 slot free, or leave it as it is.',
    }),
    cannotTell: (missing) =>
      lacks(missing, 'storage-drive')
        ? {
            headline: 'How fast is the link of the drive?',
            what: "The drive's lanes or their generation are not known, so it is not judged whether the slot slows it down.",
            findOut: "Read both on the drive's label or its maker's sheet; they are written like this: PCIe 4.0 x4.",
          }
        : {
            headline: 'How fast is the M.2 slot?',
            what: 'The generation of the slot is not known, so it is not judged whether it slows the drive down.',
            findOut: "Read it on the page on M.2 slots in the board's manual; it is written like this: PCIe 4.0 x4.",
          },
  },

  examples: [
    {
      title: 'drive and slot are alike',
      parts: {
        'storage-drive': { build: 'm2', key: 'm', lengthMm: 80, link: 'pcie', lanes: 4, generation: 4 },
        motherboard: {
          moduleSlots: [{ id: 'm2-1', key: 'm', lengthsMm: [80], links: ['pcie'], lanes: 4, generation: 4 }],
        },
      },
      verdict: 'fits',
    },
    {
      title: 'a drive one generation ahead of its slot',
      parts: {
        'storage-drive': { build: 'm2', key: 'm', lengthMm: 80, link: 'pcie', lanes: 4, generation: 5 },
        motherboard: {
          moduleSlots: [{ id: 'm2-1', key: 'm', lengthsMm: [80], links: ['pcie'], lanes: 4, generation: 4 }],
        },
      },
      verdict: 'does-not-fit',
    },
    {
      title: "the drive's generation is not recorded",
      parts: {
        'storage-drive': { build: 'm2', key: 'm', lengthMm: 80, link: 'pcie', lanes: 4, generation: undefined },
        motherboard: {
          moduleSlots: [{ id: 'm2-1', key: 'm', lengthsMm: [80], links: ['pcie'], lanes: 4, generation: 4 }],
        },
      },
      verdict: 'cannot-tell',
    },
    {
      title: 'a drive that speaks SATA',
      parts: {
        'storage-drive': { build: 'm2', key: 'm', lengthMm: 80, link: 'sata' },
        motherboard: {
          moduleSlots: [{ id: 'm2-1', key: 'm', lengthsMm: [80], links: ['sata'], lanes: 4, generation: 4 }],
        },
      },
      verdict: 'does-not-apply',
    },
  ],
});
