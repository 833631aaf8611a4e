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
    doesNotFit: ({ part, reason, wanting, mating, waitsFor }) => {
      if (reason === 'taken')
        return {
          headline: `${count(wanting, 'monitor', 'monitors')}, too few picture sockets`,
          what: `The list has ${spelled(wanting, 'monitor', 'monitors')}; the machine has ${spelled(mating, 'live socket', 'live sockets')} that ${part} can be joined to, and nothing is free.`,
          why: 'A picture socket serves one monitor.',
          remedy: 'Take one monitor off the list, or choose a card with one more socket of that kind.',
        };
      if (reason === 'absent' && waitsFor !== null)
        return {
          headline: 'The monitor waits for the graphics card',
          what: `${part} would be joined to ${waitsFor}, which itself has no place.`,
          why: 'A card makes a picture only once it is in its slot.',
          remedy: `Find a slot for ${waitsFor} first.`,
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
