import { either } from '../../../wording/phrases.ts';
import type { Fact } from '../../report.ts';
import { refusesRule } from '../../rule.ts';
import { lacks } from '../words.ts';

const keys = (value: Fact): string =>
  either((Array.isArray(value) ? value : [value]).map((key) => String(key).toUpperCase()));

export const moduleKey = refusesRule({
  id: 'storage/module-key',
  title: 'The notch of the M.2 drive goes over the key of a slot',
  severity: 'blocker',
  basis: 'standard',
  sources: ['m2'],
  lesson: 'fit/how-parts-meet',

  refuses: { kind: 'module-slot', op: 'shares', need: 'key', place: 'key' },

  say: {
    fits: ({ part, offered }) => `${part} has a notch for key ${keys(offered)}, as its slot has.`,
    doesNotFit: ({ part, on, need, offered }) => ({
      headline: `Notch for key ${keys(need)}, slot with ${keys(offered)}`,
      what: `${part} has its notch for key ${keys(need)}; the slot on ${on} has key ${keys(offered)}.`,
      why: 'The key is a bridge in the slot. Where the module has no notch for it, the module stops before its contacts meet.',
      remedy: `Choose a drive with a notch for key ${keys(offered)}, or a board that has a slot with key ${keys(need)}. A module must never be forced.`,
    }),
    cannotTell: (missing) =>
      lacks(missing, 'storage-drive')
        ? {
            headline: 'Where is the notch of the drive?',
            what: "The drive's key is not recorded, so this fit is not judged.",
            findOut:
              'Look at the edge with the contacts: a notch that parts off five contacts at one end is for key M, one that parts off six is for key B.',
          }
        : {
            headline: 'Which key has the M.2 slot?',
            what: "The slot's key is not recorded, so this fit is not judged.",
            findOut: "Read it on the board beside the slot, or in the board's manual.",
          },
  },

  examples: [
    {
      title: 'both notches, and a slot with key M',
      parts: {
        'storage-drive': { build: 'm2', key: 'b+m', lengthMm: 80, link: 'sata' },
        motherboard: {
          moduleSlots: [{ id: 'm2-1', key: 'm', lengthsMm: [80], links: ['pcie', 'sata'], lanes: 4, generation: 4 }],
        },
      },
      verdict: 'fits',
    },
    {
      title: 'a drive with key B and a slot with key M',
      parts: {
        'storage-drive': { build: 'm2', key: 'b', lengthMm: 80, link: 'sata' },
        motherboard: {
          moduleSlots: [{ id: 'm2-1', key: 'm', lengthsMm: [80], links: ['pcie', 'sata'], lanes: 4, generation: 4 }],
        },
      },
      verdict: 'does-not-fit',
    },
    {
      title: "the drive's key is not recorded",
      parts: {
        'storage-drive': { build: 'm2', key: undefined, lengthMm: 80, link: 'sata' },
        motherboard: {
          moduleSlots: [{ id: 'm2-1', key: 'm', lengthsMm: [80], links: ['pcie', 'sata'], lanes: 4, generation: 4 }],
        },
      },
      verdict: 'cannot-tell',
    },
    {
      title: 'a drive in a box',
      parts: {
        'storage-drive': { build: '2.5', key: undefined },
        motherboard: {
          moduleSlots: [{ id: 'm2-1', key: 'm', lengthsMm: [80], links: ['pcie', 'sata'], lanes: 4, generation: 4 }],
        },
      },
      verdict: 'does-not-apply',
    },
  ],
});
