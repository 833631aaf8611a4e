/** A parts list sorted out by what its exercise asks for. */
import type { Listed, Part } from '../parts/part.ts';
import { byId } from '../units/ids.ts';
import type { ChooseExercise } from './types.ts';

export type Held = { part: Part; quantity: number };
export type Filled = {
  /** As it stands in a sentence. */
  name: string;
  class: string;
  from: number;
  to: number;
  holds: number;
};
export type Chosen = {
  /** On the list and on the shelf, one entry a part, by id. */
  held: Held[];
  /** On the list and in the catalogue, not on the shelf. */
  offShelf: Part[];
  /** On the list, not in the catalogue. */
  unknown: string[];
  positions: Filled[];
};

export function sortOut(exercise: ChooseExercise, list: readonly Listed[], parts: readonly Part[]): Chosen {
  const counts = new Map<string, number>();
  for (const { part, quantity } of list) counts.set(part, (counts.get(part) ?? 0) + quantity);
  const catalogue = new Map(parts.map((part) => [part.id, part]));
  const shelf = new Set(exercise.shelf.flatMap((position) => position.parts));
  const held: Held[] = [];
  const offShelf: Part[] = [];
  const unknown: string[] = [];
  for (const [id, quantity] of [...counts].sort(([a], [b]) => byId(a, b))) {
    const part = catalogue.get(id);
    if (!part) unknown.push(id);
    else if (shelf.has(id)) held.push({ part, quantity });
    else offShelf.push(part);
  }
  const positions = exercise.shelf.map((position) => ({
    name: `“${position.position.replaceAll('-', ' ')}”`,
    class: position.class,
    from: position.from,
    to: position.to,
    holds: total(held.filter(({ part }) => position.parts.includes(part.id))),
  }));
  return { held, offShelf, unknown, positions };
}

export const total = (held: readonly Held[]) => held.reduce((sum, { quantity }) => sum + quantity, 0);

/** "1", "2 to 4", "3 at most". */
export const asked = ({ from, to }: Filled) =>
  from === to ? `${from}` : from === 0 ? `${to} at most` : `${from} to ${to}`;
