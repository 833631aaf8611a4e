/** The known word that was most likely meant. */

/** Of the known words the one with the fewest letters changed, if that is less than a third of them; the first of equals. */
export function nearest(word: string, known: Iterable<string>): string | undefined {
  let best: string | undefined;
  let least = Math.max(1, Math.floor((word.length - 1) / 3)) + 1;
  for (const candidate of known) {
    const distance = editDistance(word.toLowerCase(), candidate.toLowerCase());
    if (distance < least) [best, least] = [candidate, distance];
  }
  return best;
}

function editDistance(a: string, b: string): number {
  let row = Array.from({ length: b.length + 1 }, (_, index) => index);
  for (const [i, letter] of [...a].entries()) {
    const next = [i + 1];
    for (const [j, other] of [...b].entries()) {
      const change = (row[j] ?? 0) + (letter === other ? 0 : 1);
      next.push(Math.min(change, (row[j + 1] ?? 0) + 1, (next[j] ?? 0) + 1));
    }
    row = next;
  }
  return row.at(-1) ?? 0;
}
