import { pcieGenerations, pcieMBps } from '../../../standards/pcie.ts';
import { showMBps } from '../../../units/amounts.ts';
import { spelled } from '../../../wording/phrases.ts';
import { cannotTell, doesNotApply, doesNotFit, fits, jointRule } from '../../rule.ts';
import { partAs } from '../ends.ts';
import { lacks } from '../words.ts';

/** `lanes` is 0 for a riser, of which only what it loses is known. */
type Link = {
  card: string;
  board: string;
  lanes: number;
  generation: number;
  can: number;
  passes: number;
  less: number;
};
const bare = { lanes: 0, generation: 0, can: 0, passes: 0 };

export const linkWidth = jointRule({
  id: 'expansion/link-width',
  title: 'The slot carries as much as the card can',
  severity: 'limit',
  basis: 'standard',
  sources: ['pci-express-base'],
  lesson: 'fit/choosing-for-a-purpose',

  at: 'expansion-slot',
  reads: {
    'graphics-card': ['lanes', 'generation'],
    'expansion-card': ['lanes', 'generation'],
    motherboard: ['expansionSlots'],
  },
  judge({ joint, need, place, lost }) {
    const less = lost['busMBps'] ?? 0;
    if (need.unit.part.class === 'adapter' && less > 0)
      return doesNotFit({ ...bare, card: need.unit.part.name, board: place.unit.part.name, less });
    const card = partAs(need.unit, 'graphics-card') ?? partAs(need.unit, 'expansion-card');
    if (card === undefined) return doesNotApply;
    if (card.lanes === undefined) return cannotTell(`${need.unit.id}.lanes`);
    if (card.generation === undefined || !(card.generation in pcieGenerations))
      return cannotTell(`${need.unit.id}.generation`);
    // What the slot has alone: lanes that it gives to the slot beside it are told by expansion/lane-sharing.
    const alone = partAs(place.unit, 'motherboard')?.expansionSlots?.find(
      ({ id, shares }) => shares !== undefined && joint.place === `${place.unit.id}/expansion-slot-${id}`,
    );
    const slot = {
      lanes: alone?.lanes ?? Number(place.attrs['lanes']),
      generation: Number(place.attrs['generation']),
    };
    if (!Number.isInteger(slot.lanes)) return cannotTell(`${place.unit.id}.lanes`);
    if (!(slot.generation in pcieGenerations)) return cannotTell(`${place.unit.id}.generation`);

    const can = pcieMBps(card.lanes, card.generation);
    // The lesser of each: eight lanes at half the speed are not four at full speed.
    const passes = pcieMBps(Math.min(card.lanes, slot.lanes), Math.min(card.generation, slot.generation));
    const facts: Link = {
      card: card.name,
      board: place.unit.part.name,
      lanes: card.lanes,
      generation: card.generation,
      can,
      passes,
      less: can - passes,
    };
    return facts.less === 0 ? fits(facts) : doesNotFit(facts);
  },

  say: {
    fits: ({ card, lanes, generation, can }) =>
      `${card} uses ${spelled(lanes, 'lane', 'lanes')} of PCIe generation ${generation}, which is ${showMBps(can)}, and its slot carries all of it.`,
    doesNotFit: ({ card, board, lanes, generation, can, passes, less }) => ({
      headline: `The slot carries ${showMBps(less)} less`,
      what:
        lanes === 0
          ? `What hangs on ${card} loses ${showMBps(less)} where it goes on to ${board}.`
          : `${card} uses ${spelled(lanes, 'lane', 'lanes')} of PCIe generation ${generation}, which is ${showMBps(can)}; its slot on ${board} carries ${showMBps(passes)}, so ${showMBps(less)} less.`,
      why: 'Card and slot settle on the most that both can do. The card works; it is slower when a great deal has to go through the slot at once.',
      remedy:
        lanes === 0
          ? 'Choose a board with a faster slot free for it, or a card that needs less, or leave it as it is.'
          : `Choose a board with a free x${lanes} slot of generation ${generation}, or a card that uses no more than the slot carries, or leave it as it is.`,
    }),
    cannotTell: (missing) =>
      lacks(missing, 'graphics-card') || lacks(missing, 'expansion-card')
        ? {
            headline: 'How fast is the edge of the card?',
            what: "The card's lanes or their generation are not known, so it is not judged whether the slot slows it down.",
            findOut: "Read both on the card's maker's sheet; they are written like this: PCIe 4.0 x16.",
          }
        : {
            headline: 'How fast is the slot?',
            what: 'The lanes of the slot or their generation are not known, so it is not judged whether it slows the card down.',
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
      title: 'a network card of a later generation than its slot',
      parts: {
        'expansion-card': { lanes: 1, generation: 3, slotsThick: 1 },
        motherboard: { expansionSlots: [{ id: 'x1-1', position: 1, lengthLanes: 1, lanes: 1, generation: 2 }] },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'lanes that it gives to the slot beside it are told elsewhere',
      parts: {
        'graphics-card': { lanes: 16, generation: 4, slotsThick: 1 },
        'expansion-card': { lanes: 8, generation: 4, lengthMm: 150 },
        motherboard: {
          expansionSlots: [
            {
              id: 'x16-1',
              position: 1,
              lengthLanes: 16,
              lanes: 16,
              generation: 4,
              shares: { slot: 'x16-2', lanes: 8 },
            },
            { id: 'x16-2', position: 3, lengthLanes: 16, lanes: 8, generation: 4 },
          ],
        },
      },
      verdict: 'fits',
    },
    {
      title: 'a riser of sixteen lanes on a slot wired for four',
      parts: {
        'graphics-card': { lanes: 16, generation: 3, slotsThick: 1 },
        adapter: {
          form: 'riser',
          ins: [
            {
              id: 'in',
              kind: 'expansion-slot',
              attrs: { bus: 'pcie', lanes: 4, generation: 3 },
              draws: { halfSlots: 2 },
              carries: ['busMBps'],
            },
          ],
          outs: [
            {
              id: 'out',
              kind: 'expansion-slot',
              attrs: { bus: 'pcie', lengthLanes: 16, lanes: 16, generation: 3 },
            },
          ],
        },
        motherboard: { expansionSlots: [{ id: 'x4-1', position: 1, lengthLanes: 4, lanes: 4, generation: 3 }] },
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
