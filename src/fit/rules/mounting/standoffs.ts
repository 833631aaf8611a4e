import { formFactors, type Hole, standoffsUnder } from '../../../standards/boards.ts';
import { capital, count, list, spelled } from '../../../wording/phrases.ts';
import { cannotTell, doesNotApply, doesNotFit, fits, jointRule } from '../../rule.ts';
import { partAs } from '../ends.ts';
import { lacks } from '../words.ts';

export const standoffs = jointRule({
  id: 'mounting/standoffs',
  title: 'No standoff stays under the board where it has no hole',
  severity: 'hazard',
  basis: 'standard',
  sources: ['micro-atx-interface', 'atx-specification'],
  lesson: 'power/before-first-power-on',

  at: 'board-mount',
  reads: { motherboard: ['formFactor', 'holes'], chassis: ['standoffs', 'standoffsMove'] },
  judge({ need, place }) {
    const board = partAs(need.unit, 'motherboard');
    const housing = partAs(place.unit, 'chassis');
    if (board === undefined || housing === undefined || board.formFactor === undefined) return doesNotApply;
    // The hole letters of the older forms are not published; such boards stand on clips where there is no hole.
    const holes: readonly Hole[] = board.holes ?? formFactors[board.formFactor].holes;
    if (holes.length === 0) return doesNotApply;
    if (housing.standoffs === undefined) return cannotTell(`${place.unit.id}.standoffs`);

    const under = standoffsUnder(board.formFactor, housing.standoffs, holes)?.underBoard ?? [];
    const facts = { board: board.name, chassis: housing.name, under, moves: housing.standoffsMove === true };
    if (under.length === 0 || housing.standoffsMove) return fits(facts);
    return housing.standoffsMove === undefined ? cannotTell(`${place.unit.id}.standoffsMove`) : doesNotFit(facts);
  },

  say: {
    fits: ({ board, chassis, under }) =>
      under.length === 0
        ? `Every standoff in ${chassis} is under a hole of ${board}, or beyond its edge.`
        : `${capital(spelled(under.length, 'standoff', 'standoffs'))} of ${chassis} would stand under ${board} where it has no hole, at ${list(under)}; take ${under.length === 1 ? 'it' : 'them'} out before the board goes in.`,
    doesNotFit: ({ board, chassis, under }) => ({
      headline: `${count(under.length, 'fixed standoff', 'fixed standoffs')} under the board`,
      what: `${chassis} has ${spelled(under.length, 'standoff', 'standoffs')} that cannot be taken out, at ${list(under)}, where ${board} has no hole and lies over ${under.length === 1 ? 'it' : 'them'}.`,
      why: 'A standoff is metal and joined to the case. Under bare board it touches the solder points, and the first power-on makes a short circuit through the board.',
      remedy: `Do not fit this board into this case. Choose a case whose standoffs can be moved, or a board with holes at ${list(under)}.`,
    }),
    cannotTell: (missing) =>
      lacks(missing, 'chassis') && missing.some((field) => field.endsWith('.standoffsMove'))
        ? {
            headline: 'Can the standoffs be taken out?',
            what: 'Standoffs of the case would stand under bare board, and it is not recorded whether they can be taken out, so this is not judged.',
            findOut: 'Try one with a spanner of its size: it turns out, or it is pressed into the tray and stays.',
          }
        : {
            headline: 'Where are standoffs in the case?',
            what: 'The standoffs that are in the case are not recorded, so it is not judged whether one would stand under bare board.',
            findOut:
              'Hold the board over the tray and look through each of its holes: a standoff under each, and none elsewhere under it.',
          },
  },

  examples: [
    {
      title: 'a standoff under each hole and no other',
      parts: {
        motherboard: { formFactor: 'micro-atx' },
        chassis: {
          formFactors: ['micro-atx'],
          standoffs: ['B', 'C', 'F', 'H', 'J', 'L', 'M', 'R', 'S'],
          standoffsMove: false,
        },
      },
      verdict: 'fits',
    },
    {
      title: 'standoffs for a large board lie beyond the edge of a small one',
      parts: {
        motherboard: { formFactor: 'micro-atx' },
        chassis: {
          formFactors: ['atx', 'micro-atx'],
          standoffs: ['A', 'C', 'F', 'G', 'H', 'J', 'K', 'L', 'M'],
          standoffsMove: false,
        },
      },
      verdict: 'fits',
    },
    {
      title: 'three standoffs for a small board under a large one, and they stay',
      parts: {
        motherboard: { formFactor: 'atx' },
        chassis: {
          formFactors: ['atx', 'micro-atx'],
          standoffs: ['B', 'C', 'F', 'H', 'J', 'L', 'M', 'R', 'S'],
          standoffsMove: false,
        },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'the same three, and they can be taken out',
      parts: {
        motherboard: { formFactor: 'atx' },
        chassis: {
          formFactors: ['atx', 'micro-atx'],
          standoffs: ['B', 'C', 'F', 'H', 'J', 'L', 'M', 'R', 'S'],
          standoffsMove: true,
        },
      },
      verdict: 'fits',
    },
    {
      title: 'whether they can be taken out is not recorded',
      parts: {
        motherboard: { formFactor: 'atx' },
        chassis: { formFactors: ['atx'], standoffs: ['B', 'C', 'F', 'H', 'J', 'L', 'M'], standoffsMove: undefined },
      },
      verdict: 'cannot-tell',
    },
    {
      title: "the case's standoffs are not recorded",
      parts: { motherboard: { formFactor: 'atx' }, chassis: { formFactors: ['atx'], standoffs: undefined } },
      verdict: 'cannot-tell',
    },
    {
      title: 'a board that does not go into the case',
      parts: {
        motherboard: { formFactor: 'atx' },
        chassis: { formFactors: ['micro-atx'], standoffs: ['B', 'C'], standoffsMove: false },
      },
      verdict: 'does-not-apply',
    },
  ],
});
