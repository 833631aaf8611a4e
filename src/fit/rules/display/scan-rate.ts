import { list } from '../../../wording/phrases.ts';
import { cannotTell, doesNotApply, doesNotFit, fits, gathersRule } from '../../rule.ts';
import { alsoTold, missingOf, othersOf, scansOf, unitsOf, unseenBy } from '../scans.ts';
import { lacks } from '../words.ts';

export const scanRate = gathersRule({
  id: 'display/scan-rate',
  title: 'The card sends a rate that the fixed-rate monitor is made for',
  severity: 'hazard',
  basis: 'maker',
  sources: ['maker-data-sheet', 'scan-rates'],
  lesson: 'fit/how-parts-meet',

  gathers: {
    monitor: ['horizontalKhz', 'verticalHz', 'sockets'],
    'bus-card': ['outputs'],
    motherboard: ['pictureSockets', 'hasPictureChip'],
    'graphics-card': [],
  },
  sees: ['picture'],
  judge({ monitor: monitors, 'bus-card': cards, motherboard: boards, 'graphics-card': today }, { joints }) {
    const scans = scansOf(monitors, cards, boards, joints);
    const fixed = scans.filter(({ isFixed }) => isFixed);
    const bad = fixed.filter(({ followed }) => followed?.length === 0);
    // A monitor whose rate nobody recorded may be a fixed one.
    const open = [
      ...scans.flatMap((scan) => (scan.isFixed || scan.monitor.horizontalKhz === undefined ? missingOf(scan) : [])),
      ...unseenBy(monitors, scans, joints, [
        ...today.map(({ unit }) => ({ unit, field: `${unit}.outputs` })),
        ...boards.map(({ unit }) => ({ unit, field: `${unit}.pictureSockets` })),
      ]),
    ];
    const told = bad[0] ?? fixed[0];
    if (bad.length === 0 && open.length > 0) return cannotTell(...open);
    if (!told) return doesNotApply;
    const facts = {
      monitor: told.monitor.name,
      card: told.card.name,
      rate: told.monitor.horizontalKhz?.[0] ?? 0,
      sends: (told.modes ?? []).map(({ horizontalKhz }) => horizontalKhz),
      // Line rates may agree and the pictures a second not.
      isFrames: (told.modes ?? []).some(
        ({ horizontalKhz }) => Math.abs(horizontalKhz - (told.monitor.horizontalKhz?.[0] ?? 0)) < 0.5,
      ),
      others: othersOf(bad),
    };
    return bad.length > 0 ? doesNotFit(facts, unitsOf(bad)) : fits(facts, unitsOf([told]));
  },

  say: {
    fits: ({ monitor, card, rate }) => `${monitor} is made for ${rate} kHz, and ${card} sends that.`,
    doesNotFit: ({ monitor, card, rate, sends, isFrames, others }) => ({
      headline: 'The monitor may be damaged by this card',
      what: `${
        isFrames
          ? `${monitor} is made for lines at ${rate} kHz and its own count of pictures a second; no picture of ${card} has both.`
          : `${monitor} is made for ${rate} kHz and no other rate; ${card} sends ${list([...new Set(sends)].map((sent) => `${sent} kHz`))}.`
      }${alsoTold(others)}`,
      why: 'A fixed-rate monitor makes its high voltage from the line rate. At another rate parts of it overheat within seconds, even while the screen stays dark.',
      remedy: `Do not switch the two on together. Choose a card that sends ${rate} kHz, or a monitor that follows the card's rate.`,
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
      title: 'a VGA card and a monitor made for VGA',
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
                { id: 'vga-400', horizontalKhz: 31.469, verticalHz: 70.09 },
              ],
            },
          ],
        },
        motherboard: {},
      },
      verdict: 'fits',
    },
    {
      title: 'the monitor is made for half that rate',
      shelf: 'vintage',
      parts: {
        monitor: {
          sockets: [{ id: 'in', plug: 'de-9', signal: 'digital' }],
          horizontalKhz: [15.75, 15.75],
          verticalHz: [60, 60],
        },
        'bus-card': {
          roles: ['display'],
          outputs: [
            {
              id: 'de-9-1',
              plug: 'de-9',
              signal: 'digital',
              modes: [{ id: 'colour-350', horizontalKhz: 21.851, verticalHz: 59.7 }],
            },
          ],
        },
        motherboard: {},
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'a monitor for text alone and a colour card',
      shelf: 'vintage',
      parts: {
        monitor: { sockets: [{ id: 'in', plug: 'de-9' }], horizontalKhz: [18.43, 18.43], verticalHz: [50, 50] },
        'bus-card': {
          roles: ['display'],
          outputs: [
            {
              id: 'de-9-1',
              plug: 'de-9',
              signal: 'digital',
              modes: [{ id: 'colour-200', horizontalKhz: 15.7, verticalHz: 59.92 }],
            },
          ],
        },
        motherboard: {},
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'rounded on the sheet, the same in truth',
      shelf: 'vintage',
      parts: {
        monitor: {
          sockets: [{ id: 'in', plug: 'de-9', signal: 'digital' }],
          horizontalKhz: [15.75, 15.75],
          verticalHz: [60, 60],
        },
        'bus-card': {
          roles: ['display'],
          outputs: [
            {
              id: 'de-9-1',
              plug: 'de-9',
              signal: 'digital',
              modes: [{ id: 'colour-200', horizontalKhz: 15.7, verticalHz: 59.92 }],
            },
          ],
        },
        motherboard: {},
      },
      verdict: 'fits',
    },
    {
      title: 'the right line rate, and more pictures a second than it follows',
      shelf: 'vintage',
      parts: {
        monitor: { horizontalKhz: [31.5, 31.5], verticalHz: [50, 60] },
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
      title: 'a fixed-rate monitor on a card of today, which sends what the system asks for',
      parts: {
        monitor: {
          sockets: [{ id: 'vga-1', plug: 'vga', signal: 'analog' }],
          horizontalKhz: [31.5, 31.5],
          verticalHz: [50, 70],
        },
        'graphics-card': { outputs: [{ id: 'dvi-1', plug: 'dvi-i', megabits: 3960 }] },
        adapter: {
          form: 'adapter',
          ins: [{ id: 'in', kind: 'picture', attrs: { plugs: ['dvi-i'], signals: null, dualMode: null } }],
          outs: [
            { id: 'out', kind: 'picture', attrs: { plug: 'vga', megabits: null, signal: 'analog', dualMode: null } },
          ],
        },
        motherboard: {},
      },
      verdict: 'cannot-tell',
    },
    {
      title: 'a monitor of those years whose rates nobody recorded, on a card of today',
      parts: {
        monitor: { sockets: [{ id: 'vga-1', plug: 'vga', signal: 'analog' }], horizontalKhz: undefined },
        'graphics-card': { outputs: [{ id: 'dvi-1', plug: 'dvi-i', megabits: 3960 }] },
        adapter: {
          form: 'adapter',
          ins: [{ id: 'in', kind: 'picture', attrs: { plugs: ['dvi-i'], signals: null, dualMode: null } }],
          outs: [
            { id: 'out', kind: 'picture', attrs: { plug: 'vga', megabits: null, signal: 'analog', dualMode: null } },
          ],
        },
        motherboard: {},
      },
      verdict: 'cannot-tell',
    },
    {
      title: 'the modes of the card are not recorded',
      shelf: 'vintage',
      parts: {
        monitor: { horizontalKhz: [31.5, 31.5], verticalHz: [50, 70] },
        'bus-card': { roles: ['display'], outputs: [{ id: 'vga-1', plug: 'vga', signal: 'analog' }] },
        motherboard: {},
      },
      verdict: 'cannot-tell',
    },
    {
      title: 'the rates of the monitor are not recorded',
      shelf: 'vintage',
      parts: {
        monitor: { horizontalKhz: undefined },
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
      verdict: 'cannot-tell',
    },
    {
      title: 'a monitor of many rates',
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
