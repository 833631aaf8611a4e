/** The shape of a logbook file, for reading files that come from outside. */
import { z } from 'zod';
import { longestId, mostLines, mostOfOne } from '../parts/limits.ts';

// Sites are served with a policy that forbids making code from text; zod must not try.
z.config({ jitless: true });

const text = (most: number) => z.string().max(most);
const id = text(longestId);
const listed = z.strictObject({ part: id, quantity: z.number().int().positive().max(mostOfOne) });
const list = z.array(listed).max(mostLines);
const verdict = z.enum(['fits', 'does-not-fit', 'cannot-tell']);
const answer = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('choose'), list }),
  z.strictObject({
    kind: z.literal('misfits'),
    verdicts: z.record(id, verdict),
  }),
]);

const link = {
  n: z.number().int().positive(),
  at: z.iso.datetime(),
  before: z.string().regex(/^[0-9a-f]{64}$/),
};

/** One entry. Strict: a field that a logbook never has, such as a mark, is refused. */
export const logEvent = z.discriminatedUnion('act', [
  z.strictObject({ ...link, act: z.literal('named'), student: text(60) }),
  z.strictObject({ ...link, act: z.literal('lesson-opened'), lesson: id }),
  z.strictObject({ ...link, act: z.literal('lesson-read'), lesson: id }),
  z.strictObject({
    ...link,
    act: z.literal('question-answered'),
    lesson: id,
    question: id,
    choice: z.number().int().min(0).max(99),
  }),
  z.strictObject({ ...link, act: z.literal('list-changed'), exercise: id, list }),
  z.strictObject({ ...link, act: z.literal('verdict-given'), exercise: id, statement: id, verdict }),
  z.strictObject({
    ...link,
    act: z.literal('measure-noted'),
    exercise: id,
    part: id,
    field: id,
    value: z.number().positive().max(100_000),
  }),
  z.strictObject({ ...link, act: z.literal('handed-in'), exercise: id, answer }),
  z.strictObject({
    ...link,
    act: z.literal('card-opened'),
    card: id,
    procedure: id,
    revision: z.number().int().positive(),
    list,
  }),
  z.strictObject({ ...link, act: z.literal('step-ticked'), card: id, step: text(300) }),
  z.strictObject({ ...link, act: z.literal('step-unticked'), card: id, step: text(300) }),
  z.strictObject({
    ...link,
    act: z.literal('value-measured'),
    card: id,
    step: text(300),
    value: z.number().min(-1e6).max(1e6),
  }),
  z.strictObject({
    ...link,
    act: z.literal('hold-passed'),
    card: id,
    step: text(300),
    by: z.enum(['initials', 'self']),
    initials: text(12).optional(),
  }),
  z.strictObject({ ...link, act: z.literal('file-kept') }),
]);

/** Everything but the entries, which are read one by one. */
export const logbookHead = z.object({
  format: z.literal('benchbook-logbook'),
  version: z.number().int().positive(),
  id: z.string().regex(/^[0-9a-z]{8,40}$/),
  content: text(64),
  head: z.string().regex(/^[0-9a-f]{64}$/),
});
export const logbookFields = ['format', 'version', 'id', 'content', 'head', 'events'] as const;
