import { pcieGenerations, pcieMBps } from '../../../standards/pcie.ts';
import { showMBps } from '../../../units/amounts.ts';
import { spelled } from '../../../wording/phrases.ts';
import { cannotTell, doesNotApply, doesNotFit, fits, jointRule } from '../../rule.ts';
import { partAs } from '../ends.ts';
import { lacks } from '../words.ts';

export const linkWidth = jointRule({
  id: 'expansion/link-width',
  title: 'The slot carries as much as the card can',
  severity: 'limit',
  basis: 'standard',
  sources: ['pci-express-base'],
  lesson: 'fit/choosing-for-a-purpose',

  at: 'expansion-slot',
  reads: { 'graphics-card': ['lanes', 'generation'] },
  judge({ need, place }) {
    const card = partAs(need.unit, 'graphics-card');
    if (card === undefined) return doesNotApply;
    if (card.lanes === undefined) return cannotTell(`${need.unit.id}.lanes`);
    if (card.generation === undefined || !(card.generation in pcieGenerations))
      return cannotTell(`${need.unit.id}.generation`);
    const slot = { lanes: Number(place.attrs['lanes']), generation: Number(place.attrs['generation']) };
    if (!(slot.generation in pcieGenerations)) return cannotTell(`${place.unit.id}.generation`);

    const can = pcieMBps(card.lanes, card.generation);
    // The lesser of each: eight lanes at half the speed are not four at full speed.
    const passes = pcieMBps(Math.min(card.lanes, slot.lanes), Math.min(card.generation, slot.generation));
    const less = can - passes;
    const facts = {
      card: card.name,
      board: place.unit.part.name,
      lanes: card.lanes,
      generation: card.generation,
      can,
      passes,
      less,
    };
    return less === 0 ? fits(facts) : doesNotFit(facts);
  },

  say: {
    fits: ({ card, lanes, generation, can }) =>
      `${card} uses ${spelled(lanes, 'lane', 'lanes')} of PCIe generation ${generation}, which is ${showMBps(can)}, and its slot carries all of it.`,
    doesNotFit: ({ card, board, lanes, generation, can, passes, less }) => ({
      headline: `The slot carries ${showMBps(less)} less`,
      what: `${card} uses ${spelled(lanes, 'lane', 'lanes')} of PCIe generation ${generation}, which is ${showMBps(can)}; its slot on ${board} carries ${showMBps(passes)}, so ${showMBps(less)} less.`,
      why: 'Card and slot settle on the most that both can do. The card works; it is slower when a great deal has to go through the slot at once.',
      remedy: `Choose a board with a free x${lanes} slot of generation ${generation}, or a card that uses no more than the slot carries, or leave it as it is.`,
    }),
    cannotTell: (missing) =>
      lacks(missing, 'graphics-card')
        ? {
            headline: 'How fast is the edge of the card?',
            what: "The card's lanes or their generation are not known, so it is not judged whether the slot slows it down.",
            findOut: "Read both on the card's maker's sheet; they are written like this: PCIe 4.0 x16.",
          }
        : {
            headline: 'How fast is the slot?',
            what: 'The generation of the slot is not known, so it is not judged whether it slows the card down.',
            findOut: "Read it on the page on slots in the board's manual; it is written like this: PCIe 4.0 x16.",
          },
  },

  examples: [
    {
      title: 'card and slot are alike',
      parts: {
        'graphics-card': { lanes: 16, generation: 4, slotsThick: 1 },
        motherboard: { expansionSlots: [{ id: 'x16-1', position: 1, lengthLanes: 16, lanes: 16, generation: 4 }] },
      },
      verdict: 'fits',
    },
    {
      title: 'an x8 card in a slot of more lanes and a later generation',
      parts: {
        'graphics-card': { lanes: 8, generation: 3, slotsThick: 1 },
        motherboard: { expansionSlots: [{ id: 'x16-1', position: 1, lengthLanes: 16, lanes: 16, generation: 4 }] },
      },
      verdict: 'fits',
    },
    {
      title: 'an x8 card in a slot of more lanes, a generation behind',
      parts: {
        'graphics-card': { lanes: 8, generation: 4, slotsThick: 1 },
        motherboard: { expansionSlots: [{ id: 'x16-1', position: 1, lengthLanes: 16, lanes: 16, generation: 3 }] },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'half as many lanes, each of them twice as fast as the card can use',
      parts: {
        'graphics-card': { lanes: 16, generation: 3, slotsThick: 1 },
        motherboard: { expansionSlots: [{ id: 'x16-1', position: 1, lengthLanes: 16, lanes: 8, generation: 4 }] },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'an x16 card in a slot wired for x4',
      parts: {
        'graphics-card': { lanes: 16, generation: 4, slotsThick: 1 },
        motherboard: { expansionSlots: [{ id: 'x16-1', position: 1, lengthLanes: 16, lanes: 4, generation: 4 }] },
      },
      verdict: 'does-not-fit',
    },
    {
      title: "the card's generation is not recorded",
      parts: {
        'graphics-card': { lanes: 16, generation: undefined, slotsThick: 1 },
        motherboard: { expansionSlots: [{ id: 'x16-1', position: 1, lengthLanes: 16, lanes: 16, generation: 4 }] },
      },
      verdict: 'cannot-tell',
    },
    { title: 'a card and no board', parts: { 'graphics-card': { lanes: 16 } }, verdict: 'does-not-apply' },
  ],
});
