import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { compareLogbooks } from '../../src/logbook/compare.ts';
import { append, logbookToText } from '../../src/logbook/log.ts';
import { largestFile, readLogbook, tooLarge } from '../../src/logbook/read.ts';
import type { Act } from '../../src/logbook/types.ts';
import { aLogbook } from '../helpers/logbook.ts';

const evening: Act[] = [
  { act: 'named', student: 'Bench 7' },
  { act: 'lesson-opened', lesson: 'parts/what-the-parts-are' },
  {
    act: 'handed-in',
    exercise: 'harbour-museum',
    answer: { kind: 'choose', list: [{ part: 'lodden-30', quantity: 1 }] },
  },
  { act: 'card-opened', card: 'c-1', procedure: 'p', revision: 1, list: [] },
  { act: 'step-ticked', card: 'c-1', step: 'strap-on' },
];
const remarkIds = (text: string) => readLogbook(text).remarks.map((remark) => remark.id);

/** The file of the evening, its parsed form changed by hand and written again. */
function edited(
  change: (file: { version: number; events: Record<string, unknown>[] } & Record<string, unknown>) => void,
) {
  const file = JSON.parse(logbookToText(aLogbook(evening)));
  change(file);
  return JSON.stringify(file);
}

describe('a logbook file', () => {
  test('comes back as it was written', () => {
    const book = aLogbook(evening);
    const read = readLogbook(logbookToText(book));
    expect(read).toEqual({ logbook: book, sound: 5, remarks: [] });
  });

  test('with no entries comes back too', () => {
    expect(readLogbook(logbookToText(aLogbook([]))).sound).toBe(0);
    expect(readLogbook(logbookToText(aLogbook([]))).remarks).toEqual([]);
  });

  test('that is not JSON is set aside with a reason', () => {
    const read = readLogbook('Bench 7, first evening: all went well.');
    expect(read.logbook).toBeUndefined();
    expect(read.remarks).toEqual([{ id: 'not-a-logbook', says: 'The file is not a logbook: its text is not JSON.' }]);
  });

  test('of another kind of JSON is set aside with a reason', () => {
    expect(remarkIds('{"format":"shopping"}')).toEqual(['not-a-logbook']);
    expect(remarkIds('[]')).toEqual(['not-a-logbook']);
    expect(remarkIds('null')).toEqual(['not-a-logbook']);
  });

  test('cut short anywhere gives up every whole entry before the cut', () => {
    const text = logbookToText(aLogbook(evening));
    const whole = text.split('\n').map((_, index, lines) => lines.slice(0, index + 1).join('\n').length);
    for (let cut = text.indexOf('[') + 1; cut < text.length - 3; cut += 1) {
      const read = readLogbook(text.slice(0, cut));
      // A line counts once its last character, the closing brace, is there; the comma after it need not be.
      const entries = whole.slice(1, 6).filter((end, line) => cut >= (line < 4 ? end - 1 : end)).length;
      expect(read.logbook?.events.length, `cut at ${cut}`).toBe(entries);
      expect(read.sound).toBe(entries);
      expect(read.remarks.map((remark) => remark.id)).toEqual(['cut-short']);
    }
  });

  test('from a newer version is set aside and says which copy to use', () => {
    const read = readLogbook(
      edited((file) => {
        file.version = 2;
      }),
    );
    expect(read.logbook).toBeUndefined();
    expect(read.remarks[0]?.says).toBe(
      'The logbook has version 2; this page reads version 1. Open it with a newer copy of the course.',
    );
  });

  test('with a mark written into it loses the mark and nothing else', () => {
    const read = readLogbook(
      edited((file) => {
        Object.assign(file.events[2] ?? {}, { marks: 20 });
      }),
    );
    expect(read.sound).toBe(5);
    expect(read.logbook).toEqual(aLogbook(evening));
    expect(read.remarks).toEqual([
      { id: 'foreign-field', entry: 3, says: 'Entry 3 has "marks", which a logbook never has. It was passed over.' },
    ]);
  });

  test('with a field of its own at the top loses the field and nothing else', () => {
    const read = readLogbook(
      edited((file) => {
        file['total'] = 100;
      }),
    );
    expect(read.sound).toBe(5);
    expect(read.remarks.map((remark) => remark.id)).toEqual(['foreign-field']);
  });

  test('with an answer changed earns nothing from there on, and keeps every entry', () => {
    const read = readLogbook(
      edited((file) => {
        file.events[2] = { ...file.events[2], answer: { kind: 'choose', list: [{ part: 'lodden-40', quantity: 1 }] } };
      }),
    );
    expect(read.sound).toBe(3);
    expect(read.logbook?.events.length).toBe(5);
    expect(read.remarks.map(({ id, entry }) => ({ id, entry }))).toEqual([{ id: 'changed-afterwards', entry: 4 }]);
  });

  test('with its last entry changed is seen by its head', () => {
    const read = readLogbook(
      edited((file) => {
        Object.assign(file.events[4] ?? {}, { step: 'power-on' });
      }),
    );
    expect(read.sound).toBe(4);
    expect(read.remarks[0]?.says).toBe(
      'Entry 5 was changed or taken out after it was written. It is kept, but earns nothing.',
    );
  });

  test('with an entry of no known kind sets that entry aside', () => {
    const read = readLogbook(
      edited((file) => {
        file.events[1] = { ...file.events[1], act: 'passed-everything' };
      }),
    );
    expect(read.logbook?.events.length).toBe(4);
    expect(read.remarks[0]).toMatchObject({ id: 'unreadable-entry', entry: 2 });
  });

  test('of 50 MB is not opened, and the largest that is opened is', () => {
    expect(tooLarge(50_000_000)?.says).toBe('The file holds 50 MB; a logbook is at most 8 MB. It was not opened.');
    expect(tooLarge(largestFile)).toBeUndefined();
    expect(tooLarge(largestFile + 1)?.id).toBe('too-large');
  });

  test('damaged in any byte never throws, and never makes a sound entry out of a changed one', () => {
    const book = aLogbook(evening);
    const text = logbookToText(book);
    fc.assert(
      fc.property(fc.nat(text.length - 1), fc.string({ minLength: 0, maxLength: 3 }), (at, put) => {
        const read = readLogbook(text.slice(0, at) + put + text.slice(at + 1));
        // Every entry called sound, but the first unproved one after a cut, is one that was written.
        const proved = read.logbook?.events.slice(0, Math.max(0, read.sound - 1)) ?? [];
        expect(proved).toEqual(book.events.slice(0, proved.length));
      }),
      { seed: 17, numRuns: 2000 },
    );
  });

  test('made of any JSON at all never throws', () => {
    fc.assert(
      fc.property(fc.json(), (text) => {
        expect(readLogbook(text).sound).toBe(0);
      }),
      { seed: 17, numRuns: 500 },
    );
  });
});

describe('two logbooks', () => {
  const book = aLogbook(evening);
  test('are told apart by their ids', () => {
    expect(compareLogbooks(book, aLogbook(evening, 'testlogbook2'))).toBe('other');
  });
  test('of one student stand as copy, longer, older or parted', () => {
    const longer = append(book, { act: 'file-kept' }, '2026-11-17T20:00:00.000Z');
    const elsewhere = append(book, { act: 'lesson-read', lesson: 'x' }, '2026-11-17T20:01:00.000Z');
    expect(compareLogbooks(book, aLogbook(evening))).toBe('same');
    expect(compareLogbooks(book, longer)).toBe('longer');
    expect(compareLogbooks(longer, book)).toBe('older');
    expect(compareLogbooks(longer, elsewhere)).toBe('parted');
  });
});
