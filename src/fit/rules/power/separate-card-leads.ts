import { capital, count, spelled } from '../../../wording/phrases.ts';
import type { Joint } from '../../model.ts';
import { cannotTell, doesNotApply, doesNotFit, fits, gathersRule } from '../../rule.ts';

/** `power-supply-1/lead-card-1` of its second plug. */
const leadOf = ({ place }: Joint): string => place.replace(/-plug-\d+$/, '');

export const separateCardLeads = gathersRule({
  id: 'power/separate-card-leads',
  title: 'Each power socket of a card has a lead of its own',
  severity: 'limit',
  basis: 'practice',
  sources: ['common-practice'],
  lesson: 'fit/how-parts-meet',

  gathers: { 'graphics-card': ['powerSockets'], 'power-supply': ['leads'] },
  sees: ['card-power'],
  judge({ 'graphics-card': cards, 'power-supply': supplies }, { joints }) {
    if (cards.length === 0 || supplies.length === 0) return doesNotApply;
    const unlisted = supplies.filter(({ leads }) => leads === undefined);
    const plugged = joints.filter(({ place }) => supplies.some(({ unit }) => place.startsWith(`${unit}/`)));
    if (plugged.length === 0) {
      const wants = cards.some(({ powerSockets = [] }) => powerSockets.length > 0);
      return wants && unlisted.length > 0 ? cannotTell(...unlisted.map(({ unit }) => `${unit}.leads`)) : doesNotApply;
    }
    const leads = new Set(plugged.map(leadOf)).size;
    const supply = supplies.find(({ unit }) => plugged.some(({ place }) => place.startsWith(`${unit}/`)));
    const facts = { supply: supply?.name ?? '', plugs: plugged.length, leads, short: plugged.length - leads };
    const fed = cards.filter(({ unit }) => plugged.some(({ need }) => need.startsWith(`${unit}/`)));
    const about = [...(supply ? [supply.unit] : []), ...fed.map(({ unit }) => unit)];
    return facts.short === 0 ? fits(facts, about) : doesNotFit(facts, about);
  },

  say: {
    fits: ({ supply, plugs }) =>
      plugs === 1
        ? `One plug of ${supply} feeds the card, on a lead of its own.`
        : `Each of the ${spelled(plugs, 'plug', 'plugs')} that feed the card is on a lead of its own.`,
    doesNotFit: ({ supply, plugs, leads, short }) => ({
      headline: `${count(plugs, 'card plug', 'card plugs')} on ${count(leads, 'lead', 'leads')}`,
      what: `${capital(spelled(plugs, 'plug', 'plugs'))} feed the card, from ${spelled(leads, 'lead', 'leads')} of ${supply}, so ${spelled(short, 'plug shares', 'plugs share')} a lead with another.`,
      why: 'All that two plugs draw comes through the wires and the contacts of one lead; they get warmer, and the voltage at the card falls a little.',
      remedy: `It works while the lead carries both. A lead for each socket should be used where there is one: choose a supply with ${spelled(plugs, 'lead', 'leads')} for cards, or a card with fewer sockets.`,
    }),
    cannotTell: () => ({
      headline: 'Has each card plug its own lead?',
      what: "The supply's leads are not recorded, so it is not judged whether the sockets of the card share one.",
      findOut: 'Count the leads with card plugs that leave the supply. Leave the supply itself closed.',
    }),
  },

  examples: [
    {
      title: 'two sockets and two leads of two plugs',
      parts: {
        'graphics-card': { powerSockets: ['pcie-8', 'pcie-8'] },
        'power-supply': {
          leads: [
            { id: 'card-1', plugs: ['pcie-8', 'pcie-8'], carriesW: 300 },
            { id: 'card-2', plugs: ['pcie-8', 'pcie-8'], carriesW: 300 },
          ],
        },
      },
      verdict: 'fits',
    },
    {
      title: 'two sockets and one lead of two plugs',
      parts: {
        'graphics-card': { powerSockets: ['pcie-8', 'pcie-8'] },
        'power-supply': { leads: [{ id: 'card-1', plugs: ['pcie-8', 'pcie-8'], carriesW: 300 }] },
      },
      verdict: 'does-not-fit',
    },
    {
      title: "the supply's leads are not recorded",
      parts: { 'graphics-card': { powerSockets: ['pcie-8', 'pcie-8'] }, 'power-supply': { leads: undefined } },
      verdict: 'cannot-tell',
    },
    {
      title: 'a card that needs no lead',
      parts: {
        'graphics-card': { powerSockets: [] },
        'power-supply': { leads: [{ id: 'card-1', plugs: ['pcie-8', 'pcie-8'], carriesW: 300 }] },
      },
      verdict: 'does-not-apply',
    },
  ],
});
