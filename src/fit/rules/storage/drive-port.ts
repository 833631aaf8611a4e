import { capital, count, inWords, list, spelled } from '../../../wording/phrases.ts';
import { leftRule } from '../../rule.ts';

export const drivePort = leftRule({
  id: 'storage/drive-port',
  title: 'There is a live data port for every drive in a box',
  severity: 'blocker',
  basis: 'maker',
  sources: ['maker-data-sheet'],
  lesson: 'fit/how-parts-meet',

  left: 'drive-data',

  say: {
    fits: ({ part }) => `${part} has a data port.`,
    doesNotFit: ({ part, reason, places, wanting, holders }) => {
      if (reason === 'spent')
        return {
          headline: 'A data port is switched off',
          what: `${part} has no data port: the last free port is off while ${list(holders)} ${holders.length === 1 ? 'is' : 'are'} in an M.2 slot.`,
          why: 'The board has one set of wires for that port and that slot; the port is there and dead.',
          remedy:
            'Take one drive off the list, or choose a board with one more port, or one large drive in place of two small ones.',
        };
      if (reason === 'taken')
        return {
          headline: `${count(wanting, 'drive', 'drives')}, ${count(places, 'data port', 'data ports')}`,
          what: `${capital(spelled(wanting, 'drive needs', 'drives need'))} a data port; the board has ${spelled(places, 'port', 'ports')}, so there ${wanting - places === 1 ? 'is' : 'are'} ${inWords(wanting - places)} too few.`,
          why: 'A data port takes one cable, and a cable one drive.',
          remedy:
            'Take one drive off the list, or choose a board with one more port, or one large drive in place of two small ones.',
        };
      return {
        headline: 'The drive has no data port',
        what: `${part} needs a SATA data port; nothing on the list offers one.`,
        why: 'A drive without its data cable has power, and the machine does not see it.',
        remedy: 'Choose a board with data ports, or an M.2 drive for an M.2 slot.',
      };
    },
    cannotTell: (missing) =>
      missing.length === 0
        ? {
            headline: 'Is there a port for every drive?',
            what: 'Not every way of placing the drives was tried, so this is not judged.',
            findOut: 'Give each drive a port, one by one, with the table of slots and ports in the manual beside you.',
          }
        : {
            headline: 'How many data ports has the board?',
            what: "The board's data ports are not recorded, so this is not judged.",
            findOut:
              "Count the SATA ports at the board's edge, and read in its manual which M.2 slot switches which port off.",
          },
  },

  examples: [
    {
      title: 'two drives and two ports',
      parts: { 'storage-drive': [{ build: '2.5' }, { build: '3.5' }], motherboard: { sataPorts: 2 } },
      verdict: 'fits',
    },
    {
      title: 'one drive more than ports',
      parts: { 'storage-drive': [{ build: '2.5' }, { build: '3.5' }], motherboard: { sataPorts: 1 } },
      verdict: 'does-not-fit',
    },
    {
      title: 'the M.2 drive switches the second port off',
      parts: {
        'storage-drive': [
          { build: '2.5' },
          { build: '3.5' },
          { build: 'm2', key: 'm', lengthMm: 80, link: 'pcie', lanes: 4, generation: 4 },
        ],
        motherboard: {
          sataPorts: 2,
          moduleSlots: [
            {
              id: 'm2-1',
              key: 'm',
              lengthsMm: [80],
              links: ['pcie'],
              lanes: 4,
              generation: 4,
              switchesOff: ['sata-2'],
            },
          ],
        },
      },
      verdict: 'does-not-fit',
    },
    {
      title: "the board's ports are not recorded",
      parts: { 'storage-drive': { build: '2.5' }, motherboard: { sataPorts: undefined } },
      verdict: 'cannot-tell',
    },
    {
      title: 'an M.2 drive needs no port',
      parts: { 'storage-drive': { build: 'm2' }, motherboard: { sataPorts: 2 } },
      verdict: 'does-not-apply',
    },
  ],
});
