import { describe, expect, test } from 'vitest';
import { findHookup } from '../../../src/fit/hookup/search.ts';
import { fourteenParts } from '../../bench/hookup-problem.ts';
import { need, place, problem, readJoints } from './build.ts';

describe('a fault of lowering is named', () => {
  const header = place('motherboard-1/fan-header', 'fan-header', 0, {}, { meters: { mA: ['motherboard-1/mA'] } });
  const current = { id: 'motherboard-1/mA', capacity: 1000 };
  const lead = need('fan-1/lead', 'fan-header');

  test('a need that is there twice', () => {
    const twice = problem({ needs: [lead, need('fan-1/lead', 'fan-mount')], places: [header], resources: [current] });
    expect(() => findHookup(twice)).toThrow(new RangeError('The need fan-1/lead is there twice'));
  });

  test('a meter that names a resource nobody declared', () => {
    const undeclared = problem({ needs: [lead], places: [header] });
    expect(() => findHookup(undeclared)).toThrow(
      new RangeError('motherboard-1/fan-header meters mA with motherboard-1/mA, which nobody declared'),
    );
  });

  test('a place that is there twice in one way', () => {
    const twice = problem({ needs: [lead], places: [header, { ...header, rank: 1 }], resources: [current] });
    expect(() => findHookup(twice)).toThrow(RangeError);
    expect(() => findHookup(twice)).toThrow('motherboard-1/fan-header');
  });

  test('an amount that is not whole', () => {
    const half = problem({
      needs: [need('fan-1/lead', 'fan-header', {}, { draws: { mA: 0.5 } })],
      places: [header],
      resources: [current],
    });
    expect(() => findHookup(half)).toThrow(RangeError);
    expect(() => findHookup(half)).toThrow('fan-1/lead');
  });

  test('a test that compares what is not a number', () => {
    const words = problem({
      needs: [need('power-supply-1/mount', 'supply-mount', { shape: 'atx', lengthMm: 'short' })],
      places: [place('chassis-1/supply-bay', 'supply-mount', 0, { shape: 'atx', lengthMm: 160 })],
    });
    expect(() => findHookup(words)).toThrow('test/lengthMm');
  });
});

test('a list of fourteen parts is joined without loss, in few steps', () => {
  const hookup = findHookup(fourteenParts);
  expect(hookup.left).toEqual([]);
  expect(hookup.cost.slice(0, 8)).toEqual([0, 0, 0, 0, 0, 0, 0, 0]);
  expect(hookup.proved).toBe(true);
  expect(hookup.steps).toBeLessThanOrEqual(20);
  expect(readJoints(hookup)).toMatchObject({
    'graphics-card-1/edge': 'motherboard-1/slot-1 as x16',
    'graphics-card-1/power-1': 'power-supply-1/card-lead-1/plug-1',
    'graphics-card-1/power-2': 'power-supply-1/card-lead-2/plug-1',
    'memory-module-1/edge': 'motherboard-1/memory-slot-a2',
    'memory-module-2/edge': 'motherboard-1/memory-slot-b2',
    'monitor-1/picture': 'graphics-card-1/dp-1',
    'processor-1/cooling': 'cooler-1/cooling',
    'storage-drive-1/edge': 'motherboard-1/module-slot-1',
    'storage-drive-2/power': 'power-supply-1/drive-lead-1/plug-1',
    'storage-drive-3/power': 'power-supply-1/drive-lead-2/plug-1',
  });
});

// Budgets are in steps, which are the same on every machine.

test('twenty-four unlike drives on sixteen ports are settled in few steps', () => {
  const numbers = Array.from({ length: 24 }, (_, index) => index + 1);
  const ports = numbers.slice(0, 16);
  const { left, steps, proved } = findHookup(
    problem({
      needs: numbers.map((n) =>
        need(`storage-drive-${n}/data`, 'drive-data', { plug: ports.filter((port) => (n * 7 + port * 5) % 3 !== 0) }),
      ),
      places: ports.map((port) => place(`motherboard-1/port-${port}`, 'drive-data', port, { plug: port })),
    }),
  );
  expect(left).toHaveLength(8);
  expect(proved).toBe(true);
  expect(steps).toBeLessThanOrEqual(30);
});

const fan = (n: number, mA: number) => need(`fan-${n}/lead`, 'fan-header', {}, { left: 'limit', draws: { mA } });
const splitter = (n: number) => need(`cable-${n}/in`, 'fan-header', {}, { left: 'spare', carries: ['mA'] });
const header = (n: number) =>
  place(`motherboard-1/header-${n}`, 'fan-header', n, {}, { meters: { mA: [`motherboard-1/header-${n}/mA`] } });
const outlet = (cable: number, n: number) =>
  place(`cable-${cable}/out-${n}`, 'fan-header', 10 + n, {}, { after: [`cable-${cable}/in`] });

test('six unlike fans, three headers and a splitter are settled in few steps', () => {
  const { left, steps, proved } = findHookup(
    problem({
      needs: [fan(1, 300), fan(2, 450), fan(3, 600), fan(4, 250), fan(5, 500), fan(6, 700), splitter(1)],
      places: [header(1), header(2), header(3), outlet(1, 1), outlet(1, 2), outlet(1, 3)],
      resources: [
        { id: 'motherboard-1/header-1/mA', capacity: 1000 },
        { id: 'motherboard-1/header-2/mA', capacity: 1000 },
        { id: 'motherboard-1/header-3/mA', capacity: 2000 },
      ],
    }),
  );
  // Two headers serve one fan each and the third, through the splitter, three: one is left over.
  expect(left).toHaveLength(1);
  expect(proved).toBe(true);
  expect(steps).toBeLessThanOrEqual(119);
});

test('at the step limit the best found is kept, and what is left over is not proved', () => {
  const tooMany = problem({
    needs: [
      fan(1, 250),
      fan(2, 300),
      fan(3, 350),
      fan(4, 400),
      fan(5, 450),
      fan(6, 500),
      fan(7, 550),
      fan(8, 600),
      splitter(1),
      splitter(2),
    ],
    places: [
      header(1),
      header(2),
      header(3),
      outlet(1, 1),
      outlet(1, 2),
      outlet(1, 3),
      outlet(2, 1),
      outlet(2, 2),
      outlet(2, 3),
    ],
    resources: [
      { id: 'motherboard-1/header-1/mA', capacity: 1000 },
      { id: 'motherboard-1/header-2/mA', capacity: 1000 },
      { id: 'motherboard-1/header-3/mA', capacity: 1000 },
    ],
  });
  const { joints, left, steps, stopped, proved } = findHookup(tooMany, { stepLimit: 500 });
  expect(steps).toBe(500);
  expect(proved).toBe(false);
  expect(joints.length).toBeGreaterThanOrEqual(5);
  expect(stopped).toEqual(left.map(({ id }) => id));
});
