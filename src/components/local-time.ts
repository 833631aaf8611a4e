/** Times as the clock on the wall says them: "at 19:42 today", "at 19:42 on 10 November 2026". */
export function localTime(at: string | undefined, now: Date = new Date()): string {
  if (at === undefined) return 'at an unknown time';
  const then = new Date(at);
  const clock = then.toLocaleTimeString('en-GB', { hour: '2-digit', minute: '2-digit' });
  if (then.toDateString() === now.toDateString()) return `at ${clock} today`;
  return `at ${clock} on ${then.toLocaleDateString('en-GB', { day: 'numeric', month: 'long', year: 'numeric' })}`;
}
