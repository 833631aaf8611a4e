import { showAmps } from '../../../units/amounts.ts';
import { count, inWords, spelled } from '../../../wording/phrases.ts';
import { leftRule } from '../../rule.ts';
import { lacks } from '../words.ts';

/** "A fan fitted in Lodden 20", "The fan of Skarn Low", or the name of a fan that is a part by itself. */
const fanOf = (part: string, needName: string): string =>
  needName.startsWith('fitted')
    ? `A fan fitted in ${part}`
    : /^fan(-\d+)?$/.test(needName)
      ? `The fan of ${part}`
      : part;

const stillFan = (needName: string): string =>
  needName === 'fan'
    ? "A fan without a header does not turn, and most boards stop at start-up when the cooler's does not."
    : 'A fan without a header does not turn.';

export const fanHeader = leftRule({
  id: 'cabling/fan-header',
  title: 'There is a header for every fan, and it gives enough current',
  severity: 'limit',
  basis: 'maker',
  sources: ['maker-data-sheet'],
  lesson: 'fit/how-parts-meet',

  left: 'fan-header',

  say: {
    fits: ({ part, needName }) => `${fanOf(part, needName)} has a header.`,
    doesNotFit: ({ part, needName, reason, places, wanting, capacity, wanted }) => {
      if (reason === 'spent' && capacity !== null && wanted !== null)
        return {
          headline: `The fan header is ${showAmps(wanted - capacity)} short`,
          what: `With ${fanOf(part, needName).replace(/^(A|The) /, (word) => word.toLowerCase())} on it, the header would have to give ${showAmps(wanted)}; it gives ${showAmps(capacity)}, so ${showAmps(wanted - capacity)} is missing.`,
          why: 'A fan that draws more than its header gives can burn the header out, and that cannot be mended. A splitter shares what a header gives; it adds nothing.',
          remedy: `Choose fans that draw ${showAmps(capacity)} or less on each header, or a fan hub with a power lead of its own, or a board whose headers give ${showAmps(wanted)}.`,
        };
      if (reason === 'taken' && places >= wanting)
        return {
          headline: 'The fan has no header left',
          what: `${fanOf(part, needName)} is left without a header: those on the board are taken, and an outlet of a splitter or a hub is of no use until its own plug has a place that gives enough current.`,
          why: stillFan(needName),
          remedy:
            'Take one fan off the list, or choose fans that draw less, or a fan hub with a power lead of its own, or a board with one more header.',
        };
      if (reason === 'taken')
        return {
          headline: `${count(wanting, 'fan', 'fans')}, ${count(places, 'fan header', 'fan headers')}`,
          what: `The list has ${spelled(wanting, 'fan', 'fans')} and ${spelled(places, 'header or outlet', 'headers and outlets')} for them, so there ${wanting - places === 1 ? 'is' : 'are'} ${inWords(wanting - places)} too few. ${fanOf(part, needName)} is left without.`,
          why: stillFan(needName),
          remedy: 'Take one fan off the list, or add a splitter or a fan hub, or choose a board with one more header.',
        };
      return {
        headline: 'The fan has no header',
        what: `${fanOf(part, needName)} needs a header on a board; nothing on the list offers one.`,
        why: stillFan(needName),
        remedy: 'Choose a board with fan headers.',
      };
    },
    cannotTell: (missing) =>
      lacks(missing, 'motherboard')
        ? {
            headline: 'Which fan headers has the board?',
            what: "The board's fan headers are not recorded, so this is not judged.",
            findOut:
              'Look for small rows of 3 or 4 pins marked FAN on the board, and read in its manual what each one gives.',
          }
        : missing.length > 0
          ? {
              headline: 'How much does the fan draw?',
              what: 'The current of a fan, or the fans that come with the case, are not recorded, so the load on the headers is not judged.',
              findOut: 'Read the label in the middle of the fan: the number before A. Count the fans in the case.',
            }
          : {
              headline: 'Is there a header for every fan?',
              what: 'Not every way of sharing out the headers was tried, so this is not judged.',
              findOut: 'Give each fan a header, one by one, the strongest fan first.',
            },
  },

  examples: [
    {
      title: 'exactly what the header gives',
      parts: {
        fan: { sizeMm: 120, pins: 4, milliamps: 1000 },
        motherboard: { fanHeaders: [{ id: 'case-1', pins: 4, milliamps: 1000 }] },
      },
      verdict: 'fits',
    },
    {
      title: 'one milliamp more than the header gives',
      parts: {
        fan: { sizeMm: 120, pins: 4, milliamps: 1001 },
        motherboard: { fanHeaders: [{ id: 'case-1', pins: 4, milliamps: 1000 }] },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'a fan with 3 pins goes on a header with 4',
      parts: {
        fan: { sizeMm: 120, pins: 3, milliamps: 180 },
        motherboard: { fanHeaders: [{ id: 'case-1', pins: 4, milliamps: 1000 }] },
      },
      verdict: 'fits',
    },
    {
      title: 'two fans and one header',
      parts: {
        fan: [
          { sizeMm: 120, pins: 4, milliamps: 180 },
          { sizeMm: 120, pins: 4, milliamps: 180 },
        ],
        motherboard: { fanHeaders: [{ id: 'case-1', pins: 4, milliamps: 1000 }] },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'two fans on a splitter draw exactly what one header gives',
      parts: {
        fan: [
          { sizeMm: 120, pins: 4, milliamps: 500 },
          { sizeMm: 120, pins: 4, milliamps: 500 },
        ],
        motherboard: { fanHeaders: [{ id: 'case-1', pins: 4, milliamps: 1000 }] },
        adapter: {},
      },
      verdict: 'fits',
    },
    {
      title: 'two fans on a splitter draw a milliamp more than one header gives',
      parts: {
        fan: [
          { sizeMm: 120, pins: 4, milliamps: 500 },
          { sizeMm: 120, pins: 4, milliamps: 501 },
        ],
        motherboard: { fanHeaders: [{ id: 'case-1', pins: 4, milliamps: 1000 }] },
        adapter: {},
      },
      verdict: 'does-not-fit',
    },
    {
      title: "the fan's current is not recorded",
      parts: {
        fan: { sizeMm: 120, pins: 4, milliamps: undefined },
        motherboard: { fanHeaders: [{ id: 'case-1', pins: 4, milliamps: 1000 }] },
      },
      verdict: 'cannot-tell',
    },
    {
      title: "the board's headers are not recorded",
      parts: { fan: { sizeMm: 120, pins: 4, milliamps: 180 }, motherboard: { fanHeaders: undefined } },
      verdict: 'cannot-tell',
    },
    {
      title: 'no fan on the list',
      parts: { motherboard: { fanHeaders: [{ id: 'case-1', pins: 4, milliamps: 1000 }] } },
      verdict: 'does-not-apply',
    },
  ],
});
