import { count, spelled } from '../../../wording/phrases.ts';
import { leftRule } from '../../rule.ts';

export const pictureSocket = leftRule({
  id: 'display/picture-socket',
  title: 'There is a live picture socket for every monitor',
  severity: 'blocker',
  basis: 'maker',
  sources: ['maker-data-sheet'],
  lesson: 'fit/how-parts-meet',

  left: 'picture',

  say: {
    fits: ({ part }) => `${part} has a picture socket.`,
    doesNotFit: ({ part, reason, wanting, mating, waitsFor, capacity }) => {
      if (reason === 'spent')
        return {
          headline: `${count(wanting, 'monitor', 'monitors')}, and heads for ${capacity ?? 0}`,
          what: `${part} has a socket that is free and no head: the card drives ${spelled(capacity ?? 0, 'monitor', 'monitors')} at once.`,
          why: 'Each monitor takes a head, the part that sends a picture out line by line; a card may have more sockets than heads.',
          remedy: 'Take one monitor off the list, or choose a card that drives one monitor more at once.',
        };
      if (reason === 'taken')
        return {
          headline: `${count(wanting, 'monitor', 'monitors')}, too few picture sockets`,
          what: `The list has ${spelled(wanting, 'monitor', 'monitors')}; the machine has ${spelled(mating, 'live socket', 'live sockets')} that ${part} can be joined to, and nothing is free.`,
          why: 'A picture socket serves one monitor.',
          remedy: 'Take one monitor off the list, or choose a card with one more socket of that kind.',
        };
      if (reason === 'absent' && waitsFor !== null)
        return {
          headline: 'The monitor waits for another part',
          what: `${part} could be joined to ${waitsFor}, which is itself joined to nothing that serves it.`,
          why: 'A card makes a picture once it is in its slot. An adapter passes one on where the socket behind it sends the picture that the monitor takes.',
          remedy: `Find a place for ${waitsFor}, or choose a card with a socket for the monitor, or another monitor.`,
        };
      return {
        headline: 'No live socket for the monitor',
        what: `${part} needs a picture socket; nothing on the list has a live one.`,
        why: 'The sockets on a board work only with a processor that makes a picture; those on a card always do.',
        remedy: 'Choose a graphics card, or a processor that makes a picture and a board with picture sockets.',
      };
    },
    cannotTell: (missing) =>
      missing.length === 0
        ? {
            headline: 'Is there a socket for every monitor?',
            what: 'Not every way of joining the monitors was tried, so this is not judged.',
            findOut: 'Give each monitor a socket, one by one, the finest picture first.',
          }
        : {
            headline: 'Which picture sockets are live?',
            what: 'The picture sockets, or whether the processor makes a picture, are not recorded, so this is not judged.',
            findOut:
              "Look at the back of the card and of the board, and read on the processor maker's sheet whether the model has graphics.",
          },
  },

  examples: [
    {
      title: 'one monitor on a board with a processor that makes a picture',
      parts: {
        monitor: { sockets: [{ id: 'hdmi-1', plug: 'hdmi', megabits: 14400 }] },
        processor: { socket: 'k4', hasGraphics: true },
        motherboard: { socket: 'k4', pictureSockets: [{ id: 'hdmi-1', plug: 'hdmi', megabits: 14400 }] },
      },
      verdict: 'fits',
    },
    {
      title: 'two monitors and one socket',
      parts: {
        monitor: [
          { sockets: [{ id: 'hdmi-1', plug: 'hdmi', megabits: 14400 }] },
          { sockets: [{ id: 'hdmi-1', plug: 'hdmi', megabits: 14400 }] },
        ],
        processor: { socket: 'k4', hasGraphics: true },
        motherboard: { socket: 'k4', pictureSockets: [{ id: 'hdmi-1', plug: 'hdmi', megabits: 14400 }] },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'two monitors and two sockets, on a card that drives one',
      parts: {
        monitor: [{}, {}],
        'graphics-card': { heads: 1 },
        motherboard: { pictureSockets: [] },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'an analog monitor on a passive adapter, on a socket without an analog picture',
      parts: {
        monitor: { sockets: [{ id: 'vga-1', plug: 'vga', signal: 'analog' }] },
        adapter: {
          form: 'adapter',
          ins: [
            {
              id: 'in',
              kind: 'picture',
              attrs: { plugs: ['dvi-d'], signals: null, dualMode: null },
              carries: ['analog'],
            },
          ],
          outs: [{ id: 'out', kind: 'picture', attrs: { plug: 'vga', signal: 'analog' } }],
        },
        'graphics-card': { outputs: [{ id: 'dvi-1', plug: 'dvi-d', megabits: 3960 }] },
        motherboard: { pictureSockets: [] },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'the processor makes no picture, so the socket of the board is dead',
      parts: {
        monitor: { sockets: [{ id: 'hdmi-1', plug: 'hdmi', megabits: 14400 }] },
        processor: { socket: 'k4', hasGraphics: false },
        motherboard: { socket: 'k4', pictureSockets: [{ id: 'hdmi-1', plug: 'hdmi', megabits: 14400 }] },
      },
      verdict: 'does-not-fit',
    },
    {
      title: "the board's sockets are not recorded",
      parts: {
        monitor: { sockets: [{ id: 'hdmi-1', plug: 'hdmi', megabits: 14400 }] },
        processor: { socket: 'k4', hasGraphics: true },
        motherboard: { socket: 'k4', pictureSockets: undefined },
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
