import { formFactors, type Hole } from '../../../standards/boards.ts';
import { count, list, spelled } from '../../../wording/phrases.ts';
import { cannotTell, doesNotApply, doesNotFit, fits, jointRule } from '../../rule.ts';
import { partAs } from '../ends.ts';

export const standoffsPresent = jointRule({
  id: 'mounting/standoffs-present',
  title: 'There is a standoff for each hole of the board',
  severity: 'limit',
  basis: 'standard',
  sources: ['micro-atx-interface', 'atx-specification'],
  lesson: 'fit/how-parts-meet',

  at: 'board-mount',
  reads: { motherboard: ['formFactor', 'holes'], chassis: ['standoffs', 'standoffsMove'] },
  judge({ need, place }) {
    const board = partAs(need.unit, 'motherboard');
    const housing = partAs(place.unit, 'chassis');
    if (board === undefined || housing === undefined || board.formFactor === undefined) return doesNotApply;
    const holes: readonly Hole[] = board.holes ?? formFactors[board.formFactor].holes;
    // Where standoffs are is asked once, by the rule on those under bare board.
    if (holes.length === 0 || housing.standoffs === undefined) return doesNotApply;

    const fitted: readonly Hole[] = housing.standoffs;
    const missing = holes.filter((hole) => !fitted.includes(hole));
    const facts = { board: board.name, chassis: housing.name, holes: holes.length, missing };
    if (missing.length === 0 || housing.standoffsMove) return fits(facts);
    return housing.standoffsMove === undefined ? cannotTell(`${place.unit.id}.standoffsMove`) : doesNotFit(facts);
  },

  say: {
    fits: ({ board, chassis, holes, missing }) =>
      missing.length === 0
        ? `${chassis} has a standoff under each of the ${spelled(holes, 'hole', 'holes')} of ${board}.`
        : `The standoffs of ${chassis} can be moved, so that ${board} has one at ${list(missing)} as well.`,
    doesNotFit: ({ board, chassis, missing }) => ({
      headline: `${count(missing.length, 'hole', 'holes')} without a standoff`,
      what: `${board} has ${spelled(missing.length, 'hole', 'holes')} at ${list(missing)}; ${chassis} has no standoff there, and its standoffs stay where they are.`,
      why: 'Where nothing holds the board it bends when a plug or a card is pressed in, and a bent board may crack.',
      remedy: `Choose a case with standoffs at ${list(missing)}, or press plugs in there with a finger under the edge of the board: the machine works.`,
    }),
    cannotTell: () => ({
      headline: 'Can the standoffs be moved?',
      what: 'The case has no standoff for some holes of the board, and it is not recorded whether its standoffs can be moved, so this is not judged.',
      findOut: 'Look for threaded holes in the tray under those of the board, and try whether a standoff turns out.',
    }),
  },

  examples: [
    {
      title: 'a standoff under each hole',
      parts: {
        motherboard: { formFactor: 'mini-itx' },
        chassis: { formFactors: ['mini-itx'], standoffs: ['C', 'F', 'H', 'J'], standoffsMove: false },
      },
      verdict: 'fits',
    },
    {
      title: 'one hole without a standoff, and none can be moved',
      parts: {
        motherboard: { formFactor: 'mini-itx' },
        chassis: { formFactors: ['mini-itx'], standoffs: ['C', 'F', 'H'], standoffsMove: false },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'one hole without a standoff, and they can be moved',
      parts: {
        motherboard: { formFactor: 'mini-itx' },
        chassis: { formFactors: ['mini-itx'], standoffs: ['C', 'F', 'H'], standoffsMove: true },
      },
      verdict: 'fits',
    },
    {
      title: 'a board with fewer holes than its form has',
      parts: {
        motherboard: { formFactor: 'mini-itx', holes: ['C', 'F', 'H'] },
        chassis: { formFactors: ['mini-itx'], standoffs: ['C', 'F', 'H'], standoffsMove: false },
      },
      verdict: 'fits',
    },
    {
      title: 'whether they can be moved is not recorded',
      parts: {
        motherboard: { formFactor: 'mini-itx' },
        chassis: { formFactors: ['mini-itx'], standoffs: ['C', 'F', 'H'], standoffsMove: undefined },
      },
      verdict: 'cannot-tell',
    },
    { title: 'a board and no case', parts: { motherboard: { formFactor: 'atx' } }, verdict: 'does-not-apply' },
  ],
});
