/** Find what does not fit: a list at its place in a drawing, its data sheets, and a verdict for each statement. */
import { content } from 'virtual:benchbook/content';
import { useSignal } from '@preact/signals';
import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { CaseDrawing } from '../../drawings/CaseDrawing.tsx';
import { drawCase } from '../../drawings/case-drawing.ts';
import { mark } from '../../exercises/grade.ts';
import type { Answer, MisfitsExercise } from '../../exercises/types.ts';
import { judgeList } from '../../fit/judge.ts';
import { sayFinding } from '../../fit/say.ts';
import { showMarks } from '../../wording/progress.ts';
import { progress, record } from '../device/device.ts';
import { link } from '../link.ts';
import { VerdictMark } from '../verdict-mark/VerdictMark.tsx';
import './checker.css';
import { Marks } from './Marks.tsx';
import { FindingNote } from './Notes.tsx';
import { sortFindings } from './sort-findings.ts';
import { largestOf, unitsOf } from './store.ts';
import { useWidth } from './use-width.ts';

type Verdicts = Extract<Answer, { kind: 'misfits' }>['verdicts'];
const choices = ['fits', 'does-not-fit', 'cannot-tell'] as const;
const words = { fits: 'Fits', 'does-not-fit': 'Does not fit', 'cannot-tell': 'Cannot tell' } as const;
const bothFrom = 460;

export function Misfits({ exercise: id }: { exercise: string }) {
  const exercise = content.exercises.find((one) => one.id === id);
  return exercise?.kind === 'misfits' ? <Sheet exercise={exercise} /> : null;
}

function Sheet({ exercise }: { exercise: MisfitsExercise }) {
  const { id, statements } = exercise;
  const stage = useRef<HTMLDivElement>(null);
  const heading = useRef<HTMLHeadingElement>(null);
  const width = useWidth(stage, 660);
  const side = useSignal<'side' | 'back'>('side');
  const said = useSignal('');
  const [given, setGiven] = useState<Verdicts>({});
  // The first picture must be the server's, which knows no logbook.
  const [isBegun, setBegun] = useState(false);
  useEffect(() => setBegun(true), []);
  const known = isBegun ? progress.value : undefined;
  const handed = known?.handedIn.get(id)?.at(-1)?.answer;
  const marked = useMemo(() => (handed ? mark(exercise, handed, content.parts) : undefined), [exercise, handed]);
  const isAnswered = marked !== undefined && handed?.kind === 'misfits' && isSame(handed.verdicts, given);

  // What was given last, handed in or not, stands in the answers when the page is opened again.
  const isTaken = useRef(false);
  useEffect(() => {
    if (isTaken.current || !known) return;
    isTaken.current = true;
    setGiven((now) => ({ ...Object.fromEntries(known.verdicts.get(id) ?? []), ...now }));
  });

  function give(statement: string, verdict: (typeof choices)[number]): void {
    setGiven({ ...given, [statement]: verdict });
    void record({ act: 'verdict-given', exercise: id, statement, verdict });
  }

  const report = useMemo(() => judgeList(exercise.list, content.parts), [exercise]);
  const notes = useMemo(
    () =>
      sortFindings(report, new Set()).notes.map((finding, index) => ({
        n: index + 1,
        finding,
        words: sayFinding(finding),
      })),
    [report],
  );
  const which = width < bothFrom ? side.value : 'both';
  const data = useMemo(
    () =>
      drawCase(
        { units: unitsOf(report, content.parts), report, wanted: [], isJudged: isAnswered },
        {
          width,
          views: which,
          largest: largestOf(content.parts),
          notes: isAnswered
            ? notes.map(({ n, finding, words: say }) => ({
                n,
                finding: finding.id,
                verdict: finding.verdict,
                says: `${say.headline}.`,
              }))
            : [],
        },
      ),
    [report, width, which, notes, isAnswered],
  );

  const open = statements.filter((statement) => given[statement.id] === undefined);
  async function handIn(): Promise<void> {
    await record({ act: 'handed-in', exercise: id, answer: { kind: 'misfits', verdicts: given } });
    heading.current?.focus();
  }

  return (
    <div class="misfits">
      <p class="visually-hidden" role="status">
        {said.value}
      </p>
      <div class="misfits-drawing">
        {which !== 'both' && (
          <fieldset class="view-switch">
            <legend class="visually-hidden">View</legend>
            {(['side', 'back'] as const).map((one) => (
              <button key={one} type="button" aria-pressed={side.value === one} onClick={() => (side.value = one)}>
                {one === 'side' ? 'Side' : 'Back'}
              </button>
            ))}
          </fieldset>
        )}
        <div ref={stage}>
          <CaseDrawing
            id={`${id}-drawing`}
            data={data}
            keyHref={link('key/')}
            {...(isAnswered ? { noteHref: (n: number) => `#${id}-note-${n}` } : {})}
          />
        </div>
      </div>
      <ol class="statements">
        {statements.map((statement, index) => (
          <li key={statement.id}>
            <fieldset class="statement">
              <legend>
                {index + 1}. {statement.says}
              </legend>
              <div class="statement-choices">
                {choices.map((choice) => (
                  <label key={choice}>
                    <input
                      type="radio"
                      name={`${id}-${statement.id}`}
                      checked={given[statement.id] === choice}
                      onChange={() => give(statement.id, choice)}
                    />
                    <VerdictMark verdict={choice} word={words[choice]} />
                  </label>
                ))}
              </div>
            </fieldset>
          </li>
        ))}
      </ol>
      <div class="hand-in">
        {!isAnswered && open.length > 0 && (
          <button
            type="button"
            class="button button-dotted"
            onClick={() => {
              said.value = `${open.length} still to judge. The next: ${open[0]?.says ?? ''}`;
              document.querySelector<HTMLInputElement>(`input[name="${id}-${open[0]?.id}"]`)?.focus();
            }}
          >
            {open.length} more to judge
          </button>
        )}
        {!isAnswered && open.length === 0 && (
          <button type="button" class="button button-main" onClick={() => void handIn()}>
            Hand in these verdicts
          </button>
        )}
        {marked && (
          <section class="handed-in" aria-label="Marks">
            <h2 ref={heading} tabIndex={-1}>
              {showMarks(marked.marks, marked.of)} marks
            </h2>
            {isAnswered ? (
              <Marks marked={marked} />
            ) : (
              <p>That was for the verdicts you handed in. You have changed them since.</p>
            )}
          </section>
        )}
      </div>
      {isAnswered && (
        <section class="misfits-notes" aria-label="Notes on the drawing">
          <h2>Notes on the drawing</h2>
          {notes.map((note) => (
            <FindingNote
              key={note.finding.id}
              id={`${id}-note-${note.n}`}
              note={note}
              zone={data.zones.get(note.finding.id)}
              to={{ href: `#${id}-drawing-${note.n}`, says: `Note ${note.n}: show it in the drawing` }}
            />
          ))}
        </section>
      )}
    </div>
  );
}

const isSame = (a: Verdicts, b: Verdicts): boolean => {
  const keys = new Set([...Object.keys(a), ...Object.keys(b)]);
  return [...keys].every((key) => a[key] === b[key]);
};
