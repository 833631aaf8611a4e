import { formFactors, type Hole, standoffsUnder } from '../../../standards/boards.ts';
import { count, list } from '../../../wording/phrases.ts';
import { cannotTell, doesNotApply, doesNotFit, fits, jointRule } from '../../rule.ts';
import { partAs } from '../ends.ts';

/** "take out those at B and R", "put one at A". */
const work = (out: readonly string[], put: readonly string[]): string =>
  [
    ...(out.length > 0 ? [`take out the ${out.length === 1 ? 'standoff' : 'standoffs'} at ${list(out)}`] : []),
    ...(put.length > 0 ? [`put ${put.length === 1 ? 'one' : 'standoffs'} at ${list(put)}`] : []),
  ].join(' and ');

export const standoffsToMove = jointRule({
  id: 'mounting/standoffs-to-move',
  title: 'The standoffs are where the board wants them as the case is sold',
  severity: 'note',
  basis: 'standard',
  sources: ['micro-atx-interface', 'atx-specification'],
  lesson: 'power/before-first-power-on',

  at: 'board-mount',
  reads: { motherboard: ['formFactor', 'holes'], chassis: ['standoffs', 'standoffsMove'] },
  judge({ need, place }) {
    const board = partAs(need.unit, 'motherboard');
    const housing = partAs(place.unit, 'chassis');
    if (board === undefined || housing === undefined || board.formFactor === undefined) return doesNotApply;
    const holes: readonly Hole[] = board.holes ?? formFactors[board.formFactor].holes;
    if (holes.length === 0 || housing.standoffs === undefined) return doesNotApply;
    const sorted = standoffsUnder(board.formFactor, housing.standoffs, holes);
    if (sorted === undefined) return doesNotApply;

    const { underBoard: out, missing: put } = sorted;
    const facts = { board: board.name, chassis: housing.name, out, put, moves: out.length + put.length };
    if (facts.moves === 0) return fits(facts);
    if (housing.standoffsMove === undefined) return cannotTell(`${place.unit.id}.standoffsMove`);
    return housing.standoffsMove ? doesNotFit(facts) : doesNotApply;
  },

  say: {
    fits: ({ board, chassis }) => `The standoffs of ${chassis} are where ${board} wants them.`,
    doesNotFit: ({ board, chassis, out, put, moves }) => ({
      headline: `${count(moves, 'standoff', 'standoffs')} to see to first`,
      what: `${chassis} comes with its standoffs for another form of board. For ${board}, ${work(out, put)}.`,
      why:
        out.length > 0
          ? 'A standoff under bare board makes a short circuit through it; a hole without a standoff lets the board bend.'
          : 'Where a hole has no standoff under it the board bends when a plug or a card is pressed in.',
      remedy: `Before the board goes in, ${work(out, put)}. Then hold the board over the tray and look through its holes.`,
    }),
    cannotTell: () => ({
      headline: 'Can the standoffs be moved?',
      what: 'The standoffs of the case are not where the board wants them, and it is not recorded whether they can be moved, so this is not judged.',
      findOut: 'Try one with a spanner of its size: it turns out, or it is pressed into the tray and stays.',
    }),
  },

  examples: [
    {
      title: 'as the case is sold',
      parts: {
        motherboard: { formFactor: 'micro-atx' },
        chassis: {
          formFactors: ['micro-atx'],
          standoffs: ['B', 'C', 'F', 'H', 'J', 'L', 'M', 'R', 'S'],
          standoffsMove: true,
        },
      },
      verdict: 'fits',
    },
    {
      title: 'a small board in a case set for a large one',
      parts: {
        motherboard: { formFactor: 'micro-atx' },
        chassis: {
          formFactors: ['atx', 'micro-atx'],
          standoffs: ['A', 'C', 'F', 'G', 'H', 'J', 'K', 'L', 'M'],
          standoffsMove: true,
        },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'a large board in a case set for a small one',
      parts: {
        motherboard: { formFactor: 'atx' },
        chassis: {
          formFactors: ['atx', 'micro-atx'],
          standoffs: ['B', 'C', 'F', 'H', 'J', 'L', 'M', 'R', 'S'],
          standoffsMove: true,
        },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'whether they can be moved is not recorded',
      parts: {
        motherboard: { formFactor: 'atx' },
        chassis: { formFactors: ['atx'], standoffs: ['B', 'C'], standoffsMove: undefined },
      },
      verdict: 'cannot-tell',
    },
    {
      title: 'what cannot be moved is told by the other rules',
      parts: {
        motherboard: { formFactor: 'atx' },
        chassis: { formFactors: ['atx'], standoffs: ['B', 'C'], standoffsMove: false },
      },
      verdict: 'does-not-apply',
    },
  ],
});
