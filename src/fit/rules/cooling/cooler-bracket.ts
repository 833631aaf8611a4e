import { refusesRule } from '../../rule.ts';
import { oneOf } from '../words.ts';

export const coolerBracket = refusesRule({
  id: 'cooling/cooler-bracket',
  title: "The bracket for the board is in the cooler's box, or on the list",
  severity: 'blocker',
  basis: 'maker',
  sources: ['maker-data-sheet'],
  lesson: 'fit/how-parts-meet',

  refuses: { kind: 'cooler-mount', op: 'shares', need: 'boxed', place: 'bare' },

  say: {
    fits: ({ part, offered }) =>
      offered === null
        ? `${part} has the bracket it needs from the list.`
        : `${part} goes onto ${oneOf(offered)} with what is in its box.`,
    doesNotFit: ({ part, on, need, offered }) => ({
      headline: 'The bracket is sold apart',
      what: `${part} goes onto ${on} only with a bracket for ${oneOf(offered)}, which is not in its box${Array.isArray(need) && need.length > 0 ? `; the box has ${oneOf(need)}` : ''}.`,
      why: "Without the bracket the cooler's screws do not meet the holes round the socket, so it cannot press on the processor.",
      remedy: `Add the maker's bracket for ${oneOf(offered)} to the list, or choose a cooler that comes with it.`,
    }),
    cannotTell: () => ({
      headline: 'Which brackets come with the cooler?',
      what: "The brackets in the cooler's box are not recorded, so it is not judged whether the right one is there.",
      findOut: "Read the list on the cooler's box, or count the brackets in it and read their marks.",
    }),
  },

  examples: [
    {
      title: 'in the box',
      parts: {
        cooler: { mountings: ['square-80', 'wide-94'], bracketsApart: [] },
        motherboard: { coolerMountings: ['wide-94'] },
      },
      verdict: 'fits',
    },
    {
      title: 'sold apart, and not on the list',
      parts: {
        cooler: { mountings: ['square-80'], bracketsApart: ['wide-94'] },
        motherboard: { coolerMountings: ['wide-94'] },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'sold apart, and on the list',
      parts: {
        cooler: { mountings: ['square-80'], bracketsApart: ['wide-94'] },
        motherboard: { coolerMountings: ['wide-94'] },
        adapter: {
          form: 'bracket',
          ins: [{ id: 'foot', kind: 'cooler-mount', attrs: { mountings: ['wide-94'], boxed: ['wide-94'] } }],
          outs: [{ id: 'top', kind: 'cooler-mount', attrs: { mountings: ['wide-94'], bare: null } }],
        },
      },
      verdict: 'fits',
    },
    {
      title: 'what is in the box is not recorded',
      parts: { cooler: { mountings: undefined }, motherboard: { coolerMountings: ['wide-94'] } },
      verdict: 'cannot-tell',
    },
    {
      title: 'no mounting for the board at all',
      parts: {
        cooler: { mountings: ['square-80'], bracketsApart: [] },
        motherboard: { coolerMountings: ['wide-94'] },
      },
      verdict: 'does-not-apply',
    },
  ],
});
