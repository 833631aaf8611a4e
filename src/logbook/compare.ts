/** How two logbooks that may be of one student stand to each other. */
import { digestOf } from '../units/digest.ts';
import type { Logbook } from './types.ts';

/**
 * - `same`: the same entries.
 * - `longer`: b holds all of a's entries and more. `older`: the other way round.
 * - `parted`: both began alike and went on differently (two devices).
 * - `other`: another logbook.
 */
export type Standing = 'same' | 'longer' | 'older' | 'parted' | 'other';

export function compareLogbooks(a: Logbook, b: Logbook): Standing {
  if (a.id !== b.id) return 'other';
  const shared = Math.min(a.events.length, b.events.length);
  const last = shared - 1;
  const alike = shared === 0 || digestOf(a.events[last]) === digestOf(b.events[last]);
  if (!alike) return 'parted';
  if (a.events.length === b.events.length) return 'same';
  return a.events.length < b.events.length ? 'longer' : 'older';
}
