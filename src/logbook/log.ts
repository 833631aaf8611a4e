/** Writing a logbook: entries are only ever added, each tied to the one before it. */
import { digestOf } from '../units/digest.ts';
import type { Act, Logbook, LogEvent } from './types.ts';

/** What stands for "the entry before" in the first entry, and for the head of an empty logbook. */
export const emptyHead = '0'.repeat(64);

export const logbookVersion = 1;

/** An empty logbook. `id` is random and made by the caller: 8 to 40 small letters and figures. */
export function newLogbook(id: string, content: string): Logbook {
  return { format: 'benchbook-logbook', version: logbookVersion, id, content, head: emptyHead, events: [] };
}

/** The entry that records `act` after `head` as number `n`; `at` is UTC in ISO 8601 with Z. */
export function nextEvent(n: number, head: string, act: Act, at: string): LogEvent {
  return { n, at, before: head, ...act };
}

/** The logbook with one more entry. The one given is not changed. */
export function append(logbook: Logbook, act: Act, at: string): Logbook {
  const event = nextEvent(logbook.events.length + 1, logbook.head, act, at);
  return { ...logbook, head: digestOf(event), events: [...logbook.events, event] };
}

/**
 * The logbook as a file: JSON with one entry a line, so that a file cut short still gives up every whole entry.
 */
export function logbookToText(logbook: Logbook): string {
  const { events, ...head } = logbook;
  const lines = events.map((event) => JSON.stringify(event)).join(',\n');
  return `${JSON.stringify(head).slice(0, -1)},"events":[\n${lines}\n]}\n`;
}
