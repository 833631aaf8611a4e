import type { Fact } from '../../report.ts';
import { refusesRule } from '../../rule.ts';
import { lacks, oneOf } from '../words.ts';

/** True for a board with no holes for any cooler. */
const isNone = (offered: Fact): boolean => Array.isArray(offered) && offered.length === 0;

export const coolerMounting = refusesRule({
  id: 'socket/cooler-mounting',
  title: 'The cooler has a mounting for the holes round the socket',
  severity: 'blocker',
  basis: 'maker',
  sources: ['maker-data-sheet'],
  lesson: 'fit/how-parts-meet',

  refuses: { kind: 'cooler-mount', op: 'shares', need: 'mountings', place: 'mountings' },

  say: {
    fits: ({ part, on, offered }) => `${part} comes with a mounting for ${on}: ${oneOf(offered)}.`,
    doesNotFit: ({ part, on, need, offered }) => ({
      headline: isNone(offered) ? 'The board takes no cooler' : `The cooler has no mounting for ${oneOf(offered)}`,
      what: `${part} comes with mountings for ${oneOf(need)}; ${on} takes ${isNone(offered) ? 'none' : oneOf(offered)}.`,
      why: "The cooler's screws do not meet the holes round the socket, so it cannot press on the processor.",
      remedy: isNone(offered)
        ? `Choose a board that takes ${oneOf(need)}, or take the cooler off the list where the processor needs none.`
        : `Choose a cooler with a mounting for ${oneOf(offered)}, or a board that takes ${oneOf(need)}, or ask the cooler's maker for a mounting kit.`,
    }),
    cannotTell: (missing) =>
      lacks(missing, 'cooler')
        ? {
            headline: 'Which mountings come with the cooler?',
            what: "The cooler's mountings are not recorded, so this fit is not judged.",
            findOut:
              "Look for the list of sockets on the cooler's box, or count the brackets in it and read their marks.",
          }
        : {
            headline: 'Which mounting does the board take?',
            what: "The board's cooler mountings are not recorded, so this fit is not judged.",
            findOut:
              "Read it in the board's manual, or measure from hole to hole round the socket and compare with the cooler's sheet.",
          },
  },

  examples: [
    {
      title: 'one of two mountings is the right one',
      parts: { cooler: { mountings: ['square-80', 'wide-94'] }, motherboard: { coolerMountings: ['wide-94'] } },
      verdict: 'fits',
    },
    {
      title: 'the only mounting is another one',
      parts: { cooler: { mountings: ['square-80'] }, motherboard: { coolerMountings: ['wide-94'] } },
      verdict: 'does-not-fit',
    },
    {
      title: 'a board of about 1990, with no holes for a cooler',
      parts: { cooler: { mountings: ['square-80'] }, motherboard: { coolerMountings: [] } },
      verdict: 'does-not-fit',
    },
    {
      title: "the cooler's mountings are not recorded",
      parts: { cooler: { mountings: undefined }, motherboard: { coolerMountings: ['wide-94'] } },
      verdict: 'cannot-tell',
    },
    {
      title: "the board's mountings are not recorded",
      parts: { cooler: { mountings: ['square-80'] }, motherboard: { coolerMountings: undefined } },
      verdict: 'cannot-tell',
    },
    { title: 'a cooler and no board', parts: { cooler: { mountings: ['square-80'] } }, verdict: 'does-not-apply' },
  ],
});
