/** Choose a machine for a brief: drawers at the left, the machine to scale in the middle, notes at the right. */
import { content } from 'virtual:benchbook/content';
import { useSignal } from '@preact/signals';
import { useEffect, useLayoutEffect, useMemo, useRef, useState } from 'preact/hooks';
import { CaseDrawing } from '../../drawings/CaseDrawing.tsx';
import { type CaseView, drawCase } from '../../drawings/case-drawing.ts';
import { type Leader, runLeaders } from '../../drawings/leaders.ts';
import type { Note, Point } from '../../drawings/shapes.ts';
import { deviceState, logbook } from '../device/device.ts';
import { link } from '../link.ts';
import { localTime } from '../local-time.ts';
import { type MarkedVerdict, VerdictMark } from '../verdict-mark/VerdictMark.tsx';
import { Cabinet } from './Cabinet.tsx';
import './checker.css';
import { HandIn } from './HandIn.tsx';
import { drawerName, inDrawer } from './list.ts';
import { showEuro } from './money.ts';
import { Notes, noteId } from './Notes.tsx';
import { Rulers, shownBudgets } from './Rulers.tsx';
import type { WholeVerdict } from './sort-findings.ts';
import { type Checker, openChecker, type View } from './store.ts';
import { useWidth } from './use-width.ts';
import { Working } from './Working.tsx';

/** Under this width a drawing shows one view at a time, without a frame. */
const bothFrom = 460;
const paperWidth = 660;

export function PartsChecker({ exercise: id }: { exercise: string }) {
  const exercise = content.exercises.find((one) => one.id === id);
  const checker = useMemo(() => (exercise?.kind === 'choose' ? openChecker(exercise) : undefined), [exercise]);
  return checker ? <Sheet checker={checker} /> : null;
}

const views: readonly View[] = ['drawing', 'notes', 'drawers', 'rulers'];

function Sheet({ checker }: { checker: Checker }) {
  const { id } = checker.exercise;
  const root = useRef<HTMLDivElement>(null);
  const stage = useRef<HTMLDivElement>(null);
  const column = useRef<HTMLElement>(null);
  const width = useWidth(stage, paperWidth);
  const side = useSignal<'side' | 'back'>('side');
  const [leaders, setLeaders] = useState<Leader[]>([]);
  const [isQuiet, setQuiet] = useState(false);

  useEffect(() => checker.begin(), [checker]);

  const notes = checker.notes.value;
  const machine = checker.machine.value;
  const open = checker.drawers.find(({ position }) => position === checker.open.value);
  const which: CaseView = width < bothFrom ? side.value : 'both';
  const noted = useMemo(
    () =>
      notes.map(
        ({ n, finding, words }): Note => ({
          n,
          finding: finding.id,
          verdict: finding.verdict,
          says: `${words.headline}.`,
        }),
      ),
    [notes],
  );
  const data = useMemo(
    () => drawCase(machine, { width, views: which, largest: checker.largest, notes: noted, focus: open?.class }),
    [machine, width, which, noted, open, checker],
  );
  const paper = useMemo(
    () =>
      isQuiet
        ? drawCase(machine, { width: paperWidth, views: 'both', largest: checker.largest, notes: noted })
        : undefined,
    [isQuiet, machine, noted, checker],
  );
  const drawingId = `${id}-drawing`;
  // One view alone may leave out what the other shows.
  const bothViews = which === 'both' ? data : paper;
  const isDrawn = (n: number) => !bothViews || bothViews.pinned.some(({ note }) => note.n === n);

  useEffect(() => {
    measureSinceChoice('checker-choice-to-report');
    const frame = requestAnimationFrame(() =>
      setTimeout(() => {
        measureSinceChoice('checker-choice-to-paint');
        setQuiet(true);
      }),
    );
    return () => cancelAnimationFrame(frame);
  }, [machine]);

  useLayoutEffect(() => {
    const next = leadersTo(stage.current, column.current, data);
    if (JSON.stringify(next) !== JSON.stringify(leaders)) setLeaders(next);
  });

  // A note's balloon is a link; the click is taken up here so that a phone can change its view first.
  const goTo = useRef(goToDrawing);
  goTo.current = goToDrawing;
  useEffect(() => {
    const element = column.current;
    const go = (event: MouseEvent) => goTo.current(event);
    element?.addEventListener('click', go);
    return () => element?.removeEventListener('click', go);
  }, []);

  function goToNote(n: number): void {
    checker.view.value = 'notes';
    checker.active.value = n;
    // After the phone has changed its view.
    requestAnimationFrame(() => {
      const note = document.getElementById(noteId(id, n));
      note?.scrollIntoView({ block: 'nearest' });
      note?.querySelector('a')?.focus();
    });
  }

  function goToDrawing(event: MouseEvent): void {
    const balloon = event.target instanceof Element ? event.target.closest('a.balloon-link') : null;
    const n = Number(balloon?.textContent);
    if (!n) return;
    event.preventDefault();
    checker.view.value = 'drawing';
    checker.active.value = n;
    const isOnlyBehind = which === 'side' && !data.pinned.some(({ note }) => note.n === n);
    if (isOnlyBehind) side.value = 'back';
    requestAnimationFrame(() => {
      const hit = document.getElementById(`${drawingId}-${n}`) ?? document.getElementById(drawingId);
      hit?.scrollIntoView({ block: 'nearest' });
      hit?.focus({ preventScroll: true });
    });
  }

  function goToDrawer(position: string | undefined): void {
    const to = position ?? checker.drawers[0]?.position;
    if (!to) return;
    checker.view.value = 'drawers';
    if (position) checker.open.value = position;
    requestAnimationFrame(() => {
      const drawer = document.getElementById(`${id}-drawer-${to}`);
      drawer?.scrollIntoView({ block: 'nearest' });
      drawer?.focus();
    });
  }

  const whole = checker.whole.value;
  return (
    <div class="checker" ref={root} data-view={checker.view.value}>
      <div class="checker-top">
        <p class="checker-verdict" id={`${id}-verdict`}>
          <WholeMark verdict={whole.verdict} says={whole.says.replace('Not ready to order:', 'Not ready:')} />
        </p>
        <div class="checker-steps">
          <StepButton says="Undo" can={checker.canUndo.value} act={checker.undo} />
          <StepButton says="Redo" can={checker.canRedo.value} act={checker.redo} />
        </div>
      </div>
      <p class="visually-hidden" role="status">
        {checker.said.value}
      </p>

      <section class="checker-drawers" aria-label="Drawers">
        <h2>Drawers</h2>
        <Cabinet checker={checker} />
      </section>

      <section class="checker-drawing" aria-label="Drawing">
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
        <div class="checker-stage" ref={stage} id={drawingId} tabIndex={-1}>
          <CaseDrawing
            id={drawingId}
            data={data}
            leaders={leaders}
            active={checker.active.value}
            noteHref={(n) => `#${noteId(id, n)}`}
            onNote={goToNote}
            keyHref={link('key/')}
          />
        </div>
        {checker.list.value.length === 0 && (
          <p class="checker-begin">
            An empty case, dotted.{' '}
            <button type="button" class="button-plain" onClick={() => goToDrawer(checker.drawers[0]?.position)}>
              Open any drawer
            </button>{' '}
            to begin.
          </p>
        )}
        {paper && (
          <div class="checker-paper" aria-hidden="true">
            <CaseDrawing id={`${id}-paper`} data={paper} />
            <p>Scale 1:5 on A4 paper.</p>
          </div>
        )}
      </section>

      <section class="checker-notes" aria-label="Notes on the drawing" ref={column}>
        <h2>Notes on the drawing</h2>
        <Notes checker={checker} zones={data.zones} drawingId={drawingId} isDrawn={isDrawn} />
      </section>

      <section class="checker-rulers" aria-label="Rulers">
        <h2 class="checker-rulers-title">Rulers</h2>
        <Rulers report={checker.report.value} />
        <Working checker={checker} />
      </section>

      <div class="checker-end">
        <dl class="checker-drawn">
          <div>
            <dt>As drawn</dt>
            <dd>{whole.says}</dd>
          </div>
          <div>
            <dt>Saved</dt>
            <dd>{checker.isBegun.value ? savedSays() : notRead}</dd>
          </div>
        </dl>
        <HandIn checker={checker} goTo={goToDrawer} />
        <ListTable checker={checker} />
      </div>

      <nav class="checker-dock" aria-label="Views of the list">
        {views.map((one) => (
          <button
            key={one}
            type="button"
            aria-pressed={checker.view.value === one}
            onClick={() => {
              checker.view.value = one;
              // A view is read from its top, however far down the one before was.
              requestAnimationFrame(() => root.current?.scrollIntoView({ block: 'start' }));
            }}
          >
            <b>{dockNames[one]}</b>
            <span>{dockSays(checker, one)}</span>
          </button>
        ))}
      </nav>
    </div>
  );
}

/** How long the last choice took, for whoever looks at the page's measures. */
function measureSinceChoice(name: string): void {
  const choice = performance.getEntriesByName('checker-choice').at(-1);
  if (choice) performance.measure(name, { start: choice.startTime });
}

function leadersTo(stage: HTMLElement | null, column: HTMLElement | null, data: ReturnType<typeof drawCase>): Leader[] {
  const picture = stage?.querySelector('.drawing-sheet');
  if (!picture || !column) return [];
  const at = picture.getBoundingClientRect();
  const beside = column.getBoundingClientRect();
  if (at.width === 0 || beside.left < at.right) return [];
  const ends = new Map<number, Point>();
  for (const balloon of column.querySelectorAll('.balloon')) {
    const box = balloon.getBoundingClientRect();
    ends.set(Number(balloon.textContent), [box.left - at.left, Math.round(box.top - at.top + box.height / 2)]);
  }
  return runLeaders(data.pinned, ends, data.labels, data.sheet.height - 8);
}

const dockNames: Record<View, string> = { drawing: 'Drawing', notes: 'Notes', drawers: 'Drawers', rulers: 'Rulers' };

function dockSays(checker: Checker, view: View): string {
  if (view === 'drawing') return '2 views';
  if (view === 'notes') return String(checker.notes.value.length);
  if (view === 'rulers') return String(shownBudgets(checker.report.value).length);
  const filled = checker.drawers.filter((drawer) => inDrawer(drawer, checker.list.value).length > 0).length;
  return `${filled} of ${checker.drawers.length}`;
}

const marksOf: Record<WholeVerdict, MarkedVerdict> = {
  fits: 'fits',
  'does-not-fit': 'does-not-fit',
  'cannot-tell': 'cannot-tell',
  empty: 'does-not-apply',
  short: 'does-not-apply',
};

const WholeMark = ({ verdict, says }: { verdict: WholeVerdict; says: string }) => (
  <VerdictMark verdict={marksOf[verdict]} word={says} />
);

function StepButton({ says, can, act }: { says: string; can: boolean; act: () => void }) {
  return (
    <button type="button" class={can ? 'button' : 'button button-dotted'} aria-disabled={!can} onClick={act}>
      {says}
    </button>
  );
}

const notRead = 'not read yet';

function savedSays(): string {
  const state = deviceState.value;
  if (logbook.value === undefined) return notRead;
  if (state.kind === 'no-room') return 'this browser keeps nothing; keep a file of your logbook';
  return state.savedAt === undefined ? 'nothing yet' : `on this device ${localTime(state.savedAt)}`;
}

/** The list with prices: what paper and screen readers have instead of drawers. */
function ListTable({ checker }: { checker: Checker }) {
  const money = checker.report.value.budgets.find(({ name }) => name === 'money');
  const [isOpen, setOpen] = useState(false);
  const table = `${checker.exercise.id}-list`;
  return (
    <div class="checker-list">
      <button
        type="button"
        class="button-plain"
        aria-expanded={isOpen}
        aria-controls={table}
        onClick={() => setOpen(!isOpen)}
      >
        The list as a table
      </button>
      <table id={table} class={isOpen ? undefined : 'paper-only'}>
        <thead>
          <tr>
            <th scope="col">Drawer</th>
            <th scope="col">Part</th>
            <th scope="col" class="number">
              Price
            </th>
          </tr>
        </thead>
        <tbody>
          {checker.drawers.flatMap((drawer) => {
            const lines = inDrawer(drawer, checker.list.value);
            if (lines.length === 0) {
              return [
                <tr key={drawer.position}>
                  <th scope="row">{drawerName(drawer)}</th>
                  <td>{drawer.from === 0 ? 'none' : 'nothing yet'}</td>
                  <td />
                </tr>,
              ];
            }
            return lines.map(({ part, quantity }, index) => {
              const found = checker.partOf.value.get(part);
              return (
                <tr key={part}>
                  <th scope="row">
                    {index === 0 ? drawerName(drawer) : <span class="visually-hidden">{drawerName(drawer)}</span>}
                  </th>
                  <td>
                    {quantity > 1 && `${quantity} × `}
                    {found?.name ?? part}
                  </td>
                  <td class="number">
                    {found?.priceCents === undefined ? 'no price' : showEuro(found.priceCents * quantity)}
                  </td>
                </tr>
              );
            });
          })}
        </tbody>
        <tfoot>
          <tr>
            <th scope="row" colSpan={2}>
              In all{money && money.unknown.length > 0 ? ', at least' : ''}
            </th>
            <td class="number">{showEuro(money?.used ?? 0)}</td>
          </tr>
        </tfoot>
      </table>
    </div>
  );
}
