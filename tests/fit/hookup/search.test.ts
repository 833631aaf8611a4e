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

test('a list of fourteen parts is joined without loss', () => {
  const hookup = findHookup(fourteenParts);
  expect(hookup.left).toEqual([]);
  expect(hookup.cost.slice(0, 8)).toEqual([0, 0, 0, 0, 0, 0, 0, 0]);
  expect(hookup.proved).toBe(true);
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
