import { showMm, tidy } from '../../../units/amounts.ts';
import { cannotTell, doesNotFit, fits, joinsRule } from '../../rule.ts';
import { lacks } from '../words.ts';

export const busCardRoom = joinsRule({
  id: 'clearance/bus-card',
  title: 'A bus card is no higher and no longer than the case allows',
  severity: 'blocker',
  basis: 'maker',
  sources: ['maker-data-sheet'],
  lesson: 'fit/how-parts-meet',

  joins: { 'bus-card': ['heightMm', 'lengthMm'], chassis: ['cardHeightMm', 'cardLengthMm'] },
  judge({ 'bus-card': card, chassis }) {
    const { heightMm, lengthMm } = card;
    const { cardHeightMm, cardLengthMm } = chassis;
    const side = (isHigh: boolean, size: number, limit: number) => ({ isHigh, size, limit, over: tidy(size - limit) });
    const high = heightMm !== undefined && cardHeightMm !== undefined && side(true, heightMm, cardHeightMm);
    const long = lengthMm !== undefined && cardLengthMm !== undefined && side(false, lengthMm, cardLengthMm);
    if (high && high.over > 0) return doesNotFit(high);
    if (long && long.over > 0) return doesNotFit(long);
    if (high && long) return fits(long);
    return cannotTell(
      ...(heightMm === undefined ? ['bus-card.heightMm'] : []),
      ...(lengthMm === undefined ? ['bus-card.lengthMm'] : []),
      ...(cardHeightMm === undefined ? ['chassis.cardHeightMm'] : []),
      ...(cardLengthMm === undefined ? ['chassis.cardLengthMm'] : []),
    );
  },

  say: {
    fits: ({ size, limit }) =>
      `The card is ${showMm(size)} long; the case allows ${showMm(limit)}, and its height fits too.`,
    doesNotFit: ({ isHigh, size, limit, over }) => ({
      headline: `The bus card is ${showMm(over)} too ${isHigh ? 'high' : 'long'}`,
      what: `The bus card is ${showMm(size)} ${isHigh ? 'high' : 'long'}; the case allows ${showMm(limit)}, so it is ${showMm(over)} too ${isHigh ? 'high' : 'long'}.`,
      why: isHigh
        ? 'The lid of the case meets the edge of the card and cannot be closed.'
        : 'The far end of the card meets the drive bays or the front of the case before its bracket reaches the back.',
      remedy: `Choose a card of ${showMm(limit)} or less, or a case that allows ${showMm(size)} or more.`,
    }),
    cannotTell: (missing) =>
      lacks(missing, 'bus-card')
        ? {
            headline: 'How large is the bus card?',
            what: "The card's height or length is not recorded, so this fit is not judged.",
            findOut: 'Measure it from the edge with the contacts to the far edge, and from the bracket to the far end.',
          }
        : {
            headline: 'How large a card does the case allow?',
            what: 'The room that the case has for cards is not recorded, so this fit is not judged.',
            findOut: 'Measure from the back of the case to the first thing in the way, and from the board to the lid.',
          },
  },

  examples: [
    {
      title: 'exactly as long as the case allows',
      shelf: 'vintage',
      parts: { 'bus-card': { lengthMm: 340, heightMm: 106 }, chassis: { cardLengthMm: 340, cardHeightMm: 122 } },
      verdict: 'fits',
    },
    {
      title: 'one millimetre too long',
      shelf: 'vintage',
      parts: { 'bus-card': { lengthMm: 341, heightMm: 106 }, chassis: { cardLengthMm: 340, cardHeightMm: 122 } },
      verdict: 'does-not-fit',
    },
    {
      title: 'one millimetre too high',
      shelf: 'vintage',
      parts: { 'bus-card': { lengthMm: 175, heightMm: 123 }, chassis: { cardLengthMm: 340, cardHeightMm: 122 } },
      verdict: 'does-not-fit',
    },
    {
      title: "the card's length is not recorded",
      shelf: 'vintage',
      parts: { 'bus-card': { lengthMm: undefined, heightMm: 106 }, chassis: {} },
      verdict: 'cannot-tell',
    },
    {
      title: 'the room in the case is not recorded',
      shelf: 'vintage',
      parts: { 'bus-card': {}, chassis: { cardLengthMm: undefined } },
      verdict: 'cannot-tell',
    },
    { title: 'a card and no case', shelf: 'vintage', parts: { 'bus-card': {} }, verdict: 'does-not-apply' },
  ],
});
