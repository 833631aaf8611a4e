import { tidy } from '../../../units/amounts.ts';
import { cannotTell, doesNotApply, doesNotFit, fits, gathersRule } from '../../rule.ts';
import { joined } from '../ends.ts';
import { lacks } from '../words.ts';

export const coprocessorClock = gathersRule({
  id: 'socket/coprocessor-clock',
  title: 'The coprocessor is made for the clock of the processor',
  severity: 'limit',
  basis: 'practice',
  sources: ['common-practice'],
  lesson: 'fit/how-parts-meet',

  gathers: { coprocessor: ['clockMhz'], processor: ['clockMhz'] },
  sees: ['coprocessor-socket', 'processor-socket'],
  judge({ coprocessor: listed, processor: processors }, { joints }) {
    const [coprocessor] = joined(listed, joints);
    const [processor] = joined(processors, joints);
    if (coprocessor === undefined || processor === undefined) return doesNotApply;
    if (coprocessor.clockMhz === undefined) return cannotTell(`${coprocessor.unit}.clockMhz`);
    if (processor.clockMhz === undefined) return cannotTell(`${processor.unit}.clockMhz`);

    const facts = {
      coprocessor: coprocessor.name,
      processor: processor.name,
      rated: coprocessor.clockMhz,
      clock: processor.clockMhz,
      over: tidy(processor.clockMhz - coprocessor.clockMhz),
    };
    return facts.over <= 0 ? fits(facts) : doesNotFit(facts);
  },

  say: {
    fits: ({ coprocessor, processor, rated, clock }) =>
      `${coprocessor} is made for ${rated} MHz, and ${processor} runs at ${clock} MHz.`,
    doesNotFit: ({ coprocessor, processor, rated, clock, over }) => ({
      headline: `The coprocessor is ${over} MHz too slow`,
      what: `${coprocessor} is made for ${rated} MHz; ${processor} runs at ${clock} MHz, so it is ${over} MHz too slow.`,
      why: 'Most boards drive both from one clock. A coprocessor driven too fast grows hot and reckons wrongly.',
      remedy: `The coprocessor should be one for ${clock} MHz or more, or the board one with a jumper for a slower clock beside the processor.`,
    }),
    cannotTell: (missing) =>
      lacks(missing, 'coprocessor')
        ? {
            headline: 'How fast may the coprocessor run?',
            what: "The coprocessor's clock is not recorded, so it is not judged beside the processor's.",
            findOut: 'Read the number after the dash on its top: -25 is made for 25 MHz.',
          }
        : {
            headline: 'How fast does the processor run?',
            what: "The processor's clock is not recorded, so the coprocessor's is not judged.",
            findOut: 'Read the number after the dash on its top: -25 runs at 25 MHz.',
          },
  },

  examples: [
    {
      title: 'exactly the clock of the processor',
      shelf: 'vintage',
      parts: { coprocessor: { clockMhz: 25 }, processor: { clockMhz: 25 }, motherboard: {} },
      verdict: 'fits',
    },
    {
      title: 'made for less',
      shelf: 'vintage',
      parts: { coprocessor: { clockMhz: 20 }, processor: { clockMhz: 25 }, motherboard: {} },
      verdict: 'does-not-fit',
    },
    {
      title: "the coprocessor's clock is not recorded",
      shelf: 'vintage',
      parts: { coprocessor: { clockMhz: undefined }, processor: { clockMhz: 25 }, motherboard: {} },
      verdict: 'cannot-tell',
    },
    {
      title: "the processor's clock is not recorded",
      shelf: 'vintage',
      parts: { coprocessor: { clockMhz: 25 }, processor: { clockMhz: undefined }, motherboard: {} },
      verdict: 'cannot-tell',
    },
    {
      title: 'no processor on the list',
      shelf: 'vintage',
      parts: { coprocessor: { clockMhz: 20 }, motherboard: {} },
      verdict: 'does-not-apply',
    },
  ],
});
