import { showDeciwatts } from '../../../units/amounts.ts';
import { capital, inWords, spelled, withArticle } from '../../../wording/phrases.ts';
import { termName } from '../../../wording/terms.ts';
import { leftRule } from '../../rule.ts';
import { lacks } from '../words.ts';

/** "a SATA power plug", "two SATA power plugs". */
const plugs = (n: number, plug: string): string =>
  n === 1 ? withArticle(termName(plug)) : spelled(n, termName(plug), `${termName(plug)}s`);

export const driveLeads = leftRule({
  id: 'power/drive-leads',
  title: 'A lead of the supply feeds every drive in a box',
  severity: 'blocker',
  basis: 'maker',
  sources: ['maker-data-sheet', 'sata'],
  lesson: 'fit/how-parts-meet',

  left: 'drive-power',
  plugTest: { need: 'plug', place: 'plug' },

  say: {
    fits: ({ part, needName }) => `${part} gets its ${termName(needName)} from the supply.`,
    doesNotFit: ({ part, needName, reason, mating, wanting, capacity, wanted }) =>
      reason === 'spent' && capacity !== null && wanted !== null
        ? {
            headline: `The drives' lead is ${showDeciwatts(wanted - capacity)} short`,
            what: `With ${part} on it, the lead would have to carry ${showDeciwatts(wanted)}; it carries ${showDeciwatts(capacity)}, so that is ${showDeciwatts(wanted - capacity)} too much.`,
            why: 'All plugs on one lead share what the lead can carry, and drives draw the most while they spin up, all at once.',
            remedy:
              'Choose a supply with one more lead for drives, or take one drive off the list, or choose one in its place that needs no lead.',
          }
        : {
            headline: `${capital(termName(needName))}s: ${wanting} wanted, ${mating} there`,
            what: `The list needs ${plugs(wanting, needName)} and has ${mating === 0 ? 'none' : inWords(mating)}, so ${part} is left without.`,
            why: 'A drive without its power lead stays still, and the machine does not see it.',
            remedy: `Choose a supply with ${plugs(wanting, needName)}, or take one drive off the list, or choose one in its place that needs no lead.`,
          },
    cannotTell: (missing) =>
      lacks(missing, 'power-supply')
        ? {
            headline: 'Which leads come out of the supply?',
            what: "The supply's leads are not recorded, so it is not judged whether they feed the drives.",
            findOut:
              "Read the table of leads on the supply's box: these plugs are marked SATA. Leave the supply itself closed.",
          }
        : {
            headline: 'Is there a lead for every drive?',
            what: 'Not every way of sharing out the plugs was tried, so this is not judged.',
            findOut: 'Give each drive a plug, one by one, the strongest drive first on a lead of its own.',
          },
  },

  examples: [
    {
      title: 'two drives and two plugs',
      parts: {
        'storage-drive': [
          { build: '3.5', milliwatts: 27000 },
          { build: '3.5', milliwatts: 27000 },
        ],
        'power-supply': { leads: [{ id: 'drives-1', plugs: ['sata-power', 'sata-power'], carriesW: 54 }] },
      },
      verdict: 'fits',
    },
    {
      title: 'a tenth of a watt more than the lead carries',
      parts: {
        'storage-drive': [
          { build: '3.5', milliwatts: 27000 },
          { build: '3.5', milliwatts: 27100 },
        ],
        'power-supply': { leads: [{ id: 'drives-1', plugs: ['sata-power', 'sata-power'], carriesW: 54 }] },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'two drives and one plug',
      parts: {
        'storage-drive': [
          { build: '2.5', milliwatts: 3600 },
          { build: '2.5', milliwatts: 3600 },
        ],
        'power-supply': { leads: [{ id: 'drives-1', plugs: ['sata-power'], carriesW: 54 }] },
      },
      verdict: 'does-not-fit',
    },
    {
      title: "the supply's leads are not recorded",
      parts: { 'storage-drive': { build: '2.5' }, 'power-supply': { leads: undefined } },
      verdict: 'cannot-tell',
    },
    {
      title: 'an M.2 drive needs no lead',
      parts: { 'storage-drive': { build: 'm2' }, 'power-supply': { leads: [] } },
      verdict: 'does-not-apply',
    },
  ],
});
