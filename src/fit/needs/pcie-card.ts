/** What every card for a PCIe slot needs: the slot, and leads for its power sockets. */
import type { PartOf } from '../../parts/part.ts';
import { plugRatings } from '../../standards/plugs.ts';
import type { Need, UnitId, Unrecorded } from '../model.ts';
import { deciwatts, drawing, halfSlots, linkMBps } from './amounts.ts';
import { kindOfPlug } from './power-supply.ts';

type Card = Pick<
  PartOf<'graphics-card'> | PartOf<'expansion-card'>,
  'lanes' | 'generation' | 'slotsThick' | 'powerSockets' | 'sustainedW'
>;
type Plug = NonNullable<Card['powerSockets']>[number];

export function cardNeeds(id: UnitId, part: Card): { edge: Need; power: Need[]; unrecorded: Unrecorded[] } {
  const { lanes, generation, slotsThick, powerSockets } = part;
  const busMBps = linkMBps(lanes, generation);
  const edge: Need = {
    id: `${id}/edge`,
    part: id,
    kind: 'expansion-slot',
    left: 'blocker',
    attrs: { bus: 'pcie', lanes, generation },
    draws: {
      ...(busMBps === undefined ? {} : { busMBps }),
      ...(slotsThick === undefined ? {} : { halfSlots: halfSlots(slotsThick) }),
    },
  };
  const power = (powerSockets ?? []).map(
    (plug, index): Need => ({
      id: `${id}/power-${index + 1}`,
      part: id,
      kind: kindOfPlug[plug],
      left: 'blocker',
      attrs: { plug, ...(kindOfPlug[plug] === 'card-power' ? { drawsW: drawsW(plug, part) } : {}) },
      ...drawing('leadDeciwatts', leadDeciwatts(plug, part)),
    }),
  );
  const unrecorded: Unrecorded[] = [];
  if (slotsThick === undefined)
    unrecorded.push({ kind: 'expansion-slot', part: id, field: `${id}.slotsThick`, of: 'draws' });
  if (!powerSockets) unrecorded.push({ kind: 'card-power', part: id, field: `${id}.powerSockets`, of: 'needs' });
  return { edge, power, unrecorded };
}

/** Only the 16-pin plug comes in several strengths. */
const drawsW = (plug: Plug, { sustainedW }: Card) => (plug === '12v-2x6' ? sustainedW : null);

/**
 * Deciwatts a socket may draw from its lead: a 6-pin or 8-pin socket what its plug is rated for, any other the card's
 * own steady power, as far as the plug bears it.
 */
function leadDeciwatts(plug: Plug, { sustainedW }: Card): number | undefined {
  if (plug === 'pcie-6' || plug === 'pcie-8') return deciwatts(plugRatings[plug].watts);
  return sustainedW === undefined ? undefined : deciwatts(Math.min(sustainedW, plugRatings[plug].watts));
}
