/** A parts list as text for the address of a page: `corrow-16*2.orrisk-b2`. */
import { byId } from '../units/ids.ts';
import { longestId, mostLines, mostOfOne } from './limits.ts';
import type { Listed, PartsList } from './part.ts';

/** One piece a part, by part id, joined by full stops; `*n` where there is more than one. Needs no escaping in an address. */
export function listToText(list: PartsList): string {
  const counts = new Map<string, number>();
  for (const { part, quantity } of list) counts.set(part, (counts.get(part) ?? 0) + quantity);
  return [...counts]
    .sort(([a], [b]) => byId(a, b))
    .map(([part, quantity]) => (quantity === 1 ? part : `${part}*${quantity}`))
    .join('.');
}

/**
 * What can be read of `text`, and the pieces that cannot, as they stand. Never throws. A part named twice is added
 * up; whether the catalogue has it is for others to say.
 */
export function textToList(text: string): { list: Listed[]; unread: string[] } {
  const counts = new Map<string, number>();
  const unread: string[] = [];
  for (const piece of text.split('.')) {
    if (piece === '') continue;
    const [, part, figures = '1'] = /^([a-z0-9]+(?:-[a-z0-9]+)*)(?:\*([1-9][0-9]?))?$/.exec(piece) ?? [];
    const quantity = Number(figures);
    const sum = (part === undefined ? 0 : (counts.get(part) ?? 0)) + quantity;
    const isNew = part !== undefined && !counts.has(part);
    if (part === undefined || part.length > longestId || sum > mostOfOne || (isNew && counts.size === mostLines))
      unread.push(piece);
    else counts.set(part, sum);
  }
  return { list: [...counts].map(([part, quantity]) => ({ part, quantity })), unread };
}
