import { showDeciwatts } from '../../../units/amounts.ts';
import { capital, inWords, spelled, withArticle } from '../../../wording/phrases.ts';
import { termName } from '../../../wording/terms.ts';
import { leftRule } from '../../rule.ts';
import { lacks } from '../words.ts';

/** "an 8-pin card plug", "two 8-pin card plugs". */
const plugs = (n: number, plug: string): string =>
  n === 1 ? withArticle(termName(plug)) : spelled(n, termName(plug), `${termName(plug)}s`);

export const cardLeads = leftRule({
  id: 'power/card-leads',
  title: 'A lead of the supply feeds every power socket of a card',
  severity: 'blocker',
  basis: 'maker',
  sources: ['maker-data-sheet', 'atx-3-design-guide'],
  lesson: 'fit/how-parts-meet',

  left: 'card-power',
  plugTest: { need: 'plug', place: 'plug' },

  say: {
    fits: ({ part, needName }) => `${part} gets its ${termName(needName)} from the supply.`,
    doesNotFit: ({ part, needName, reason, mating, wanting, capacity, wanted }) =>
      reason === 'spent' && capacity !== null && wanted !== null
        ? {
            headline: `The card's lead is ${showDeciwatts(wanted - capacity)} short`,
            what: `The sockets of ${part} may draw ${showDeciwatts(wanted)} through one lead; that lead carries ${showDeciwatts(capacity)}, so that is ${showDeciwatts(wanted - capacity)} too much.`,
            why: 'Two plugs on one lead share what the lead can carry; beyond that its wires and contacts get hot.',
            remedy:
              'Choose a supply with one more lead for cards, so that each socket has a lead of its own, or a card with fewer sockets.',
          }
        : {
            headline: `${capital(termName(needName))}s: ${wanting} wanted, ${mating} there`,
            what: `${part} needs ${plugs(wanting, needName)}; the list has ${mating === 0 ? 'none' : inWords(mating)}.`,
            why: 'A card with an empty power socket does not start, or stops as soon as it has work to do.',
            remedy: `Choose a supply with ${plugs(wanting, needName)}, or a card that needs ${wanting === 1 ? 'none' : 'fewer'}.`,
          },
    cannotTell: (missing) =>
      lacks(missing, 'graphics-card')
        ? {
            headline: 'Which power sockets has the card?',
            what: "The graphics card's power sockets are not recorded, so its leads are not judged.",
            findOut:
              'Look at the edge of the card away from the contacts: count the sockets and the holes in each. None at all is an answer too.',
          }
        : {
            headline: 'Which leads come out of the supply?',
            what: "The supply's leads are not recorded, so it is not judged whether they feed the graphics card.",
            findOut:
              "Read the table of leads on the supply's box: these plugs are marked PCIe. Leave the supply itself closed.",
          },
  },

  examples: [
    {
      title: 'two sockets and two leads',
      parts: {
        'graphics-card': { powerSockets: ['pcie-8', 'pcie-8'] },
        'power-supply': {
          leads: [
            { id: 'card-1', plugs: ['pcie-8'], carriesW: 150 },
            { id: 'card-2', plugs: ['pcie-8'], carriesW: 150 },
          ],
        },
      },
      verdict: 'fits',
    },
    {
      title: 'two sockets and one plug',
      parts: {
        'graphics-card': { powerSockets: ['pcie-8', 'pcie-8'] },
        'power-supply': { leads: [{ id: 'card-1', plugs: ['pcie-8'], carriesW: 150 }] },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'two plugs on one lead that carries exactly both',
      parts: {
        'graphics-card': { powerSockets: ['pcie-8', 'pcie-8'] },
        'power-supply': { leads: [{ id: 'card-1', plugs: ['pcie-8', 'pcie-8'], carriesW: 300 }] },
      },
      verdict: 'fits',
    },
    {
      title: 'two plugs on one lead that carries a watt less than both',
      parts: {
        'graphics-card': { powerSockets: ['pcie-8', 'pcie-8'] },
        'power-supply': { leads: [{ id: 'card-1', plugs: ['pcie-8', 'pcie-8'], carriesW: 299 }] },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'a 6-pin plug does not feed an 8-pin socket',
      parts: {
        'graphics-card': { powerSockets: ['pcie-8'] },
        'power-supply': { leads: [{ id: 'card-1', plugs: ['pcie-6'], carriesW: 75 }] },
      },
      verdict: 'does-not-fit',
    },
    {
      title: "the card's sockets are not recorded",
      parts: {
        'graphics-card': { powerSockets: undefined },
        'power-supply': { leads: [{ id: 'card-1', plugs: ['pcie-8'], carriesW: 150 }] },
      },
      verdict: 'cannot-tell',
    },
    {
      title: "the supply's leads are not recorded",
      parts: { 'graphics-card': { powerSockets: ['pcie-8'] }, 'power-supply': { leads: undefined } },
      verdict: 'cannot-tell',
    },
    {
      title: 'a card that needs no lead',
      parts: {
        'graphics-card': { powerSockets: [] },
        'power-supply': { leads: [{ id: 'card-1', plugs: ['pcie-8'], carriesW: 150 }] },
      },
      verdict: 'does-not-apply',
    },
  ],
});
