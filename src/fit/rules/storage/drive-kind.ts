import { list } from '../../../wording/phrases.ts';
import { cannotTell, doesNotApply, doesNotFit, fits, gathersRule } from '../../rule.ts';
import { joined } from '../ends.ts';

export const driveKind = gathersRule({
  id: 'storage/drive-kind',
  title: 'There is a drive without moving parts for the system',
  severity: 'note',
  basis: 'practice',
  sources: ['common-practice'],
  lesson: 'fit/choosing-for-a-purpose',

  gathers: { 'storage-drive': ['isSolidState'] },
  sees: ['module-slot', 'drive-data'],
  judge({ 'storage-drive': listed }, { joints }) {
    const drives = joined(listed, joints);
    if (drives.length === 0) return doesNotApply;
    const solid = drives.find(({ isSolidState }) => isSolidState === true);
    const facts = { solid: solid?.name ?? null, spinning: [...new Set(drives.map(({ name }) => name))] };
    if (solid) return fits(facts, [solid.unit]);
    const unknown = drives.filter(({ isSolidState }) => isSolidState === undefined);
    if (unknown.length > 0) return cannotTell(...unknown.map(({ unit }) => `${unit}.isSolidState`));
    return doesNotFit(
      facts,
      drives.map(({ unit }) => unit),
    );
  },

  say: {
    fits: ({ solid }) => `${solid} has no moving parts and can hold the system.`,
    doesNotFit: ({ spinning }) => ({
      headline: 'The system would be on spinning discs',
      what: `The list has ${list(spinning)} and no drive without moving parts.`,
      why: 'A system reads thousands of small files from all over the drive, and an arm over spinning discs goes to each of them in turn. The machine works; it starts and opens things slowly.',
      remedy:
        'The system should be on a drive without moving parts. Add a small one for it and keep the discs for files, or leave it as it is.',
    }),
    cannotTell: () => ({
      headline: 'Has the drive moving parts?',
      what: 'Whether a drive has spinning discs is not recorded, so this is not judged.',
      findOut: 'Read the label: one that names revolutions a minute spins; SSD says that it has no moving parts.',
    }),
  },

  examples: [
    {
      title: 'a drive without moving parts',
      parts: { 'storage-drive': { isSolidState: true }, motherboard: {} },
      verdict: 'fits',
    },
    {
      title: 'spinning discs beside it',
      parts: {
        'storage-drive': [{ isSolidState: true }, { build: '3.5', isSolidState: false }],
        motherboard: {},
      },
      verdict: 'fits',
    },
    {
      title: 'spinning discs alone',
      parts: { 'storage-drive': { build: '3.5', isSolidState: false }, motherboard: {} },
      verdict: 'does-not-fit',
    },
    {
      title: 'not recorded whether it spins',
      parts: { 'storage-drive': { build: '3.5', isSolidState: undefined }, motherboard: {} },
      verdict: 'cannot-tell',
    },
    {
      title: 'a drive and no board',
      parts: { 'storage-drive': { build: '3.5', isSolidState: false } },
      verdict: 'does-not-apply',
    },
  ],
});
