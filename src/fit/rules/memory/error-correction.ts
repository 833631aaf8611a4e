import { capital, list } from '../../../wording/phrases.ts';
import { cannotTell, doesNotApply, doesNotFit, fits, gathersRule } from '../../rule.ts';
import { seated } from '../ends.ts';
import { lacks } from '../words.ts';

export const errorCorrection = gathersRule({
  id: 'memory/error-correction',
  title: 'Memory that corrects errors is on a board and with a processor that use it',
  severity: 'note',
  basis: 'maker',
  sources: ['maker-data-sheet'],
  lesson: 'fit/choosing-for-a-purpose',

  gathers: {
    'memory-module': ['hasErrorCorrection'],
    motherboard: ['memory'],
    processor: ['correctsMemory'],
  },
  sees: ['memory-slot'],
  judge({ 'memory-module': listed, motherboard: boards, processor: processors }, { joints }) {
    const modules = seated(listed, joints);
    const [board, processor] = [boards[0], processors[0]];
    if (board === undefined || processor === undefined || modules.length === 0) return doesNotApply;
    const correcting = modules.filter((module) => module.hasErrorCorrection === true);
    const unknown = modules.filter((module) => module.hasErrorCorrection === undefined);
    if (correcting.length === 0)
      return unknown.length === 0
        ? doesNotApply
        : cannotTell(...unknown.map(({ unit }) => `${unit}.hasErrorCorrection`));

    const idle = [
      ...(board.memory?.errorCorrection === false ? [board] : []),
      ...(processor.correctsMemory === false ? [processor] : []),
    ];
    const facts = {
      module: correcting[0]?.name ?? '',
      by: list([board.name, processor.name]),
      idle: idle.map(({ name }) => name),
    };
    if (idle.length > 0)
      return doesNotFit(
        facts,
        [...correcting, ...idle].map(({ unit }) => unit),
      );
    if (board.memory?.errorCorrection === undefined) return cannotTell(`${board.unit}.memory.errorCorrection`);
    if (processor.correctsMemory === undefined) return cannotTell(`${processor.unit}.correctsMemory`);
    return fits(facts);
  },

  say: {
    fits: ({ module, by }) => `${module} is ECC memory, which corrects errors, and ${by} use that.`,
    doesNotFit: ({ module, idle }) => ({
      headline: 'ECC memory, paid for and not used',
      what: `${module} is ECC memory, which corrects errors; ${list(idle)} ${idle.length === 1 ? 'does' : 'do'} not use that.`,
      why: 'The extra chips of such a module are read only where board and processor ask for them. The machine works; errors in memory stay uncorrected.',
      remedy: `Choose memory without ECC and keep the difference, or put something that uses it in the place of ${list(idle)}, or leave it as it is.`,
    }),
    cannotTell: (missing) =>
      lacks(missing, 'memory-module')
        ? {
            headline: 'Does the memory correct errors?',
            what: 'Whether a module corrects errors is not recorded, so it is not judged whether that would be used.',
            findOut:
              'Read the label on the module: ECC says that it corrects errors; without that word it does not. What DDR5 chips correct within themselves is another thing.',
          }
        : {
            headline: 'Is the ECC of the memory used?',
            what: `${capital(lacks(missing, 'motherboard') ? 'whether the board' : 'whether the processor')} uses the ECC of the memory is not recorded, so this is not judged.`,
            findOut: "Look for ECC on the page on memory in the board's manual and on the processor maker's sheet.",
          },
  },

  examples: [
    {
      title: 'all three of them use it',
      parts: {
        'memory-module': { hasErrorCorrection: true },
        motherboard: {
          memory: { generation: 'ddr5', errorCorrection: true, slots: [{ id: 'a1', channel: 'a' }] },
        },
        processor: { correctsMemory: true },
      },
      verdict: 'fits',
    },
    {
      title: 'a board that does not use it',
      parts: {
        'memory-module': { hasErrorCorrection: true },
        motherboard: {
          memory: { generation: 'ddr5', errorCorrection: false, slots: [{ id: 'a1', channel: 'a' }] },
        },
        processor: { correctsMemory: true },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'a processor that does not use it',
      parts: {
        'memory-module': { hasErrorCorrection: true },
        motherboard: {
          memory: { generation: 'ddr5', errorCorrection: true, slots: [{ id: 'a1', channel: 'a' }] },
        },
        processor: { correctsMemory: false },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'the module does not say',
      parts: {
        'memory-module': { hasErrorCorrection: undefined },
        motherboard: {
          memory: { generation: 'ddr5', errorCorrection: false, slots: [{ id: 'a1', channel: 'a' }] },
        },
        processor: { correctsMemory: false },
      },
      verdict: 'cannot-tell',
    },
    {
      title: 'the board does not say',
      parts: {
        'memory-module': { hasErrorCorrection: true },
        motherboard: { memory: { generation: 'ddr5', slots: [{ id: 'a1', channel: 'a' }] } },
        processor: { correctsMemory: true },
      },
      verdict: 'cannot-tell',
    },
    {
      title: 'the processor does not say',
      parts: {
        'memory-module': { hasErrorCorrection: true },
        motherboard: {
          memory: { generation: 'ddr5', errorCorrection: true, slots: [{ id: 'a1', channel: 'a' }] },
        },
        processor: { correctsMemory: undefined },
      },
      verdict: 'cannot-tell',
    },
    {
      title: 'memory that corrects nothing',
      parts: {
        'memory-module': { hasErrorCorrection: false },
        motherboard: {
          memory: { generation: 'ddr5', errorCorrection: true, slots: [{ id: 'a1', channel: 'a' }] },
        },
        processor: { correctsMemory: true },
      },
      verdict: 'does-not-apply',
    },
  ],
});
