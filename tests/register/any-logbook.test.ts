import fc from 'fast-check';
import { expect, test } from 'vitest';
import { logbookToText } from '../../src/logbook/log.ts';
import type { Act } from '../../src/logbook/types.ts';
import { classCsv, progressPage, studentCsv, studentJson } from '../../src/register/exports.ts';
import { makeRegister } from '../../src/register/register.ts';
import { content } from '../helpers/content.ts';
import { aLogbook } from '../helpers/logbook.ts';

// Ids that exist are mixed with ids that do not, so that every path of the register is taken.
const partId = fc.oneof(
  fc.constantFrom(...content.parts.map(({ id }) => id)),
  fc.constantFrom('moon-rocket', '__proto__'),
);
const list = fc.array(fc.record({ part: partId, quantity: fc.integer({ min: 1, max: 5 }) }), { maxLength: 12 });
const exercise = fc.constantFrom(...content.exercises.map(({ id }) => id), 'yacht-club', 'constructor');
const lesson = fc.constantFrom(...content.lessons.map(({ id }) => id), 'fit/nothing');
const procedure = fc.constantFrom(...content.procedures.map(({ id }) => id), 'boat');
const card = fc.constantFrom('card-1', 'card-2', 'toString');
const step = fc.constantFrom(...(content.procedures[0]?.steps.map(({ id }) => id) ?? []), 'make-tea', '__proto__');
const verdict = fc.constantFrom('fits', 'does-not-fit', 'cannot-tell');
const answer = fc.oneof(
  fc.record({ kind: fc.constant('choose' as const), list }),
  fc.record({ kind: fc.constant('misfits' as const), verdicts: fc.dictionary(fc.string({ maxLength: 12 }), verdict) }),
);
const act = fc.oneof(
  fc.record({ act: fc.constant('named' as const), student: fc.string({ maxLength: 60 }) }),
  fc.record({ act: fc.constant('lesson-read' as const), lesson }),
  fc.record({
    act: fc.constant('question-answered' as const),
    lesson,
    question: fc.string({ maxLength: 9 }),
    choice: fc.nat(9),
  }),
  fc.record({
    act: fc.constant('measure-noted' as const),
    exercise,
    part: partId,
    field: fc.constantFrom('heightMm', 'lengthMm', 'sustainedW', 'memory', '__proto__'),
    value: fc.integer({ min: 1, max: 900 }),
  }),
  fc.record({ act: fc.constant('verdict-given' as const), exercise, statement: fc.string({ maxLength: 9 }), verdict }),
  fc.record({ act: fc.constant('handed-in' as const), exercise, answer }),
  fc.record({
    act: fc.constant('card-opened' as const),
    card,
    procedure,
    revision: fc.integer({ min: 1, max: 3 }),
    list,
  }),
  fc.record({ act: fc.constant('step-ticked' as const), card, step }),
  fc.record({ act: fc.constant('step-unticked' as const), card, step }),
  fc.record({
    act: fc.constant('value-measured' as const),
    card,
    step,
    value: fc.double({ min: -20, max: 20, noNaN: true }),
  }),
  fc.record({ act: fc.constant('hold-passed' as const), card, step, by: fc.constant('self' as const) }),
) as fc.Arbitrary<Act>;

test('any logbook gives a row and every export, and no exercise more marks than it has', () => {
  fc.assert(
    fc.property(fc.array(act, { maxLength: 30 }), (acts) => {
      const text = logbookToText(aLogbook(acts));
      const register = makeRegister([{ name: 'any.json', bytes: text.length, text }], content);
      expect(register.aside).toEqual([]);
      const [row] = register.rows;
      if (!row) throw new Error('no row');
      for (const { best, of } of row.exercises) expect(best?.marks ?? 0).toBeLessThanOrEqual(of);
      expect(row.card?.done ?? 0).toBeLessThanOrEqual(row.card?.of ?? 0);
      expect(JSON.parse(studentJson(row, register.content)).student).toBe(row.student);
      expect(studentCsv(row).length + classCsv(register).length).toBeGreaterThan(0);
      expect(progressPage(row, 'Course', 'f')).not.toContain('<script');
    }),
    { seed: 17, numRuns: 200 },
  );
});
