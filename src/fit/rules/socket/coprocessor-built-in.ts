import { cannotTell, doesNotApply, doesNotFit, fits, gathersRule } from '../../rule.ts';

export const coprocessorBuiltIn = gathersRule({
  id: 'socket/coprocessor-built-in',
  title: 'The coprocessor is one that the processor has not already',
  severity: 'note',
  basis: 'maker',
  sources: ['maker-data-sheet'],
  lesson: 'fit/choosing-for-a-purpose',

  gathers: { coprocessor: [], processor: ['hasCoprocessor'] },
  judge({ coprocessor: coprocessors, processor: processors }) {
    const [coprocessor] = coprocessors;
    const [processor] = processors;
    if (coprocessor === undefined || processor === undefined) return doesNotApply;
    if (processor.hasCoprocessor === undefined) return cannotTell(`${processor.unit}.hasCoprocessor`);
    const facts = { coprocessor: coprocessor.name, processor: processor.name };
    return processor.hasCoprocessor ? doesNotFit(facts) : fits(facts);
  },

  say: {
    fits: ({ coprocessor, processor }) =>
      `${processor} has no coprocessor of its own, so ${coprocessor} has work to do.`,
    doesNotFit: ({ coprocessor, processor }) => ({
      headline: 'The processor has a coprocessor already',
      what: `${processor} has a coprocessor of its own, and the list has ${coprocessor} as well.`,
      why: 'Programs use one of the two. The other draws power and does nothing.',
      remedy: 'Take the coprocessor off the list.',
    }),
    cannotTell: () => ({
      headline: 'Has the processor a coprocessor already?',
      what: 'Whether the processor has a coprocessor of its own is not recorded, so this is not judged.',
      findOut: "Read it on the processor maker's sheet.",
    }),
  },

  examples: [
    {
      title: 'a processor without one',
      shelf: 'vintage',
      parts: { coprocessor: {}, processor: { hasCoprocessor: false } },
      verdict: 'fits',
    },
    {
      title: 'a processor with one of its own',
      shelf: 'vintage',
      parts: { coprocessor: {}, processor: { hasCoprocessor: true } },
      verdict: 'does-not-fit',
    },
    {
      title: 'not recorded',
      shelf: 'vintage',
      parts: { coprocessor: {}, processor: { hasCoprocessor: undefined } },
      verdict: 'cannot-tell',
    },
    { title: 'no coprocessor on the list', shelf: 'vintage', parts: { processor: {} }, verdict: 'does-not-apply' },
  ],
});
