import { capital, count, list, spelled, withArticle } from '../../../wording/phrases.ts';
import { termName } from '../../../wording/terms.ts';
import { leftRule } from '../../rule.ts';
import { lacks } from '../words.ts';

export const keyboardPlug = leftRule({
  id: 'cabling/keyboard-plug',
  title: 'The keyboard has a socket that its plug goes into',
  severity: 'blocker',
  basis: 'maker',
  sources: ['maker-data-sheet'],
  lesson: 'fit/how-parts-meet',

  left: 'keyboard',
  plugTest: { need: 'plug', place: 'plug' },

  say: {
    fits: ({ part }) => `${part} has a socket on the machine.`,
    doesNotFit: ({ part, needName, reason, mating, wanting, holders, waitsFor }) => {
      if (reason === 'absent' && waitsFor !== null)
        return {
          headline: 'The keyboard waits for its card',
          what: `${part} would be plugged into ${waitsFor}, which itself has no place.`,
          why: 'A card offers its sockets once it is in its slot.',
          remedy: `Find a slot for ${waitsFor} first.`,
        };
      if (reason === 'taken' || reason === 'spent')
        return {
          headline:
            wanting > mating
              ? `${count(wanting, 'plug', 'plugs')}, ${count(mating, 'socket', 'sockets')} for them`
              : 'The socket for the keyboard is taken',
          what: `${part} has ${withArticle(termName(needName))} plug; ${holders.length > 0 ? `${list(holders)} ${holders.length === 1 ? 'has' : 'have'} the socket` : `the machine has ${spelled(mating, 'socket', 'sockets')}`}, and nothing is free.`,
          why: 'A socket takes one plug.',
          remedy: 'Take one of them off the list, or add a card or a hub with one more socket.',
        };
      return {
        headline: 'No socket for the keyboard',
        what: `${part} has ${withArticle(termName(needName))} plug; ${reason === 'none-offered' ? 'nothing on the list has a socket for a keyboard' : 'the sockets of the machine are of another kind'}.`,
        why: `${capital(withArticle(termName(needName)))} plug has a shape of its own; without a socket for it the keyboard does nothing.`,
        remedy: `Choose a keyboard with another plug, or a board or card with ${withArticle(termName(needName))} socket, or an adapter made for that keyboard.`,
      };
    },
    cannotTell: (missing) =>
      lacks(missing, 'keyboard')
        ? {
            headline: 'Which plug has the keyboard?',
            what: "The keyboard's plug is not recorded, so this fit is not judged.",
            findOut: 'Look at the plug: flat, round with five or six pins, or wide with nine or 25 holes.',
          }
        : {
            headline: 'Which sockets has the machine?',
            what: 'The sockets for a keyboard are not recorded, so this fit is not judged.',
            findOut: 'Look at the back of the board and of the cards.',
          },
  },

  examples: [
    {
      title: 'a round plug of five pins and its socket',
      shelf: 'vintage',
      parts: { keyboard: { plug: 'din-5' }, motherboard: {} },
      verdict: 'fits',
    },
    {
      title: 'a flat plug and a round socket',
      shelf: 'vintage',
      parts: { keyboard: { plug: 'usb-a' }, motherboard: {} },
      verdict: 'does-not-fit',
    },
    {
      title: 'the one socket for either goes to the keyboard, not the mouse',
      parts: {
        keyboard: { plug: 'ps2' },
        pointer: { plug: 'ps2' },
        motherboard: { inputSockets: [{ id: 'combined', plug: 'ps2', for: ['keyboard', 'pointer'] }] },
      },
      verdict: 'fits',
    },
    {
      title: 'two keyboards and one socket',
      shelf: 'vintage',
      parts: { keyboard: [{}, {}], motherboard: {} },
      verdict: 'does-not-fit',
    },
    { title: 'a keyboard and no board', parts: { keyboard: {} }, verdict: 'does-not-fit' },
    {
      title: 'the plug is not recorded',
      shelf: 'vintage',
      parts: { keyboard: { plug: undefined }, motherboard: {} },
      verdict: 'cannot-tell',
    },
    {
      title: "the board's sockets are not recorded",
      parts: { keyboard: {}, motherboard: { inputSockets: undefined } },
      verdict: 'cannot-tell',
    },
    { title: 'no keyboard on the list', shelf: 'vintage', parts: { motherboard: {} }, verdict: 'does-not-apply' },
  ],
});
