import { showMm, tidy } from '../../../units/amounts.ts';
import { cannotTell, doesNotFit, fits, joinsRule } from '../../rule.ts';
import { lacks } from '../words.ts';

export const memoryHeight = joinsRule({
  id: 'clearance/memory-height',
  title: 'The memory goes under the cooler',
  severity: 'blocker',
  basis: 'maker',
  sources: ['maker-data-sheet'],
  lesson: 'fit/how-parts-meet',

  joins: { 'memory-module': ['heightMm'], cooler: ['memoryHeightMm'] },
  judge({ 'memory-module': module, cooler }) {
    const { memoryHeightMm: limit } = cooler;
    if (limit === undefined) return cannotTell('cooler.memoryHeightMm');
    if (module.heightMm === undefined && limit !== null) return cannotTell('memory-module.heightMm');

    const height = module.heightMm ?? 0;
    const facts = { height, limit, over: limit === null ? 0 : tidy(height - limit) };
    return facts.over <= 0 ? fits(facts) : doesNotFit(facts);
  },

  say: {
    fits: ({ height, limit }) =>
      limit === null
        ? 'The cooler stands clear of the memory slots, so the memory may be of any height.'
        : `The memory is ${showMm(height)} tall; ${showMm(limit)} go under the cooler.`,
    doesNotFit: ({ height, limit, over }) => ({
      headline: `The memory is ${showMm(over)} too tall`,
      what: `The memory is ${showMm(height)} tall; ${showMm(limit ?? 0)} go under the cooler, so it is ${showMm(over)} too tall.`,
      why: 'The cooler reaches over the slots nearest to it, and a taller module there lifts it off the processor or does not go in.',
      remedy: `Choose memory of ${showMm(limit ?? 0)} or less, or a cooler that stands clear of the slots or leaves ${showMm(height)} under it.`,
    }),
    cannotTell: (missing) =>
      lacks(missing, 'memory-module')
        ? {
            headline: 'How tall is the memory?',
            what: "The module's height is not recorded, so it is not judged whether it goes under the cooler.",
            findOut:
              'Measure it from the edge with the contacts to the top of its metal; a bare module is about 31 mm.',
          }
        : {
            headline: 'How much room is under the cooler?',
            what: 'The room under the cooler is not recorded, so it is not judged whether the memory goes there.',
            findOut:
              "Read it on the cooler maker's sheet, or hold the cooler in place and measure from the slot to its lowest fin or fan.",
          },
  },

  examples: [
    {
      title: 'exactly at the limit',
      parts: { 'memory-module': { heightMm: 33 }, cooler: { memoryHeightMm: 33 } },
      verdict: 'fits',
    },
    {
      title: 'one millimetre over',
      parts: { 'memory-module': { heightMm: 34 }, cooler: { memoryHeightMm: 33 } },
      verdict: 'does-not-fit',
    },
    {
      title: 'the cooler stands clear, so the height need not be known',
      parts: { 'memory-module': { heightMm: undefined }, cooler: { memoryHeightMm: null } },
      verdict: 'fits',
    },
    {
      title: "the module's height is not recorded",
      parts: { 'memory-module': { heightMm: undefined }, cooler: { memoryHeightMm: 33 } },
      verdict: 'cannot-tell',
    },
    {
      title: "the cooler's room is not recorded",
      parts: { 'memory-module': { heightMm: 33 }, cooler: { memoryHeightMm: undefined } },
      verdict: 'cannot-tell',
    },
    { title: 'no cooler on the list', parts: { 'memory-module': { heightMm: 34 } }, verdict: 'does-not-apply' },
  ],
});
