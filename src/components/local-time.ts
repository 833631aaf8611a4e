/** "19:42". */
export const wallClock = (date: Date): string =>
  date.toLocaleTimeString('en-GB', { hour: '2-digit', minute: '2-digit' });

/** Times as the clock on the wall says them: "at 19:42 today", "at 19:42 on 10 November 2026". */
export function localTime(at: string | undefined, now: Date = new Date()): string {
  if (at === undefined) return 'at an unknown time';
  const then = new Date(at);
  const clock = wallClock(then);
  if (then.toDateString() === now.toDateString()) return `at ${clock} today`;
  return `at ${clock} on ${then.toLocaleDateString('en-GB', { day: 'numeric', month: 'long', year: 'numeric' })}`;
}

/** The same for a column of a table: "19:42 today", "10 Nov, 19:42". */
export function shortTime(at: string, now: Date = new Date()): string {
  const then = new Date(at);
  const clock = wallClock(then);
  if (then.toDateString() === now.toDateString()) return `${clock} today`;
  return `${then.toLocaleDateString('en-GB', { day: 'numeric', month: 'short' })}, ${clock}`;
}
