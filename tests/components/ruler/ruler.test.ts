import fc from 'fast-check';
import { expect, test } from 'vitest';
import { scaleTo } from '../../../src/components/ruler/ruler.ts';

test('a ruler for 550 watts carries figures by two hundreds, up to its end past the limit', () => {
  const { figures, end } = scaleTo(550);
  expect(figures).toEqual([0, 200, 400, 600]);
  expect(end).toBe(600);
});

test('a ruler for 3 carries figures by ones', () => {
  expect(scaleTo(3).figures).toEqual([0, 1, 2, 3]);
});

test('any ruler reaches past what it shows, by less than a quarter, with few figures and true ticks', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 1_000_000 }), (most) => {
      const { end, ticks, figures } = scaleTo(most);
      expect(end).toBeGreaterThanOrEqual(most * 1.08);
      expect(end).toBeLessThan(most * 1.25 + 1);
      expect(figures.length).toBeLessThanOrEqual(6);
      expect(figures.length).toBeGreaterThanOrEqual(3);
      expect(ticks.at(-1)).toBe(end);
      for (const figure of figures) expect(String(figure).length).toBeLessThanOrEqual(8);
    }),
  );
});
