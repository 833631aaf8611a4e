/** How money and large numbers are printed, the same on every machine. */

/** "40,000", "1.5": figures in threes, whatever the machine's language. */
export function showNumber(value: number): string {
  const [whole = '', part] = String(value).split('.');
  const threes = whole.replace(/\B(?=(\d{3})+$)/g, ',');
  return part === undefined ? threes : `${threes}.${part}`;
}

/** Whole euro cents as "€1,812.00". */
export function showMoney(cents: number): string {
  const figures = String(Math.abs(cents)).padStart(3, '0');
  return `${cents < 0 ? '−' : ''}€${showNumber(Number(figures.slice(0, -2)))}.${figures.slice(-2)}`;
}
