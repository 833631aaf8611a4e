import { capital, count, inWords, list, spelled } from '../../../wording/phrases.ts';
import { leftRule } from '../../rule.ts';

/** How a drive is joined, by its plug: what it goes on, and what is at fault when there is none. */
const joinedBy = (needName: string): { port: string; add: string } => {
  switch (needName) {
    case 'floppy-pins':
    case 'floppy-edge':
      return { port: 'connector on a diskette ribbon', add: 'a card with a diskette controller' };
    case 'ata-40':
      return { port: 'connector on a 40-pin ribbon', add: 'a card with a 40-pin socket for disks' };
    case 'st506':
      return { port: 'place on the 34-way and the 20-way ribbon', add: 'a card for disks on two ribbons' };
    default:
      return { port: 'SATA data port', add: 'a board with data ports, or an M.2 drive for an M.2 slot' };
  }
};

export const drivePort = leftRule({
  id: 'storage/drive-port',
  title: 'There is a live data port for every drive in a box',
  severity: 'blocker',
  basis: 'maker',
  sources: ['maker-data-sheet'],
  lesson: 'fit/how-parts-meet',

  left: 'drive-data',
  plugTest: { need: 'plug', place: 'plug' },

  say: {
    fits: ({ part }) => `${part} has a data port.`,
    doesNotFit: ({ part, needName, reason, mating, wanting, holders, waitsFor }) => {
      const { port, add } = joinedBy(needName);
      if (reason === 'absent' && waitsFor !== null)
        return {
          headline: 'The drive waits for its controller',
          what: `${part} would be joined to ${waitsFor}, which itself has no place.`,
          why: 'A card offers its sockets once it is in its slot.',
          remedy: `Find a slot for ${waitsFor} first.`,
        };
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
          // Drives with other plugs may hold connectors of the same ribbon.
          headline:
            wanting > mating
              ? `${count(wanting, 'drive', 'drives')}, ${count(mating, 'data port', 'data ports')}`
              : 'No data port is free',
          what:
            wanting > mating
              ? `${capital(spelled(wanting, 'drive needs', 'drives need'))} a ${port}; the machine has ${inWords(mating)}, so there ${wanting - mating === 1 ? 'is' : 'are'} ${inWords(wanting - mating)} too few.`
              : `${part} needs a ${port}; ${list(holders)} ${holders.length === 1 ? 'has' : 'have'} all there ${mating === 1 ? 'is' : 'are'}.`,
          why:
            needName === 'sata'
              ? 'A data port takes one cable, and a cable one drive.'
              : 'A ribbon tells two drives apart, and no third.',
          remedy: `Take one drive off the list, or one large drive in place of two small ones, or choose ${add}.`,
        };
      return {
        headline: 'The drive has no data port',
        what: `${part} needs a ${port}; nothing on the list offers one.`,
        why: 'A drive without its data cable has power, and the machine does not see it.',
        remedy: `Choose ${add}.`,
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
      title: 'two disks on one ribbon',
      shelf: 'vintage',
      parts: { 'fixed-disk': [{}, {}], 'bus-card': {}, motherboard: {} },
      verdict: 'fits',
    },
    {
      title: 'a third disk',
      shelf: 'vintage',
      parts: { 'fixed-disk': [{}, {}, {}], 'bus-card': {}, motherboard: {} },
      verdict: 'does-not-fit',
    },
    {
      title: 'a third diskette drive, of another plug',
      shelf: 'vintage',
      parts: {
        'floppy-drive': [
          {},
          { size: '5.25', format: '5.25-1200', plug: 'floppy-edge', powerPlug: 'peripheral-4' },
          { size: '5.25', format: '5.25-360', plug: 'floppy-edge', powerPlug: 'peripheral-4' },
        ],
        'bus-card': {},
        motherboard: {},
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'a disk of the older kind and a card for the other',
      shelf: 'vintage',
      parts: { 'fixed-disk': { plug: 'st506' }, 'bus-card': {}, motherboard: {} },
      verdict: 'does-not-fit',
    },
    {
      title: 'the controller has no slot',
      shelf: 'vintage',
      parts: { 'floppy-drive': {}, 'bus-card': {}, motherboard: { busSlots: [] } },
      verdict: 'does-not-fit',
    },
    {
      title: 'an M.2 drive needs no port',
      parts: { 'storage-drive': { build: 'm2' }, motherboard: { sataPorts: 2 } },
      verdict: 'does-not-apply',
    },
  ],
});
