import { describe, expect, test } from 'vitest';
import { aPart } from '../../src/fit/examples.ts';
import { partClasses } from '../../src/parts/part.ts';
import { dataSheet, fieldName, fieldUnit } from '../../src/wording/data-sheet.ts';

const says = (lines: ReturnType<typeof dataSheet>, name: string) => lines.find((line) => line.name === name)?.says;

describe('a data sheet in words', () => {
  test('every class has lines, and each says something', () => {
    for (const of of partClasses) {
      const lines = dataSheet(aPart(of));
      expect(lines.length).toBeGreaterThan(2);
      expect(lines.every(({ name, says: words }) => name !== '' && words !== '')).toBe(true);
    }
  });

  test('a measure that is not recorded says so, and is never 0', () => {
    const sheet = dataSheet({ ...aPart('cooler'), heightMm: undefined });
    expect(says(sheet, 'Height')).toBe('not recorded');
    expect(says(dataSheet({ ...aPart('cooler'), memoryHeightMm: undefined }), 'Memory under it')).toBe('not recorded');
  });

  test('a cooler that stands clear of the memory is told from one whose height under it is not recorded', () => {
    expect(says(dataSheet({ ...aPart('cooler'), memoryHeightMm: null }), 'Memory under it')).toBe('stands clear of it');
  });

  test('equal plugs are counted', () => {
    expect(says(dataSheet({ ...aPart('graphics-card'), powerSockets: ['pcie-8', 'pcie-8'] }), 'Power sockets')).toBe(
      '2 × 8-pin card plug',
    );
    expect(says(dataSheet({ ...aPart('graphics-card'), powerSockets: [] }), 'Power sockets')).toBe('none');
  });

  test('a board of about 1990 has no rows for what was not yet made, a board of today says that it has none', () => {
    const older = { busSlots: [], expansionSlots: [], moduleSlots: [], sataPorts: 0, pictureSockets: [] };
    const names = (sheet: ReturnType<typeof dataSheet>) => sheet.map(({ name }) => name);
    const absent = ['Slots for cards', 'M.2 slots', 'SATA ports', 'Picture sockets'];
    const sheet = dataSheet({ ...aPart('motherboard'), ...older });
    expect(names(sheet).filter((name) => absent.includes(name))).toEqual([]);
    const today = dataSheet({ ...aPart('motherboard'), ...older, busSlots: undefined });
    expect(absent.map((name) => says(today, name))).toEqual(['none', 'none', 'none', 'none']);
  });

  test('a monitor that follows rates is told by its rates, and one of which nothing is known says so', () => {
    const bare = { widthPx: undefined, heightPx: undefined, refreshHz: undefined };
    const follows = dataSheet({ ...aPart('monitor'), ...bare, horizontalKhz: [15.5, 38], verticalHz: [50, 50] });
    expect(says(follows, 'Picture')).toBeUndefined();
    expect([says(follows, 'Lines a second'), says(follows, 'Pictures a second')]).toEqual(['15.5 to 38 kHz', '50 Hz']);
    const stray = dataSheet({ ...aPart('monitor'), ...bare, horizontalKhz: undefined, verticalHz: undefined });
    expect(says(stray, 'Picture')).toBe('not recorded');
  });

  test('none is not what a sheet says of that which is not recorded', () => {
    const card = dataSheet({ ...aPart('bus-card'), lines: undefined, settings: undefined, driver: undefined });
    expect(['Jumpers', 'Lines no jumper moves', 'Driver'].map((name) => says(card, name))).toEqual(
      Array.from({ length: 3 }, () => 'not recorded'),
    );
    expect(says(dataSheet({ ...aPart('bus-card'), driver: null }), 'Driver')).toBe('none needed');
    expect(says(dataSheet({ ...aPart('expansion-card'), driver: undefined }), 'Driver')).toBe('not recorded');
    expect(says(dataSheet({ ...aPart('operating-system'), drivers: undefined }), 'Brings drivers for')).toBe(
      'not recorded',
    );
  });

  test('the lines of the bus are read as a manual reads them', () => {
    const card = dataSheet({ ...aPart('bus-card'), lines: ['irq-5', 'dma-1', 'io-3f8', 'mem-d000'] });
    expect(says(card, 'Lines no jumper moves')).toBe(
      'interrupt 5, DMA channel 1, port address 3F8, memory address D000',
    );
  });

  test('names that have a comma are parted by more than a comma', () => {
    const bays = [
      { id: 'a', sizes: ['3.5-open' as const] },
      { id: 'b', sizes: ['3.5' as const, '2.5' as const] },
    ];
    expect(says(dataSheet({ ...aPart('chassis'), driveBays: bays }), 'Drive bays')).toBe(
      '3.5 inch, open to the front; 3.5 inch or 2.5 inch',
    );
  });

  test('banks are counted in words, and amounts stand in their usual unit', () => {
    const memoryBanks = ([4, 4, 1] as const).map((slots, n) => ({ id: `bank-${n}`, slots, pins: '30' as const }));
    expect(says(dataSheet({ ...aPart('motherboard'), memory: undefined, memoryBanks }), 'Memory')).toBe(
      'two banks of four 30-pin sockets, one bank of one 30-pin socket',
    );
    expect(says(dataSheet({ ...aPart('bank-module'), capacityKb: 4096 }), 'Capacity')).toBe('4 MB');
    expect(says(dataSheet({ ...aPart('fixed-disk'), milliwatts: 7500 }), 'Draws, steady')).toBe('7.5 W');
    expect(says(dataSheet({ ...aPart('monitor-arm'), carriesGrams: 8000 }), 'Carries')).toBe('at most 8 kg');
    expect(says(dataSheet({ ...aPart('diskette'), format: '3.5-1440' }), 'Each holds')).toBe('1.44 MB');
  });

  test('a field to measure is named by the thing measured', () => {
    expect(fieldName('heightMm', 'Skarn Tall')).toBe('Height of the Skarn Tall');
    expect(fieldName('supplyLengthMm', 'Lodden 25')).toBe('Room for a supply in the Lodden 25');
    expect([fieldUnit('heightMm'), fieldUnit('sustainedW')]).toEqual(['mm', 'W']);
  });
});
