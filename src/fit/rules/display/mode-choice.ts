import { list } from '../../../wording/phrases.ts';
import { cannotTell, doesNotApply, doesNotFit, fits, gathersRule } from '../../rule.ts';
import { alsoTold, missingOf, othersOf, scansOf, unitsOf } from '../scans.ts';
import { lacks } from '../words.ts';

export const modeChoice = gathersRule({
  id: 'display/mode-choice',
  title: 'The monitor follows every picture that the card can send',
  severity: 'limit',
  basis: 'maker',
  sources: ['maker-data-sheet', 'scan-rates'],
  lesson: 'fit/choosing-for-a-purpose',

  gathers: {
    monitor: ['horizontalKhz', 'verticalHz'],
    'bus-card': ['outputs'],
    motherboard: ['pictureSockets', 'hasPictureChip'],
  },
  sees: ['picture'],
  judge({ monitor: monitors, 'bus-card': cards, motherboard: boards }, { joints }) {
    const scans = scansOf(monitors, cards, boards, joints);
    if (scans.length === 0) return doesNotApply;
    const some = scans.filter(({ followed }) => followed === undefined || followed.length > 0);
    const short = some.filter(({ followed, modes = [] }) => followed !== undefined && followed.length < modes.length);
    const told = short[0] ?? some[0];
    if (!told) return doesNotApply;
    const open = some.flatMap(missingOf);
    if (short.length === 0 && open.length > 0) return cannotTell(...open);
    const beyond = (told.modes ?? []).filter((mode) => !told.followed?.includes(mode));
    const facts = {
      monitor: told.monitor.name,
      card: told.card.name,
      beyond: beyond.map(({ horizontalKhz }) => horizontalKhz),
      pictures: beyond.map(({ verticalHz }) => verticalHz),
      isFixed: told.isFixed,
      others: othersOf(short),
    };
    return short.length > 0 ? doesNotFit(facts, unitsOf(short)) : fits(facts, unitsOf([told]));
  },

  say: {
    fits: ({ monitor, card }) => `${monitor} follows every picture that ${card} sends.`,
    doesNotFit: ({ monitor, card, beyond, pictures, isFixed, others }) => ({
      headline: 'Some pictures are beyond the monitor',
      what: `${card} can send ${list(beyond.map((rate, index) => `${rate} kHz at ${pictures[index]} Hz`))}, which ${monitor} does not follow; the others it does.${alsoTold(others)}`,
      why: isFixed
        ? 'Switches on the card and the programs that run choose the picture. One that a fixed-rate monitor does not follow can damage it.'
        : 'The machine starts with a picture that the monitor follows. In the others it rolls or stays dark.',
      remedy: `${isFixed ? 'Set any switches of the card for this monitor before power-on, and keep' : 'Keep'} programs to the pictures within the monitor's rates, or choose a monitor that follows them all.`,
    }),
    cannotTell: (missing) =>
      lacks(missing, 'monitor')
        ? {
            headline: 'Which scan rates does the monitor follow?',
            what: "The monitor's scan rates are not recorded, so it is not judged beside the card's.",
            findOut: 'Read them in kHz and Hz on the plate at the back of the monitor, before it is switched on.',
          }
        : {
            headline: 'Which scan rates does the card send?',
            what: "The card's scan rates are not recorded, so they are not judged beside the monitor's.",
            findOut: "Read the table of modes in the card's leaflet, before the monitor is switched on.",
          },
  },

  examples: [
    {
      title: 'every picture is followed',
      shelf: 'vintage',
      parts: {
        monitor: { horizontalKhz: [30, 38], verticalHz: [50, 90] },
        'bus-card': {
          roles: ['display'],
          outputs: [
            {
              id: 'vga-1',
              plug: 'vga',
              signal: 'analog',
              modes: [
                { id: 'vga-480', horizontalKhz: 31.469, verticalHz: 59.94 },
                { id: 'vga-400', horizontalKhz: 31.469, verticalHz: 70.09 },
                { id: 'svga-600', horizontalKhz: 35.156, verticalHz: 56.25 },
              ],
            },
          ],
        },
        motherboard: {},
      },
      verdict: 'fits',
    },
    {
      title: 'one picture of three is beyond it',
      shelf: 'vintage',
      parts: {
        monitor: { horizontalKhz: [30, 38], verticalHz: [50, 90] },
        'bus-card': {
          roles: ['display'],
          outputs: [
            {
              id: 'vga-1',
              plug: 'vga',
              signal: 'analog',
              modes: [
                { id: 'vga-480', horizontalKhz: 31.469, verticalHz: 59.94 },
                { id: 'svga-600', horizontalKhz: 35.156, verticalHz: 56.25 },
                { id: 'svga-768', horizontalKhz: 48.363, verticalHz: 60.004 },
              ],
            },
          ],
        },
        motherboard: {},
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'a fixed-rate monitor and a card that can do more',
      shelf: 'vintage',
      parts: {
        monitor: { horizontalKhz: [31.5, 31.5], verticalHz: [50, 70] },
        'bus-card': {
          roles: ['display'],
          outputs: [
            {
              id: 'vga-1',
              plug: 'vga',
              signal: 'analog',
              modes: [
                { id: 'vga-480', horizontalKhz: 31.469, verticalHz: 59.94 },
                { id: 'svga-600', horizontalKhz: 35.156, verticalHz: 56.25 },
              ],
            },
          ],
        },
        motherboard: {},
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'the modes of the card are not recorded',
      shelf: 'vintage',
      parts: {
        monitor: { horizontalKhz: [30, 38], verticalHz: [50, 90] },
        'bus-card': { roles: ['display'], outputs: [{ id: 'vga-1', plug: 'vga', signal: 'analog' }] },
        motherboard: {},
      },
      verdict: 'cannot-tell',
    },
    {
      title: 'no picture at all is told elsewhere',
      shelf: 'vintage',
      parts: {
        monitor: { horizontalKhz: [30, 38], verticalHz: [50, 90] },
        'bus-card': {
          roles: ['display'],
          outputs: [
            {
              id: 'vga-1',
              plug: 'vga',
              signal: 'analog',
              modes: [{ id: 'svga-768', horizontalKhz: 48.363, verticalHz: 60.004 }],
            },
          ],
        },
        motherboard: {},
      },
      verdict: 'does-not-apply',
    },
  ],
});
