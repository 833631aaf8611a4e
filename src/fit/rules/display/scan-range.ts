import { list } from '../../../wording/phrases.ts';
import { cannotTell, doesNotApply, doesNotFit, fits, gathersRule } from '../../rule.ts';
import { alsoTold, missingOf, othersOf, scansOf, unitsOf } from '../scans.ts';
import { lacks } from '../words.ts';

export const scanRange = gathersRule({
  id: 'display/scan-range',
  title: 'The card sends a picture within the range of the monitor',
  severity: 'blocker',
  basis: 'maker',
  sources: ['maker-data-sheet', 'scan-rates'],
  lesson: 'fit/how-parts-meet',

  gathers: {
    monitor: ['horizontalKhz', 'verticalHz'],
    'bus-card': ['outputs'],
    motherboard: ['pictureSockets', 'hasPictureChip'],
  },
  sees: ['picture'],
  judge({ monitor: monitors, 'bus-card': cards, motherboard: boards }, { joints }) {
    const scans = scansOf(monitors, cards, boards, joints).filter(
      ({ isFixed, monitor }) => !isFixed && monitor.horizontalKhz !== undefined,
    );
    const bad = scans.filter(({ followed }) => followed?.length === 0);
    const told = bad[0] ?? scans[0];
    if (!told) return doesNotApply;
    const open = scans.flatMap(missingOf);
    if (bad.length === 0 && open.length > 0) return cannotTell(...open);
    const [lowest, highest] = told.monitor.horizontalKhz ?? [0, 0];
    const facts = {
      monitor: told.monitor.name,
      card: told.card.name,
      lowest,
      highest,
      slowest: told.monitor.verticalHz?.[0] ?? 0,
      fastest: told.monitor.verticalHz?.[1] ?? 0,
      sends: (told.modes ?? []).map(({ horizontalKhz }) => horizontalKhz),
      pictures: (told.modes ?? []).map(({ verticalHz }) => verticalHz),
      others: othersOf(bad),
    };
    return bad.length > 0 ? doesNotFit(facts, unitsOf(bad)) : fits(facts, unitsOf([told]));
  },

  say: {
    fits: ({ monitor, card, lowest, highest }) =>
      `${monitor} follows ${lowest} to ${highest} kHz, and ${card} sends a picture within that.`,
    doesNotFit: ({ monitor, card, lowest, highest, slowest, fastest, sends, pictures, others }) => ({
      headline: 'No picture within the range of the monitor',
      what: `${monitor} follows ${lowest} to ${highest} kHz and ${slowest} to ${fastest} Hz; ${card} sends ${list(sends.map((sent, index) => `${sent} kHz at ${pictures[index]} Hz`))}.${alsoTold(others)}`,
      why: 'The monitor cannot lock on to the picture: it rolls, tears or stays dark.',
      remedy:
        "Choose a monitor whose range takes in the card's rates, or a card that sends a picture within the range.",
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
      title: 'within the range',
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
              ],
            },
          ],
        },
        motherboard: {},
      },
      verdict: 'fits',
    },
    {
      title: 'exactly the highest rate',
      shelf: 'vintage',
      parts: {
        monitor: { horizontalKhz: [30, 31.469], verticalHz: [50, 59.94] },
        'bus-card': {
          roles: ['display'],
          outputs: [
            {
              id: 'vga-1',
              plug: 'vga',
              signal: 'analog',
              modes: [{ id: 'vga-480', horizontalKhz: 31.469, verticalHz: 59.94 }],
            },
          ],
        },
        motherboard: {},
      },
      verdict: 'fits',
    },
    {
      title: 'every picture beyond the range',
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
      verdict: 'does-not-fit',
    },
    {
      title: 'lines within the range, pictures a second beyond it',
      shelf: 'vintage',
      parts: {
        monitor: { horizontalKhz: [30, 38], verticalHz: [50, 60] },
        'bus-card': {
          roles: ['display'],
          outputs: [
            {
              id: 'vga-1',
              plug: 'vga',
              signal: 'analog',
              modes: [{ id: 'vga-400', horizontalKhz: 31.469, verticalHz: 70.09 }],
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
      title: 'a fixed-rate monitor is told elsewhere',
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
