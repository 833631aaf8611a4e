import { showAmps } from '../../../units/amounts.ts';
import { count, spelled } from '../../../wording/phrases.ts';
import { leftRule } from '../../rule.ts';

export const lightHeader = leftRule({
  id: 'cabling/light-header',
  title: 'There is a header for every lighting lead, and it gives enough current',
  severity: 'note',
  basis: 'maker',
  sources: ['maker-data-sheet'],
  lesson: 'fit/how-parts-meet',

  left: 'light-header',

  say: {
    fits: ({ part }) => `The lighting lead of ${part} has a header.`,
    doesNotFit: ({ part, reason, wanting, mating, capacity, wanted }) => {
      if (reason === 'spent' && capacity !== null && wanted !== null)
        return {
          headline: `The light header is ${showAmps(wanted - capacity)} short`,
          what: `With the lights of ${part} on it, the header would have to give ${showAmps(wanted)}; it gives ${showAmps(capacity)}, so ${showAmps(wanted - capacity)} is missing.`,
          why: 'Lights that draw more than their header gives can burn it out, and that cannot be mended.',
          remedy:
            'Leave one lighting lead loose, or choose lights that draw less, or a lighting hub with a power lead of its own.',
        };
      if (reason === 'taken')
        return {
          headline: `${count(wanting, 'lighting lead', 'lighting leads')}, ${count(mating, 'header', 'headers')}`,
          what: `The list has ${spelled(wanting, 'lighting lead', 'lighting leads')} of one sort and ${spelled(mating, 'header', 'headers')} for them, so ${part} stays dark.`,
          why: 'A header takes one plug.',
          remedy:
            'Add a splitter or a lighting hub for the same voltage, or leave one lead loose: the machine works in the dark.',
        };
      return {
        headline: 'The light has no header',
        what: `${part} has a lighting lead; nothing on the list has a header for it.`,
        why: 'Without its lead the light stays dark; everything else works.',
        remedy: 'Choose a board with a lighting header of the same voltage, or leave the lead loose and taped.',
      };
    },
    cannotTell: (missing) =>
      missing.length === 0
        ? {
            headline: 'Is there a header for every light?',
            what: 'Not every way of sharing out the headers was tried, so this is not judged.',
            findOut: 'Give each lighting lead a header of its own voltage, one by one.',
          }
        : {
            headline: 'Which lighting headers has the board?',
            what: "The board's lighting headers are not recorded, so this is not judged.",
            findOut:
              'Read the drawing of the board in its manual: three pins and 5 V, or four pins and 12 V. Do not try a plug to find out.',
          },
  },

  examples: [
    {
      title: 'exactly what the header gives',
      parts: {
        fan: { light: { plug: 'light-5v-3', milliamps: 3000 } },
        motherboard: { lightPins: [{ id: 'light-1', plug: 'light-5v-3', milliamps: 3000 }] },
      },
      verdict: 'fits',
    },
    {
      title: 'one milliamp more than the header gives',
      parts: {
        fan: { light: { plug: 'light-5v-3', milliamps: 3001 } },
        motherboard: { lightPins: [{ id: 'light-1', plug: 'light-5v-3', milliamps: 3000 }] },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'two lights and one header',
      parts: {
        fan: [{ light: { plug: 'light-5v-3', milliamps: 500 } }, { light: { plug: 'light-5v-3', milliamps: 500 } }],
        motherboard: { lightPins: [{ id: 'light-1', plug: 'light-5v-3', milliamps: 3000 }] },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'a board without such headers',
      parts: { fan: { light: { plug: 'light-5v-3', milliamps: 500 } }, motherboard: { lightPins: [] } },
      verdict: 'does-not-fit',
    },
    {
      title: "the board's headers are not recorded",
      parts: { fan: { light: { plug: 'light-5v-3', milliamps: 500 } }, motherboard: { lightPins: undefined } },
      verdict: 'cannot-tell',
    },
    {
      title: 'no lights on the list',
      parts: { fan: {}, motherboard: { lightPins: [] } },
      verdict: 'does-not-apply',
    },
  ],
});
