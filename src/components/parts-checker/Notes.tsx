/** The notes on the drawing: what does not fit, what nobody can tell and how to find out, what fits. */
import { content } from 'virtual:benchbook/content';
import { useState } from 'preact/hooks';
import { soundJoints } from '../../drawings/case-side.ts';
import { unitOf } from '../../fit/needs/names.ts';
import type { Finding } from '../../fit/report.ts';
import { rules } from '../../fit/rules/index.ts';
import { sayFinding } from '../../fit/say.ts';
import { canBeNoted } from '../../parts/noted.ts';
import type { Part } from '../../parts/part.ts';
import { fieldName, fieldUnit } from '../../wording/data-sheet.ts';
import { count } from '../../wording/phrases.ts';
import { placeName } from '../../wording/places.ts';
import { link } from '../link.ts';
import { Note } from '../note/Note.tsx';
import { VerdictMark } from '../verdict-mark/VerdictMark.tsx';
import { isLess } from './sort-findings.ts';
import type { Checker, NoteOf } from './store.ts';

export const noteId = (exercise: string, n: number): string => `${exercise}-note-${n}`;

type NotesProps = {
  checker: Checker;
  zones: ReadonlyMap<string, string>;
  drawingId: string;
  /** False for a note on what no view shows. */
  isDrawn: (n: number) => boolean;
};

export function Notes({ checker, zones, drawingId, isDrawn }: NotesProps) {
  const notes = checker.notes.value;
  const { fits, toChoose } = checker.sorted.value;
  const { id } = checker.exercise;
  return (
    <>
      {notes.map((note) => (
        <FindingNote
          key={note.finding.id}
          id={noteId(id, note.n)}
          note={note}
          zone={zones.get(note.finding.id)}
          {...(isDrawn(note.n)
            ? { to: { href: `#${drawingId}`, says: `Note ${note.n}: show it in the drawing` } }
            : { isUndrawn: true })}
        >
          <Fields checker={checker} finding={note.finding} />
        </FindingNote>
      ))}
      {notes.length === 0 && checker.list.value.length > 0 && (
        <p>Nothing chosen so far stands in the way of anything else.</p>
      )}
      {notes.length === 0 && checker.list.value.length === 0 && <p>Notes appear here as you choose.</p>}
      {toChoose.length > 0 && (
        <details class="checker-more">
          <summary>Still to choose: {count(toChoose.length, 'need waits', 'needs wait')} for a part</summary>
          <ul>
            {[...new Set(toChoose.map((finding) => sayFinding(finding).headline))].map((headline) => (
              <li key={headline}>{headline}</li>
            ))}
          </ul>
        </details>
      )}
      <Measures checker={checker} />
      {fits.length > 0 && <WhatFits checker={checker} fits={fits} />}
    </>
  );
}

type FindingNoteProps = {
  id: string;
  note: NoteOf;
  zone?: string | undefined;
  to?: { href: string; says: string };
  /** The drawing beside it does not show what it is about. */
  isUndrawn?: boolean;
  children?: preact.ComponentChildren;
};

/** One finding in words, with who says so and the lesson about it. */
export function FindingNote({ id, note: { n, finding, words }, zone, to, isUndrawn, children }: FindingNoteProps) {
  const isUnknown = finding.verdict === 'cannot-tell';
  return (
    <Note
      id={id}
      verdict={isLess(finding) ? 'less' : finding.verdict}
      hazard={finding.verdict === 'does-not-fit' && finding.severity === 'hazard'}
      heading={words.headline}
      balloon={{ n, ...(to ? { to } : {}) }}
      foot={<Foot finding={finding} place={isUndrawn ? 'Not in the drawing' : zone && `Zone ${zone}`} />}
    >
      <p>
        {words.what} {words.why}
      </p>
      {words.remedy && (
        <p>
          <b>{isUnknown ? 'To find out' : 'What helps'}:</b> {words.remedy}
        </p>
      )}
      {children}
    </Note>
  );
}

const ruleOf = new Map(rules.map((rule) => [rule.id, rule]));
const bases = { standard: 'A standard', maker: 'Makers’ sheets', practice: 'Common practice' } as const;

function Foot({ finding, place }: { finding: Finding; place: string | undefined }) {
  const rule = ruleOf.get(finding.rule);
  const lesson = content.lessons.find(({ id }) => id === rule?.lesson);
  const sources = (rule?.sources ?? []).flatMap((id) => content.sources.find((source) => source.id === id) ?? []);
  const who = finding.basis === 'standard' && sources[0] ? sources[0].title : bases[finding.basis];
  return (
    <>
      {place && `${place} · `}
      {who}
      {lesson && (
        <>
          {' · '}
          <a href={link(`lessons/${lesson.id}/`)}>sheet {lesson.sheet}</a>
        </>
      )}
    </>
  );
}

/** A field for each measure that is not recorded and that a person can take. */
function Fields({ checker, finding }: { checker: Checker; finding: Finding }) {
  if (finding.verdict !== 'cannot-tell') return null;
  const units = new Map(checker.report.value.units.map((unit) => [unit.id, unit]));
  const wanted = new Map<string, { part: string; name: string; field: string }>();
  for (const missing of finding.missing ?? []) {
    const dot = missing.indexOf('.');
    const unit = units.get(missing.slice(0, dot));
    const field = missing.slice(dot + 1);
    if (unit && canBeNoted(field)) wanted.set(`${unit.part}.${field}`, { part: unit.part, name: unit.name, field });
  }
  return (
    <>
      {[...wanted].map(([key, { part, name, field }]) => (
        <MeasureField key={key} checker={checker} part={part} name={name} field={field} />
      ))}
    </>
  );
}

type MeasureFieldProps = { checker: Checker; part: string; name: string; field: string; value?: number };

const most = 2000;

function MeasureField({ checker, part, name, field, value }: MeasureFieldProps) {
  const [text, setText] = useState(value === undefined ? '' : String(value));
  const [problem, setProblem] = useState<string | undefined>();
  const id = `${checker.exercise.id}-${part}-${field}`;
  const unit = fieldUnit(field);
  const keep = (event: Event) => {
    event.preventDefault();
    const read = Number(text.trim().replace(',', '.'));
    if (text.trim() === '' || !(read > 0) || read > most) {
      setProblem(`Write a number of ${unit} between 0 and ${most}.`);
      return;
    }
    setProblem(undefined);
    checker.noteMeasure(part, field, read);
  };
  return (
    <form class="measure" onSubmit={keep}>
      <label for={id}>{fieldName(field, name)}, measured</label>
      <span class="measure-row">
        <input
          id={id}
          inputMode="decimal"
          autocomplete="off"
          value={text}
          aria-invalid={problem !== undefined}
          aria-describedby={problem ? `${id}-problem` : undefined}
          onInput={({ currentTarget }) => setText(currentTarget.value)}
        />
        {unit}
        <button type="submit" class="button">
          Keep it
        </button>
      </span>
      {problem && (
        <p id={`${id}-problem`} class="measure-problem">
          {problem}
        </p>
      )}
    </form>
  );
}

/** What the student measured, which can be changed. */
function Measures({ checker }: { checker: Checker }) {
  const parts = content.parts;
  const taken = [...checker.noted.value].flatMap(([key, value]) => {
    const dot = key.lastIndexOf('.');
    const part = parts.find((one: Part) => one.id === key.slice(0, dot));
    return part ? [{ part, field: key.slice(dot + 1), value }] : [];
  });
  if (taken.length === 0) return null;
  return (
    <details class="checker-more">
      <summary>{taken.length === 1 ? 'One measure' : `${taken.length} measures`} you took</summary>
      {taken.map(({ part, field, value }) => (
        <MeasureField
          key={`${part.id}.${field} ${value}`}
          checker={checker}
          part={part.id}
          name={part.name}
          field={field}
          value={value}
        />
      ))}
    </details>
  );
}

function WhatFits({ checker, fits }: { checker: Checker; fits: readonly Finding[] }) {
  const joints = soundJoints(checker.machine.value);
  const names = new Map(checker.report.value.units.map(({ id, name }) => [id, name]));
  const says = [
    ...new Set(fits.filter(({ joint, need }) => !joint && !need).map((finding) => sayFinding(finding).what)),
  ];
  return (
    <details class="checker-more checker-fits">
      <summary>
        <VerdictMark
          verdict="fits"
          word={`${joints.length} ${joints.length === 1 ? 'joint fits' : 'joints fit'}. Show them`}
        />
      </summary>
      <ul>
        {joints.map(({ id, kind, need, place }) => (
          <li key={id}>
            {names.get(unitOf(need)) ?? unitOf(need)}: {placeName(kind, place)}
          </li>
        ))}
        {says.map((what) => (
          <li key={what}>{what}</li>
        ))}
      </ul>
    </details>
  );
}
