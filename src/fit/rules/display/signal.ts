import type { Fact } from '../../report.ts';
import { refusesRule } from '../../rule.ts';
import { lacks, oneOf } from '../words.ts';

/** "an analog", "a digital". */
const aSignal = (value: Fact): string => {
  const name = oneOf(value);
  return `${name.startsWith('a') ? 'an' : 'a'} ${name}`;
};

export const displaySignal = refusesRule({
  id: 'display/signal',
  title: 'Monitor and card speak the same sort of signal',
  severity: 'hazard',
  basis: 'maker',
  sources: ['maker-data-sheet', 'scan-rates'],
  lesson: 'fit/how-parts-meet',

  refuses: { kind: 'picture', op: 'shares', need: 'signals', place: 'signal' },

  say: {
    fits: ({ part, on, offered }) => `${part} takes the ${oneOf(offered)} signal that ${on} sends.`,
    doesNotFit: ({ part, on, need, offered }) => ({
      headline: `Monitor for ${oneOf(need)}, card that is ${oneOf(offered)}`,
      what: `${part} takes ${aSignal(need)} signal; ${on} sends ${aSignal(offered)} one.`,
      why: 'A digital signal of those years is 5 V on a wire, an analog one 0.7 V, and the scan rates differ as well. Joined by a lead that makes the plugs meet, monitor or card can be damaged.',
      remedy: `Do not join them, with an adapter or without. Choose a card that sends ${aSignal(need)} signal, or a monitor that takes ${aSignal(offered)} one.`,
    }),
    cannotTell: (missing) =>
      lacks(missing, 'monitor')
        ? {
            headline: 'Which signal does the monitor take?',
            what: "The monitor's sockets are not recorded, so its signal is not judged.",
            findOut:
              'Count the pins of its plug: nine in two rows are most often digital, fifteen in three rows analog.',
          }
        : {
            headline: 'Which signal does the socket send?',
            what: 'The signal of the socket is not recorded, so this is not judged.',
            findOut: 'Read it in the leaflet of the card or the adapter before anything is joined.',
          },
  },

  examples: [
    {
      title: 'an analog monitor on an analog card',
      shelf: 'vintage',
      parts: {
        monitor: {},
        'bus-card': { roles: ['display'], outputs: [{ id: 'vga-1', plug: 'vga', signal: 'analog' }] },
        motherboard: {},
      },
      verdict: 'fits',
    },
    {
      title: 'a digital monitor on an analog card',
      shelf: 'vintage',
      parts: {
        monitor: { sockets: [{ id: 'in', plug: 'de-9', signal: 'digital' }] },
        'bus-card': { roles: ['display'], outputs: [{ id: 'vga-1', plug: 'vga', signal: 'analog' }] },
        motherboard: {},
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'plugs that meet, and signals that do not',
      shelf: 'vintage',
      parts: {
        monitor: { sockets: [{ id: 'in', plug: 'de-9', signal: 'digital' }] },
        'bus-card': { roles: ['display'], outputs: [{ id: 'out', plug: 'de-9', signal: 'analog' }] },
        motherboard: {},
      },
      verdict: 'does-not-fit',
    },
    {
      title: "the monitor's sockets are not recorded",
      shelf: 'vintage',
      parts: {
        monitor: { sockets: undefined },
        'bus-card': { roles: ['display'], outputs: [{ id: 'vga-1', plug: 'vga', signal: 'analog' }] },
        motherboard: {},
      },
      verdict: 'cannot-tell',
    },
    {
      title: 'a plug that settles it by itself',
      parts: {
        monitor: { sockets: [{ id: 'hdmi-1', plug: 'hdmi', megabits: 14400 }] },
        processor: { socket: 'k4', hasGraphics: true },
        motherboard: { socket: 'k4', pictureSockets: [{ id: 'hdmi-1', plug: 'hdmi', megabits: 14400 }] },
      },
      verdict: 'does-not-apply',
    },
  ],
});
