import { expect, test } from 'vitest';
import type { Need, Place } from '../../../../src/fit/model.ts';
import { need, place, solve } from '../build.ts';

const plug = (lead: number, number: number, rank: number): Place =>
  place(
    `power-supply-1/lead-${lead}/plug-${number}`,
    'card-power',
    rank,
    { plug: ['pcie-6', 'pcie-8'] },
    {
      meters: { leadDeciwatts: [`power-supply-1/lead-${lead}/leadDeciwatts`] },
    },
  );
/** Plug 1 of every lead comes before plug 2 of any. */
const twoLeads = [plug(1, 1, 0), plug(2, 1, 1), plug(1, 2, 2), plug(2, 2, 3)];
const eightPin = { plug: 'pcie-8' };

test('p1: two plugs of one card go on two leads', () => {
  const { joined } = solve({
    needs: [
      need('graphics-card-1/power-1', 'card-power', eightPin, { draws: { leadDeciwatts: 1500 } }),
      need('graphics-card-1/power-2', 'card-power', eightPin, { draws: { leadDeciwatts: 1500 } }),
    ],
    places: twoLeads,
    resources: [
      { id: 'power-supply-1/lead-1/leadDeciwatts', capacity: 3000 },
      { id: 'power-supply-1/lead-2/leadDeciwatts', capacity: 3000 },
    ],
  });
  expect(joined).toEqual({
    'graphics-card-1/power-1': 'power-supply-1/lead-1/plug-1',
    'graphics-card-1/power-2': 'power-supply-1/lead-2/plug-1',
  });
});

test('p2: the six-pin plug shares the lead that has watts to spare', () => {
  const { joined } = solve({
    needs: [
      need('graphics-card-1/power-1', 'card-power', { plug: 'pcie-6' }, { draws: { leadDeciwatts: 750 } }),
      need('graphics-card-1/power-2', 'card-power', eightPin, { draws: { leadDeciwatts: 1500 } }),
      need('graphics-card-1/power-3', 'card-power', eightPin, { draws: { leadDeciwatts: 1500 } }),
    ],
    places: twoLeads,
    resources: [
      { id: 'power-supply-1/lead-1/leadDeciwatts', capacity: 2250 },
      { id: 'power-supply-1/lead-2/leadDeciwatts', capacity: 1500 },
    ],
  });
  expect(joined).toEqual({
    'graphics-card-1/power-1': 'power-supply-1/lead-1/plug-2',
    'graphics-card-1/power-2': 'power-supply-1/lead-1/plug-1',
    'graphics-card-1/power-3': 'power-supply-1/lead-2/plug-1',
  });
});

test('p3: a four-way adapter for a 400 W card is used with three inputs', () => {
  const input = { left: 'spare' as const, carries: ['leadDeciwatts'] };
  const way = (watts: number, inputs: number[]): Place =>
    place(
      'adapter-1/plug',
      'card-power',
      9,
      { plug: 'pcie-16' },
      {
        way: String(watts),
        meters: { leadDeciwatts: [`adapter-1/way-${watts}/leadDeciwatts`] },
        after: inputs.map((number) => `adapter-1/in-${number}`),
      },
    );
  const { joined, left } = solve({
    needs: [
      need('graphics-card-1/power', 'card-power', { plug: 'pcie-16' }, { draws: { leadDeciwatts: 4000 } }),
      need('adapter-1/in-1', 'card-power', eightPin, input),
      need('adapter-1/in-2', 'card-power', eightPin, input),
      need('adapter-1/in-3', 'card-power', eightPin, input),
      need('adapter-1/in-4', 'card-power', eightPin, input),
    ],
    places: [
      plug(1, 1, 0),
      plug(2, 1, 1),
      plug(3, 1, 2),
      way(600, [1, 2, 3, 4]),
      way(450, [1, 2, 3]),
      way(300, [1, 2]),
    ],
    resources: [
      { id: 'adapter-1/way-600/leadDeciwatts', capacity: 6000 },
      { id: 'adapter-1/way-450/leadDeciwatts', capacity: 4500 },
      { id: 'adapter-1/way-300/leadDeciwatts', capacity: 3000 },
      { id: 'power-supply-1/lead-1/leadDeciwatts', capacity: 1500 },
      { id: 'power-supply-1/lead-2/leadDeciwatts', capacity: 1500 },
      { id: 'power-supply-1/lead-3/leadDeciwatts', capacity: 1500 },
    ],
  });
  expect(joined['graphics-card-1/power']).toBe('adapter-1/plug as 450');
  expect(left).toEqual(['adapter-1/in-4']);
});

test('p5: a small supply is mounted through a plate', () => {
  const { joined } = solve({
    needs: [
      need('power-supply-1/mount', 'supply-mount', { shape: 'sfx', lengthMm: 100 }, { stands: true }),
      need('bracket-1/plate', 'supply-mount', { shape: 'atx', lengthMm: null }, { left: 'spare' }),
    ],
    places: [
      place('chassis-1/supply-bay', 'supply-mount', 0, { shape: 'atx', lengthMm: 160 }),
      place('bracket-1/opening', 'supply-mount', 1, { shape: 'sfx', lengthMm: 130 }, { after: ['bracket-1/plate'] }),
    ],
  });
  expect(joined).toEqual({
    'power-supply-1/mount': 'bracket-1/opening',
    'bracket-1/plate': 'chassis-1/supply-bay',
  });
});

test('p6: a supply in a bay whose length limit is not recorded is joined, and the joint is provisional', () => {
  const { joined, unknown } = solve({
    needs: [need('power-supply-1/mount', 'supply-mount', { shape: 'atx', lengthMm: 160 }, { stands: true })],
    places: [place('chassis-1/supply-bay', 'supply-mount', 0, { shape: 'atx', lengthMm: undefined })],
  });
  expect(joined).toEqual({ 'power-supply-1/mount': 'chassis-1/supply-bay' });
  expect(unknown).toEqual(['power-supply-1/mount']);
});

/** An adapter that joins two leads of the supply into one connector of a card. */
const twoIntoOne = (leads: number, capacity: number) => {
  const input: Partial<Need> = { left: 'spare', carries: ['leadDeciwatts'] };
  const numbers = Array.from({ length: leads }, (_, index) => index + 1);
  return solve({
    needs: [
      need('graphics-card-1/power', 'card-power', { plug: 'pcie-16' }, { draws: { leadDeciwatts: 3000 } }),
      need('adapter-1/in-1', 'card-power', { plug: 'pcie-8' }, input),
      need('adapter-1/in-2', 'card-power', { plug: 'pcie-8' }, input),
    ],
    places: [
      ...numbers.flatMap((lead) => [plug(lead, 1, lead), plug(lead, 2, 10 + lead)]),
      place('adapter-1/plug', 'card-power', 20, { plug: 'pcie-16' }, { after: ['adapter-1/in-1', 'adapter-1/in-2'] }),
    ],
    resources: numbers.map((lead) => ({ id: `power-supply-1/lead-${lead}/leadDeciwatts`, capacity })),
  });
};

test('p7: two leads joined into one connector give half each', () => {
  const { joined } = twoIntoOne(2, 1500);
  expect(joined).toEqual({
    'graphics-card-1/power': 'adapter-1/plug',
    'adapter-1/in-1': 'power-supply-1/lead-1/plug-1',
    'adapter-1/in-2': 'power-supply-1/lead-2/plug-1',
  });
});

test('p8: both plugs of one lead are no more than that lead gives', () => {
  // Halves of 1,500 on one lead are 3,000 from 2,999.
  expect(twoIntoOne(1, 2999).left).toEqual(['adapter-1/in-1', 'adapter-1/in-2', 'graphics-card-1/power']);
  expect(twoIntoOne(1, 3000).left).toEqual([]);
});
