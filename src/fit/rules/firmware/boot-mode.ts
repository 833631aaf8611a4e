import { list } from '../../../wording/phrases.ts';
import { cannotTell, doesNotFit, fits, joinsRule } from '../../rule.ts';
import { lacks, oneOf } from '../words.ts';

export const firmwareBootMode = joinsRule({
  id: 'firmware/boot-mode',
  title: 'Board and operating system start in one mode',
  severity: 'blocker',
  basis: 'maker',
  sources: ['maker-data-sheet', 'uefi'],
  lesson: 'fit/how-parts-meet',

  joins: { motherboard: ['name', 'firmware'], 'operating-system': ['name', 'bootModes'] },
  judge({ motherboard, 'operating-system': system }) {
    const offered = motherboard.firmware?.bootModes;
    const wanted = system.bootModes;
    if (wanted === undefined) return cannotTell('operating-system.bootModes');
    if (offered === undefined) return cannotTell('motherboard.firmware.bootModes');
    const shared = wanted.filter((mode) => offered.includes(mode));
    const facts = { board: motherboard.name ?? '', system: system.name ?? '', offered, wanted, shared };
    return shared.length > 0 ? fits(facts) : doesNotFit(facts);
  },

  say: {
    fits: ({ board, system, shared }) => `${board} and ${system} both start in the ${oneOf(shared)} mode.`,
    doesNotFit: ({ board, system, offered, wanted }) => ({
      headline: `${oneOf(wanted)} wanted, the board has ${offered.length === 0 ? 'neither' : oneOf(offered)}`,
      what: `${system} starts in the ${oneOf(wanted)} mode; ${board} offers ${offered.length === 0 ? 'no mode' : oneOf(offered)}.`,
      why: 'Firmware and system hand over by an agreement called the boot mode. Without one in common the firmware finds nothing that it can start.',
      remedy: `Choose a system that starts in the mode of the board, or a board that offers ${oneOf(wanted)}.`,
    }),
    cannotTell: (missing) =>
      lacks(missing, 'operating-system')
        ? {
            headline: 'In which mode does the system start?',
            what: 'The mode in which the operating system starts is not recorded, so this fit is not judged.',
            findOut: `Look for ${list(['UEFI', 'BIOS'])} among what the system asks of a machine.`,
          }
        : {
            headline: 'Which boot modes has the board?',
            what: "The boot modes of the board's firmware are not recorded, so this fit is not judged.",
            findOut: "Read the page on starting up in the board's manual.",
          },
  },

  examples: [
    {
      title: 'one mode in common of two',
      parts: {
        motherboard: { firmware: { shipped: 5, knows: [], bootModes: ['bios', 'uefi'] } },
        'operating-system': { bootModes: ['uefi'] },
      },
      verdict: 'fits',
    },
    {
      title: 'none in common',
      parts: {
        motherboard: { firmware: { shipped: 5, knows: [], bootModes: ['uefi'] } },
        'operating-system': { bootModes: ['bios'] },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'the board does not say',
      parts: {
        motherboard: { firmware: { shipped: 5, knows: [] } },
        'operating-system': { bootModes: ['uefi'] },
      },
      verdict: 'cannot-tell',
    },
    {
      title: 'the system does not say',
      parts: {
        motherboard: { firmware: { shipped: 5, knows: [], bootModes: ['uefi'] } },
        'operating-system': { bootModes: undefined },
      },
      verdict: 'cannot-tell',
    },
    { title: 'no system on the list', parts: { motherboard: {} }, verdict: 'does-not-apply' },
  ],
});
