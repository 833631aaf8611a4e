import { count, spelled } from '../../../wording/phrases.ts';
import { leftRule } from '../../rule.ts';

export const mainsSocket = leftRule({
  id: 'cabling/mains-socket',
  title: 'There is a mains socket for every lead',
  severity: 'blocker',
  basis: 'maker',
  sources: ['maker-data-sheet', 'common-practice'],
  lesson: 'safety/static-mains-and-sharp-edges',

  left: 'mains',
  plugTest: { need: 'plug', place: 'plug' },

  say: {
    fits: ({ part }) => `${part} has a mains socket.`,
    doesNotFit: ({ part, wanting, places }) => ({
      headline: `${count(wanting, 'mains lead', 'mains leads')}, too few sockets`,
      what: `The list has ${spelled(wanting, 'mains lead', 'mains leads')} and ${spelled(places, 'socket', 'sockets')} that they can go into, so ${part} is left without.`,
      why: 'Each lead needs a socket of its own. One strip plugged into another can be loaded beyond what its lead bears, and the lead heats.',
      remedy:
        'Choose a strip with more sockets, plugged straight into the wall, or take one thing off the list. Never plug a strip into a strip.',
    }),
    cannotTell: (missing) =>
      missing.length === 0
        ? {
            headline: 'Is there a socket for every lead?',
            what: 'Not every way of plugging the leads in was tried, so this is not judged.',
            findOut: 'Count the mains leads on the bench, and the sockets of the strip.',
          }
        : {
            headline: 'How many sockets has the strip?',
            what: "The strip's sockets are not recorded, so this is not judged.",
            findOut: 'Count them, with the strip unplugged.',
          },
  },

  examples: [
    {
      title: 'as many sockets as leads',
      parts: { 'power-strip': { sockets: 2 }, 'power-supply': {}, monitor: {} },
      verdict: 'fits',
    },
    {
      title: 'one lead more than sockets',
      parts: { 'power-strip': { sockets: 1 }, 'power-supply': {}, monitor: {} },
      verdict: 'does-not-fit',
    },
    {
      title: 'the monitor goes into the outlet of the supply',
      shelf: 'vintage',
      parts: { 'power-strip': { sockets: 1 }, 'power-supply': {}, monitor: { fitsSupplyOutlet: true } },
      verdict: 'fits',
    },
    {
      title: 'a monitor whose lead does not go into that outlet',
      shelf: 'vintage',
      parts: { 'power-strip': { sockets: 1 }, 'power-supply': {}, monitor: { fitsSupplyOutlet: false } },
      verdict: 'does-not-fit',
    },
    {
      title: "the strip's sockets are not recorded",
      parts: { 'power-strip': { sockets: undefined }, 'power-supply': {} },
      verdict: 'cannot-tell',
    },
    { title: 'no strip on the list', parts: { 'power-supply': {}, monitor: {} }, verdict: 'does-not-apply' },
  ],
});
