import { expect, test } from 'vitest';
import type { Place } from '../../../../src/fit/model.ts';
import { need, place, solve } from '../build.ts';

const header = (number: number): Place =>
  place(
    `motherboard-1/fan-header-${number}`,
    'fan-header',
    number,
    {},
    {
      meters: { mA: [`motherboard-1/fan-header-${number}/mA`] },
    },
  );

test('f1: the strong fan gets the strong header though it is last by id', () => {
  const { joined } = solve({
    needs: [
      need('fan-1/lead', 'fan-header', {}, { draws: { mA: 300 } }),
      need('fan-2/lead', 'fan-header', {}, { draws: { mA: 1500 } }),
    ],
    places: [header(1), header(2)],
    resources: [
      { id: 'motherboard-1/fan-header-1/mA', capacity: 2000 },
      { id: 'motherboard-1/fan-header-2/mA', capacity: 1000 },
    ],
  });
  expect(joined).toEqual({
    'fan-1/lead': 'motherboard-1/fan-header-2',
    'fan-2/lead': 'motherboard-1/fan-header-1',
  });
});

const splitterLead = need('cable-1/in', 'fan-header', {}, { left: 'spare', carries: ['mA'] });
const outlet = (number: number): Place =>
  place(`cable-1/outlet-${number}`, 'fan-header', 10 + number, {}, { after: ['cable-1/in'] });

test('f2: three fans on two headers are all served by one splitter', () => {
  const { left, spares } = solve({
    needs: [
      need('fan-1/lead', 'fan-header', {}, { draws: { mA: 500 } }),
      need('fan-2/lead', 'fan-header', {}, { draws: { mA: 500 } }),
      need('fan-3/lead', 'fan-header', {}, { draws: { mA: 500 } }),
      splitterLead,
      need('cable-2/in', 'fan-header', {}, { left: 'spare', carries: ['mA'] }),
    ],
    places: [
      header(1),
      header(2),
      outlet(1),
      outlet(2),
      place('cable-2/outlet-1', 'fan-header', 11, {}, { after: ['cable-2/in'] }),
      place('cable-2/outlet-2', 'fan-header', 12, {}, { after: ['cable-2/in'] }),
    ],
    resources: [
      { id: 'motherboard-1/fan-header-1/mA', capacity: 1000 },
      { id: 'motherboard-1/fan-header-2/mA', capacity: 1000 },
    ],
  });
  expect(left).toEqual(['cable-2/in']);
  expect(spares).toBe(1);
});

test('f3: a splitter shares a header out, and adds no current', () => {
  const { joined, left, reasons } = solve({
    needs: [
      need('fan-1/lead', 'fan-header', {}, { draws: { mA: 400 } }),
      need('fan-2/lead', 'fan-header', {}, { draws: { mA: 400 } }),
      need('fan-3/lead', 'fan-header', {}, { draws: { mA: 400 } }),
      splitterLead,
    ],
    places: [header(1), outlet(1), outlet(2), outlet(3)],
    resources: [{ id: 'motherboard-1/fan-header-1/mA', capacity: 1000 }],
  });
  expect(joined).toEqual({
    'cable-1/in': 'motherboard-1/fan-header-1',
    'fan-1/lead': 'cable-1/outlet-1',
    'fan-2/lead': 'cable-1/outlet-2',
  });
  expect(left).toEqual(['fan-3/lead']);
  expect(reasons['fan-3/lead']).toEqual([
    { why: 'taken', place: 'motherboard-1/fan-header-1', joints: ['cable-1/in → motherboard-1/fan-header-1'] },
    { why: 'taken', place: 'cable-1/outlet-1', joints: ['fan-1/lead → cable-1/outlet-1'] },
    { why: 'taken', place: 'cable-1/outlet-2', joints: ['fan-2/lead → cable-1/outlet-2'] },
    {
      why: 'spent',
      place: 'cable-1/outlet-3',
      resource: 'motherboard-1/fan-header-1/mA',
      capacity: 1000,
      wanted: 1200,
      joints: ['fan-1/lead → cable-1/outlet-1', 'fan-2/lead → cable-1/outlet-2'],
    },
  ]);
});

test('f4: a powered hub serves all three from its drive lead', () => {
  const after = ['cable-1/signal', 'cable-1/supply'];
  const { left } = solve({
    needs: [
      need('fan-1/lead', 'fan-header', {}, { draws: { mA: 400 } }),
      need('fan-2/lead', 'fan-header', {}, { draws: { mA: 400 } }),
      need('fan-3/lead', 'fan-header', {}, { draws: { mA: 400 } }),
      need('cable-1/signal', 'fan-header', {}, { left: 'spare' }),
      need('cable-1/supply', 'drive-power', { plug: 'sata-power' }, { left: 'spare', carries: ['mA'] }),
    ],
    places: [
      header(1),
      place('cable-1/outlet-1', 'fan-header', 11, {}, { after }),
      place('cable-1/outlet-2', 'fan-header', 12, {}, { after }),
      place('cable-1/outlet-3', 'fan-header', 13, {}, { after }),
      place(
        'power-supply-1/lead-1/plug-1',
        'drive-power',
        0,
        { plug: 'sata-power' },
        {
          meters: { mA: ['power-supply-1/lead-1/mA'] },
        },
      ),
    ],
    resources: [
      { id: 'motherboard-1/fan-header-1/mA', capacity: 1000 },
      { id: 'power-supply-1/lead-1/mA', capacity: 4500 },
    ],
  });
  expect(left).toEqual([]);
});

/** The front of a case is a row of six units: a 120 mm fan takes two, a 140 mm fan three, a 240 mm radiator four. */
const front = {
  places: [
    place(
      'chassis-1/front-1',
      'fan-mount',
      0,
      { sizeMm: 120 },
      { meters: { panelUnits: ['chassis-1/unit-1', 'chassis-1/unit-2'] } },
    ),
    place(
      'chassis-1/front-2',
      'fan-mount',
      1,
      { sizeMm: 120 },
      { meters: { panelUnits: ['chassis-1/unit-3', 'chassis-1/unit-4'] } },
    ),
    place(
      'chassis-1/front-3',
      'fan-mount',
      2,
      { sizeMm: 120 },
      { meters: { panelUnits: ['chassis-1/unit-5', 'chassis-1/unit-6'] } },
    ),
    place(
      'chassis-1/front-wide-1',
      'fan-mount',
      0,
      { sizeMm: 140 },
      {
        meters: { panelUnits: ['chassis-1/unit-1', 'chassis-1/unit-2', 'chassis-1/unit-3'] },
      },
    ),
    place(
      'chassis-1/front-wide-2',
      'fan-mount',
      1,
      { sizeMm: 140 },
      {
        meters: { panelUnits: ['chassis-1/unit-4', 'chassis-1/unit-5', 'chassis-1/unit-6'] },
      },
    ),
    place(
      'chassis-1/front-radiator',
      'radiator-mount',
      0,
      { sizeMm: 240 },
      {
        meters: { panelUnits: ['chassis-1/unit-1', 'chassis-1/unit-2', 'chassis-1/unit-3', 'chassis-1/unit-4'] },
      },
    ),
  ],
  resources: [
    { id: 'chassis-1/unit-1', capacity: 1 },
    { id: 'chassis-1/unit-2', capacity: 1 },
    { id: 'chassis-1/unit-3', capacity: 1 },
    { id: 'chassis-1/unit-4', capacity: 1 },
    { id: 'chassis-1/unit-5', capacity: 1 },
    { id: 'chassis-1/unit-6', capacity: 1 },
  ],
};

test('f5: beside a radiator there is room for one fan, at the far end', () => {
  const { joined, left } = solve({
    needs: [
      need('cooler-1/radiator', 'radiator-mount', { sizeMm: 240 }, { draws: { panelUnits: 4 } }),
      need('fan-1/mount', 'fan-mount', { sizeMm: 120 }, { left: 'limit', draws: { panelUnits: 2 } }),
      need('fan-2/mount', 'fan-mount', { sizeMm: 120 }, { left: 'limit', draws: { panelUnits: 2 } }),
    ],
    ...front,
  });
  expect(joined).toEqual({
    'cooler-1/radiator': 'chassis-1/front-radiator',
    'fan-1/mount': 'chassis-1/front-3',
  });
  expect(left).toEqual(['fan-2/mount']);
});

test('f6: two wide fans leave no room for a narrow one', () => {
  const { joined, left } = solve({
    needs: [
      need('fan-1/mount', 'fan-mount', { sizeMm: 140 }, { left: 'limit', draws: { panelUnits: 3 } }),
      need('fan-2/mount', 'fan-mount', { sizeMm: 140 }, { left: 'limit', draws: { panelUnits: 3 } }),
      need('fan-3/mount', 'fan-mount', { sizeMm: 120 }, { left: 'limit', draws: { panelUnits: 2 } }),
    ],
    ...front,
  });
  expect(joined).toEqual({
    'fan-1/mount': 'chassis-1/front-wide-1',
    'fan-2/mount': 'chassis-1/front-wide-2',
  });
  expect(left).toEqual(['fan-3/mount']);
});

test('f7: a hub serves the fans that the headers leave, from its own lead', () => {
  const after = ['fan-hub-1/signal', 'fan-hub-1/supply'];
  const { joined, left } = solve({
    needs: [
      need('fan-1/lead', 'fan-header', {}, { draws: { mA: 800 } }),
      need('fan-2/lead', 'fan-header', {}, { draws: { mA: 700 } }),
      need('fan-3/lead', 'fan-header', {}, { draws: { mA: 600 } }),
      need('fan-hub-1/signal', 'fan-header', {}, { left: 'spare' }),
      need('fan-hub-1/supply', 'drive-power', { plug: 'sata-power' }, { left: 'spare', carries: ['mA'] }),
    ],
    places: [
      header(1),
      header(2),
      place('fan-hub-1/outlet-1', 'fan-header', 11, {}, { after }),
      place('fan-hub-1/outlet-2', 'fan-header', 12, {}, { after }),
      place(
        'power-supply-1/lead-1/plug-1',
        'drive-power',
        0,
        { plug: 'sata-power' },
        { meters: { mA: ['power-supply-1/lead-1/mA'] } },
      ),
    ],
    resources: [
      { id: 'motherboard-1/fan-header-1/mA', capacity: 1000 },
      { id: 'motherboard-1/fan-header-2/mA', capacity: 1000 },
      { id: 'power-supply-1/lead-1/mA', capacity: 1300 },
    ],
  });
  // The signal lead takes one header, so two fans are on the hub: 1,300 mA is 700 and 600, and 800 has the header.
  expect(left).toEqual([]);
  expect(joined).toMatchObject({
    'fan-hub-1/signal': 'motherboard-1/fan-header-1',
    'fan-1/lead': 'motherboard-1/fan-header-2',
    'fan-2/lead': 'fan-hub-1/outlet-1',
    'fan-3/lead': 'fan-hub-1/outlet-2',
  });
});
