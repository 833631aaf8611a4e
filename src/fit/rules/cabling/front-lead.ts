import { inWords, spelled } from '../../../wording/phrases.ts';
import { termName } from '../../../wording/terms.ts';
import { leftRule } from '../../rule.ts';
import { lacks } from '../words.ts';

/** A reset or turbo button, a loudspeaker and a key lock are no sockets. */
const isSocket = (needName: string): boolean => needName.startsWith('usb') || needName === 'hd-audio';

const whatFor = (needName: string): string => (needName === 'power-button' ? 'the power button' : termName(needName));

export const frontLead = leftRule({
  id: 'cabling/front-lead',
  title: 'Every lead from the front of the case has its pins on the board',
  severity: 'limit',
  basis: 'maker',
  sources: ['maker-data-sheet'],
  lesson: 'fit/how-parts-meet',

  left: 'front-panel',
  plugTest: { need: 'plug', place: 'plug' },

  say: {
    fits: ({ part, needName }) => `The ${termName(needName)} lead of ${part} has its pins on the board.`,
    doesNotFit: ({ part, needName, reason, mating, wanting }) => ({
      headline: `No pins for the ${termName(needName)} lead`,
      what:
        reason === 'none-offered'
          ? `${part} has a lead for ${whatFor(needName)}; there is no board on the list with pins for it.`
          : `${part} has ${spelled(wanting, 'lead', 'leads')} for ${whatFor(needName)}; the board has pins for ${mating === 0 ? 'none' : inWords(mating)}.`,
      why:
        needName === 'power-button'
          ? 'The button on the case starts the machine through these two pins; without them it does nothing.'
          : needName === 'hd-audio'
            ? 'The sockets for headphones and a microphone at the front of the case are there and silent.'
            : isSocket(needName)
              ? 'The socket at the front of the case is there and dead.'
              : 'What the lead comes from at the front of the case is there and does nothing.',
      remedy:
        needName === 'power-button' && reason === 'taken'
          ? 'Take one case off the list: one board has pins for one button.'
          : needName === 'power-button'
            ? 'Choose a board with pins for a power button.'
            : `Choose a board with pins for ${termName(needName)}, or a case without that lead, or do without ${isSocket(needName) ? 'that socket' : 'it'}: the machine works.`,
    }),
    cannotTell: (missing) =>
      lacks(missing, 'motherboard')
        ? {
            headline: 'Which front pins has the board?',
            what: "The board's pins for the front of the case are not recorded, so its leads are not judged.",
            findOut:
              'Read the drawing of the board in its manual: the pins are named F_PANEL, F_USB, F_AUDIO or like that.',
          }
        : {
            headline: 'Which leads has the front of the case?',
            what: 'The leads from the front of the case are not recorded, so it is not judged whether the board has pins for them.',
            findOut: 'Read what is printed on the plugs of the thin leads that hang inside the case.',
          },
  },

  examples: [
    {
      title: 'pins for both leads',
      parts: {
        chassis: { frontLeads: ['power-button', 'usb-3'] },
        motherboard: { frontPins: ['power-button', 'usb-3'] },
      },
      verdict: 'fits',
    },
    {
      title: 'a USB-C lead and no pins for it',
      parts: {
        chassis: { frontLeads: ['power-button', 'usb-c'] },
        motherboard: { frontPins: ['power-button', 'usb-3'] },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'a lock for the keyboard and no pins for it',
      shelf: 'vintage',
      parts: { chassis: { frontLeads: ['reset-button', 'key-lock'] }, motherboard: { frontPins: ['reset-button'] } },
      verdict: 'does-not-fit',
    },
    {
      title: 'two leads of one kind and pins for one',
      parts: {
        chassis: { frontLeads: ['power-button', 'usb-2', 'usb-2'] },
        motherboard: { frontPins: ['power-button', 'usb-2'] },
      },
      verdict: 'does-not-fit',
    },
    {
      title: "the board's pins are not recorded",
      parts: { chassis: { frontLeads: ['power-button'] }, motherboard: { frontPins: undefined } },
      verdict: 'cannot-tell',
    },
    {
      title: "the case's leads are not recorded",
      parts: { chassis: { frontLeads: undefined }, motherboard: { frontPins: ['power-button'] } },
      verdict: 'cannot-tell',
    },
    {
      title: 'no case on the list',
      parts: { motherboard: { frontPins: ['power-button'] } },
      verdict: 'does-not-apply',
    },
  ],
});
