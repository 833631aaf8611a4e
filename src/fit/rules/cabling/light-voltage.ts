import { termName } from '../../../wording/terms.ts';
import { refusesRule } from '../../rule.ts';

const five = 'light-5v-3';

export const lightVoltage = refusesRule({
  id: 'cabling/light-voltage',
  title: 'A lighting lead meets a header of its own voltage',
  severity: 'hazard',
  basis: 'maker',
  sources: ['maker-data-sheet', 'common-practice'],
  lesson: 'power/before-first-power-on',

  refuses: { kind: 'light-header', op: 'shares', need: 'plug', place: 'plug' },

  say: {
    fits: ({ part, on, need }) => `${part} has a ${termName(String(need))} lead, and ${on} a header for it.`,
    doesNotFit: ({ part, on, need }) =>
      need === five
        ? {
            headline: 'A 5 V light, a 12 V header',
            what: `${part} has a lighting lead for 5 V with three pins; the header left on ${on} gives 12 V on four.`,
            why: 'The plug can be pushed on, and then 12 V burn out the lights at once, and sometimes the header with them.',
            remedy: `Never join the two. Choose a board with a 5 V header, or a part without that lead, or leave the lead loose and taped: the machine works in the dark.`,
          }
        : {
            headline: 'A 12 V light, a 5 V header',
            what: `${part} has a lighting lead for 12 V with four pins; the header left on ${on} gives 5 V on three.`,
            why: 'Forced on, the plug joins pins that were never meant to meet: the lights stay dark, and the header that feeds them may burn out.',
            remedy: `Never join the two. Choose a board with a 12 V header, or a part without that lead, or leave the lead loose and taped: the machine works in the dark.`,
          },
    cannotTell: () => ({
      headline: 'Which voltage has the light?',
      what: 'The voltage at one end of a lighting adapter is not recorded, so this is not judged.',
      findOut: 'Count the holes of the plug and read its mark: three and 5V, or four and 12V. Do not try it.',
    }),
  },

  examples: [
    {
      title: 'a 5 V lead and a 5 V header',
      parts: {
        fan: { light: { plug: 'light-5v-3', milliamps: 500 } },
        motherboard: { lightPins: [{ id: 'light-1', plug: 'light-5v-3', milliamps: 3000 }] },
      },
      verdict: 'fits',
    },
    {
      title: 'a 5 V lead and a 12 V header',
      parts: {
        fan: { light: { plug: 'light-5v-3', milliamps: 500 } },
        motherboard: { lightPins: [{ id: 'light-1', plug: 'light-12v-4', milliamps: 3000 }] },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'a 12 V lead and a 5 V header',
      parts: {
        fan: { light: { plug: 'light-12v-4', milliamps: 500 } },
        motherboard: { lightPins: [{ id: 'light-1', plug: 'light-5v-3', milliamps: 3000 }] },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'one header of each, and each lead has its own',
      parts: {
        fan: [{ light: { plug: 'light-12v-4', milliamps: 500 } }, { light: { plug: 'light-5v-3', milliamps: 500 } }],
        motherboard: {
          lightPins: [
            { id: 'light-1', plug: 'light-5v-3', milliamps: 3000 },
            { id: 'light-2', plug: 'light-12v-4', milliamps: 3000 },
          ],
        },
      },
      verdict: 'fits',
    },
    {
      title: 'an adapter whose voltage is not recorded',
      parts: {
        fan: { light: { plug: 'light-5v-3', milliamps: 500 } },
        adapter: { form: 'hub', ins: [], outs: [{ id: 'out', kind: 'light-header', attrs: {} }] },
      },
      verdict: 'cannot-tell',
    },
    {
      title: 'no lights on the list',
      parts: { motherboard: { lightPins: [{ id: 'light-1', plug: 'light-5v-3', milliamps: 3000 }] } },
      verdict: 'does-not-apply',
    },
  ],
});
