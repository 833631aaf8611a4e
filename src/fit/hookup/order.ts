/**
 * The one order that decides every tie. Ids compare by code unit, runs of digits by their number:
 * `module-10` comes after `module-2`, on every machine and in every locale.
 */

/** Text that sorts as its id should. */
const idKey = (id: string): string => id.replace(/\d+/g, (digits) => digits.padStart(12, '0'));

const compareText = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

/** Ids that differ only in leading zeros fall back on their plain text. */
export const compareIds = (a: string, b: string): number => compareText(idKey(a), idKey(b)) || compareText(a, b);

/** An id's turn among all that were met: of two, the one with the lesser `at` comes first. */
export type Turn = { readonly id: string; readonly key: string; at: number };

/** Gives ids their turns, so that they are compared as text once, when they are first met. */
export class Turns {
  readonly #byId = new Map<string, Turn>();
  /** In order. */
  readonly #all: Turn[] = [];

  of(id: string): Turn {
    const known = this.#byId.get(id);
    if (known) return known;
    const turn: Turn = { id, key: idKey(id), at: 0 };
    const place = this.#placeOf(turn);
    const before = this.#all[place - 1]?.at ?? 0;
    const after = this.#all[place]?.at ?? before + 2;
    turn.at = (before + after) / 2;
    this.#byId.set(id, turn);
    this.#all.splice(place, 0, turn);
    // Between two neighbours there is only so much room.
    if (turn.at <= before || turn.at >= after) for (const [index, one] of this.#all.entries()) one.at = index + 1;
    return turn;
  }

  #placeOf(turn: Turn): number {
    let from = 0;
    let to = this.#all.length;
    while (from < to) {
      const middle = (from + to) >> 1;
      const other = this.#all[middle] as Turn;
      if ((compareText(other.key, turn.key) || compareText(other.id, turn.id)) < 0) from = middle + 1;
      else to = middle;
    }
    return from;
  }
}

/** Sorts in place. For short lists that are nearly in order. */
export function sortInPlace<T>(list: T[], isBefore: (a: T, b: T) => boolean): void {
  for (let end = 1; end < list.length; end += 1) {
    const one = list[end] as T;
    let at = end;
    for (; at > 0 && isBefore(one, list[at - 1] as T); at -= 1) list[at] = list[at - 1] as T;
    list[at] = one;
  }
}
