import { showVolts } from '../../../units/amounts.ts';
import { cannotTell, doesNotApply, doesNotFit, fits, jointRule } from '../../rule.ts';
import { partAs } from '../ends.ts';
import { lacks } from '../words.ts';

export const memoryVoltage = jointRule({
  id: 'memory/voltage',
  title: 'The board gives the memory the voltage it is sold for',
  severity: 'limit',
  basis: 'maker',
  sources: ['maker-data-sheet', 'jesd79-4', 'jesd79-5'],
  lesson: 'fit/how-parts-meet',

  at: 'memory-slot',
  reads: { 'memory-module': ['millivolts'], motherboard: ['memory'] },
  judge({ need, place }) {
    const module = partAs(need.unit, 'memory-module');
    const board = partAs(place.unit, 'motherboard');
    if (module === undefined || board === undefined) return doesNotApply;
    if (module.millivolts === undefined) return cannotTell(`${need.unit.id}.millivolts`);
    const gives = board.memory?.millivolts;
    if (gives === undefined) return cannotTell(`${place.unit.id}.memory.millivolts`);

    const facts = {
      module: module.name,
      board: board.name,
      wants: module.millivolts,
      gives,
      short: module.millivolts - gives,
    };
    return facts.short <= 0 ? fits(facts) : doesNotFit(facts);
  },

  say: {
    fits: ({ module, board, wants, gives }) =>
      `${module} wants ${showVolts(wants)}; ${board} gives memory up to ${showVolts(gives)}.`,
    doesNotFit: ({ module, board, wants, gives, short }) => ({
      headline: `The memory gets ${showVolts(short)} too little`,
      what: `${module} reaches the speed it is sold for at ${showVolts(wants)}; ${board} gives memory ${showVolts(gives)} at most, so it gets ${showVolts(short)} too little.`,
      why: 'The module runs at the standard voltage of its generation, and there it is slower than it is sold for.',
      remedy: `Choose memory sold for ${showVolts(gives)} or less, or a board that gives ${showVolts(wants)}, or leave it as it is.`,
    }),
    cannotTell: (missing) =>
      lacks(missing, 'memory-module')
        ? {
            headline: 'Which voltage does the memory want?',
            what: 'The voltage that the module is sold for is not recorded, so this fit is not judged.',
            findOut: "Read it on the module's label; it is written like this: 1.1 V.",
          }
        : {
            headline: 'Which voltage does the board give?',
            what: 'The most that the board gives its memory is not recorded, so this fit is not judged.',
            findOut: "Read the page on memory in the board's manual.",
          },
  },

  examples: [
    {
      title: 'exactly what the board gives',
      parts: {
        'memory-module': { millivolts: 1250 },
        motherboard: { memory: { generation: 'ddr5', millivolts: 1250, slots: [{ id: 'a1', channel: 'a' }] } },
      },
      verdict: 'fits',
    },
    {
      title: 'a hundredth of a volt more than the board gives',
      parts: {
        'memory-module': { millivolts: 1260 },
        motherboard: { memory: { generation: 'ddr5', millivolts: 1250, slots: [{ id: 'a1', channel: 'a' }] } },
      },
      verdict: 'does-not-fit',
    },
    {
      title: "the module's voltage is not recorded",
      parts: {
        'memory-module': { millivolts: undefined },
        motherboard: { memory: { generation: 'ddr5', millivolts: 1250, slots: [{ id: 'a1', channel: 'a' }] } },
      },
      verdict: 'cannot-tell',
    },
    {
      title: "the board's voltage is not recorded",
      parts: {
        'memory-module': { millivolts: 1100 },
        motherboard: { memory: { generation: 'ddr5', slots: [{ id: 'a1', channel: 'a' }] } },
      },
      verdict: 'cannot-tell',
    },
    { title: 'memory and no board', parts: { 'memory-module': { millivolts: 1100 } }, verdict: 'does-not-apply' },
  ],
});
