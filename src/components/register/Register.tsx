/** The register: logbook files dropped here are read, judged and marked again in this browser, and nowhere else. */
import { content } from 'virtual:benchbook/content';
import { useMemo, useRef, useState } from 'preact/hooks';
import { largestFile } from '../../logbook/read.ts';
import { classCsv, fileNames, progressPage, studentCsv, studentJson } from '../../register/exports.ts';
import { makeRegister } from '../../register/register.ts';
import type { LogbookFile, Register as RegisterData, Row } from '../../register/types.ts';
import { byId } from '../../units/ids.ts';
import { capital, count } from '../../wording/phrases.ts';
import { download } from '../download.ts';
import { JobRuler } from '../job-ruler/JobRuler.tsx';
import { link } from '../link.ts';
import { localTime, shortTime } from '../local-time.ts';
import './register.css';

const mostFiles = 200;

/** Opens the page to print in a tab of its own. */
function openPage(text: string): void {
  const url = URL.createObjectURL(new Blob([text], { type: 'text/html' }));
  window.open(url, '_blank', 'noopener');
  setTimeout(() => URL.revokeObjectURL(url), 60_000);
}

/** A file that is too large is not opened; one that cannot be opened, such as a folder, keeps nobody else waiting. */
async function readFile(file: File): Promise<LogbookFile> {
  const { name, size } = file;
  if (size > largestFile) return { name, bytes: size };
  try {
    return { name, bytes: size, text: await file.text() };
  } catch {
    return { name, bytes: size };
  }
}

export function Register() {
  const [files, setFiles] = useState<LogbookFile[]>([]);
  const [reading, setReading] = useState<{ done: number; of: number } | undefined>();
  const [over, setOver] = useState(false);
  const [refused, setRefused] = useState(0);
  const register = useMemo(() => makeRegister(files, content), [files]);

  async function take(dropped: File[]): Promise<void> {
    const room = Math.max(0, mostFiles - files.length);
    const wanted = dropped.slice(0, room);
    setRefused(dropped.length - wanted.length);
    const read: LogbookFile[] = [];
    for (const [index, file] of wanted.entries()) {
      if (index % 10 === 0) setReading({ done: index, of: wanted.length });
      read.push(await readFile(file));
    }
    setReading(undefined);
    setFiles((before) => [...before, ...read]);
  }

  const status = reading
    ? `Reading file ${reading.done + 1} of ${reading.of}.`
    : files.length === 0
      ? 'No logbook has been read yet.'
      : told(register, files.length);

  return (
    <>
      <section class="zone register-read" aria-label="Zone A, Read logbooks" id="zone-a">
        <h2>Read logbooks</h2>
        <DropPlace over={over} setOver={setOver} take={take} first={files.length === 0} />
        <p role="status" class="register-status">
          {status}
          {refused > 0 && ` ${refused} more were left out: the register takes ${mostFiles} at a time.`}
        </p>
        {register.aside.length > 0 && <Aside aside={register.aside} />}
        {register.missed.length > 0 && <Missed register={register} />}
      </section>
      <section class="zone register-students" aria-label="Zone B, Students" id="zone-b">
        <h2>Students</h2>
        {register.rows.length === 0 ? (
          <p>One row a student stands here once you have read their logbooks.</p>
        ) : (
          <Students register={register} />
        )}
      </section>
    </>
  );
}

function told(register: RegisterData, files: number): string {
  const newest = register.rows
    .map((row) => row.lastAt)
    .filter((at) => at !== undefined)
    .sort()
    .at(-1);
  const from = `${capital(count(register.rows.length, 'student', 'students'))} from ${count(files, 'file', 'files')}.`;
  const set = register.aside.length > 0 ? ` ${register.aside.length} set aside.` : '';
  return `${from}${set}${newest ? ` The newest entry was made ${localTime(newest)}.` : ''}`;
}

type DropProps = {
  over: boolean;
  setOver: (over: boolean) => void;
  take: (files: File[]) => Promise<void>;
  first: boolean;
};

function DropPlace({ over, setOver, take, first }: DropProps) {
  const input = useRef<HTMLInputElement>(null);
  return (
    // Dropping is a second way; the button beside it does the same by keyboard and touch.
    // biome-ignore lint/a11y/noStaticElementInteractions: files may be dropped here, and chosen with the button
    <div
      class={over ? 'register-drop register-drop-over' : 'register-drop'}
      onDragOver={(event) => {
        event.preventDefault();
        setOver(true);
      }}
      onDragLeave={() => setOver(false)}
      onDrop={(event) => {
        event.preventDefault();
        setOver(false);
        void take([...(event.dataTransfer?.files ?? [])]);
      }}
    >
      <p>Drop 1 to {mostFiles} logbook files here. They stay in this browser and are gone when you close the page.</p>
      <button type="button" class={first ? 'button button-main' : 'button'} onClick={() => input.current?.click()}>
        {first ? 'Choose logbook files' : 'Choose more files'}
      </button>
      <input
        ref={input}
        type="file"
        multiple
        accept=".json,application/json"
        class="register-input"
        aria-label="Logbook files"
        tabIndex={-1}
        onChange={(event) => {
          const chosen = [...(event.currentTarget.files ?? [])];
          event.currentTarget.value = '';
          void take(chosen);
        }}
      />
    </div>
  );
}

function Aside({ aside }: { aside: RegisterData['aside'] }) {
  return (
    <div class="register-aside">
      <h3>Set aside</h3>
      <ul>
        {aside.map(({ file, remarks }) => (
          <li key={file}>
            <b>{file}</b>: {remarks.map((one) => one.says).join(' ')}
          </li>
        ))}
      </ul>
    </div>
  );
}

function Missed({ register }: { register: RegisterData }) {
  const of = register.rows.length;
  const lessons = new Map(content.lessons.map((lesson) => [lesson.id, lesson]));
  return (
    <div class="register-missed">
      <h3>Missed most, with its lesson</h3>
      <ol>
        {register.missed.slice(0, 6).map((one) => {
          const lesson = lessons.get(one.lesson);
          return (
            <li key={one.rule}>
              <span>{one.title}</span>
              <meter min={0} max={of} value={one.students.length} aria-hidden="true" />
              <span class="register-count">
                {one.students.length} of {of}: {one.students.join(', ')}
              </span>
              {lesson && <a href={link(`lessons/${lesson.id}/`)}>Sheet {lesson.sheet}</a>}
            </li>
          );
        })}
      </ol>
    </div>
  );
}

type Order = 'help' | 'student' | 'lessons' | 'marks' | 'steps' | 'last';

const read = (row: Row) => row.lessons.filter((lesson) => lesson.read).length;
const marks = (row: Row) => row.exercises.reduce((sum, one) => sum + (one.best?.marks ?? 0), 0);

/** Remarks that mean more than another edition or an older copy. */
const troubles = ['cut-short', 'unreadable-entry', 'changed-afterwards', 'step-out-of-order', 'unknown-part'];

/** Who waits for somebody first, then whose logbook is odd, then who is on the way, then who has no card yet. */
function urgency({ card, remarks }: Row): number {
  if (card?.now?.hold) return 0;
  if (remarks.some(({ id }) => troubles.includes(id))) return 1;
  return card?.now ? 2 : 3;
}

const orders: Record<Order, (a: Row, b: Row) => number> = {
  help: (a, b) => urgency(a) - urgency(b) || (a.card?.done ?? 0) - (b.card?.done ?? 0),
  student: (a, b) => byId(a.student, b.student),
  lessons: (a, b) => read(b) - read(a),
  marks: (a, b) => marks(b) - marks(a),
  steps: (a, b) => (b.card?.done ?? 0) - (a.card?.done ?? 0),
  last: (a, b) => byId(b.lastAt ?? '', a.lastAt ?? ''),
};

function Students({ register }: { register: RegisterData }) {
  const [order, setOrder] = useState<Order>('help');
  const rows = useMemo(
    () => [...register.rows].sort((a, b) => orders[order](a, b) || byId(a.student, b.student) || byId(a.key, b.key)),
    [register, order],
  );
  const names = useMemo(() => fileNames(register), [register]);
  const head = (by: Order, words: string) => (
    <th scope="col" aria-sort={order === by ? (by === 'student' ? 'ascending' : 'descending') : undefined}>
      <button type="button" class="register-sort" onClick={() => setOrder(by)}>
        {words}
        <span aria-hidden="true">{order === by ? ' ▾' : ''}</span>
      </button>
    </th>
  );
  return (
    <>
      <p class="register-actions">
        <button
          type="button"
          class="button button-main"
          onClick={() => download('class.csv', classCsv(register), 'text/csv')}
        >
          Keep the class table
        </button>
        <button type="button" class="button" aria-pressed={order === 'help'} onClick={() => setOrder('help')}>
          Who needs you first
        </button>
      </p>
      <div class="register-table">
        <table>
          <thead>
            <tr>
              {head('student', 'Student')}
              {head('lessons', 'Lessons')}
              {head('marks', 'Best marks')}
              {head('steps', 'Along the card')}
              <th scope="col">Now</th>
              {head('last', 'Last entry')}
              <th scope="col">To keep</th>
            </tr>
          </thead>
          <tbody>
            {rows.map((row) => (
              <StudentRow key={row.key} row={row} register={register} name={names.get(row.key) ?? row.key} />
            ))}
          </tbody>
        </table>
      </div>
    </>
  );
}

function StudentRow({ row, register, name }: { row: Row; register: RegisterData; name: string }) {
  const { card } = row;
  return (
    <tr>
      <th scope="row" data-label="Student">
        {row.student}
        {row.remarks.length > 0 && (
          <details class="register-remarks">
            <summary>{count(row.remarks.length, 'remark', 'remarks')}</summary>
            <ul>
              {row.remarks.map((one) => (
                <li key={one.says}>{one.says}</li>
              ))}
            </ul>
          </details>
        )}
      </th>
      <td data-label="Lessons">
        {read(row)} of {row.lessons.length} read
      </td>
      <td data-label="Best marks">
        {row.exercises.map((one) => (
          <ExerciseCell key={one.exercise} one={one} />
        ))}
      </td>
      <td data-label="Along the card">
        {card ? (
          <>
            <JobRuler
              small
              of={card.of}
              done={card.done}
              here={card.now?.n}
              holds={card.holds.map((hold) => ({ at: hold.at, n: hold.n, passed: hold.passed !== undefined }))}
              label={`${card.done} of ${card.of} steps, ${card.holds.filter((hold) => hold.passed).length} of ${card.holds.length} hold points`}
            />
            <span class="register-small">
              {card.done} of {card.of} steps, {card.holds.filter((hold) => hold.passed).length} of {card.holds.length}{' '}
              hold points
            </span>
          </>
        ) : (
          'no job card yet'
        )}
      </td>
      <td data-label="Now">{card ? <Now card={card} /> : '–'}</td>
      <td data-label="Last entry">{row.lastAt ? shortTime(row.lastAt) : 'none'}</td>
      <td data-label="To keep" class="register-keep">
        <button
          type="button"
          aria-label={`Progress page of ${row.student}, to print`}
          onClick={() => openPage(progressPage(row, content.course.title, register.content))}
        >
          Page
        </button>
        <button
          type="button"
          aria-label={`Table of ${row.student}, CSV`}
          onClick={() => download(`${name}.csv`, studentCsv(row), 'text/csv')}
        >
          CSV
        </button>
        <button
          type="button"
          aria-label={`Everything of ${row.student}, JSON`}
          onClick={() => download(`${name}.json`, studentJson(row, register.content), 'application/json')}
        >
          JSON
        </button>
      </td>
    </tr>
  );
}

function Now({ card }: { card: NonNullable<Row['card']> }) {
  if (!card.now) return <>all steps done</>;
  return (
    <>
      <b>{card.now.hold ? `waits at hold point, step ${card.now.n}` : `step ${card.now.n}`}</b>
      <span class="register-small">{card.now.action}</span>
    </>
  );
}

function ExerciseCell({ one }: { one: Row['exercises'][number] }) {
  const { best } = one;
  if (!best) return <p class="register-small">{one.title}: not handed in</p>;
  return (
    <details>
      <summary>
        {one.title}:{' '}
        <span class="register-marks">
          {best.marks} of {one.of}
        </span>
      </summary>
      <p class="register-small">
        Best of {one.attempts}, handed in {localTime(best.at)}.
        {one.noted.map(({ what, value, unit }) => ` Measured by the student: ${what}, ${value} ${unit}.`)}
      </p>
      <ul>
        {best.lines.map((line) => (
          <li key={line.line}>
            <b>
              {line.marks} of {line.of}
            </b>{' '}
            {line.says}. {line.why} {line.more}
          </li>
        ))}
      </ul>
    </details>
  );
}
