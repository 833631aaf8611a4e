/** Reading a logbook file that comes from outside: believe nothing, lose nothing, say what is odd. */
import { digestOf } from '../units/digest.ts';
import { emptyHead, logbookVersion } from './log.ts';
import { logbookFields, logbookHead, logEvent } from './schema.ts';
import type { Logbook, LogEvent, Remark } from './types.ts';

/** Larger files are not opened: a logbook of a whole course is far below it. In bytes. */
export const largestFile = 8_000_000;

/** Why a file of this size is set aside, or undefined when it may be opened. */
export function tooLarge(bytes: number): Remark | undefined {
  if (bytes <= largestFile) return undefined;
  const mb = Math.round(bytes / 100_000) / 10;
  return {
    id: 'too-large',
    says: `The file holds ${mb} MB; a logbook is at most ${largestFile / 1_000_000} MB. It was not opened.`,
  };
}

export type ReadLogbook = {
  /** Absent when nothing in the file could be used. */
  logbook?: Logbook;
  /** How many of the entries, from the first, follow from each other unbroken. Marks count only these. */
  sound: number;
  remarks: Remark[];
};

const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const remark = (id: Remark['id'], says: string, entry?: number): Remark =>
  entry === undefined ? { id, says } : { id, says, entry };

/** Reads the text of one file. Never throws. */
export function readLogbook(text: string): ReadLogbook {
  const remarks: Remark[] = [];
  const raw = parse(text.replace(/^\uFEFF/, ''), remarks);
  if (raw === undefined) {
    remarks.push(remark('not-a-logbook', 'The file is not a logbook: its text is not JSON.'));
    return { sound: 0, remarks };
  }
  if (!isRecord(raw) || raw['format'] !== 'benchbook-logbook') {
    remarks.push(
      remark('not-a-logbook', 'The file is JSON, but not a logbook: its format is not "benchbook-logbook".'),
    );
    return { sound: 0, remarks };
  }
  const version = raw['version'];
  if (typeof version === 'number' && version > logbookVersion) {
    remarks.push(
      remark(
        'newer-version',
        `The logbook has version ${version}; this page reads version ${logbookVersion}. Open it with a newer copy of the course.`,
      ),
    );
    return { sound: 0, remarks };
  }
  const head = logbookHead.safeParse(raw);
  if (!head.success) {
    const where = head.error.issues[0]?.path.join('.') ?? 'the head';
    remarks.push(
      remark('not-a-logbook', `The logbook's "${where}" is missing or not what it should be, so it was set aside.`),
    );
    return { sound: 0, remarks };
  }
  for (const field of Object.keys(raw).filter((name) => !(logbookFields as readonly string[]).includes(name))) {
    remarks.push(
      remark('foreign-field', `The file has "${clip(field)}", which a logbook never has. It was passed over.`),
    );
  }
  const events = readEvents(Array.isArray(raw['events']) ? raw['events'] : [], remarks);
  const { id, content } = head.data;
  const sound = soundLength(events, head.data.head, remarks);
  return {
    logbook: { format: 'benchbook-logbook', version: logbookVersion, id, content, head: head.data.head, events },
    sound,
    remarks,
  };
}

/** Text from a file, shortened for a sentence. */
const clip = (text: string) => (text.length > 40 ? `${text.slice(0, 40)}…` : text);

/** The whole text as JSON, or what can be saved of a file cut short: its head and every whole line. */
function parse(text: string, remarks: Remark[]): unknown {
  try {
    return JSON.parse(text);
  } catch {
    const opening = text.indexOf('"events":[');
    if (opening < 0 || !text.startsWith('{"format":"benchbook-logbook"')) return undefined;
    const lines = text.slice(opening + '"events":['.length).split('\n');
    const events: unknown[] = [];
    for (const line of lines.map((one) => one.trim().replace(/,$/, '')).filter((one) => one.startsWith('{'))) {
      try {
        events.push(JSON.parse(line));
      } catch {
        break;
      }
    }
    try {
      const head = JSON.parse(`${text.slice(0, opening)}"events":[]}`) as Record<string, unknown>;
      remarks.push(
        remark(
          'cut-short',
          `The file ends too early or is damaged. ${events.length} whole entries could be read and are kept.`,
        ),
      );
      return { ...head, events };
    } catch {
      return undefined;
    }
  }
}

function readEvents(raw: unknown[], remarks: Remark[]): LogEvent[] {
  const events: LogEvent[] = [];
  raw.forEach((one, index) => {
    const read = logEvent.safeParse(one);
    const foreign = read.success ? undefined : foreignFields(read.error.issues);
    const again = foreign && isRecord(one) ? logEvent.safeParse(without(one, foreign)) : read;
    if (again.success) {
      for (const field of foreign ?? []) {
        remarks.push(
          remark(
            'foreign-field',
            `Entry ${index + 1} has "${clip(field)}", which a logbook never has. It was passed over.`,
            index + 1,
          ),
        );
      }
      events.push(again.data as LogEvent);
      return;
    }
    const where = again.error.issues[0]?.path.join('.') || 'form';
    remarks.push(
      remark(
        'unreadable-entry',
        `Entry ${index + 1} has a "${clip(where)}" that is not what it should be. It was set aside.`,
        index + 1,
      ),
    );
  });
  return events;
}

/** Names of fields that the entry should not have, when that is all that is wrong with it. */
function foreignFields(issues: { code: string; path: PropertyKey[]; keys?: string[] }[]): string[] | undefined {
  const plain = issues.every((issue) => issue.code === 'unrecognized_keys' && issue.path.length === 0);
  return plain ? issues.flatMap((issue) => issue.keys ?? []) : undefined;
}

function without(record: Record<string, unknown>, fields: string[]): Record<string, unknown> {
  return Object.fromEntries(Object.entries(record).filter(([name]) => !fields.includes(name)));
}

function soundLength(events: LogEvent[], head: string, remarks: Remark[]): number {
  let before = emptyHead;
  for (const [index, event] of events.entries()) {
    if (event.before !== before || event.n !== index + 1) {
      remarks.push(changed(index, events.length));
      return index;
    }
    before = digestOf(event);
  }
  if (before === head || remarks.some((one) => one.id === 'cut-short')) return events.length;
  const index = Math.max(0, events.length - 1);
  remarks.push(changed(index, events.length));
  return index;
}

function changed(index: number, count: number): Remark {
  const from = index + 1;
  return remark(
    'changed-afterwards',
    from >= count
      ? `Entry ${from} was changed or taken out after it was written. It is kept, but earns nothing.`
      : `Entry ${from} does not follow from the one before: something was changed or taken out after it was written. Entries ${from} to ${count} are kept, but earn nothing.`,
    from,
  );
}
