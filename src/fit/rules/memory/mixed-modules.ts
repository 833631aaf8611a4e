import { list } from '../../../wording/phrases.ts';
import { doesNotApply, doesNotFit, fits, gathersRule } from '../../rule.ts';
import { seated } from '../ends.ts';

export const mixedModules = gathersRule({
  id: 'memory/mixed-modules',
  title: 'All modules are of one make and model',
  severity: 'note',
  basis: 'practice',
  sources: ['common-practice'],
  lesson: 'fit/choosing-for-a-purpose',

  gathers: { 'memory-module': ['id'] },
  sees: ['memory-slot'],
  judge({ 'memory-module': listed }, { joints }) {
    const modules = seated(listed, joints);
    if (modules.length < 2) return doesNotApply;
    const models = new Map(modules.map(({ id, name }) => [id, name]));
    const facts = { modules: modules.length, models: [...models.values()] };
    return models.size === 1
      ? fits(facts)
      : doesNotFit(
          facts,
          modules.map(({ unit }) => unit),
        );
  },

  say: {
    fits: ({ models }) => `All modules are ${list(models)}.`,
    doesNotFit: ({ models }) => ({
      headline: `${models.length} sorts of memory module together`,
      what: `The memory is ${list(models)}: ${models.length} sorts together.`,
      why: 'Unlike modules settle on the slowest timing of each, and now and then a pair of them is not stable however good each is alone.',
      remedy:
        'Modules should be bought as a set made to run together. Choose modules of one model, or leave them and try the machine well while they can still be taken back.',
    }),
    cannotTell: () => ({
      headline: 'Are the modules all alike?',
      what: 'Not every module is known, so it is not judged whether they are alike.',
      findOut: 'Compare the labels of the modules.',
    }),
  },

  examples: [
    {
      title: 'two modules of one model',
      parts: { 'memory-module': [{ capacityGb: 16 }, { capacityGb: 16 }], motherboard: {} },
      verdict: 'fits',
    },
    {
      title: 'two models together',
      parts: { 'memory-module': [{ capacityGb: 16 }, { capacityGb: 8 }], motherboard: {} },
      verdict: 'does-not-fit',
    },
    {
      title: 'a single module',
      parts: { 'memory-module': { capacityGb: 16 }, motherboard: {} },
      verdict: 'does-not-apply',
    },
  ],
});
