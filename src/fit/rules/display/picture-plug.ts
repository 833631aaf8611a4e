import { type PictureAdapter, pictureAdapter } from '../../../standards/picture-adapters.ts';
import { termName } from '../../../wording/terms.ts';
import type { Fact } from '../../report.ts';
import { refusesRule } from '../../rule.ts';
import { lacks, oneOf } from '../words.ts';

const listed = (value: Fact): string[] => (Array.isArray(value) ? value : [value]).map(String);
const easiestFirst: readonly PictureAdapter[] = ['passive', 'dual-mode', 'active'];

/** ", or add …", for the plug that is easiest to come to; nothing where no adapter is made. */
function adapterBetween(offered: Fact, need: Fact): string {
  const ways = listed(offered).flatMap((socket) =>
    listed(need).flatMap((plug) => {
      const sort = pictureAdapter(socket, plug);
      return sort === undefined ? [] : [{ sort, between: `from ${termName(socket)} to ${termName(plug)}` }];
    }),
  );
  const [way] = ways.toSorted((a, b) => easiestFirst.indexOf(a.sort) - easiestFirst.indexOf(b.sort));
  if (way === undefined) return '';
  switch (way.sort) {
    case 'passive':
      return `, or add a passive adapter ${way.between}`;
    case 'dual-mode':
      return `, or add an adapter ${way.between}: a passive one on a dual-mode socket, an active one on any other`;
    case 'active':
      return `, or add an active adapter made to go ${way.between}; one made the other way round does nothing`;
  }
}

export const picturePlug = refusesRule({
  id: 'display/picture-plug',
  title: 'Monitor and machine have a picture socket of one kind',
  severity: 'blocker',
  basis: 'standard',
  sources: ['hdmi', 'displayport', 'dvi'],
  lesson: 'fit/how-parts-meet',

  refuses: { kind: 'picture', op: 'shares', need: 'plugs', place: 'plug' },

  say: {
    fits: ({ part, on, offered }) => `${part} and ${on} both have ${oneOf(offered)}.`,
    doesNotFit: ({ part, on, need, offered }) => ({
      headline: `Monitor with ${oneOf(need)}, machine with ${oneOf(offered)}`,
      what: `${part} takes ${oneOf(need)}; ${on} has no such socket free, only others such as ${oneOf(offered)}.`,
      why: 'A cable must have the right plug at each end, and a plain cable does not turn one kind of picture into another.',
      remedy: `Choose a monitor with ${oneOf(offered)}, or a card or board with ${oneOf(need)}${adapterBetween(offered, need)}.`,
    }),
    cannotTell: (missing) =>
      lacks(missing, 'monitor')
        ? {
            headline: 'Which sockets has the monitor?',
            what: "The monitor's picture sockets are not recorded, so this fit is not judged.",
            findOut: 'Look at the back of the monitor, under the stand; the kind is printed beside each socket.',
          }
        : {
            headline: 'Which picture sockets has the machine?',
            what: "The machine's picture sockets are not recorded, so this fit is not judged.",
            findOut: 'Look at the back of the card and of the board; the kind is printed beside each socket.',
          },
  },

  examples: [
    {
      title: 'both have HDMI',
      parts: {
        monitor: { sockets: [{ id: 'hdmi-1', plug: 'hdmi', megabits: 14400 }] },
        processor: { socket: 'k4', hasGraphics: true },
        motherboard: { socket: 'k4', pictureSockets: [{ id: 'hdmi-1', plug: 'hdmi', megabits: 14400 }] },
      },
      verdict: 'fits',
    },
    {
      title: 'a monitor with DisplayPort alone, on HDMI',
      parts: {
        monitor: { sockets: [{ id: 'displayport-1', plug: 'displayport' }] },
        processor: { socket: 'k4', hasGraphics: true },
        motherboard: { socket: 'k4', pictureSockets: [{ id: 'hdmi-1', plug: 'hdmi', megabits: 14400 }] },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'a monitor with HDMI alone, on DisplayPort',
      parts: {
        monitor: { sockets: [{ id: 'hdmi-1', plug: 'hdmi' }] },
        processor: { socket: 'k4', hasGraphics: true },
        motherboard: { socket: 'k4', pictureSockets: [{ id: 'dp-1', plug: 'displayport', megabits: 14400 }] },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'a monitor with DVI alone, on HDMI',
      parts: {
        monitor: { sockets: [{ id: 'dvi-1', plug: 'dvi-d' }] },
        processor: { socket: 'k4', hasGraphics: true },
        motherboard: { socket: 'k4', pictureSockets: [{ id: 'hdmi-1', plug: 'hdmi', megabits: 14400 }] },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'a monitor with VGA alone',
      parts: {
        monitor: { sockets: [{ id: 'vga-1', plug: 'vga' }] },
        processor: { socket: 'k4', hasGraphics: true },
        motherboard: { socket: 'k4', pictureSockets: [{ id: 'hdmi-1', plug: 'hdmi', megabits: 14400 }] },
      },
      verdict: 'does-not-fit',
    },
    {
      title: "the monitor's sockets are not recorded",
      parts: {
        monitor: { sockets: undefined },
        processor: { socket: 'k4', hasGraphics: true },
        motherboard: { socket: 'k4', pictureSockets: [{ id: 'hdmi-1', plug: 'hdmi', megabits: 14400 }] },
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
