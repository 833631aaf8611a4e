import fc from 'fast-check';
import { expect, test } from 'vitest';
import { aPart } from '../../src/fit/examples.ts';
import { resolveList } from '../../src/parts/list.ts';

const fan = aPart('fan');
const monitor = aPart('monitor');
const parts = [monitor, fan];

test('a list becomes parts with quantities, by part id', () => {
  const list = [
    { part: monitor.id, quantity: 1 },
    { part: fan.id, quantity: 3 },
  ];
  expect(resolveList(list, parts)).toEqual({
    input: [
      { part: fan, quantity: 3 },
      { part: monitor, quantity: 1 },
    ],
    unknown: [],
    miscounted: [],
  });
});

test('two lines of one part are added up', () => {
  const list = [
    { part: fan.id, quantity: 2 },
    { part: fan.id, quantity: 1 },
  ];
  expect(resolveList(list, parts).input).toEqual([{ part: fan, quantity: 3 }]);
});

test('a part that nobody makes is reported and the rest is kept', () => {
  const list = [
    { part: 'no-such-part', quantity: 1 },
    { part: fan.id, quantity: 1 },
  ];
  const resolved = resolveList(list, parts);
  expect(resolved.unknown).toEqual(['no-such-part']);
  expect(resolved.input).toEqual([{ part: fan, quantity: 1 }]);
});

test.each([0, -1, 1.5, 100, Number.NaN, Number.POSITIVE_INFINITY])(
  '%d of a part is reported, not judged',
  (quantity) => {
    const resolved = resolveList([{ part: fan.id, quantity }], parts);
    expect(resolved).toEqual({ input: [], unknown: [], miscounted: [fan.id] });
  },
);

test('99 of a part are judged; 99 and one more are not', () => {
  const most = { part: fan.id, quantity: 99 };
  expect(resolveList([most], parts).input).toEqual([{ part: fan, quantity: 99 }]);
  expect(resolveList([most, { part: fan.id, quantity: 1 }], parts)).toEqual({
    input: [],
    unknown: [],
    miscounted: [fan.id],
  });
});

test('whatever stands in a list, every line is either judged or reported, and the order changes nothing', () => {
  const line = fc.record({
    part: fc.constantFrom(fan.id, monitor.id, 'constructor', ''),
    quantity: fc.oneof(fc.integer({ min: -2, max: 120 }), fc.double()),
  });
  fc.assert(
    fc.property(fc.array(line), (list) => {
      const { input, unknown, miscounted } = resolveList(list, parts);
      const told = [...input.map(({ part }) => part.id), ...unknown, ...miscounted].sort();
      expect(told).toEqual([...new Set(list.map(({ part }) => part))].sort());
      expect(resolveList([...list].reverse(), parts)).toEqual({ input, unknown, miscounted });
    }),
  );
});

test('a hundred parts are judged, and the part that makes them more is not', () => {
  const full = [
    { part: fan.id, quantity: 99 },
    { part: monitor.id, quantity: 1 },
  ];
  expect(resolveList(full, parts).miscounted).toEqual([]);
  const over = [
    { part: fan.id, quantity: 99 },
    { part: monitor.id, quantity: 2 },
  ];
  expect(resolveList(over, parts)).toEqual({
    input: [{ part: fan, quantity: 99 }],
    unknown: [],
    miscounted: [monitor.id],
  });
});
