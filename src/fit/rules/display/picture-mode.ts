import { pictureMbps } from '../../../standards/picture.ts';
import { showGbitps } from '../../../units/amounts.ts';
import { cannotTell, doesNotApply, doesNotFit, fits, jointRule } from '../../rule.ts';
import { partAs } from '../ends.ts';
import { lacks, oneOf } from '../words.ts';

/** `shows` is null for an adapter, which shows nothing itself: `less` is then what hangs on it. */
type Picture = { monitor: string; plug: string; shows: string | null; wants: number; carries: number; less: number };

/** A picture through these is not counted in bits. */
const analogPlugs: readonly string[] = ['vga', 'de-9'];

export const pictureMode = jointRule({
  id: 'display/picture-mode',
  title: 'The joint carries the full picture of the monitor',
  severity: 'limit',
  basis: 'standard',
  sources: ['vesa-cvt-2', 'hdmi', 'displayport', 'dvi'],
  lesson: 'fit/choosing-for-a-purpose',

  at: 'picture',
  reads: { monitor: ['widthPx', 'heightPx', 'refreshHz', 'bitsPerColour', 'sockets'] },
  judge({ need, place, lost }) {
    const monitor = partAs(need.unit, 'monitor');
    const plug = place.attrs['plug'];
    if (typeof plug !== 'string' || analogPlugs.includes(plug)) return doesNotApply;
    // Lost at this socket or at the monitor's own; the picture is held to the lesser of the two.
    const less = Math.max(0, ...Object.values(lost));
    const name = need.unit.part.name;
    if (monitor === undefined) {
      const facts: Picture = { monitor: name, plug, shows: null, wants: 0, carries: 0, less };
      return less > 0 ? doesNotFit(facts) : doesNotApply;
    }
    const { widthPx, heightPx, refreshHz, bitsPerColour } = monitor;
    if (widthPx === undefined) return cannotTell(`${need.unit.id}.widthPx`);
    if (heightPx === undefined) return cannotTell(`${need.unit.id}.heightPx`);
    if (refreshHz === undefined) return cannotTell(`${need.unit.id}.refreshHz`);
    if (bitsPerColour === undefined) return cannotTell(`${need.unit.id}.bitsPerColour`);

    const full = need.attrs['pictureMbps'];
    if (typeof full !== 'number') return cannotTell(`${need.unit.id}.refreshHz`);
    // Finer colours are a matter of their own: here it is the size and the rate, in eight bits a colour.
    const wants = pictureMbps({ widthPx, heightPx, refreshHz, bitsPerColour: 8 });
    const carries = full - less;
    const sockets = monitor.sockets?.filter((socket) => socket.plug === plug) ?? [];
    const shows = `${widthPx} by ${heightPx} at ${refreshHz} Hz`;
    const facts: Picture = { monitor: name, plug, shows, wants, carries, less: wants - carries };
    if (wants > carries) return doesNotFit(facts);
    if (place.attrs['megabits'] === undefined) return cannotTell(`${place.unit.id}.megabits`);
    if (sockets.every(({ megabits }) => megabits === undefined)) return cannotTell(`${need.unit.id}.megabits`);
    return fits(facts);
  },

  say: {
    fits: ({ monitor, plug, shows, wants }) =>
      `${monitor} shows ${shows}, which is ${showGbitps(wants)}, and ${oneOf(plug)} carries it here.`,
    doesNotFit: ({ monitor, plug, shows, wants, carries, less }) => ({
      headline: `The picture is ${showGbitps(less)} too much`,
      what:
        shows === null
          ? `What hangs on ${monitor} wants ${showGbitps(less)} more than ${oneOf(plug)} carries here.`
          : `${monitor} shows ${shows}, which is ${showGbitps(wants)}; ${oneOf(plug)} carries ${showGbitps(carries)} here, so ${showGbitps(less)} too little.`,
      why: 'Monitor and machine settle on a smaller picture, fewer pictures a second or fewer colours.',
      remedy:
        'Choose a card or board with a faster socket, or a monitor that shows a smaller picture or has a faster socket, or leave it as it is.',
    }),
    cannotTell: (missing) =>
      missing.some((field) => field.endsWith('.megabits'))
        ? {
            headline: 'How much does the picture socket carry?',
            what: 'What one of the two sockets carries is not recorded, so it is not judged whether the full picture passes.',
            findOut:
              "Read the version of the socket on the maker's sheet, such as HDMI 2.0 (14.4 Gbit/s) or DisplayPort 1.4 (25.92 Gbit/s).",
          }
        : lacks(missing, 'monitor')
          ? {
              headline: 'How large is the picture?',
              what: "The monitor's size in pixels, its pictures a second or its colours are not recorded, so it is not judged whether the full picture passes.",
              findOut: "Read them on the monitor's sheet; they are written like this: 2560 × 1440, 60 Hz, 8 bit.",
            }
          : {
              headline: 'Does the full picture pass?',
              what: 'What the socket carries is not recorded, so it is not judged whether the full picture passes.',
              findOut: "Read the version of the socket on the maker's sheet.",
            },
  },

  examples: [
    {
      title: '2560 by 1440 at 144 Hz goes through HDMI 2.0',
      parts: {
        monitor: {
          widthPx: 2560,
          heightPx: 1440,
          refreshHz: 144,
          bitsPerColour: 8,
          sockets: [{ id: 'hdmi-1', plug: 'hdmi', megabits: 14400 }],
        },
        processor: { socket: 'k4', hasGraphics: true },
        motherboard: { socket: 'k4', pictureSockets: [{ id: 'hdmi-1', plug: 'hdmi', megabits: 14400 }] },
      },
      verdict: 'fits',
    },
    {
      title: 'exactly what the socket carries',
      parts: {
        monitor: {
          widthPx: 1920,
          heightPx: 1080,
          refreshHz: 60,
          bitsPerColour: 8,
          sockets: [{ id: 'hdmi-1', plug: 'hdmi', megabits: 14400 }],
        },
        processor: { socket: 'k4', hasGraphics: true },
        motherboard: { socket: 'k4', pictureSockets: [{ id: 'hdmi-1', plug: 'hdmi', megabits: 3200 }] },
      },
      verdict: 'fits',
    },
    {
      title: 'one megabit a second more than the socket carries',
      parts: {
        monitor: {
          widthPx: 1920,
          heightPx: 1080,
          refreshHz: 60,
          bitsPerColour: 8,
          sockets: [{ id: 'hdmi-1', plug: 'hdmi', megabits: 14400 }],
        },
        processor: { socket: 'k4', hasGraphics: true },
        motherboard: { socket: 'k4', pictureSockets: [{ id: 'hdmi-1', plug: 'hdmi', megabits: 3199 }] },
      },
      verdict: 'does-not-fit',
    },
    {
      title: "more than the monitor's own socket carries",
      parts: {
        monitor: {
          widthPx: 3840,
          heightPx: 2160,
          refreshHz: 75,
          bitsPerColour: 8,
          sockets: [{ id: 'hdmi-1', plug: 'hdmi', megabits: 14400 }],
        },
        processor: { socket: 'k4', hasGraphics: true },
        motherboard: { socket: 'k4', pictureSockets: [{ id: 'hdmi-1', plug: 'hdmi', megabits: 42000 }] },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'the socket of the machine carries too little for what hangs on an adapter',
      parts: {
        monitor: {
          widthPx: 3840,
          heightPx: 2160,
          refreshHz: 60,
          bitsPerColour: 8,
          sockets: [{ id: 'dp-1', plug: 'displayport', megabits: 17280 }],
        },
        adapter: {
          form: 'adapter',
          ins: [
            {
              id: 'in',
              kind: 'picture',
              attrs: { plugs: ['hdmi'], signals: null, dualMode: null },
              carries: ['pictureMbps'],
            },
          ],
          outs: [{ id: 'out', kind: 'picture', attrs: { plug: 'displayport', signal: null, megabits: 17280 } }],
        },
        processor: { socket: 'k4', hasGraphics: true },
        motherboard: { socket: 'k4', pictureSockets: [{ id: 'hdmi-1', plug: 'hdmi', megabits: 8160 }] },
      },
      verdict: 'does-not-fit',
    },
    {
      title: "the monitor's pictures a second are not recorded",
      parts: {
        monitor: {
          widthPx: 1920,
          heightPx: 1080,
          refreshHz: undefined,
          bitsPerColour: 8,
          sockets: [{ id: 'hdmi-1', plug: 'hdmi', megabits: 14400 }],
        },
        processor: { socket: 'k4', hasGraphics: true },
        motherboard: { socket: 'k4', pictureSockets: [{ id: 'hdmi-1', plug: 'hdmi', megabits: 14400 }] },
      },
      verdict: 'cannot-tell',
    },
    {
      title: "the socket's rate is not recorded",
      parts: {
        monitor: {
          widthPx: 1920,
          heightPx: 1080,
          refreshHz: 60,
          bitsPerColour: 8,
          sockets: [{ id: 'hdmi-1', plug: 'hdmi', megabits: 14400 }],
        },
        processor: { socket: 'k4', hasGraphics: true },
        motherboard: { socket: 'k4', pictureSockets: [{ id: 'hdmi-1', plug: 'hdmi' }] },
      },
      verdict: 'cannot-tell',
    },
    {
      title: 'no monitor on the list',
      parts: { motherboard: { pictureSockets: [{ id: 'hdmi-1', plug: 'hdmi' }] } },
      verdict: 'does-not-apply',
    },
  ],
});
