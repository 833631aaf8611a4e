import { showMBps } from '../../../units/amounts.ts';
import { doesNotApply, doesNotFit, fits, jointRule } from '../../rule.ts';
import { partAs } from '../ends.ts';

export const busWidth = jointRule({
  id: 'expansion/bus-width',
  title: 'The slot is as fast as the bus that the card is built for',
  severity: 'note',
  basis: 'standard',
  sources: ['bus-peaks'],
  lesson: 'fit/choosing-for-a-purpose',

  at: 'expansion-slot',
  reads: { 'bus-card': [] },
  judge({ need, place, lost }) {
    const card = partAs(need.unit, 'bus-card');
    if (card === undefined || need.attrs['bus'] === undefined) return doesNotApply;
    const facts = { card: card.name, board: place.unit.part.name, less: lost['busMBps'] ?? 0 };
    return facts.less === 0 ? fits(facts) : doesNotFit(facts);
  },

  say: {
    fits: ({ card }) => `${card} is in a slot as fast as it can use.`,
    doesNotFit: ({ card, board, less }) => ({
      headline: `The slot carries ${showMBps(less)} less`,
      what: `${card} could use ${showMBps(less)} more, at the very most, than its slot on ${board} carries.`,
      why: 'In a short slot a 16-bit card works with half of its edge, so everything takes two turns. It works, and it is slower.',
      remedy: 'Move it to a long slot if one can be freed, or leave it as it is.',
    }),
    cannotTell: () => ({
      headline: 'Is the slot as fast as the card?',
      what: 'The bus of the card is not recorded, so this is not judged.',
      findOut: 'Compare the edge of the card with the slot.',
    }),
  },

  examples: [
    {
      title: 'a 16-bit card in a long slot, though a short one is free',
      shelf: 'vintage',
      parts: { 'bus-card': { buses: ['isa-16', 'isa-16-short'] }, motherboard: {} },
      verdict: 'fits',
    },
    {
      title: 'a 16-bit card in a short slot',
      shelf: 'vintage',
      parts: {
        'bus-card': { buses: ['isa-16', 'isa-16-short'], lines: [], settings: [] },
        motherboard: { busSlots: [{ id: 'short-1', position: 1, buses: ['isa-8'] }] },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'a PCIe card says this of itself',
      parts: { 'graphics-card': {}, motherboard: {} },
      verdict: 'does-not-apply',
    },
  ],
});
