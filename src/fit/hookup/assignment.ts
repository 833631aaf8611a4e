/** The cheapest way to give every row a column of its own. */
export type Assignment = {
  /** By row. */
  column: Int32Array;
  value: number;
  /** A row in another column costs at least this much more in all: its cost − `rowPrice` − `columnPrice`. */
  rowPrice: Float64Array;
  columnPrice: Float64Array;
};

/**
 * By shortest augmenting paths: rows are added one by one, each along the cheapest chain of columns
 * that change hands. `costs` is row by row, Infinity where a row cannot have a column; every row must
 * have a column that it can always get.
 */
export function assign(rows: number, columns: number, costs: Float64Array): Assignment {
  const rowPrice = new Float64Array(rows);
  const columnPrice = new Float64Array(columns);
  const owner = new Int32Array(columns).fill(-1);
  const column = new Int32Array(rows).fill(-1);
  const distance = new Float64Array(columns);
  const from = new Int32Array(columns);
  const isDone = new Uint8Array(columns);
  for (let added = 0; added < rows; added += 1) {
    distance.fill(Infinity);
    isDone.fill(0);
    let row = added;
    let reached = 0;
    let end = -1;
    while (end < 0) {
      let nearest = -1;
      for (let c = 0; c < columns; c += 1) {
        if (isDone[c]) continue;
        const price = (rowPrice[row] as number) + (columnPrice[c] as number);
        const along = reached + (costs[row * columns + c] as number) - price;
        if (along < (distance[c] as number)) {
          distance[c] = along;
          from[c] = row;
        }
        if (nearest < 0 || (distance[c] as number) < (distance[nearest] as number)) nearest = c;
      }
      reached = distance[nearest] as number;
      isDone[nearest] = 1;
      row = owner[nearest] as number;
      if (row < 0) end = nearest;
    }
    rowPrice[added] = (rowPrice[added] as number) + reached;
    for (let c = 0; c < columns; c += 1) {
      if (!isDone[c] || c === end) continue;
      const less = reached - (distance[c] as number);
      columnPrice[c] = (columnPrice[c] as number) - less;
      rowPrice[owner[c] as number] = (rowPrice[owner[c] as number] as number) + less;
    }
    for (let c = end; c >= 0; ) {
      const taker = from[c] as number;
      const given = column[taker] as number;
      owner[c] = taker;
      column[taker] = c;
      c = given;
    }
  }
  let value = 0;
  for (let row = 0; row < rows; row += 1) value += costs[row * columns + (column[row] as number)] as number;
  return { column, value, rowPrice, columnPrice };
}
