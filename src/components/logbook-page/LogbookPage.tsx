/** My logbook: whose it is, what it holds, and the file that outlives this device. Needs script: the logbook is on the device. */
import '@preact/signals';
import type { ComponentChildren } from 'preact';
import { useId, useRef, useState } from 'preact/hooks';
import type { Logbook } from '../../logbook/types.ts';
import { count } from '../../wording/phrases.ts';
import { deviceState, logbook, progress, record, restore, saveFile, startOver } from '../device/device.ts';
import { link } from '../link.ts';
import { localTime } from '../local-time.ts';
import './logbook-page.css';

export type LogbookPageProps = {
  lessons: { id: string; sheet: string; title: string }[];
  exercises: { id: string; title: string }[];
  procedures: { id: string; title: string }[];
};

type ZoneProps = { letter: string; title: string; children: ComponentChildren };

function Zone({ letter, title, children }: ZoneProps) {
  return (
    <section class="zone" id={`zone-${letter.toLowerCase()}`} aria-label={`Zone ${letter}, ${title}`}>
      <h2>{title}</h2>
      {children}
    </section>
  );
}

export function LogbookPage(props: LogbookPageProps) {
  return (
    <>
      <section class="zone" id="zone-a" aria-label="Zone A, My logbook">
        <h1>My logbook</h1>
        <Name />
      </section>
      <Zone letter="B" title="What is in it">
        <Contents {...props} />
      </Zone>
      <Zone letter="C" title="Files">
        <Files />
      </Zone>
      <Zone letter="D" title="Start over">
        <StartOver />
      </Zone>
    </>
  );
}

function Name() {
  const student = progress.value?.student;
  const [changing, setChanging] = useState(false);
  const [text, setText] = useState('');
  const [trouble, setTrouble] = useState('');
  const id = useId();
  const input = useRef<HTMLInputElement>(null);
  const isAsking = student === undefined || changing;

  async function write(event: Event) {
    event.preventDefault();
    const name = text.trim().replace(/\s+/g, ' ');
    if (name === '') {
      setTrouble('Write a name or a bench number first.');
      input.current?.focus();
      return;
    }
    await record({ act: 'named', student: name });
    setTrouble('');
    setChanging(false);
  }

  return (
    <>
      <p role="status">{student === undefined ? 'It has no name on it yet.' : `This is the logbook of ${student}.`}</p>
      {isAsking ? (
        <form onSubmit={(event) => void write(event)} class="logbook-name">
          <label for={id}>Your name or bench number</label>
          <p class="quiet" id={`${id}-help`}>
            Asked once. It stands in the file you give to your instructor; nothing else about you is kept.
          </p>
          <div class="buttons">
            <input
              ref={input}
              id={id}
              type="text"
              maxLength={60}
              autocomplete="off"
              value={text}
              aria-describedby={`${id}-help`}
              aria-invalid={trouble !== ''}
              onInput={(event) => setText(event.currentTarget.value)}
            />
            <button type="submit" class="button">
              Write it down
            </button>
          </div>
          <p role="alert" class="logbook-trouble">
            {trouble}
          </p>
        </form>
      ) : (
        <button type="button" class="button-plain" onClick={() => setChanging(true)}>
          Write another name
        </button>
      )}
    </>
  );
}

function Contents({ lessons, exercises, procedures }: LogbookPageProps) {
  const known = progress.value;
  if (!known || known.entries === 0) {
    return (
      <p>
        Nothing yet. It will hold which sheets you read, what you answered and chose, what you handed in, and every step
        you ticked. Marks are never in it: they are worked out from what you did, wherever they are shown.
      </p>
    );
  }
  const read = lessons.filter(({ id }) => known.read.has(id));
  return (
    <>
      <dl class="logbook-contents">
        <div>
          <dt>Sheets read</dt>
          <dd>
            {read.length} of {lessons.length}
            {read.length > 0 && `: ${read.map(({ sheet, title }) => `${sheet} ${title}`).join(', ')}`}
          </dd>
        </div>
        <div>
          <dt>Questions answered</dt>
          <dd>{known.answers.size}</dd>
        </div>
        {exercises.map(({ id, title }) => (
          <div key={id}>
            <dt>{title}</dt>
            <dd>{handedIn(known.handedIn.get(id)?.length ?? 0, known.lists.has(id))}</dd>
          </div>
        ))}
        {[...known.cards.values()].map((card) => (
          <div key={card.card}>
            <dt>Job card, {procedures.find(({ id }) => id === card.procedure)?.title ?? card.procedure}</dt>
            <dd>
              {count(card.ticked.size, 'step', 'steps')} ticked, {count(card.holds.size, 'hold point', 'hold points')}{' '}
              passed, last {localTime(card.lastAt)}
            </dd>
          </div>
        ))}
        <div>
          <dt>Entries</dt>
          <dd>
            {known.entries}, the last {localTime(known.lastAt)}
          </dd>
        </div>
      </dl>
      <p class="quiet">Marks are never in it: they are worked out from what you did, wherever they are shown.</p>
    </>
  );
}

function handedIn(times: number, isBegun: boolean): string {
  if (times === 0) return isBegun ? 'begun, not handed in' : 'not begun';
  return times === 1 ? 'handed in once' : `handed in ${times} times`;
}

type Outcome = { says: string; remarks: string[]; other?: Logbook };

function Files() {
  const known = progress.value;
  const isKept = deviceState.value.kind === 'ok';
  const isEmpty = !known || known.entries === 0;
  const [outcome, setOutcome] = useState<Outcome | undefined>();
  const input = useRef<HTMLInputElement>(null);

  async function read(file: File) {
    setOutcome({ says: `Reading ${file.name}.`, remarks: [] });
    // Loaded when it is needed: most visits read no file.
    const { readBack } = await import('./read-back.ts');
    setOutcome(await readBack(file));
  }

  async function takeOther(other: Logbook) {
    await saveFile();
    await restore(other);
    setOutcome({ says: `The logbook of the file is on this device: ${other.events.length} entries.`, remarks: [] });
  }

  return (
    <>
      <p>
        {isKept
          ? 'Your logbook is on this device only. A file of it is a copy for your instructor, for another device, and for the day this browser is cleared.'
          : 'This browser keeps nothing. Keep a file before you close it, or what you did is lost.'}{' '}
        {known?.keptAt !== undefined && `You last kept a file ${localTime(known.keptAt)}.`}
      </p>
      <div class="buttons">
        {isEmpty ? (
          <a class="button button-dotted" href={link('#zone-b')}>
            Nothing to keep yet. To the sheets
          </a>
        ) : (
          <button type="button" class="button button-main" onClick={() => void saveFile()}>
            Keep a file now
          </button>
        )}
        <button type="button" class="button" onClick={() => input.current?.click()}>
          Read a file back in
        </button>
      </div>
      <input
        ref={input}
        type="file"
        accept=".json,application/json"
        class="visually-hidden"
        tabIndex={-1}
        aria-label="Logbook file to read back in"
        onChange={(event) => {
          const [file] = event.currentTarget.files ?? [];
          if (file) void read(file);
          event.currentTarget.value = '';
        }}
      />
      <div role="status">
        {outcome && <p>{outcome.says}</p>}
        {outcome && outcome.remarks.length > 0 && (
          <ul>
            {outcome.remarks.map((remark) => (
              <li key={remark}>{remark}</li>
            ))}
          </ul>
        )}
      </div>
      {outcome?.other && (
        <div class="buttons">
          <button type="button" class="button" onClick={() => outcome.other && void takeOther(outcome.other)}>
            Keep a file of this one, then use the other
          </button>
          <button type="button" class="button" onClick={() => setOutcome(undefined)}>
            Leave this device as it is
          </button>
        </div>
      )}
    </>
  );
}

function StartOver() {
  const entries = progress.value?.entries ?? 0;
  const [asking, setAsking] = useState(false);
  const [done, setDone] = useState(false);
  const question = useRef<HTMLParagraphElement>(null);

  async function go(withFile: boolean) {
    if (withFile) await saveFile();
    await startOver();
    setAsking(false);
    setDone(true);
  }

  if (asking && logbook.value) {
    return (
      <>
        <p ref={question} tabIndex={-1}>
          This takes {count(entries, 'entry', 'entries')} off this device, and nothing brings them back but a file.
        </p>
        <div class="buttons">
          <button type="button" class="button" onClick={() => void go(true)}>
            Keep a file, then start over
          </button>
          <button type="button" class="button" onClick={() => void go(false)}>
            Start over without a file
          </button>
          <button type="button" class="button" onClick={() => setAsking(false)}>
            Leave it as it is
          </button>
        </div>
      </>
    );
  }
  return (
    <>
      <p>For the next student on a shared device, or to begin the course again.</p>
      <button
        type="button"
        class={entries === 0 ? 'button button-dotted' : 'button'}
        onClick={() => {
          if (entries === 0) return;
          setDone(false);
          setAsking(true);
          setTimeout(() => question.current?.focus());
        }}
      >
        {entries === 0 ? 'Nothing to start over from' : 'Start over'}
      </button>
      <p role="status">{done && entries === 0 && 'The logbook on this device is empty.'}</p>
    </>
  );
}
