import { slotPitch } from '../../../standards/boards.ts';
import { showMm } from '../../../units/amounts.ts';
import type { UnitId } from '../../model.ts';
import { slotPlace } from '../../needs/motherboard.ts';
import { cannotTell, doesNotApply, doesNotFit, fits, gathersRule } from '../../rule.ts';

export const nextCard = gathersRule({
  id: 'clearance/next-card',
  title: 'The graphics card has a free slot before the next card',
  severity: 'note',
  basis: 'practice',
  sources: ['common-practice', 'micro-atx-interface'],
  lesson: 'fit/choosing-for-a-purpose',

  gathers: { 'graphics-card': ['slotsThick'], 'expansion-card': ['slotsThick'], motherboard: ['expansionSlots'] },
  sees: ['expansion-slot'],
  judge({ 'graphics-card': graphics, 'expansion-card': others, motherboard: boards }, { joints }) {
    const positions = new Map<string, { board: UnitId; position: number }>(
      boards.flatMap(({ unit, expansionSlots = [] }) =>
        expansionSlots.map(({ id, position }) => [slotPlace(unit, id), { board: unit, position }]),
      ),
    );
    const seated = [...graphics, ...others].flatMap(({ unit, name, slotsThick }) => {
      const joint = joints.find(({ need }) => need === `${unit}/edge`);
      const at = joint && positions.get(joint.place);
      return at ? [{ unit, name, slotsThick, ...at }] : [];
    });
    const drawn = seated.filter(({ unit }) => graphics.some((card) => card.unit === unit));
    const pairs = drawn.flatMap((card) => {
      const below = seated.filter((other) => other.board === card.board && other.position > card.position);
      const next = below.toSorted((a, b) => a.position - b.position)[0];
      return next ? [{ card, next }] : [];
    });
    if (pairs.length === 0) return doesNotApply;
    const unknown = pairs.filter(({ card }) => card.slotsThick === undefined);
    if (unknown.length > 0) return cannotTell(...unknown.map(({ card }) => `${card.unit}.slotsThick`));

    const tightest = pairs
      .map(({ card, next }) => ({ card, next, free: next.position - card.position - (card.slotsThick ?? 0) }))
      .toSorted((a, b) => a.free - b.free)[0];
    if (tightest === undefined) return doesNotApply;
    const { card, next, free } = tightest;
    const facts = { card: card.name, next: next.name, free, gapMm: Math.round(Math.max(0, free) * slotPitch.mm) };
    const about: UnitId[] = [card.unit, next.unit];
    return free >= 1 ? fits(facts, about) : doesNotFit(facts, about);
  },

  say: {
    fits: ({ card, next, gapMm }) => `There are about ${showMm(gapMm)} between ${card} and ${next} for air to come in.`,
    doesNotFit: ({ card, next, free, gapMm }) => ({
      headline: free > 0 ? 'Half a slot for the card to breathe' : 'The cards stand against each other',
      what: `Between ${card} and ${next} there ${free > 0 ? `are about ${showMm(gapMm)}` : 'is no slot left free'}; one free slot is the usual least.`,
      why: 'The fans of a graphics card take their air from the side of the next card; close against it they get little, and the card runs hot and loud.',
      remedy: `One slot should be left free: choose a board whose slots lie farther apart or a thinner card, or leave it as it is, and mind the card's temperature.`,
    }),
    cannotTell: () => ({
      headline: 'How thick is the graphics card?',
      what: "The card's thickness is not recorded, so the room before the next card is not judged.",
      findOut: 'Count the cut-outs that its bracket takes, or measure it: 20 mm is one slot.',
    }),
  },

  examples: [
    {
      title: 'exactly one free slot between them',
      parts: {
        'graphics-card': { slotsThick: 2 },
        'expansion-card': { lanes: 1 },
        motherboard: {
          expansionSlots: [
            { id: 'x16-1', position: 1, lengthLanes: 16, lanes: 16, generation: 4 },
            { id: 'x1-1', position: 4, lengthLanes: 1, lanes: 1, generation: 3 },
          ],
        },
      },
      verdict: 'fits',
    },
    {
      title: 'half a free slot between them',
      parts: {
        'graphics-card': { slotsThick: 2.5 },
        'expansion-card': { lanes: 1 },
        motherboard: {
          expansionSlots: [
            { id: 'x16-1', position: 1, lengthLanes: 16, lanes: 16, generation: 4 },
            { id: 'x1-1', position: 4, lengthLanes: 1, lanes: 1, generation: 3 },
          ],
        },
      },
      verdict: 'does-not-fit',
    },
    {
      title: 'one against the other',
      parts: {
        'graphics-card': { slotsThick: 3 },
        'expansion-card': { lanes: 1 },
        motherboard: {
          expansionSlots: [
            { id: 'x16-1', position: 1, lengthLanes: 16, lanes: 16, generation: 4 },
            { id: 'x1-1', position: 4, lengthLanes: 1, lanes: 1, generation: 3 },
          ],
        },
      },
      verdict: 'does-not-fit',
    },
    {
      title: "the card's thickness is not recorded",
      parts: {
        'graphics-card': { slotsThick: undefined },
        'expansion-card': { lanes: 1 },
        motherboard: {
          expansionSlots: [
            { id: 'x16-1', position: 1, lengthLanes: 16, lanes: 16, generation: 4 },
            { id: 'x1-1', position: 4, lengthLanes: 1, lanes: 1, generation: 3 },
          ],
        },
      },
      verdict: 'cannot-tell',
    },
    {
      title: 'one card only',
      parts: { 'graphics-card': { slotsThick: 2 }, motherboard: {} },
      verdict: 'does-not-apply',
    },
  ],
});
