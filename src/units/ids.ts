/** Orders ids by code unit with runs of figures padded: `module-10` comes after `module-2`, on every machine. */
export function byId(a: string, b: string): number {
  const [x, y] = [sortKey(a), sortKey(b)];
  return x < y ? -1 : x > y ? 1 : 0;
}

/** Text that sorts as its id should: for long lists, made once for each id. */
export const sortKey = (id: string): string => id.replace(/\d+/g, (figures) => figures.padStart(12, '0'));
