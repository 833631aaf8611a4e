import { doesNotApply, doesNotFit, jointRule } from '../../rule.ts';

export const twoPlugOrder = jointRule({
  id: 'power/two-plug-order',
  title: 'The plugs of the board lead can go in one way only',
  severity: 'note',
  basis: 'practice',
  sources: ['common-practice', 'older-supplies'],
  lesson: 'power/before-first-power-on',

  at: 'board-power',
  reads: {},
  // Hands put them in; no list says how. The second plug is told with the first.
  judge({ need, place }) {
    if (need.attrs['plug'] !== 'p8') return doesNotApply;
    return doesNotFit({ board: need.unit.part.name, supply: place.unit.part.name });
  },

  say: {
    fits: ({ board }) => `${board} has a board lead that goes in one way only.`,
    doesNotFit: ({ board, supply }) => ({
      headline: 'P8 and P9: black beside black',
      what: `${supply} feeds ${board} by two plugs of one shape, P8 and P9, side by side in one row of pins.`,
      why: 'They go in the wrong way round as easily as the right way, and then 12 V stands where 5 V belongs and the board is lost.',
      remedy:
        'The black wires of the two plugs should lie side by side in the middle of the row. Have somebody else look before power-on.',
    }),
    cannotTell: () => ({
      headline: 'Which plugs feed the board?',
      what: 'The plugs of the board lead are not known, so this is not judged.',
      findOut: 'Look at the end of the lead.',
    }),
  },

  examples: [
    {
      title: 'two plugs',
      shelf: 'vintage',
      parts: { motherboard: {}, 'power-supply': {} },
      verdict: 'does-not-fit',
    },
    {
      title: 'one plug with a key',
      parts: { motherboard: {}, 'power-supply': {} },
      verdict: 'does-not-apply',
    },
  ],
});
