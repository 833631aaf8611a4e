import { cannotTell, doesNotApply, doesNotFit, fits, jointRule } from '../../rule.ts';

const long = 'atx-24';
const short = 'atx-20';

export const boardContacts = jointRule({
  id: 'power/board-contacts',
  title: 'The plug in the large socket of the board fills it',
  severity: 'limit',
  basis: 'practice',
  sources: ['common-practice', 'atx12v-design-guide'],
  lesson: 'fit/how-parts-meet',

  at: 'board-power',
  reads: { 'power-supply': [] },
  judge({ need, place }) {
    const socket = need.attrs['plug'];
    const plug = place.attrs['plug'];
    // The first is the plug itself, the others what else it goes into.
    const own = Array.isArray(plug) ? plug[0] : plug;
    if (socket !== long && socket !== short) return doesNotApply;
    if (own === undefined) return cannotTell(`${place.unit.id}.outs`);

    const facts = {
      board: need.unit.part.name,
      supply: place.unit.part.name,
      isShort: own === short,
      over: own !== socket,
    };
    return socket === long && own === short ? doesNotFit(facts) : fits(facts);
  },

  say: {
    fits: ({ board, supply, over }) =>
      over
        ? `The 24-pin plug of ${supply} goes into the 20-pin socket of ${board}; its last four contacts are split off or stand over the end.`
        : `The plug of ${supply} fills the large socket of ${board}.`,
    doesNotFit: ({ board, supply }) => ({
      headline: 'A 20-pin plug in a 24-pin socket',
      what: `${supply} has a 20-pin board plug; the socket of ${board} has 24 contacts, so four stay empty.`,
      why: 'The plug goes in at one end and the board starts, but all its current comes through fewer contacts, which get warm under a heavy load.',
      remedy:
        'Choose a supply with a 24-pin board plug, or keep to a processor and cards that draw little: the machine works.',
    }),
    cannotTell: () => ({
      headline: 'Which plug reaches the board?',
      what: 'The plug of the adapter between supply and board is not recorded, so it is not judged whether it fills the socket.',
      findOut: 'Count the contacts of the plug: 20 or 24.',
    }),
  },

  examples: [
    {
      title: 'a 24-pin plug in a 24-pin socket',
      parts: {
        motherboard: { powerSockets: ['atx-24'] },
        'power-supply': { leads: [{ id: 'board', plugs: ['atx-24'] }] },
      },
      verdict: 'fits',
    },
    {
      title: 'a 24-pin plug in a 20-pin socket',
      parts: {
        motherboard: { powerSockets: ['atx-20'] },
        'power-supply': { leads: [{ id: 'board', plugs: ['atx-24'] }] },
      },
      verdict: 'fits',
    },
    {
      title: 'a 20-pin plug in a 24-pin socket',
      parts: {
        motherboard: { powerSockets: ['atx-24'] },
        'power-supply': { leads: [{ id: 'board', plugs: ['atx-20'] }] },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'an adapter whose plug is not recorded',
      parts: {
        motherboard: { powerSockets: ['atx-24'] },
        'power-supply': { leads: [{ id: 'board', plugs: ['p8'] }] },
        adapter: {
          form: 'adapter',
          ins: [{ id: 'in', kind: 'board-power', attrs: { plug: 'p8' } }],
          outs: [{ id: 'out', kind: 'board-power', attrs: {} }],
        },
      },
      verdict: 'cannot-tell',
    },
    { title: 'a board and no supply', parts: { motherboard: { powerSockets: ['atx-24'] } }, verdict: 'does-not-apply' },
  ],
});
