import { cannotTell, doesNotApply, doesNotFit, fits, joinsRule } from '../../rule.ts';
import { lacks } from '../words.ts';

export const securityModule = joinsRule({
  id: 'firmware/security-module',
  title: 'The board has the security module that the operating system asks for',
  severity: 'blocker',
  basis: 'maker',
  sources: ['maker-data-sheet'],
  lesson: 'fit/how-parts-meet',

  joins: { motherboard: ['name', 'firmware'], 'operating-system': ['name', 'needsSecurityModule'] },
  judge({ motherboard, 'operating-system': system }) {
    if (system.needsSecurityModule === false) return doesNotApply;
    if (system.needsSecurityModule === undefined) return cannotTell('operating-system.needsSecurityModule');
    const has = motherboard.firmware?.hasSecurityModule;
    if (has === undefined) return cannotTell('motherboard.firmware.hasSecurityModule');
    const facts = { board: motherboard.name ?? '', system: system.name ?? '' };
    return has ? fits(facts) : doesNotFit(facts);
  },

  say: {
    fits: ({ board, system }) => `${system} asks for a security module, and ${board} has one.`,
    doesNotFit: ({ board, system }) => ({
      headline: 'The system asks for a security module',
      what: `${system} asks for a security module of version 2; ${board} has none.`,
      why: 'The system looks for the module before it is put on, and stops when there is none.',
      remedy: 'Choose a board with a security module of version 2, or a system that asks for none.',
    }),
    cannotTell: (missing) =>
      lacks(missing, 'operating-system')
        ? {
            headline: 'Does the system ask for a security module?',
            what: 'Whether the operating system asks for a security module is not recorded, so this is not judged.',
            findOut: 'Look for TPM among what the system asks of a machine.',
          }
        : {
            headline: 'Has the board a security module?',
            what: 'Whether the board has a security module is not recorded, so this is not judged.',
            findOut: "Look for TPM 2.0 in the board's manual; it may be in the firmware and switched off as sold.",
          },
  },

  examples: [
    {
      title: 'asked for and there',
      parts: {
        motherboard: { firmware: { shipped: 5, knows: [], hasSecurityModule: true } },
        'operating-system': { needsSecurityModule: true },
      },
      verdict: 'fits',
    },
    {
      title: 'asked for and not there',
      parts: {
        motherboard: { firmware: { shipped: 5, knows: [], hasSecurityModule: false } },
        'operating-system': { needsSecurityModule: true },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'the board does not say',
      parts: {
        motherboard: { firmware: { shipped: 5, knows: [] } },
        'operating-system': { needsSecurityModule: true },
      },
      verdict: 'cannot-tell',
    },
    {
      title: 'the system does not say',
      parts: {
        motherboard: { firmware: { shipped: 5, knows: [], hasSecurityModule: true } },
        'operating-system': { needsSecurityModule: undefined },
      },
      verdict: 'cannot-tell',
    },
    {
      title: 'a system that asks for none',
      parts: {
        motherboard: { firmware: { shipped: 5, knows: [], hasSecurityModule: false } },
        'operating-system': { needsSecurityModule: false },
      },
      verdict: 'does-not-apply',
    },
  ],
});
