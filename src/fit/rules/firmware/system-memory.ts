import { showMemory } from '../../../units/amounts.ts';
import { cannotTell, doesNotApply, doesNotFit, fits, gathersRule } from '../../rule.ts';
import { joined } from '../ends.ts';
import { lacks } from '../words.ts';

const kibInGib = 1_048_576;
const kibInMib = 1024;

export const systemMemory = gathersRule({
  id: 'firmware/system-memory',
  title: 'There is as much memory as the operating system asks for',
  severity: 'blocker',
  basis: 'maker',
  sources: ['maker-data-sheet'],
  lesson: 'fit/choosing-for-a-purpose',

  gathers: { 'memory-module': ['capacityGb'], 'bank-module': ['capacityKb'], 'operating-system': ['memoryMb'] },
  sees: ['memory-slot', 'memory-bank'],
  judge({ 'memory-module': modules, 'bank-module': older, 'operating-system': systems }, { joints }) {
    const system = systems[0];
    const memory = [
      ...joined(modules, joints).map(({ unit, capacityGb }) => ({
        unit,
        field: 'capacityGb',
        kib: capacityGb === undefined ? undefined : capacityGb * kibInGib,
      })),
      ...joined(older, joints).map(({ unit, capacityKb }) => ({ unit, field: 'capacityKb', kib: capacityKb })),
    ];
    if (system === undefined || memory.length === 0) return doesNotApply;
    if (system.memoryMb === undefined) return cannotTell(`${system.unit}.memoryMb`);

    const wanted = system.memoryMb * kibInMib;
    const total = memory.reduce((sum, { kib }) => sum + (kib ?? 0), 0);
    const facts = { system: system.name, wanted, total, short: Math.max(0, wanted - total) };
    const about = [...memory.map(({ unit }) => unit), system.unit];
    if (total >= wanted) return fits(facts, about);
    const unknown = memory.filter(({ kib }) => kib === undefined);
    if (unknown.length > 0) return cannotTell(...unknown.map(({ unit, field }) => `${unit}.${field}`));
    return doesNotFit(facts, about);
  },

  say: {
    fits: ({ system, wanted, total }) =>
      `${system} asks for ${showMemory(wanted)} of memory; the machine has ${showMemory(total)}.`,
    doesNotFit: ({ system, wanted, total, short }) => ({
      headline: `${showMemory(short)} too little memory`,
      what: `${system} asks for ${showMemory(wanted)} of memory; the machine has ${showMemory(total)}, so ${showMemory(short)} too little.`,
      why: 'The system stops while it is put on, or loads halfway and stops.',
      remedy: `Choose memory of ${showMemory(wanted)} or more in all, or a system that asks for ${showMemory(total)} or less.`,
    }),
    cannotTell: (missing) =>
      lacks(missing, 'operating-system')
        ? {
            headline: 'How much memory does the system ask for?',
            what: 'The memory that the operating system asks for is not recorded, so this is not judged.',
            findOut: "Read what the system asks of a machine on its maker's page or on its box.",
          }
        : {
            headline: 'How much memory is it in all?',
            what: 'The size of a module is not recorded, so it is not judged whether there is enough memory for the system.',
            findOut: 'Read the label on each module. Then add them up.',
          },
  },

  examples: [
    {
      title: 'exactly as much as it asks for',
      parts: {
        'memory-module': [{ capacityGb: 4 }, { capacityGb: 4 }],
        motherboard: {},
        'operating-system': { memoryMb: 8192 },
      },
      verdict: 'fits',
    },
    {
      title: 'a megabyte more asked for',
      parts: {
        'memory-module': [{ capacityGb: 4 }, { capacityGb: 4 }],
        motherboard: {},
        'operating-system': { memoryMb: 8193 },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'one size not recorded, and the rest enough',
      parts: {
        'memory-module': [{ capacityGb: 8 }, { capacityGb: undefined }],
        motherboard: {},
        'operating-system': { memoryMb: 8192 },
      },
      verdict: 'fits',
    },
    {
      title: 'one size not recorded, and the rest too little',
      parts: {
        'memory-module': [{ capacityGb: 4 }, { capacityGb: undefined }],
        motherboard: {},
        'operating-system': { memoryMb: 8192 },
      },
      verdict: 'cannot-tell',
    },
    {
      title: 'a bank of four modules, a kilobyte a module too small',
      shelf: 'vintage',
      parts: {
        'bank-module': [{ capacityKb: 255 }, { capacityKb: 255 }, { capacityKb: 255 }, { capacityKb: 255 }],
        motherboard: {},
        'operating-system': { memoryMb: 1 },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'a bank of four modules, exactly as much as it asks for',
      shelf: 'vintage',
      parts: {
        'bank-module': [{ capacityKb: 256 }, { capacityKb: 256 }, { capacityKb: 256 }, { capacityKb: 256 }],
        motherboard: {},
        'operating-system': { memoryMb: 1 },
      },
      verdict: 'fits',
    },
    {
      title: 'not recorded what the system asks for',
      parts: { 'memory-module': {}, motherboard: {}, 'operating-system': { memoryMb: undefined } },
      verdict: 'cannot-tell',
    },
    { title: 'no system on the list', parts: { 'memory-module': {}, motherboard: {} }, verdict: 'does-not-apply' },
  ],
});
