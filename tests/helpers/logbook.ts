/** A logbook made of acts, one a minute from a fixed evening. */
import { append, newLogbook } from '../../src/logbook/log.ts';
import type { Act, Logbook } from '../../src/logbook/types.ts';

export function aLogbook(acts: Act[], id = 'testlogbook1'): Logbook {
  return acts.reduce<Logbook>(
    (book, act, index) => append(book, act, new Date(Date.UTC(2026, 10, 17, 18, index)).toISOString()),
    newLogbook(id, 'content-1'),
  );
}
