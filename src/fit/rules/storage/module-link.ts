import { refusesRule } from '../../rule.ts';
import { lacks, oneOf } from '../words.ts';

export const moduleLink = refusesRule({
  id: 'storage/module-link',
  title: 'The M.2 slot speaks the link of the drive',
  severity: 'blocker',
  basis: 'maker',
  sources: ['maker-data-sheet', 'm2'],
  lesson: 'fit/how-parts-meet',

  refuses: { kind: 'module-slot', op: 'shares', need: 'link', place: 'links' },

  say: {
    fits: ({ part, need }) => `${part} speaks ${oneOf(need)}, and so does its slot.`,
    doesNotFit: ({ part, on, need, offered }) => ({
      headline: `A drive for ${oneOf(need)}, a slot for ${oneOf(offered)}`,
      what: `${part} speaks ${oneOf(need)}; the slot on ${on} speaks ${oneOf(offered)}.`,
      why: 'Both kinds of drive have the same shape and the drive goes in, but the machine never sees it.',
      remedy: `Choose an M.2 drive that speaks ${oneOf(offered)}, or a board with an M.2 slot that speaks ${oneOf(need)}.`,
    }),
    cannotTell: (missing) =>
      lacks(missing, 'storage-drive')
        ? {
            headline: 'Which link does the drive speak?',
            what: "The drive's link is not recorded, so this fit is not judged.",
            findOut: "Read it on the drive's label or its maker's sheet: NVMe drives speak PCIe, the others SATA.",
          }
        : {
            headline: 'Which link does the M.2 slot speak?',
            what: "The slot's links are not recorded, so this fit is not judged.",
            findOut: "Read the page on M.2 slots in the board's manual.",
          },
  },

  examples: [
    {
      title: 'a SATA drive in a slot for both',
      parts: {
        'storage-drive': { build: 'm2', key: 'm', lengthMm: 80, link: 'sata' },
        motherboard: {
          moduleSlots: [{ id: 'm2-1', key: 'm', lengthsMm: [80], links: ['pcie', 'sata'], lanes: 4, generation: 4 }],
        },
      },
      verdict: 'fits',
    },
    {
      title: 'a SATA drive in a slot for PCIe alone',
      parts: {
        'storage-drive': { build: 'm2', key: 'm', lengthMm: 80, link: 'sata' },
        motherboard: {
          moduleSlots: [{ id: 'm2-1', key: 'm', lengthsMm: [80], links: ['pcie'], lanes: 4, generation: 4 }],
        },
      },
      verdict: 'does-not-fit',
    },
    {
      title: "the drive's link is not recorded",
      parts: {
        'storage-drive': { build: 'm2', key: 'm', lengthMm: 80, link: undefined },
        motherboard: {
          moduleSlots: [{ id: 'm2-1', key: 'm', lengthsMm: [80], links: ['pcie'], lanes: 4, generation: 4 }],
        },
      },
      verdict: 'cannot-tell',
    },
    {
      title: 'a drive in a box',
      parts: { 'storage-drive': { build: '3.5', link: 'sata' } },
      verdict: 'does-not-apply',
    },
  ],
});
