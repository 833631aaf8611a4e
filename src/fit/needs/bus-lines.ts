/** Lines of the bus that a card holds: by jumpers, or for good. */
import type { BusCard } from '../../parts/classes/bus-card.ts';
import { needsLongSlot } from '../../standards/buses.ts';
import type { Need, NeedId, Place, PlaceId, Resource, UnitId } from '../model.ts';
import { namer } from './names.ts';

/** One thing to be settled on a card; `says` is null for the lines that no jumper moves, which have one position. */
export type Block = { id: string | null; need: NeedId; says: string | null; positions: Position[] };
export type Position = { place: PlaceId; says: string; lines: readonly string[] };

/** Drawn by a line that only the long part of a slot has; it reaches the slot through the card's edge. */
export const highLine = 'high-line';

/** The jumper blocks of a card, as the ids of its needs and places name them. */
export function blocksOf(id: UnitId, { settings = [], lines = [] }: Pick<BusCard, 'settings' | 'lines'>): Block[] {
  const name = namer(id);
  const blocks = settings.map(
    (block): Block => ({
      id: block.id,
      need: name('jumper', block.id),
      says: block.says,
      positions: block.positions.map((position) => ({
        place: name('jumper', `${block.id}-at-${position.id}`),
        says: position.id,
        lines: position.lines,
      })),
    }),
  );
  if (lines.length === 0) return blocks;
  return [
    ...blocks,
    { id: null, need: `${id}/lines`, says: null, positions: [{ place: `${id}/lines-kept`, says: '', lines }] },
  ];
}

/** Each line is one thing for all cards together: `bus/irq-5`. */
export const busLine = (line: string): string => `bus/${line}`;

/**
 * A port is on or off: either a mouse is in it, or the jumper of the same id is where it takes no line. `serial-1` is
 * settled by `serial-1-on`.
 */
export const portOn = (socket: string): string => `${socket}-on`;

/** Sockets that a jumper of the same id can switch off. */
export const switchedSockets = ({ settings = [], inputSockets = [] }: Pick<BusCard, 'settings' | 'inputSockets'>) =>
  inputSockets
    .map(({ id }) => id)
    .filter((socket) => settings.some(({ id, positions }) => id === socket && positions.some(isOff)));

const isOff = ({ lines }: { lines: readonly string[] }): boolean => lines.length === 0;

/** As few jumpers as can be are moved from how the card is sold; to switch something off is worse than to move it. */
const trouble = (index: number, lines: readonly string[]): number => (index === 0 ? 0 : lines.length === 0 ? 2 : 1);

/** A block's own positions are the places it can be joined to, once the card is in a slot. */
export function lowerBlocks(id: UnitId, edge: Need, blocks: readonly Block[], switched: readonly string[]) {
  const needs = blocks.map(
    ({ need }): Need => ({ id: need, part: id, kind: 'setting', left: 'blocker', attrs: { block: need } }),
  );
  const places = blocks.flatMap(({ id: block, need, positions }) =>
    positions.map(({ place, lines }, index): Place => {
      const port = block !== null && lines.length === 0 && switched.includes(block) ? [portOn(block)] : [];
      return {
        id: place,
        part: id,
        kind: 'setting',
        rank: trouble(index, lines),
        attrs: { block: need },
        draws: {
          ...Object.fromEntries([...lines, ...port].map((line) => [line, 1])),
          ...(lines.some(needsLongSlot) ? { [highLine]: 1 } : {}),
        },
        meters: Object.fromEntries([
          ...lines.map((line) => [line, [busLine(line)]]),
          ...port.map((name) => [name, [`${id}/${name}`]]),
        ]),
        after: [edge.id],
      };
    }),
  );
  const lines = new Set(blocks.flatMap(({ positions }) => positions.flatMap((position) => position.lines)));
  const resources: Resource[] = [...lines].map((line) => ({ id: busLine(line), capacity: 1 }));
  resources.push(...switched.map((socket) => ({ id: `${id}/${portOn(socket)}`, capacity: 1 })));
  return { needs, places, resources };
}
