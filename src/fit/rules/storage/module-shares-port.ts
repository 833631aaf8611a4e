import { list } from '../../../wording/phrases.ts';
import { placeName } from '../../../wording/places.ts';
import { doesNotApply, doesNotFit, fits, gathersRule } from '../../rule.ts';

export const moduleSharesPort = gathersRule({
  id: 'storage/module-shares-port',
  title: 'No data port is off while an M.2 slot is used',
  severity: 'note',
  basis: 'maker',
  sources: ['maker-data-sheet'],
  lesson: 'fit/how-parts-meet',

  gathers: { motherboard: ['moduleSlots', 'sataPorts'] },
  sees: ['module-slot'],
  judge({ motherboard: boards }, { joints }) {
    const board = boards[0];
    const slots = (board?.moduleSlots ?? []).flatMap((slot) => {
      const joint = joints.find(({ place }) => place === `${board?.unit}/module-slot-${slot.id}`);
      return joint ? [{ ...slot, place: joint.place }] : [];
    });
    if (board === undefined || slots.length === 0) return doesNotApply;

    const there = Array.from({ length: board.sataPorts ?? 0 }, (_, n) => `sata-${n + 1}`);
    const dark = slots.filter(({ switchesOff }) => switchesOff?.some((port) => there.includes(port)));
    const off = there.filter((port) => dark.some(({ switchesOff }) => switchesOff?.includes(port)));
    const facts = {
      board: board.name,
      slots: dark.map(({ place }) => placeName('module-slot', place)),
      off: off.map((port) => port.slice('sata-'.length)),
      on: there.filter((port) => !off.includes(port)).map((port) => port.slice('sata-'.length)),
    };
    return off.length === 0 ? fits(facts, [board.unit]) : doesNotFit(facts, [board.unit]);
  },

  say: {
    fits: () => 'The M.2 slots in use switch no data port off.',
    doesNotFit: ({ board, slots, off, on }) => ({
      headline: `${off.length === 1 ? `Data port ${off[0]} is` : `Data ports ${list(off)} are`} off`,
      what: `On ${board} data ${off.length === 1 ? `port ${off[0]} is` : `ports ${list(off)} are`} off while ${list(slots)} ${slots.length === 1 ? 'is' : 'are'} used.`,
      why: 'The board has one set of wires for the slot and for the ports; the port is there, and a drive joined to it is not seen.',
      remedy:
        on.length === 0
          ? 'Choose a board whose M.2 slot shares with no data port, or leave it as it is: no port is left for a drive in a box.'
          : `Join drives in boxes to data ${on.length === 1 ? `port ${on[0]}` : `ports ${list(on)}`}, or leave it as it is.`,
    }),
    cannotTell: () => ({
      headline: 'Does an M.2 slot share with a port?',
      what: "What the board's M.2 slots share is not recorded, so this is not judged.",
      findOut: "Read the table of slots and ports in the board's manual.",
    }),
  },

  examples: [
    {
      title: 'a slot that shares with no port',
      parts: {
        'storage-drive': { build: 'm2', key: 'm', lengthMm: 80, link: 'pcie' },
        motherboard: {
          sataPorts: 4,
          moduleSlots: [{ id: 'm2-1', key: 'm', lengthsMm: [80], links: ['pcie'], lanes: 4, generation: 4 }],
        },
      },
      verdict: 'fits',
    },
    {
      title: 'a slot that shares with the last of four ports',
      parts: {
        'storage-drive': { build: 'm2', key: 'm', lengthMm: 80, link: 'pcie' },
        motherboard: {
          sataPorts: 4,
          moduleSlots: [
            {
              id: 'm2-1',
              key: 'm',
              lengthsMm: [80],
              links: ['pcie'],
              lanes: 4,
              generation: 4,
              switchesOff: ['sata-4'],
            },
          ],
        },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'it shares with the only two ports',
      parts: {
        'storage-drive': { build: 'm2', key: 'm', lengthMm: 80, link: 'pcie' },
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
              switchesOff: ['sata-1', 'sata-2'],
            },
          ],
        },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'the slot that shares is left empty',
      parts: {
        'storage-drive': { build: 'm2', key: 'm', lengthMm: 80, link: 'pcie' },
        motherboard: {
          sataPorts: 4,
          moduleSlots: [
            { id: 'm2-1', key: 'm', lengthsMm: [80], links: ['pcie'], lanes: 4, generation: 4 },
            {
              id: 'm2-2',
              key: 'm',
              lengthsMm: [80],
              links: ['pcie'],
              lanes: 4,
              generation: 4,
              switchesOff: ['sata-4'],
            },
          ],
        },
      },
      verdict: 'fits',
    },
    {
      title: 'a port that the board does not have',
      parts: {
        'storage-drive': { build: 'm2', key: 'm', lengthMm: 80, link: 'pcie' },
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
              switchesOff: ['sata-3'],
            },
          ],
        },
      },
      verdict: 'fits',
    },
    { title: 'no M.2 drive', parts: { 'storage-drive': { build: '2.5' }, motherboard: {} }, verdict: 'does-not-apply' },
  ],
});
