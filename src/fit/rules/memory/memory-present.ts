import { doesNotApply, doesNotFit, fits, gathersRule } from '../../rule.ts';

export const memoryPresent = gathersRule({
  id: 'memory/memory-present',
  title: 'The board has memory',
  severity: 'blocker',
  basis: 'maker',
  sources: ['maker-data-sheet'],
  lesson: 'fit/how-parts-meet',

  gathers: { motherboard: [], 'memory-module': [], 'bank-module': [] },
  judge({ motherboard: boards, 'memory-module': modules, 'bank-module': older }) {
    const board = boards[0];
    if (board === undefined) return doesNotApply;
    const module = modules[0] ?? older[0];
    const facts = { board: board.name, module: module?.name ?? null };
    return module ? fits(facts, [module.unit, board.unit]) : doesNotFit(facts, [board.unit]);
  },

  say: {
    fits: ({ board, module }) => `${board} has memory to go with it: ${module}.`,
    doesNotFit: ({ board }) => ({
      headline: 'The board has no memory',
      what: `There is no memory module on the list for ${board}.`,
      why: 'A board does not start without memory: it beeps or lights a lamp at most, and the screen stays dark.',
      remedy: 'Choose memory of the kind that the slots of the board take.',
    }),
    cannotTell: () => ({
      headline: 'Is there memory?',
      what: 'Whether the board has memory is not recorded, so this is not judged.',
      findOut: 'Look at the slots beside the processor.',
    }),
  },

  examples: [
    { title: 'a board and one module', parts: { motherboard: {}, 'memory-module': {} }, verdict: 'fits' },
    {
      title: 'a board and all but memory',
      parts: { motherboard: {}, processor: {}, cooler: {}, 'power-supply': {} },
      verdict: 'does-not-fit',
    },
    {
      title: 'a board of about 1990 and modules for its bank',
      shelf: 'vintage',
      parts: { motherboard: {}, 'bank-module': [{}, {}, {}, {}] },
      verdict: 'fits',
    },
    { title: 'no board yet', parts: { processor: {}, cooler: {} }, verdict: 'does-not-apply' },
  ],
});
