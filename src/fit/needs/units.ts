/** From the lines of a list to the things on the bench. */
import { isCount, mostInAll } from '../../parts/limits.ts';
import { type Part, type PartClass, type PartOf, partClasses } from '../../parts/part.ts';
import { sortKey } from '../../units/ids.ts';
import type { Unit, UnitId } from '../model.ts';
import type { Unjudged } from '../report.ts';
import type { JudgeInput } from '../rule.ts';

/**
 * Equal parts on a list, which stand next to each other. A part, the number of its first unit and how many there are
 * have one group, met again in every list: what hangs on groups and units is made once for each. Parts do not change
 * once they are made.
 */
export type Group = {
  readonly part: Part;
  /** Place of its class in `partClasses`. */
  readonly ofClass: number;
  readonly units: readonly Unit[];
  readonly ids: readonly UnitId[];
};

/** What is kept of a part. */
type Card = {
  readonly ofClass: number;
  readonly key: string;
  readonly units: Unit[];
  readonly groups: Map<number, Group>;
};

const cards = new WeakMap<Part, Card>();
const classAt = new Map<string, number>(partClasses.map((partClass, index) => [partClass, index]));

/** Fields without which a part is none of this edition; whatever else is missing is a measure that is not recorded. */
export const neededFields: { readonly [C in PartClass]?: readonly (keyof PartOf<C>)[] } = {
  'storage-drive': ['build'],
  adapter: ['form'],
};

/** Throws nothing, whatever the part is. */
function cardOf(part: Part): Card | Unjudged['why'] {
  const known = cards.get(part);
  if (known) return known;
  const ofClass = classAt.get(part.class);
  if (ofClass === undefined) return 'unknown-class';
  const needed = ['id', 'name', ...((neededFields[part.class] ?? []) as string[])];
  if (needed.some((field) => typeof part[field as keyof Part] !== 'string')) return 'not-whole';
  const card: Card = { ofClass, key: sortKey(part.id), units: [], groups: new Map() };
  cards.set(part, card);
  return card;
}

type Line = { part: Part; card: Card; quantity: number };

/**
 * The groups of a list, by class as a student meets them, then by part id, and the lines that cannot be judged. The
 * order of the list, and how its lines are split, change nothing.
 */
export function sortOut(input: JudgeInput): { groups: Group[]; unjudged: Unjudged[] } {
  const unjudged: Unjudged[] = [];
  const lines: Line[] = [];
  for (const { part, quantity } of input) {
    const card = cardOf(part);
    if (typeof card === 'string') unjudged.push({ part: String(part.id), why: card });
    else lines.push({ part, card, quantity: isCount(quantity) ? quantity : Number.NaN });
  }
  lines.sort(compareLines);

  const groups: Group[] = [];
  let inAll = 0;
  let inClass = 0;
  let ofClass = -1;
  for (let at = 0; at < lines.length; ) {
    const { part, card } = lines[at] as Line;
    let count = 0;
    for (; isSame(lines[at], part); at += 1) count += (lines[at] as Line).quantity;
    if (!isCount(count) || inAll + count > mostInAll) {
      unjudged.push({ part: part.id, why: isCount(count) ? 'too-many' : 'miscounted' });
      continue;
    }
    if (card.ofClass !== ofClass) inClass = 0;
    ofClass = card.ofClass;
    groups.push(groupOf(part, card, inClass + 1, count));
    inClass += count;
    inAll += count;
  }
  if (unjudged.length > 1)
    unjudged.sort(
      (a, b) => compare(sortKey(a.part), sortKey(b.part)) || compare(a.part, b.part) || compare(a.why, b.why),
    );
  return { groups, unjudged };
}

/** Two parts of one id are told apart by what they hold. */
function compareLines(a: Line, b: Line): number {
  if (a.card.ofClass !== b.card.ofClass) return a.card.ofClass - b.card.ofClass;
  if (a.part === b.part) return 0;
  return (
    compare(a.card.key, b.card.key) ||
    compare(a.part.id, b.part.id) ||
    compare(JSON.stringify(a.part), JSON.stringify(b.part))
  );
}

const compare = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

const isSame = (line: Line | undefined, part: Part): boolean =>
  line !== undefined &&
  (line.part === part || (line.part.id === part.id && JSON.stringify(line.part) === JSON.stringify(part)));

function groupOf(part: Part, { ofClass, units: kept, groups }: Card, first: number, count: number): Group {
  const key = first * (mostInAll + 1) + count;
  const known = groups.get(key);
  if (known) return known;
  const units = Array.from({ length: count }, (_, index): Unit => {
    const n = first + index;
    kept[n] ??= { id: `${part.class}-${n}`, part };
    return kept[n];
  });
  const group: Group = { part, ofClass, units, ids: units.map(({ id }) => id) };
  groups.set(key, group);
  return group;
}

/** The things on the bench, group by group; `n` counts within the class. */
export const unitsOf = (input: JudgeInput): Unit[] => sortOut(input).groups.flatMap(({ units }) => units);

export const isOf =
  <C extends PartClass>(partClass: C) =>
  (unit: Unit): unit is Unit<PartOf<C>> =>
    unit.part.class === partClass;
