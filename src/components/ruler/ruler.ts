/** Where the ticks and figures of a ruler stand. */

export type Scale = {
  /** The end of the ruler: a whole number of ticks, past `most`. */
  end: number;
  /** All ticks, from 0. */
  ticks: number[];
  /** The ticks that carry their figure, from 0. */
  figures: number[];
};

/**
 * A ruler that reaches a little past `most` (more than 0), with at most six figures, the one at its end counted, and five ticks to a figure.
 * Figures step by 1, 2 or 5 times a power of ten.
 */
export function scaleTo(most: number): Scale {
  const rough = (most * 1.08) / 5;
  const ten = 10 ** Math.floor(Math.log10(rough));
  const step = [1, 2, 5, 10].map((n) => n * ten).find((n) => n >= rough) ?? 10 * ten;
  const small = step / 5;
  const count = Math.ceil((most * 1.08) / small);
  // Divided last, so that no tick stands at 0.30000000000000004.
  const at = (n: number) => (n * step) / 5;
  const ticks = Array.from({ length: count + 1 }, (_, n) => at(n));
  return { end: at(count), ticks, figures: ticks.filter((_, n) => n % 5 === 0) };
}
