import { moduleCode } from '../../../standards/drives.ts';
import { showMm } from '../../../units/amounts.ts';
import { either } from '../../../wording/phrases.ts';
import type { Fact } from '../../report.ts';
import { refusesRule } from '../../rule.ts';
import { lacks } from '../words.ts';

const lengths = (value: Fact): string =>
  either((Array.isArray(value) ? value : [value]).map((length) => showMm(Number(length))));
const codes = (value: Fact): string =>
  either((Array.isArray(value) ? value : [value]).map((length) => moduleCode(Number(length))));

export const moduleLength = refusesRule({
  id: 'storage/module-length',
  title: 'The M.2 drive is as long as a slot has a screw for',
  severity: 'blocker',
  basis: 'maker',
  sources: ['maker-data-sheet', 'm2'],
  lesson: 'fit/how-parts-meet',

  refuses: { kind: 'module-slot', op: 'shares', need: 'lengthMm', place: 'lengthsMm' },

  say: {
    fits: ({ part, need }) => `${part} is ${lengths(need)} long (${codes(need)}), and its slot has a screw there.`,
    doesNotFit: ({ part, on, need, offered }) => ({
      headline: `A drive of ${lengths(need)}, no screw there`,
      what: `${part} is ${lengths(need)} long (${codes(need)}); the slot on ${on} has a screw at ${lengths(offered)} (${codes(offered)}).`,
      why: 'The far end of the module is held down by one screw. Where there is no place for it, the module springs up and loses contact, or does not go in at all.',
      remedy: `Choose a drive marked ${codes(offered)}, or a board whose slot takes ${codes(need)}.`,
    }),
    cannotTell: (missing) =>
      lacks(missing, 'storage-drive')
        ? {
            headline: 'How long is the M.2 drive?',
            what: "The drive's length is not recorded, so this fit is not judged.",
            findOut: 'Read the number on its label: 2280 is 22 mm wide and 80 mm long. Or measure it from end to end.',
          }
        : {
            headline: 'Which lengths does the M.2 slot take?',
            what: 'The lengths that the slot takes are not recorded, so this fit is not judged.',
            findOut: 'Read the numbers printed on the board beside the screw holes, such as 2260 and 2280.',
          },
  },

  examples: [
    {
      title: 'one of the two lengths of the slot',
      parts: {
        'storage-drive': { build: 'm2', key: 'm', lengthMm: 80, link: 'pcie' },
        motherboard: {
          moduleSlots: [{ id: 'm2-1', key: 'm', lengthsMm: [60, 80], links: ['pcie'], lanes: 4, generation: 4 }],
        },
      },
      verdict: 'fits',
    },
    {
      title: 'longer than the last screw',
      parts: {
        'storage-drive': { build: 'm2', key: 'm', lengthMm: 110, link: 'pcie' },
        motherboard: {
          moduleSlots: [{ id: 'm2-1', key: 'm', lengthsMm: [60, 80], links: ['pcie'], lanes: 4, generation: 4 }],
        },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'shorter than the first screw',
      parts: {
        'storage-drive': { build: 'm2', key: 'm', lengthMm: 42, link: 'pcie' },
        motherboard: {
          moduleSlots: [{ id: 'm2-1', key: 'm', lengthsMm: [60, 80], links: ['pcie'], lanes: 4, generation: 4 }],
        },
      },
      verdict: 'does-not-fit',
    },
    {
      title: "the drive's length is not recorded",
      parts: {
        'storage-drive': { build: 'm2', key: 'm', lengthMm: undefined, link: 'pcie' },
        motherboard: {
          moduleSlots: [{ id: 'm2-1', key: 'm', lengthsMm: [60, 80], links: ['pcie'], lanes: 4, generation: 4 }],
        },
      },
      verdict: 'cannot-tell',
    },
    {
      title: 'a drive and no board',
      parts: { 'storage-drive': { build: 'm2', lengthMm: 80 } },
      verdict: 'does-not-apply',
    },
  ],
});
