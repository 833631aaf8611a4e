import { cannotTell, doesNotApply, doesNotFit, fits, gathersRule } from '../../rule.ts';
import { lacks } from '../words.ts';

const read = (level: string): string => `level ${level}`;

export const instructionLevel = gathersRule({
  id: 'firmware/instruction-level',
  title: 'The processor knows the instructions that the operating system is built of',
  severity: 'blocker',
  basis: 'maker',
  sources: ['maker-data-sheet'],
  lesson: 'fit/how-parts-meet',

  gathers: { processor: ['levels'], 'processor-board': ['levels'], 'operating-system': ['level'] },
  judge({ processor: processors, 'processor-board': plugIns, 'operating-system': systems }) {
    // A plug-in processor board works in the place of the processor.
    const used = plugIns[0] ?? processors[0];
    const system = systems[0];
    if (used === undefined || system === undefined) return doesNotApply;
    if (system.level === undefined) return cannotTell(`${system.unit}.level`);
    if (used.levels === undefined) return cannotTell(`${used.unit}.levels`);
    const facts = { processor: used.name, system: system.name, level: system.level };
    const about = [used.unit, system.unit];
    return used.levels.includes(system.level) ? fits(facts, about) : doesNotFit(facts, about);
  },

  say: {
    fits: ({ processor, system, level }) => `${system} is built for ${read(level)}, which ${processor} runs.`,
    doesNotFit: ({ processor, system, level }) => ({
      headline: `The system is built for ${read(level)}`,
      what: `${system} is built for ${read(level)}; ${processor} does not run that.`,
      why: 'The processor meets an instruction that it does not know and stops, most often before anything shows on the screen.',
      remedy: `Choose a processor that runs ${read(level)}, or a system built for less.`,
    }),
    cannotTell: (missing) =>
      lacks(missing, 'operating-system')
        ? {
            headline: 'Which instructions is the system built of?',
            what: 'The instruction level of the operating system is not recorded, so this fit is not judged.',
            findOut: "Read which processors the system asks for on its maker's page or on its box.",
          }
        : {
            headline: 'Which instructions does the processor know?',
            what: 'The instruction levels of the processor are not recorded, so this fit is not judged.',
            findOut: "Read them on the processor maker's sheet.",
          },
  },

  examples: [
    {
      title: 'exactly the level that the processor ends at',
      parts: {
        processor: { levels: ['x86-64', 'x86-64-v2', 'x86-64-v3'] },
        'operating-system': { level: 'x86-64-v3' },
      },
      verdict: 'fits',
    },
    {
      title: 'one level more',
      parts: { processor: { levels: ['x86-64', 'x86-64-v2'] }, 'operating-system': { level: 'x86-64-v3' } },
      verdict: 'does-not-fit',
    },
    {
      title: 'a plug-in board brings the level',
      shelf: 'vintage',
      parts: {
        processor: { levels: ['x86-16'] },
        'processor-board': { levels: ['x86-16', 'x86-32'] },
        'operating-system': { level: 'x86-32' },
      },
      verdict: 'fits',
    },
    {
      title: 'the processor does not say',
      parts: { processor: { levels: undefined }, 'operating-system': { level: 'x86-64' } },
      verdict: 'cannot-tell',
    },
    {
      title: 'the system does not say',
      parts: { processor: { levels: ['x86-64'] }, 'operating-system': { level: undefined } },
      verdict: 'cannot-tell',
    },
    { title: 'no system on the list', parts: { processor: { levels: ['x86-64'] } }, verdict: 'does-not-apply' },
  ],
});
