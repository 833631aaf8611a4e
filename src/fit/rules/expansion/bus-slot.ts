import { withArticle } from '../../../wording/phrases.ts';
import type { Fact } from '../../report.ts';
import { refusesRule } from '../../rule.ts';
import { lacks, oneOf } from '../words.ts';

const isPci = (value: Fact): boolean => [value].flat().some((bus) => bus === 'pci-5v' || bus === 'pci-3v');

export const busSlot = refusesRule({
  id: 'expansion/bus-slot',
  title: 'The card is built for the bus of a slot',
  severity: 'blocker',
  basis: 'standard',
  sources: ['bus-peaks', 'pci-express-cem'],
  lesson: 'fit/how-parts-meet',

  refuses: { kind: 'expansion-slot', op: 'shares', need: 'bus', place: 'bus' },

  say: {
    fits: ({ part, on, need }) => `${part} is ${withArticle(oneOf(need))} card, and ${on} has a slot for it.`,
    doesNotFit: ({ part, on, need, offered }) => ({
      headline: 'No slot of the bus that it needs',
      what: `${part} is ${withArticle(oneOf(need))} card; the slot left on ${on} takes ${oneOf(offered)}.`,
      why:
        isPci(need) && isPci(offered)
          ? 'The key in the slot stands where a card for the other voltage has no notch, so it does not go in, and it must not be filed to.'
          : 'The edge of the card has contacts that the slot has not, or the key of the slot stands in its way.',
      remedy: `Choose ${withArticle(oneOf(offered))} card, or a board with ${withArticle(oneOf(need))} slot.`,
    }),
    cannotTell: (missing) =>
      lacks(missing, 'bus-card')
        ? {
            headline: 'Which slot is the card for?',
            what: "The card's bus is not recorded, so this fit is not judged.",
            findOut: 'Look at its edge: one row of contacts is 8-bit ISA, two rows in line are 16-bit.',
          }
        : {
            headline: 'Which slot is the card for?',
            what: 'The bus of the card or of the slot is not recorded, so this fit is not judged.',
            findOut: 'Compare the edge of the card with the slot: length, colour, and where the key stands.',
          },
  },

  examples: [
    {
      title: 'an 8-bit card in a 16-bit slot',
      shelf: 'vintage',
      parts: {
        'bus-card': { buses: ['isa-8'] },
        motherboard: { busSlots: [{ id: 'long-1', position: 1, buses: ['isa-8', 'isa-16'] }] },
      },
      verdict: 'fits',
    },
    {
      title: 'a 16-bit card in an 8-bit slot',
      shelf: 'vintage',
      parts: {
        'bus-card': { buses: ['isa-16'] },
        motherboard: { busSlots: [{ id: 'short-1', position: 1, buses: ['isa-8'] }] },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'a 16-bit card that works short',
      shelf: 'vintage',
      parts: {
        'bus-card': { buses: ['isa-16', 'isa-16-short'], lines: [], settings: [] },
        motherboard: { busSlots: [{ id: 'short-1', position: 1, buses: ['isa-8'] }] },
      },
      verdict: 'fits',
    },
    {
      title: 'an EISA slot takes a 16-bit card',
      shelf: 'vintage',
      parts: {
        'bus-card': { buses: ['isa-16'] },
        motherboard: { busSlots: [{ id: 'eisa-1', position: 1, buses: ['isa-8', 'isa-16', 'eisa'] }] },
      },
      verdict: 'fits',
    },
    {
      title: 'a local-bus card on a board without that bus',
      shelf: 'vintage',
      parts: {
        'bus-card': { buses: ['vlb'] },
        motherboard: { busSlots: [{ id: 'eisa-1', position: 1, buses: ['isa-8', 'isa-16', 'eisa'] }] },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'a PCI card keyed for 3.3 V and a slot keyed for 5 V',
      shelf: 'vintage',
      parts: {
        'bus-card': { buses: ['pci-3v'] },
        motherboard: { busSlots: [{ id: 'pci-1', position: 1, buses: ['pci-5v'] }] },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'a PCI card with both notches',
      shelf: 'vintage',
      parts: {
        'bus-card': { buses: ['pci-5v', 'pci-3v'] },
        motherboard: { busSlots: [{ id: 'pci-1', position: 1, buses: ['pci-5v'] }] },
      },
      verdict: 'fits',
    },
    {
      title: 'a PCIe card on a board of about 1990',
      shelf: 'vintage',
      parts: { 'graphics-card': {}, motherboard: {} },
      verdict: 'does-not-fit',
    },
    {
      title: "the card's bus is not recorded",
      shelf: 'vintage',
      parts: { 'bus-card': { buses: undefined }, motherboard: {} },
      verdict: 'cannot-tell',
    },
    { title: 'no card on the list', shelf: 'vintage', parts: { motherboard: {} }, verdict: 'does-not-apply' },
  ],
});
