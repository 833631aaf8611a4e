import { capital, count, list, spelled, withArticle } from '../../../wording/phrases.ts';
import { termName } from '../../../wording/terms.ts';
import { portOn } from '../../needs/bus-lines.ts';
import { leftRule } from '../../rule.ts';
import { lacks } from '../words.ts';

export const pointerPlug = leftRule({
  id: 'cabling/pointer-plug',
  title: 'The mouse has a socket that its plug goes into',
  severity: 'limit',
  basis: 'maker',
  sources: ['maker-data-sheet'],
  lesson: 'fit/how-parts-meet',

  left: 'pointer',
  plugTest: { need: 'plug', place: 'plug' },

  say: {
    fits: ({ part }) => `${part} has a socket on the machine.`,
    doesNotFit: ({ part, needName, reason, resource, mating, wanting, holders, waitsFor }) => {
      if (reason === 'absent' && waitsFor !== null)
        return {
          headline: 'The mouse waits for its card',
          what: `${part} would be plugged into ${waitsFor}, which itself has no place.`,
          why: 'A card offers its sockets once it is in its slot.',
          remedy: `Find a slot for ${waitsFor} first.`,
        };
      if (reason === 'spent' && resource?.endsWith(portOn('')))
        return {
          headline: 'The port for the mouse is off',
          what: `${part} has ${withArticle(termName(needName))} plug; the port for it on ${list(holders)} is off, by its jumper, so that no two want one line of the bus.`,
          why: 'A port that is off is not there for the machine, whatever is plugged into it.',
          remedy: 'Take one card off the list so that the port can be on, or choose a mouse with another plug.',
        };
      if (reason === 'taken' || reason === 'spent')
        return {
          headline:
            wanting > mating
              ? `${count(wanting, 'plug', 'plugs')}, ${count(mating, 'socket', 'sockets')} for them`
              : 'The socket for the mouse is taken',
          what: `${part} has ${withArticle(termName(needName))} plug; ${holders.length > 0 ? `${list(holders)} ${holders.length === 1 ? 'has' : 'have'} the socket` : `the machine has ${spelled(mating, 'socket', 'sockets')}`}, and nothing is free.`,
          why: 'A socket takes one plug.',
          remedy: 'Take one of them off the list, or add a card or a hub with one more socket.',
        };
      return {
        headline: 'No socket for the mouse',
        what: `${part} has ${withArticle(termName(needName))} plug; ${reason === 'none-offered' ? 'nothing on the list has a socket for a mouse' : 'the sockets of the machine are of another kind'}.`,
        why: `${capital(withArticle(termName(needName)))} plug has a shape of its own; without a socket for it the mouse does nothing.`,
        remedy: `Choose a mouse with another plug, or a board or card with ${withArticle(termName(needName))} socket, or an adapter made for that mouse.`,
      };
    },
    cannotTell: (missing) =>
      lacks(missing, 'pointer')
        ? {
            headline: 'Which plug has the mouse?',
            what: "The mouse's plug is not recorded, so this fit is not judged.",
            findOut: 'Look at the plug: flat, round with five or six pins, or wide with nine or 25 holes.',
          }
        : {
            headline: 'Which sockets has the machine?',
            what: 'The sockets for a mouse are not recorded, so this fit is not judged.',
            findOut: 'Look at the back of the board and of the cards.',
          },
  },

  examples: [
    {
      title: 'a serial mouse and a serial port on a card',
      shelf: 'vintage',
      parts: { pointer: { plug: 'serial-9' }, 'bus-card': {}, motherboard: {} },
      verdict: 'fits',
    },
    {
      title: 'a wide plug and a nine-pin port',
      shelf: 'vintage',
      parts: { pointer: { plug: 'serial-25' }, 'bus-card': {}, motherboard: {} },
      verdict: 'does-not-fit',
    },
    {
      title: 'the board keeps the lines of the port, so its jumper is off',
      shelf: 'vintage',
      parts: {
        pointer: { plug: 'serial-9' },
        'bus-card': {
          settings: [
            {
              id: 'serial-1',
              says: 'serial port',
              positions: [
                { id: 'first', lines: ['irq-4', 'io-3f8'] },
                { id: 'off', lines: [] },
              ],
            },
          ],
        },
        motherboard: { takenLines: ['irq-4'] },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'the jumper of the port can stay on',
      shelf: 'vintage',
      parts: {
        pointer: { plug: 'serial-9' },
        'bus-card': {
          settings: [
            {
              id: 'serial-1',
              says: 'serial port',
              positions: [
                { id: 'first', lines: ['irq-4', 'io-3f8'] },
                { id: 'off', lines: [] },
              ],
            },
          ],
        },
        motherboard: {},
      },
      verdict: 'fits',
    },
    {
      title: 'the socket for either is taken by the keyboard',
      parts: {
        keyboard: { plug: 'ps2' },
        pointer: { plug: 'ps2' },
        motherboard: { inputSockets: [{ id: 'combined', plug: 'ps2', for: ['keyboard', 'pointer'] }] },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'a socket for either and one for the keyboard',
      parts: {
        keyboard: { plug: 'ps2' },
        pointer: { plug: 'ps2' },
        motherboard: {
          inputSockets: [
            { id: 'combined', plug: 'ps2', for: ['keyboard', 'pointer'] },
            { id: 'keyboard', plug: 'ps2', for: ['keyboard'] },
          ],
        },
      },
      verdict: 'fits',
    },
    {
      title: 'the card with the port has no slot',
      shelf: 'vintage',
      parts: { pointer: { plug: 'serial-9' }, 'bus-card': {}, motherboard: { busSlots: [] } },
      verdict: 'does-not-fit',
    },
    { title: 'a mouse and no board', parts: { pointer: {} }, verdict: 'does-not-fit' },
    {
      title: 'the plug is not recorded',
      shelf: 'vintage',
      parts: { pointer: { plug: undefined }, 'bus-card': {}, motherboard: {} },
      verdict: 'cannot-tell',
    },
    {
      title: "the board's sockets are not recorded",
      parts: { pointer: {}, motherboard: { inputSockets: undefined } },
      verdict: 'cannot-tell',
    },
    { title: 'no mouse on the list', shelf: 'vintage', parts: { motherboard: {} }, verdict: 'does-not-apply' },
  ],
});
