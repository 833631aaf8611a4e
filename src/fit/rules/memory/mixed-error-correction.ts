import { list } from '../../../wording/phrases.ts';
import { cannotTell, doesNotApply, doesNotFit, fits, gathersRule } from '../../rule.ts';
import { seated } from '../ends.ts';

const names = (parts: readonly { name: string }[]): string[] => [...new Set(parts.map(({ name }) => name))];

export const mixedErrorCorrection = gathersRule({
  id: 'memory/mixed-error-correction',
  title: 'All modules correct errors, or none does',
  severity: 'limit',
  basis: 'maker',
  sources: ['maker-data-sheet'],
  lesson: 'fit/how-parts-meet',

  gathers: { 'memory-module': ['hasErrorCorrection'] },
  sees: ['memory-slot'],
  judge({ 'memory-module': listed }, { joints }) {
    const modules = seated(listed, joints);
    if (modules.length < 2) return doesNotApply;
    const correcting = modules.filter((module) => module.hasErrorCorrection === true);
    const plain = modules.filter((module) => module.hasErrorCorrection === false);
    const facts = { modules: modules.length, correcting: names(correcting), plain: names(plain) };
    if (correcting.length > 0 && plain.length > 0)
      return doesNotFit(
        facts,
        modules.map(({ unit }) => unit),
      );
    const unknown = modules.filter((module) => module.hasErrorCorrection === undefined);
    if (unknown.length > 0) return cannotTell(...unknown.map(({ unit }) => `${unit}.hasErrorCorrection`));
    return fits(facts);
  },

  say: {
    fits: ({ correcting }) =>
      correcting.length > 0 ? 'Every module corrects errors.' : 'No module corrects errors, so all are of one kind.',
    doesNotFit: ({ correcting, plain }) => ({
      headline: 'Memory with ECC and without it',
      what: `${list(correcting)} ${correcting.length === 1 ? 'corrects' : 'correct'} errors; ${list(plain)} ${plain.length === 1 ? 'does' : 'do'} not.`,
      why: 'One module without the extra chips of ECC switches the correcting off for all of them, and some boards do not start with the two together.',
      remedy: 'Choose modules that are all ECC, or modules of which none is.',
    }),
    cannotTell: () => ({
      headline: 'Is the memory all of one kind?',
      what: 'Whether a module corrects errors is not recorded, so it is not judged whether the modules are of one kind.',
      findOut:
        'Read the label on each module: ECC says that it corrects errors; without that word it does not. What DDR5 chips correct within themselves is another thing.',
    }),
  },

  examples: [
    {
      title: 'both modules correct errors',
      parts: {
        'memory-module': [{ hasErrorCorrection: true }, { hasErrorCorrection: true }],
        motherboard: {},
      },
      verdict: 'fits',
    },
    {
      title: 'neither module corrects errors',
      parts: {
        'memory-module': [{ hasErrorCorrection: false }, { hasErrorCorrection: false }],
        motherboard: {},
      },
      verdict: 'fits',
    },
    {
      title: 'one does and one does not',
      parts: {
        'memory-module': [{ hasErrorCorrection: true }, { hasErrorCorrection: false }],
        motherboard: {},
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'one of them does not say',
      parts: {
        'memory-module': [{ hasErrorCorrection: false }, { hasErrorCorrection: undefined }],
        motherboard: {},
      },
      verdict: 'cannot-tell',
    },
    {
      title: 'a single module',
      parts: { 'memory-module': { hasErrorCorrection: undefined }, motherboard: {} },
      verdict: 'does-not-apply',
    },
  ],
});
