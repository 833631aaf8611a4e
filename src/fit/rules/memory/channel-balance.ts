import { showGb } from '../../../units/amounts.ts';
import { capital, inWords, list } from '../../../wording/phrases.ts';
import { cannotTell, doesNotApply, doesNotFit, fits, gathersRule } from '../../rule.ts';

export const channelBalance = gathersRule({
  id: 'memory/channel-balance',
  title: 'Every memory channel holds the same amount',
  severity: 'limit',
  basis: 'practice',
  sources: ['common-practice'],
  lesson: 'fit/choosing-for-a-purpose',

  gathers: { 'memory-module': ['capacityGb'], motherboard: ['memory'] },
  sees: ['memory-slot'],
  judge({ 'memory-module': modules, motherboard: boards }, { joints }) {
    const board = boards[0];
    const slots = board?.memory?.slots ?? [];
    const channels = [...new Set(slots.map((slot) => slot.channel))].sort();
    const seated = joints.filter((joint) => joint.kind === 'memory-slot');
    if (board === undefined || channels.length < 2 || seated.length === 0) return doesNotApply;
    const unknown = modules.filter((module) => module.capacityGb === undefined);
    if (unknown.length > 0) return cannotTell(...unknown.map(({ unit }) => `${unit}.capacityGb`));

    const amounts = channels.map((channel) =>
      slots
        .filter((slot) => slot.channel === channel)
        .flatMap((slot) => seated.filter((joint) => joint.place === `${board.unit}/memory-slot-${slot.id}`))
        .reduce(
          (sum, joint) => sum + (modules.find((module) => joint.need.startsWith(`${module.unit}/`))?.capacityGb ?? 0),
          0,
        ),
    );
    const facts = { channels, amounts, apart: Math.max(...amounts) - Math.min(...amounts) };
    return facts.apart === 0 ? fits(facts) : doesNotFit(facts, [...modules.map(({ unit }) => unit), board.unit]);
  },

  say: {
    fits: ({ channels, amounts }) =>
      `Each of the ${inWords(channels.length)} memory channels holds ${showGb(amounts[0] ?? 0)}.`,
    doesNotFit: ({ channels, amounts, apart }) => ({
      headline: `The memory channels are ${showGb(apart)} apart`,
      what: `${capital(list(channels.map((channel, i) => `channel ${channel.toUpperCase()} holds ${showGb(amounts[i] ?? 0)}`)))}, so they are ${showGb(apart)} apart.`,
      why: 'The board reads from its channels side by side; where one holds less, the rest of the memory is read through the other alone, at half the pace.',
      remedy:
        'Memory should be bought as pairs of equal modules, one for each channel. Change the modules, or leave it as it is: the machine works.',
    }),
    cannotTell: () => ({
      headline: 'Do the memory channels hold the same?',
      what: 'The size of a module is not recorded, so the balance of the channels is not judged.',
      findOut: 'Read the label on each module: the number before GB. Equal modules in pairs are in balance.',
    }),
  },

  examples: [
    {
      title: 'two equal modules on two channels',
      parts: {
        'memory-module': [
          { generation: 'ddr5', registered: false, capacityGb: 16 },
          { generation: 'ddr5', registered: false, capacityGb: 16 },
        ],
        motherboard: {
          memory: {
            generation: 'ddr5',
            registered: false,
            moduleGb: 32,
            slots: [
              { id: 'a2', channel: 'a' },
              { id: 'b2', channel: 'b' },
            ],
          },
        },
      },
      verdict: 'fits',
    },
    {
      title: 'one module on a board with two channels',
      parts: {
        'memory-module': { generation: 'ddr5', registered: false, capacityGb: 16 },
        motherboard: {
          memory: {
            generation: 'ddr5',
            registered: false,
            moduleGb: 32,
            slots: [
              { id: 'a2', channel: 'a' },
              { id: 'b2', channel: 'b' },
            ],
          },
        },
      },
      verdict: 'does-not-fit',
    },
    {
      title: '16 and 8 GB side by side',
      parts: {
        'memory-module': [
          { generation: 'ddr5', registered: false, capacityGb: 16 },
          { generation: 'ddr5', registered: false, capacityGb: 8 },
        ],
        motherboard: {
          memory: {
            generation: 'ddr5',
            registered: false,
            moduleGb: 32,
            slots: [
              { id: 'a2', channel: 'a' },
              { id: 'b2', channel: 'b' },
            ],
          },
        },
      },
      verdict: 'does-not-fit',
    },
    {
      title: "one module's size is not recorded",
      parts: {
        'memory-module': [
          { generation: 'ddr5', registered: false, capacityGb: 16 },
          { generation: 'ddr5', registered: false, capacityGb: undefined },
        ],
        motherboard: {
          memory: {
            generation: 'ddr5',
            registered: false,
            moduleGb: 32,
            slots: [
              { id: 'a2', channel: 'a' },
              { id: 'b2', channel: 'b' },
            ],
          },
        },
      },
      verdict: 'cannot-tell',
    },
    {
      title: 'a board with one channel',
      parts: {
        'memory-module': { generation: 'ddr5', registered: false, capacityGb: 16 },
        motherboard: {
          memory: { generation: 'ddr5', registered: false, moduleGb: 32, slots: [{ id: 'a1', channel: 'a' }] },
        },
      },
      verdict: 'does-not-apply',
    },
  ],
});
