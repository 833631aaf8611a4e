import { pictureMbps } from '../../../standards/picture.ts';
import { showGbitps } from '../../../units/amounts.ts';
import { cannotTell, doesNotApply, doesNotFit, fits, jointRule } from '../../rule.ts';
import { partAs } from '../ends.ts';
import { oneOf } from '../words.ts';

export const colourDepth = jointRule({
  id: 'display/colour-depth',
  title: 'The joint carries the picture in all of its colours',
  severity: 'limit',
  basis: 'standard',
  sources: ['vesa-cvt-2', 'hdmi', 'displayport', 'dvi'],
  lesson: 'fit/choosing-for-a-purpose',

  at: 'picture',
  reads: { monitor: ['widthPx', 'heightPx', 'refreshHz', 'bitsPerColour', 'sockets'] },
  judge({ need, place, lost }) {
    const monitor = partAs(need.unit, 'monitor');
    const plug = place.attrs['plug'];
    const full = need.attrs['pictureMbps'];
    // Whatever is not recorded of the mode is told by display/picture-mode.
    if (monitor === undefined || typeof plug !== 'string' || typeof full !== 'number') return doesNotApply;
    const { widthPx, heightPx, refreshHz, bitsPerColour } = monitor;
    if (widthPx === undefined || heightPx === undefined || refreshHz === undefined || bitsPerColour !== 10)
      return doesNotApply;

    const carries = full - Math.max(0, ...Object.values(lost));
    const isDvi = plug.startsWith('dvi');
    const facts = { monitor: monitor.name, plug, wants: full, carries, isDvi };
    // With a picture that does not pass in eight bits either, the colours are the least of it.
    if (pictureMbps({ widthPx, heightPx, refreshHz, bitsPerColour: 8 }) > carries) return doesNotApply;
    if (isDvi || full > carries) return doesNotFit(facts);
    if (place.attrs['megabits'] === undefined) return cannotTell(`${place.unit.id}.megabits`);
    const sockets = monitor.sockets?.filter((socket) => socket.plug === plug) ?? [];
    if (sockets.every(({ megabits }) => megabits === undefined)) return cannotTell(`${need.unit.id}.megabits`);
    return fits(facts);
  },

  say: {
    fits: ({ monitor, plug, wants }) =>
      `${monitor} shows ten bits a colour, which is ${showGbitps(wants)}, and ${oneOf(plug)} carries it here.`,
    doesNotFit: ({ monitor, plug, wants, carries, isDvi }) => ({
      headline: 'Eight bits a colour instead of ten',
      what: isDvi
        ? `${monitor} shows ten bits a colour; ${oneOf(plug)} carries eight, so two are lost.`
        : `${monitor} wants ${showGbitps(wants)} for ten bits a colour; ${oneOf(plug)} carries ${showGbitps(carries)} here, which is enough for eight, so two are lost.`,
      why: 'Monitor and machine settle on the finest picture that passes. Size and rate stay; soft changes of colour may show steps.',
      remedy:
        'Choose a faster socket at both ends, or a lower rate in the settings of the system, or leave it as it is: for letters and games eight bits are plenty.',
    }),
    cannotTell: () => ({
      headline: 'Do all the colours pass?',
      what: 'What one of the two sockets carries is not recorded, so it is not judged whether ten bits a colour pass.',
      findOut:
        "Read the version of the socket on the maker's sheet, such as HDMI 2.0 (14.4 Gbit/s) or DisplayPort 1.4 (25.92 Gbit/s).",
    }),
  },

  examples: [
    {
      title: 'exactly what ten bits a colour want',
      parts: {
        monitor: {
          widthPx: 3840,
          heightPx: 2160,
          refreshHz: 60,
          bitsPerColour: 10,
          sockets: [{ id: 'hdmi-1', plug: 'hdmi', megabits: 42_000 }],
        },
        processor: { hasGraphics: true },
        motherboard: { pictureSockets: [{ id: 'hdmi-1', plug: 'hdmi', megabits: 15_679 }] },
      },
      verdict: 'fits',
    },
    {
      title: 'one megabit a second less',
      parts: {
        monitor: {
          widthPx: 3840,
          heightPx: 2160,
          refreshHz: 60,
          bitsPerColour: 10,
          sockets: [{ id: 'hdmi-1', plug: 'hdmi', megabits: 42_000 }],
        },
        processor: { hasGraphics: true },
        motherboard: { pictureSockets: [{ id: 'hdmi-1', plug: 'hdmi', megabits: 15_678 }] },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'DVI carries eight bits however fast it is',
      parts: {
        monitor: {
          widthPx: 1920,
          heightPx: 1080,
          refreshHz: 60,
          bitsPerColour: 10,
          sockets: [{ id: 'dvi-1', plug: 'dvi-d', megabits: 7920 }],
        },
        processor: { hasGraphics: true },
        motherboard: { pictureSockets: [{ id: 'dvi-1', plug: 'dvi-d', megabits: 7920 }] },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'what the socket carries is not recorded',
      parts: {
        monitor: {
          widthPx: 1920,
          heightPx: 1080,
          refreshHz: 60,
          bitsPerColour: 10,
          sockets: [{ id: 'hdmi-1', plug: 'hdmi', megabits: 14_400 }],
        },
        processor: { hasGraphics: true },
        motherboard: { pictureSockets: [{ id: 'hdmi-1', plug: 'hdmi' }] },
      },
      verdict: 'cannot-tell',
    },
    {
      title: 'a monitor of eight bits a colour',
      parts: { monitor: { bitsPerColour: 8 }, processor: { hasGraphics: true }, motherboard: {} },
      verdict: 'does-not-apply',
    },
  ],
});
