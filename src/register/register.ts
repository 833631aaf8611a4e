/** Logbook files in, register out: everything judged and marked again with the core of this copy. */
import type { Content } from '../content-types.ts';
import { mark } from '../exercises/grade.ts';
import type { Marked } from '../exercises/types.ts';
import { judgeList } from '../fit/judge.ts';
import { rules } from '../fit/rules/index.ts';
import { compareLogbooks } from '../logbook/compare.ts';
import { allNoted, type CardProgress, type Progress, progressOf } from '../logbook/progress.ts';
import { type ReadLogbook, readLogbook, tooLarge } from '../logbook/read.ts';
import type { Logbook, Remark } from '../logbook/types.ts';
import { canBeNoted, withNoted } from '../parts/noted.ts';
import type { Part } from '../parts/part.ts';
import { faultyTicks, tailor } from '../procedures/tailor.ts';
import type { CardStep } from '../procedures/types.ts';
import { byId } from '../units/ids.ts';
import { fieldName, fieldUnit } from '../wording/data-sheet.ts';
import { count } from '../wording/phrases.ts';
import type { CardRow, ExerciseRow, LessonRow, LogbookFile, Register, Row } from './types.ts';

type ReadFile = ReadLogbook & { file: string; logbook: Logbook };

/** Reads what was dropped, in any order; the same files always give the same register. Never throws on what a file holds. */
export function makeRegister(files: readonly LogbookFile[], content: Content): Register {
  const aside: Register['aside'] = [];
  const read: ReadFile[] = [];
  for (const file of [...files].sort((a, b) => byId(a.name, b.name))) {
    const unread = tooLarge(file.bytes) ?? (file.text === undefined ? notOpened : undefined);
    const result = unread ? { sound: 0, remarks: [unread] } : readLogbook(file.text ?? '');
    if (result.logbook) read.push({ ...result, file: file.name, logbook: result.logbook });
    else aside.push({ file: file.name, remarks: result.remarks });
  }
  const rows = withoutCopies(read).map((one) => makeRow(one, content));
  remarkSameNames(rows);
  rows.sort((a, b) => byId(a.student, b.student) || byId(a.key, b.key));
  return { content: content.fingerprint, rows, aside, missed: missedRules(rows, content) };
}

const remark = (id: Remark['id'], says: string): Remark => ({ id, says });
const notOpened = remark('not-opened', 'The file could not be opened. A folder is not read: drop the files in it.');

type Chosen = ReadFile & { key: string; older: string[] };

/** One entry per logbook: of copies that are a beginning of another only the longest is kept. */
function withoutCopies(read: ReadFile[]): Chosen[] {
  const kept: Chosen[] = [];
  const byLength = [...read].sort((a, b) => b.sound - a.sound || b.logbook.events.length - a.logbook.events.length);
  for (const one of byLength) {
    const same = kept.filter((other) => other.logbook.id === one.logbook.id);
    const whole = same.find((other) => isCopy(other, one));
    if (whole) {
      whole.older.push(one.file);
      whole.remarks.push(
        remark('older-copy', `${one.file} is an older or equal copy of the same logbook; ${whole.file} was used.`),
        ...one.remarks,
      );
      continue;
    }
    const key = same.length === 0 ? one.logbook.id : `${one.logbook.id}-${same.length + 1}`;
    const parted = same[0];
    kept.push({ ...one, remarks: [...one.remarks], key, older: [] });
    if (parted) {
      const says = `${parted.file} and ${one.file} are the same logbook gone on with in two ways. Each has a row of its own.`;
      parted.remarks.push(remark('parted-copy', says));
      kept.at(-1)?.remarks.push(remark('parted-copy', says));
    }
  }
  return kept;
}

const isCopy = (whole: ReadFile, one: ReadFile) =>
  ['same', 'older'].includes(compareLogbooks(whole.logbook, one.logbook));

function makeRow(read: Chosen, content: Content): Row {
  const { logbook, remarks } = read;
  // Where someone is may be read from every entry; what someone earned only from entries that prove themselves.
  const all = progressOf(logbook.events);
  const proved = progressOf(logbook.events.slice(0, read.sound));
  if (logbook.content !== content.fingerprint) {
    remarks.push(
      remark('other-content', 'The logbook was made with another edition of the course; it is marked with this one.'),
    );
  }
  const known = new Set(content.exercises.map((exercise) => exercise.id));
  for (const exercise of proved.handedIn.keys()) {
    if (known.has(exercise)) continue;
    remarks.push(remark('unknown-exercise', `It has an answer to "${exercise}", which this course does not have.`));
  }
  const last = all.lastCard === undefined ? undefined : all.cards.get(all.lastCard);
  const card =
    last && cardRow(last, proved.cards.get(last.card), content, withNoted(content.parts, allNoted(all)), remarks);
  return {
    key: read.key,
    student: all.student?.trim() || 'no name',
    files: [read.file, ...read.older],
    remarks,
    lessons: content.lessons.map((lesson) => lessonRow(lesson, all)),
    exercises: content.exercises.map((exercise) => exerciseRow(exercise, proved, content)),
    ...(card ? { card } : {}),
    ...(all.lastAt === undefined ? {} : { lastAt: all.lastAt }),
  };
}

function lessonRow(lesson: Content['lessons'][number], progress: Progress): LessonRow {
  const right = lesson.questions.filter(
    (question) => progress.answers.get(`${lesson.id}#${question.id}`) === question.right,
  ).length;
  return {
    lesson: lesson.id,
    sheet: lesson.sheet,
    title: lesson.title,
    opened: progress.opened.has(lesson.id),
    read: progress.read.has(lesson.id),
    right,
    of: lesson.questions.length,
  };
}

function exerciseRow(exercise: Content['exercises'][number], progress: Progress, content: Content): ExerciseRow {
  const attempts = progress.handedIn.get(exercise.id) ?? [];
  const noted = progress.noted.get(exercise.id) ?? new Map<string, number>();
  const parts = withNoted(content.parts, noted);
  const marked = attempts.map(({ answer, at }) => ({ ...mark(exercise, answer, parts), at }));
  const best = marked.reduce<ExerciseRow['best']>(
    (most, one) => (most && most.marks >= one.marks ? most : one),
    undefined,
  );
  return {
    exercise: exercise.id,
    title: exercise.title,
    attempts: attempts.length,
    of: exercise.rubric.reduce((sum, line) => sum + line.marks, 0),
    ...(best ? { best } : {}),
    missed: missedIn(marked.at(-1)),
    noted: notedIn(noted, content),
  };
}

/** Only measures that were used: of a part that exists, in a field that can be noted. */
function notedIn(noted: ReadonlyMap<string, number>, content: Content): ExerciseRow['noted'] {
  return [...noted]
    .sort(([a], [b]) => byId(a, b))
    .flatMap(([key, value]) => {
      const dot = key.lastIndexOf('.');
      const field = key.slice(dot + 1);
      const part = content.parts.find(({ id }) => id === key.slice(0, dot));
      return part && canBeNoted(field) ? [{ what: fieldName(field, part.name), value, unit: fieldUnit(field) }] : [];
    });
}

/** A finding's id begins with its rule's. */
function missedIn(marked: Marked | undefined): string[] {
  const lost = marked?.lines.filter((line) => line.marks < line.of) ?? [];
  return [...new Set(lost.flatMap((line) => line.findings.map((id) => id.split(' ')[0] ?? id)))].sort(byId);
}

function cardRow(
  shown: CardProgress,
  proved: CardProgress | undefined,
  content: Content,
  parts: readonly Part[],
  remarks: Remark[],
): CardRow | undefined {
  const procedure = content.procedures.find((one) => one.id === shown.procedure);
  if (!procedure) {
    remarks.push(
      remark('unknown-step', `It has a job card for "${shown.procedure}", which this course does not have.`),
    );
    return undefined;
  }
  if (procedure.revision !== shown.revision) {
    remarks.push(
      remark(
        'other-content',
        `The job card was made from revision ${shown.revision} of the procedure; this course has ${procedure.revision}.`,
      ),
    );
  }
  const report = judgeList(shown.list, parts);
  const strange = report.unjudged.map(({ part }) => part);
  if (strange.length > 0) {
    const says = `The list of its job card has ${strange.join(', ')}, which this course does not have or not so many of.`;
    remarks.push(remark('unknown-part', says));
  }
  const card = tailor(procedure, shown.list, report);
  const steps = new Map(card.steps.map((step) => [step.key, step]));
  const strangers = [...shown.ticked.keys()].filter((key) => !steps.has(key));
  if (strangers.length > 0) {
    remarks.push(
      remark(
        'unknown-step',
        `The logbook ticks ${count(strangers.length, 'step', 'steps')} not on this student's job card. That is not counted.`,
      ),
    );
  }
  const ticked = new Set([...shown.ticked.keys()].filter((key) => steps.has(key)));
  // A hold point is passed by an entry that says who looked; a tick alone is not one.
  const unseen = card.steps.filter((step) => step.hold && ticked.has(step.key) && !shown.holds.has(step.key));
  for (const step of unseen) {
    ticked.delete(step.key);
    const says = `Hold point ${step.holdNumber} is ticked, but nothing says who looked. It is not counted.`;
    remarks.push(remark('step-out-of-order', says));
  }
  const done = withFirstThingsFirst(card, ticked);
  for (const key of ticked) {
    const step = steps.get(key);
    if (!step || done.has(key)) continue;
    const missing = step.after.map((before) => steps.get(before)).find((before) => before && !done.has(before.key));
    const says = `Step ${step.n} is ticked, but step ${missing?.n ?? '?'} before it is not. Step ${step.n} is not counted.`;
    remarks.push(remark('step-out-of-order', says));
  }
  const now = card.steps.find((step) => !done.has(step.key));
  const passed = (step: CardStep) => (done.has(step.key) ? proved?.holds.get(step.key) : undefined);
  return {
    card: shown.card,
    procedure: procedure.id,
    title: procedure.title,
    revision: shown.revision,
    list: shown.list,
    done: done.size,
    of: card.steps.length,
    ...(now ? { now: { n: now.n, action: now.action, hold: now.hold !== undefined } } : {}),
    holds: card.steps
      .filter((step) => step.hold !== undefined)
      .map((step, index) => {
        const by = passed(step);
        return { at: step.n, n: index + 1, action: step.action, ...(by ? { passed: by } : {}) };
      }),
    measured: card.steps.flatMap((step) => {
      const value = shown.measured.get(step.key);
      if (!step.measure || value === undefined) return [];
      const { quantity, unit, low, high } = step.measure;
      return [{ n: step.n, quantity, value, unit, within: low <= value && value <= high }];
    }),
  };
}

/** The ticked steps that have everything before them ticked, however far back. */
function withFirstThingsFirst(card: Parameters<typeof faultyTicks>[0], ticked: ReadonlySet<string>): Set<string> {
  const done = new Set(ticked);
  for (let faulty = faultyTicks(card, done); faulty.length > 0; faulty = faultyTicks(card, done)) {
    for (const key of faulty) done.delete(key);
  }
  return done;
}

function remarkSameNames(rows: Row[]): void {
  const byName = new Map<string, Row[]>();
  for (const row of rows.filter((one) => one.student !== 'no name')) {
    const name = row.student.toLowerCase();
    byName.set(name, [...(byName.get(name) ?? []), row]);
  }
  for (const same of byName.values()) {
    if (new Set(same.map((row) => row.key.split('-')[0])).size < 2) continue;
    for (const row of same) {
      const others = same.filter((other) => other !== row).flatMap((other) => other.files.slice(0, 1));
      row.remarks.push(
        remark(
          'same-name',
          `Another logbook has the same name: ${others.join(', ')}. Both are kept; ask whose is whose.`,
        ),
      );
    }
  }
}

function missedRules(rows: readonly Row[], content: Content): Register['missed'] {
  const missed = new Map<string, Set<string>>();
  for (const row of rows) {
    for (const rule of row.exercises.flatMap((one) => one.missed)) {
      missed.set(rule, (missed.get(rule) ?? new Set()).add(row.key));
    }
  }
  const named = new Map(rows.map((row) => [row.key, row.student]));
  const lessons = new Map(content.lessons.map((lesson) => [lesson.id, lesson]));
  return rules
    .flatMap(({ id, title, lesson }) => {
      const keys = missed.get(id);
      if (!keys) return [];
      const students = [...keys].map((key) => named.get(key) ?? key).sort(byId);
      return [{ rule: id, title, lesson: lessons.has(lesson) ? lesson : '', students }];
    })
    .sort((a, b) => b.students.length - a.students.length || byId(a.rule, b.rule));
}
