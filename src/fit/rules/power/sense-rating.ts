import { senseCodingOf } from '../../../standards/sense-pins.ts';
import { showWatts } from '../../../units/amounts.ts';
import { refusesRule } from '../../rule.ts';
import { lacks } from '../words.ts';

const pins: Readonly<Record<string, string>> = { ground: 'to ground', open: 'open', together: 'to each other' };

/** "sense pin 0 to ground, sense pin 1 open", for a figure that the coding has. */
const coding = (watts: number): string => {
  const row = senseCodingOf(watts);
  return row ? ` (sense pin 0 ${pins[row.sense0]}, sense pin 1 ${pins[row.sense1]})` : '';
};

export const senseRating = refusesRule({
  id: 'power/sense-rating',
  title: 'The 16-pin lead announces as much power as the card draws through it',
  severity: 'blocker',
  basis: 'standard',
  sources: ['pci-express-cem-5', 'atx-3-design-guide'],
  lesson: 'fit/how-parts-meet',

  refuses: { kind: 'card-power', op: 'atMost', need: 'drawsW', place: 'senseW' },

  say: {
    fits: ({ part, on, need, offered }) =>
      need === null || offered === null
        ? `${part} has a socket of a kind whose plug is rated by its shape, so nothing is announced.`
        : `${part} draws ${showWatts(Number(need))}; the 16-pin lead of ${on} announces ${showWatts(Number(offered))}${coding(Number(offered))}.`,
    doesNotFit: ({ part, on, need, offered, difference }) => ({
      headline: `The 16-pin lead announces ${showWatts(Number(difference))} too little`,
      what: `${part} draws ${showWatts(Number(need))} through its 16-pin socket; the lead of ${on} announces ${showWatts(Number(offered))}${coding(Number(offered))}, so ${showWatts(Number(difference))} less.`,
      why: 'The card reads two thin pins of the plug before it takes power. Told too little, it must not start, or holds its power down.',
      remedy: `Choose a supply with a 16-pin lead that announces ${showWatts(Number(need))} or more, or a card that draws ${showWatts(Number(offered))} or less.`,
    }),
    cannotTell: (missing) =>
      lacks(missing, 'graphics-card') || lacks(missing, 'expansion-card')
        ? {
            headline: 'How much does the card draw?',
            what: "The card's power under steady load is not recorded, so it is not judged whether its 16-pin lead announces enough.",
            findOut: "Read the watts of the card on its maker's sheet.",
          }
        : {
            headline: 'What does the 16-pin lead announce?',
            what: 'What the sense pins of the 16-pin lead announce is not recorded, so it is not judged whether the card may draw its power through it.',
            findOut:
              'Read the figure on the plug or in the table of leads on the box: 150, 300, 450 or 600 W. Leave the supply itself closed.',
          },
  },

  examples: [
    {
      title: 'exactly what the lead announces',
      parts: {
        'graphics-card': { powerSockets: ['12v-2x6'], sustainedW: 300 },
        'power-supply': { leads: [{ id: 'card-1', plugs: ['12v-2x6'], carriesW: 600, senseW: 300 }] },
      },
      verdict: 'fits',
    },
    {
      title: 'one watt more than the lead announces',
      parts: {
        'graphics-card': { powerSockets: ['12v-2x6'], sustainedW: 301 },
        'power-supply': { leads: [{ id: 'card-1', plugs: ['12v-2x6'], carriesW: 600, senseW: 300 }] },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'two leads, of which one announces enough',
      parts: {
        'graphics-card': { powerSockets: ['12v-2x6'], sustainedW: 400 },
        'power-supply': {
          leads: [
            { id: 'card-1', plugs: ['12v-2x6'], carriesW: 600, senseW: 300 },
            { id: 'card-2', plugs: ['12v-2x6'], carriesW: 600, senseW: 450 },
          ],
        },
      },
      verdict: 'fits',
    },
    {
      title: 'what the lead announces is not recorded',
      parts: {
        'graphics-card': { powerSockets: ['12v-2x6'], sustainedW: 300 },
        'power-supply': { leads: [{ id: 'card-1', plugs: ['12v-2x6'], carriesW: 600 }] },
      },
      verdict: 'cannot-tell',
    },
    {
      title: "the card's power is not recorded",
      parts: {
        'graphics-card': { powerSockets: ['12v-2x6'], sustainedW: undefined },
        'power-supply': { leads: [{ id: 'card-1', plugs: ['12v-2x6'], carriesW: 600, senseW: 300 }] },
      },
      verdict: 'cannot-tell',
    },
    {
      title: 'a card that needs no lead',
      parts: {
        'graphics-card': { powerSockets: [] },
        'power-supply': { leads: [{ id: 'card-1', plugs: ['12v-2x6'], carriesW: 600, senseW: 300 }] },
      },
      verdict: 'does-not-apply',
    },
  ],
});
