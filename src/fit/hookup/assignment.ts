/**
 * The cheapest way to give every row a column of its own, by shortest augmenting paths: rows are added
 * one by one, each along the cheapest chain of columns that change hands. One is made for the largest
 * problem and used for many; each `solve` overwrites what the last one found.
 */
export class Assignment {
  /** Row by row, `columns` to a row; Infinity where a row cannot have a column. */
  readonly costs: Float64Array;
  /** By row. */
  readonly column: Int32Array;
  /**
   * A row in a column that it does not have costs at least this much more in all: its cost − its row's
   * price − its column's price. A column's price is at most 0, and 0 for one that nobody has.
   */
  readonly rowPrice: Float64Array;
  readonly columnPrice: Float64Array;
  readonly #owner: Int32Array;
  readonly #from: Int32Array;
  readonly #distance: Float64Array;
  readonly #isDone: Uint8Array;

  constructor(mostRows: number, mostColumns: number) {
    this.costs = new Float64Array(mostRows * mostColumns);
    this.column = new Int32Array(mostRows);
    this.rowPrice = new Float64Array(mostRows);
    this.columnPrice = new Float64Array(mostColumns);
    this.#owner = new Int32Array(mostColumns);
    this.#from = new Int32Array(mostColumns);
    this.#distance = new Float64Array(mostColumns);
    this.#isDone = new Uint8Array(mostColumns);
  }

  /** The value of the assignment. Every row must have a column that it can always get. */
  solve(rows: number, columns: number): number {
    const { costs, column, rowPrice, columnPrice } = this;
    const owner = this.#owner;
    rowPrice.fill(0, 0, rows);
    columnPrice.fill(0, 0, columns);
    owner.fill(-1, 0, columns);
    column.fill(-1, 0, rows);
    for (let row = 0; row < rows; row += 1) this.#add(row, columns);
    let value = 0;
    for (let row = 0; row < rows; row += 1) value += costs[row * columns + (column[row] as number)] as number;
    return value;
  }

  #add(added: number, columns: number): void {
    const { costs, column, rowPrice, columnPrice } = this;
    const owner = this.#owner;
    const from = this.#from;
    const distance = this.#distance;
    const isDone = this.#isDone;
    distance.fill(Infinity, 0, columns);
    isDone.fill(0, 0, columns);
    let row = added;
    let reached = 0;
    let end = -1;
    while (end < 0) {
      const base = reached - (rowPrice[row] as number);
      const start = row * columns;
      let nearest = -1;
      let least = Infinity;
      for (let c = 0; c < columns; c += 1) {
        if (isDone[c]) continue;
        const along = base + (costs[start + c] as number) - (columnPrice[c] as number);
        if (along < (distance[c] as number)) {
          distance[c] = along;
          from[c] = row;
        }
        if (nearest < 0 || (distance[c] as number) < least) {
          nearest = c;
          least = distance[c] as number;
        }
      }
      reached = least;
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
}
