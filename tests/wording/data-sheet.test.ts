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

  test('a field to measure is named by the thing measured', () => {
    expect(fieldName('heightMm', 'Skarn Tall')).toBe('Height of the Skarn Tall');
    expect(fieldName('supplyLengthMm', 'Lodden 25')).toBe('Room for a supply in the Lodden 25');
    expect([fieldUnit('heightMm'), fieldUnit('sustainedW')]).toEqual(['mm', 'W']);
  });
});
