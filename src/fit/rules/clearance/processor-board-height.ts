import { showMm, tidy } from '../../../units/amounts.ts';
import { cannotTell, doesNotFit, fits, joinsRule } from '../../rule.ts';
import { lacks } from '../words.ts';

export const processorBoardHeight = joinsRule({
  id: 'clearance/processor-board-height',
  title: 'The processor board stands no taller than the room over the motherboard',
  severity: 'blocker',
  basis: 'maker',
  sources: ['maker-data-sheet'],
  lesson: 'fit/how-parts-meet',

  joins: { 'processor-board': ['heightMm'], chassis: ['coolerHeightMm'] },
  judge({ 'processor-board': plugIn, chassis }) {
    if (plugIn.heightMm === undefined) return cannotTell('processor-board.heightMm');
    if (chassis.coolerHeightMm === undefined) return cannotTell('chassis.coolerHeightMm');

    const facts = {
      height: plugIn.heightMm,
      room: chassis.coolerHeightMm,
      over: tidy(plugIn.heightMm - chassis.coolerHeightMm),
    };
    return facts.over <= 0 ? fits(facts) : doesNotFit(facts);
  },

  say: {
    fits: ({ height, room }) =>
      `The processor board stands ${showMm(height)} over the motherboard; the case has ${showMm(room)} there.`,
    doesNotFit: ({ height, room, over }) => ({
      headline: `The processor board is ${showMm(over)} too tall`,
      what: `The processor board stands ${showMm(height)} over the motherboard; the case has ${showMm(room)} there, so it is ${showMm(over)} too tall.`,
      why: 'The bays for drives, or the lid, come down on it before the case is closed.',
      remedy: `Choose a processor board of ${showMm(room)} or less, or a case with ${showMm(height)} or more over the board.`,
    }),
    cannotTell: (missing) =>
      lacks(missing, 'processor-board')
        ? {
            headline: 'How tall is the processor board?',
            what: 'How far the processor board stands over the motherboard is not recorded, so this fit is not judged.',
            findOut: 'Measure it from the shoulders of its pins to its highest point.',
          }
        : {
            headline: 'How much room is over the board?',
            what: "The case's room over the motherboard is not recorded, so this fit is not judged.",
            findOut:
              "With the mains lead out, measure from the processor's socket up to the drive bays or the lid. Or read it in the case's leaflet.",
          },
  },

  examples: [
    {
      title: 'exactly as tall as the room',
      shelf: 'vintage',
      parts: { 'processor-board': { heightMm: 30 }, chassis: { coolerHeightMm: 30 } },
      verdict: 'fits',
    },
    {
      title: 'one millimetre over',
      shelf: 'vintage',
      parts: { 'processor-board': { heightMm: 31 }, chassis: { coolerHeightMm: 30 } },
      verdict: 'does-not-fit',
    },
    {
      title: 'its height is not recorded',
      shelf: 'vintage',
      parts: { 'processor-board': { heightMm: undefined }, chassis: { coolerHeightMm: 30 } },
      verdict: 'cannot-tell',
    },
    {
      title: 'the room in the case is not recorded',
      shelf: 'vintage',
      parts: { 'processor-board': { heightMm: 31 }, chassis: { coolerHeightMm: undefined } },
      verdict: 'cannot-tell',
    },
    { title: 'no case on the list', shelf: 'vintage', parts: { 'processor-board': {} }, verdict: 'does-not-apply' },
  ],
});
