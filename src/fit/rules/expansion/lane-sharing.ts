import { spelled } from '../../../wording/phrases.ts';
import { placeName } from '../../../wording/places.ts';
import { cannotTell, doesNotApply, doesNotFit, fits, gathersRule } from '../../rule.ts';
import { rootOf } from '../ends.ts';

export const laneSharing = gathersRule({
  id: 'expansion/lane-sharing',
  title: 'No card loses lanes to a slot beside it',
  severity: 'limit',
  basis: 'maker',
  sources: ['maker-data-sheet'],
  lesson: 'fit/choosing-for-a-purpose',

  gathers: { 'graphics-card': ['lanes'], 'expansion-card': ['lanes'], motherboard: ['expansionSlots'] },
  sees: ['expansion-slot'],
  judge({ 'graphics-card': pictures, 'expansion-card': others, motherboard: boards }, { joints }) {
    const board = boards[0];
    const place = (slot: string) => `${board?.unit}/expansion-slot-${slot}`;
    const cards = [...pictures, ...others];
    const sharing = (board?.expansionSlots ?? []).flatMap((slot) => {
      const { shares } = slot;
      if (!shares || !joints.some((joint) => joint.place === place(shares.slot))) return [];
      const card = cards.find(({ unit }) =>
        joints.some((joint) => joint.need.startsWith(`${unit}/`) && rootOf(joint, joints).place === place(slot.id)),
      );
      return card ? [{ slot: slot.id, beside: shares.slot, left: shares.lanes, full: slot.lanes, card }] : [];
    });
    if (board === undefined || sharing.length === 0) return doesNotApply;

    const unknown = sharing.filter(({ card }) => card.lanes === undefined);
    // What a card would have in the slot alone, against what is left.
    const short = sharing.filter(({ card, left, full }) => Math.min(card.lanes ?? 0, full) > left);
    const [told] = short.length > 0 ? short : sharing;
    if (told === undefined || (short.length === 0 && unknown.length > 0))
      return cannotTell(...unknown.map(({ card }) => `${card.unit}.lanes`));
    const facts = {
      card: told.card.name,
      board: board.name,
      slot: placeName('expansion-slot', place(told.slot)),
      beside: placeName('expansion-slot', place(told.beside)),
      uses: Math.min(told.card.lanes ?? 0, told.full),
      left: told.left,
    };
    return short.length === 0 ? fits(facts) : doesNotFit(facts, [...short.map(({ card }) => card.unit), board.unit]);
  },

  say: {
    fits: ({ card, uses }) => `${card} keeps ${spelled(uses, 'lane', 'lanes')}, though the slot beside it is used.`,
    doesNotFit: ({ card, board, slot, beside, uses, left }) => ({
      headline: `The card has ${left} of ${uses} lanes`,
      what: `${card} uses ${spelled(uses, 'lane', 'lanes')}; on ${board} ${slot} has ${left} of them while ${beside} is used.`,
      why: 'The processor has one set of lanes for the two slots and divides it when both hold a card. Both cards work; this one is slower when a great deal has to go through its slot at once.',
      remedy: `Move the card in ${beside} to a slot that shares with no other, or choose a board with lanes for both, or leave it as it is.`,
    }),
    cannotTell: () => ({
      headline: 'Does the card lose lanes?',
      what: 'The lanes of a card are not recorded, so it is not judged whether it loses some to the slot beside it.',
      findOut: "Read them on the card's maker's sheet; they are written like this: PCIe 4.0 x16.",
    }),
  },

  examples: [
    {
      title: 'a card of eight lanes keeps them all',
      parts: {
        'graphics-card': { lanes: 8, slotsThick: 1 },
        'expansion-card': { lanes: 8, lengthMm: 150 },
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
      title: 'a card of sixteen lanes has eight while the second slot is used',
      parts: {
        'graphics-card': { lanes: 16, slotsThick: 1 },
        'expansion-card': { lanes: 8, lengthMm: 150 },
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
      verdict: 'does-not-fit',
    },
    {
      title: 'the lanes of the card are not recorded',
      parts: {
        'graphics-card': { lanes: undefined, slotsThick: 1 },
        'expansion-card': { lanes: 8, lengthMm: 150 },
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
            { id: 'x16-2', position: 3, lengthLanes: 8, lanes: 8, generation: 4 },
          ],
        },
      },
      verdict: 'cannot-tell',
    },
    {
      title: 'a capture card in the slot that gives its lanes away',
      parts: {
        'graphics-card': { lanes: 16, slotsThick: 1 },
        'expansion-card': { role: 'capture', lanes: 4, slotsThick: 1, lengthMm: 150 },
        motherboard: {
          expansionSlots: [
            { id: 'x16-1', position: 1, lengthLanes: 16, lanes: 16, generation: 4 },
            { id: 'x4-1', position: 3, lengthLanes: 4, lanes: 4, generation: 4, shares: { slot: 'x16-1', lanes: 1 } },
          ],
        },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'the second slot is empty',
      parts: {
        'graphics-card': { lanes: 16, slotsThick: 1 },
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
      verdict: 'does-not-apply',
    },
  ],
});
