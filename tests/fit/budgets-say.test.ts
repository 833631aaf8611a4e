import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { sayBudget, showAmount } from '../../src/fit/budgets/say.ts';
import { workingOf } from '../../src/fit/budgets/working.ts';
import { kinds } from '../../src/fit/kinds.ts';
import type { FigureUnit } from '../../src/fit/report.ts';
import { anyList } from '../helpers/any-part.ts';
import { theBudget } from '../helpers/budgets.ts';

const name = (id: string) => `the ${id}`;

test('a sum with a share that is not recorded and a limit', () => {
  const budget = theBudget('power', {
    processor: { peakW: 90 },
    fan: { milliamps: undefined },
    'power-supply': { ratedW: 550 },
  });
  expect(sayBudget(budget, name)).toMatchObject({
    title: 'Power at its likely peak',
    rows: [{ what: 'the processor-1, in a burst', amount: '90 W' }],
    used: 'at least 90 W',
    limit: '550 W',
    unknown: ['the fan-1'],
  });
});

test.each([
  ['deciwatt', 3132, '313.2 W'],
  ['milliamp', 16_167, '16.167 A'],
  ['cent-a-year', 8760, '€87.60 a year'],
  ['millikelvin', 10_078, '10.1 °C'],
  ['millibel', 3404, '34 dB'],
  ['megabit-a-second', 15_679, '15.679 Gbit/s'],
  ['kibibyte', 256, '256 kB'],
  ['kibibyte', 2048, '2 MB'],
  ['mebibyte', 32_768, '32 GB'],
  ['hertz', 60, '60 Hz'],
  ['hertz', 31_500, '31.5 kHz'],
  ['kilohertz', 522_614, '522.614 MHz'],
  ['square-millimetre', 88_200, '882 cm²'],
  ['gram', 8300, '8.3 kg'],
  ['permille', 897, '89.7 %'],
  ['minute-a-day', 210, '3.5 hours a day'],
  ['tenth-of-a-cent-a-kilowatt-hour', 285, '28.5 cents a kilowatt-hour'],
  ['lane', 1, '1 lane'],
] as const satisfies readonly (readonly [FigureUnit, number, string])[])(
  '%s: %d is read as %s',
  (unit, amount, says) => {
    expect(showAmount(amount, unit)).toBe(says);
  },
);

describe('rows', () => {
  test('a price says where it was asked and on which day', () => {
    const offers = [{ shop: 'harbour-parts', date: '2031-03-01', priceCents: 900, shippingCents: 450 }];
    const { rows } = sayBudget(
      theBudget('money', { fan: { offers } }, { brief: { money: { markUpPermille: 50 } } }),
      name,
    );
    expect(rows).toEqual([
      { what: 'the fan-1, at harbour parts, 2031-03-01', amount: '€9.00' },
      { what: 'One order from harbour parts', amount: '€4.50' },
      { what: 'What the shop adds for its work', amount: '€0.45' },
    ]);
  });

  test('no name of a field is left in any row of any list', () => {
    const brief = { hoursPerDay: 3, tariffMilliEuros: 300, roomCelsius: 20, money: { markUpPermille: 100 } };
    fc.assert(
      fc.property(anyList(10), (list) => {
        for (const budget of workingOf(list, brief, kinds)) {
          const { title, rows, used, limit = 'none', formula } = sayBudget(budget, () => 'a part');
          for (const text of [title, used, limit, formula, ...rows.map(({ what, amount }) => `${what}: ${amount}`)]) {
            expect(text).toMatch(/\S/);
            expect(text.replace('DisplayPort', 'HDMI')).not.toMatch(/undefined|NaN|[a-z]{2}[A-Z]|[a-z]\.[a-z]| {2}/);
          }
          expect(formula).toMatch(/[.]$/);
        }
      }),
      { numRuns: 80 },
    );
  });
});
