import { expect, test } from 'vitest';
import { endLines } from '../../src/fit/end-lines.ts';
import { aPart } from '../../src/fit/examples.ts';
import { type PartClass, type PartOf, partClasses } from '../../src/parts/part.ts';
import { content } from '../helpers/content.ts';

const linesOf = (of: PartClass) => endLines(aPart(of));

test('equal needs and places are counted, unequal ones are told apart', () => {
  const { needs, places } = linesOf('power-supply');
  expect(needs[0]).toEqual({ what: 'the bay for a supply', count: 1, details: 'ATX; 150 mm long' });
  expect(places.filter(({ what }) => what === 'plug for a card')).toEqual([
    { what: 'plug for a card', count: 2, details: '8-pin card plug or 6-pin card plug' },
  ]);
  expect(places.find(({ what }) => what === 'plug for a drive')).toMatchObject({
    count: 3,
    details: 'SATA power plug',
  });
});

test('a measure that is not recorded says so; one without a limit says nothing', () => {
  const supply = { ...aPart('power-supply'), lengthMm: undefined };
  expect(endLines(supply).needs[0]?.details).toBe('ATX; length not recorded');
});

test('what a card takes from its slot is said in slots and megabytes a second', () => {
  expect(linesOf('graphics-card').needs.find(({ what }) => what === 'a slot for a card')?.details).toContain(
    '2 slots thick',
  );
});

test('nothing on the page of any part is a word of the search', () => {
  const parts = [...content.parts, ...partClasses.map((of) => aPart(of))];
  for (const part of parts) {
    const { needs, places } = endLines(part);
    for (const { what, details } of [...needs, ...places]) {
      expect(`${what} ${details}`, part.id).not.toMatch(/undefined|null|NaN|\[object|true|false|\b[a-z]+[A-Z][a-z]/);
    }
  }
});

const board: PartOf<'motherboard'> = aPart('motherboard');
const placesOf = (fields: Partial<PartOf<'motherboard'>>) => endLines({ ...board, ...fields }).places;

test('a place that takes either of two things says or, and how large they may be', () => {
  const bay = { id: 'bay-1', sizes: ['3.5', '2.5'] as ('3.5' | '2.5')[], heightMm: 27 };
  const { places } = endLines({ ...aPart('chassis'), driveBays: [bay] });
  expect(places.find(({ what }) => what === 'drive bay')?.details).toBe('3.5 inch or 2.5 inch; at most 27 mm high');
});

test('the positions of a jumper stand with the jumper, and lines for good by themselves', () => {
  const { needs, places } = endLines({
    ...aPart('bus-card'),
    lines: ['dma-2', 'io-3f0'],
    settings: [
      {
        id: 'printer',
        says: 'printer port',
        positions: [
          { id: 'first', lines: ['irq-7', 'io-378'] },
          { id: 'off', lines: [] },
        ],
      },
    ],
  });
  expect(needs).toContainEqual({
    what: 'its jumper: printer port',
    count: 1,
    details: 'interrupt 7 and port address 378; or off',
  });
  expect(needs).toContainEqual({
    what: 'lines of the bus that no jumper moves',
    count: 1,
    details: 'DMA channel 2 and port address 3F0',
  });
  expect(places.some(({ what }) => what.includes('jumper'))).toBe(false);
});

test('a bank says how many modules fill it, and a place on a ribbon where it is', () => {
  const lines = placesOf({
    memoryBanks: [
      { id: 'bank-0', slots: 4, pins: '30', largestKb: 4096, slowestNs: 80 },
      { id: 'bank-1', slots: 1, pins: '72', largestKb: 16384, slowestNs: 70 },
    ],
    dataSockets: [{ id: 'disk', plug: 'ata-40' }],
  });
  const details = (of: string) => lines.filter(({ what }) => what === of).map((line) => line.details);
  expect(details('bank for memory modules')).toEqual([
    '30-pin; modules of at most 4 MB; 80 ns or faster; filled 4 at a time',
    '72-pin; modules of at most 16 MB; 70 ns or faster; one module fills it',
  ]);
  expect(details('place for a drive on a ribbon')).toEqual([
    '40-pin ribbon; at the end',
    '40-pin ribbon; in the middle',
  ]);
});

test('a socket for a keyboard or a mouse is one socket', () => {
  const lines = placesOf({ inputSockets: [{ id: 'usb-1', plug: 'usb-a', for: ['keyboard', 'pointer'] }] });
  expect(lines.filter(({ what }) => /keyboard|mouse/.test(what))).toEqual([
    { what: 'socket for a keyboard or a mouse', count: 1, details: 'USB' },
  ]);
});

test('where nothing can be joined there is no place, and where nobody recorded it that is said', () => {
  expect(placesOf({ coolerMountings: [] }).some(({ what }) => what === 'mounting for a cooler')).toBe(false);
  expect(placesOf({ coolerMountings: undefined })).toContainEqual({
    what: 'mounting for a cooler',
    count: 1,
    details: 'mountings not recorded',
  });
  const { places } = endLines({ ...aPart('power-strip'), sockets: undefined });
  expect(places).toEqual([{ what: 'mains socket', count: 1, details: 'not recorded' }]);
});
