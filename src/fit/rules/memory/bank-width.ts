import { modulesPerBank } from '../../../standards/banks.ts';
import { inWords } from '../../../wording/phrases.ts';
import { nameOf } from '../../needs/names.ts';
import { cannotTell, doesNotApply, doesNotFit, fits, gathersRule } from '../../rule.ts';
import { joined } from '../ends.ts';
import { lacks } from '../words.ts';

export const bankWidth = gathersRule({
  id: 'memory/bank-width',
  title: 'A bank of these modules is as wide as the data bus',
  severity: 'blocker',
  basis: 'standard',
  sources: ['memory-banks'],
  lesson: 'fit/how-parts-meet',

  gathers: {
    'bank-module': ['dataBits'],
    motherboard: ['memoryBanks', 'dataBusBits'],
    processor: ['dataBusBits'],
  },
  sees: ['memory-bank', 'processor-socket'],
  judge({ 'bank-module': listed, motherboard: boards, processor: processors }, { joints }) {
    const board = boards.find(({ memoryBanks = [] }) => memoryBanks.length > 0);
    const onBoard = joints.filter(({ kind, place }) => kind === 'memory-bank' && place.startsWith(`${board?.unit}/`));
    const modules = joined(listed, onBoard);
    if (board === undefined || modules.length === 0) return doesNotApply;
    const unknown = modules.filter(({ dataBits }) => dataBits === undefined);
    if (unknown.length > 0) return cannotTell(...unknown.map(({ unit }) => `${unit}.dataBits`));
    const [processor] = joined(processors, joints);
    const bus = processor?.dataBusBits ?? board.dataBusBits;
    if (bus === undefined) return cannotTell(`${processor?.unit ?? board.unit}.dataBusBits`);

    const all = modules.map((module) => {
      const place = onBoard.find(({ need }) => need.startsWith(`${module.unit}/`))?.place;
      const { slots = 1 } = board.memoryBanks?.find(({ id }) => place === nameOf(board.unit, 'bank', id)) ?? {};
      const bits = module.dataBits ?? 0;
      return { module, slots, bits, wanted: modulesPerBank(bus, bits) ?? null };
    });
    const [odd] = all.filter(({ slots, wanted }) => slots !== wanted);
    const told = odd ?? all[0];
    if (told === undefined) return doesNotApply;
    const { module, slots, bits, wanted } = told;
    const facts = { module: module.name, board: board.name, bus, bits, slots, wanted };
    return odd ? doesNotFit(facts, [module.unit, board.unit]) : fits(facts);
  },

  say: {
    fits: ({ bus, bits, slots }) =>
      `The data bus is ${bus} bits wide, which is ${inWords(slots)} ${slots === 1 ? 'module' : 'modules'} of ${bits} bits, a whole bank.`,
    doesNotFit: ({ module, board, bus, bits, slots, wanted }) => ({
      headline: `A bank of ${slots * bits} bits, a ${bus}-bit bus`,
      what:
        wanted === null
          ? `${module} is ${bits} bits wide; the data bus is ${bus} bits wide, which is less than one module.`
          : `The data bus is ${bus} bits wide, so a bank is ${inWords(wanted)} of ${module} with ${bits} bits each; a bank of ${board} has sockets for ${inWords(slots)}.`,
      why: 'A bank must be as wide as the data bus: the processor reads all of its bits in one go.',
      remedy: `Choose modules of ${bus / slots} bits each, or a processor and a board that belong together.`,
    }),
    cannotTell: (missing) =>
      lacks(missing, 'bank-module')
        ? {
            headline: 'How wide is the module?',
            what: "The module's data bits are not recorded, so the width of the bank is not judged.",
            findOut: 'Count its contacts: 30 are 8 bits wide, 72 are 32 bits wide.',
          }
        : {
            headline: 'How wide is the data bus?',
            what: 'The width of the data bus is not recorded, so the width of the bank is not judged.',
            findOut: "Read it on the processor maker's sheet.",
          },
  },

  examples: [
    {
      title: 'four modules of 8 bits on a bus of 32',
      shelf: 'vintage',
      parts: {
        'bank-module': [{}, {}, {}, {}],
        motherboard: { dataBusBits: 32 },
        processor: { dataBusBits: 32 },
      },
      verdict: 'fits',
    },
    {
      title: 'two modules of 8 bits on a bus of 16',
      shelf: 'vintage',
      parts: {
        'bank-module': [{}, {}],
        motherboard: {
          dataBusBits: 16,
          memoryBanks: [{ id: 'bank-0', slots: 2, pins: '30', largestKb: 4096, slowestNs: 80 }],
        },
      },
      verdict: 'fits',
    },
    {
      title: 'one module of 32 bits on a bus of 32',
      shelf: 'vintage',
      parts: {
        'bank-module': { pins: '72', dataBits: 32 },
        motherboard: {
          dataBusBits: 32,
          memoryBanks: [{ id: 'bank-0', slots: 1, pins: '72', largestKb: 16_384, slowestNs: 80 }],
        },
      },
      verdict: 'fits',
    },
    {
      title: 'one module of 32 bits on a bus of 64',
      shelf: 'vintage',
      parts: {
        'bank-module': { pins: '72', dataBits: 32 },
        motherboard: {
          dataBusBits: 64,
          memoryBanks: [{ id: 'bank-0', slots: 1, pins: '72', largestKb: 16_384, slowestNs: 80 }],
        },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'a module wider than the bus',
      shelf: 'vintage',
      parts: {
        'bank-module': { pins: '72', dataBits: 32 },
        motherboard: {
          dataBusBits: 16,
          memoryBanks: [{ id: 'bank-0', slots: 1, pins: '72', largestKb: 16_384, slowestNs: 80 }],
        },
      },
      verdict: 'does-not-fit',
    },
    {
      title: "the module's width is not recorded",
      shelf: 'vintage',
      parts: {
        'bank-module': [
          { dataBits: undefined },
          { dataBits: undefined },
          { dataBits: undefined },
          { dataBits: undefined },
        ],
        motherboard: {},
      },
      verdict: 'cannot-tell',
    },
    {
      title: 'the width of the bus is not recorded',
      shelf: 'vintage',
      parts: { 'bank-module': [{}, {}, {}, {}], motherboard: { dataBusBits: undefined } },
      verdict: 'cannot-tell',
    },
    {
      title: 'too few modules for a bank say so themselves',
      shelf: 'vintage',
      parts: { 'bank-module': [{}, {}], motherboard: {} },
      verdict: 'does-not-apply',
    },
  ],
});
