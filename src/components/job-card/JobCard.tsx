/** The job card of one parts list: one step at a time at the bench, the whole of it on paper. */
import '@preact/signals';
import { content } from 'virtual:benchbook/content';
import { useEffect, useMemo, useState } from 'preact/hooks';
import { needWords } from '../../fit/end-lines.ts';
import { judgeList } from '../../fit/judge.ts';
import { unitOf } from '../../fit/needs/names.ts';
import type { FitReport } from '../../fit/report.ts';
import { sayFinding, sayUnjudged } from '../../fit/say.ts';
import { allNoted } from '../../logbook/progress.ts';
import { textToList } from '../../parts/address.ts';
import { withNoted } from '../../parts/noted.ts';
import { classNames, neededClasses, type Part, type PartsList } from '../../parts/part.ts';
import { tailor } from '../../procedures/tailor.ts';
import type { JobCard as Card, Procedure } from '../../procedures/types.ts';
import { minutesLeft, nextStep } from '../../procedures/working.ts';
import { deviceState, logbook, progress, record } from '../device/device.ts';
import { JobRuler } from '../job-ruler/JobRuler.tsx';
import { link } from '../link.ts';
import { localTime, wallClock } from '../local-time.ts';
import { isFault } from '../parts-checker/sort-findings.ts';
import { CardPaper } from './CardPaper.tsx';
import { OneStep } from './OneStep.tsx';
import { useArrival } from './use-arrival.ts';
import { WholeList } from './WholeList.tsx';
import './job-card.css';

type Props = {
  procedureId: string;
  /** The list shown before the device is read, without script and when the student has none of their own. */
  example: PartsList;
  /** What the example is called: "the first bench". */
  exampleName: string;
};

type Bench = {
  list: PartsList;
  from: 'address' | 'logbook' | 'handed-in' | 'example';
  unread: string[];
  /** The course's parts, with the student's own measures where the maker gives none. */
  parts: readonly Part[];
};

/** The exercise in which a list for this procedure is chosen. */
const exerciseFor = (procedure: string) =>
  content.exercises.find((one) => one.kind === 'choose' && one.procedure === procedure);

/** The list of the address, else of the card last opened, else the one last handed in, else the example. */
function findBench(procedure: Procedure, example: PartsList): Bench {
  const known = progress.value;
  const bench = { unread: [], parts: withNoted(content.parts, allNoted(known)) };
  const asked = new URLSearchParams(location.hash.slice(1)).get('list');
  if (asked) {
    const { list, unread } = textToList(asked);
    if (list.length > 0) return { ...bench, list, from: 'address', unread };
  }
  const last = known?.lastCard === undefined ? undefined : known.cards.get(known.lastCard);
  if (last && last.procedure === procedure.id) return { ...bench, list: last.list, from: 'logbook' };
  const answer = known?.handedIn.get(exerciseFor(procedure.id)?.id ?? '')?.at(-1)?.answer;
  if (answer?.kind === 'choose') return { ...bench, list: answer.list, from: 'handed-in' };
  return { ...bench, list: example, from: 'example' };
}

export function JobCard({ procedureId, example, exampleName }: Props) {
  const procedure = content.procedures.find((one) => one.id === procedureId);
  const [found, setFound] = useState<Bench | undefined>();
  const bench = useMemo<Bench>(
    () => found ?? { list: example, from: 'example', unread: [], parts: content.parts },
    [found, example],
  );
  const isRead = logbook.value !== undefined;

  useEffect(() => {
    if (!isRead || !procedure) return undefined;
    const look = () => setFound(findBench(procedure, example));
    look();
    window.addEventListener('hashchange', look);
    return () => window.removeEventListener('hashchange', look);
  }, [isRead, procedure, example]);

  const made = useMemo(() => {
    if (!procedure) return undefined;
    const report = judgeList(bench.list, bench.parts);
    const here = new Set(report.units.map((unit) => unit.class));
    const amiss = [
      ...bench.unread.map((part) => sayUnjudged({ part, why: 'unknown-part' })),
      ...report.unjudged.map(sayUnjudged),
      ...neededClasses.filter((one) => !here.has(one)).map((one) => `The list has no ${classNames[one].one}.`),
    ];
    const card = tailor(procedure, bench.list, report);
    return { report, amiss: [...amiss, ...withoutSteps(card, report)], card };
  }, [procedure, bench]);

  if (!procedure || !made) return <p>There is no procedure of this name in the course.</p>;
  const { card, report, amiss } = made;
  const blocked = report.overall === 'does-not-fit' || amiss.length > 0;
  return (
    <>
      <div class="card-screen">
        {!found ? (
          <p role="status">Reading your logbook.</p>
        ) : blocked ? (
          <NotYet report={report} amiss={amiss} procedure={procedure.id} />
        ) : (
          <AtTheBench card={card} bench={bench} exampleName={exampleName} />
        )}
      </div>
      {!blocked && <CardPaper card={card} forWhom={progress.value?.student} />}
    </>
  );
}

type BenchProps = { card: Card; bench: Bench; exampleName: string };

function AtTheBench({ card, bench, exampleName }: BenchProps) {
  const standing = progress.value?.cards.get(card.id);
  const done = useMemo(() => new Set(standing?.ticked.keys() ?? []), [standing]);
  /** The step the student asked for; empty once they have moved and want whatever is next. */
  const [asked, setAsked] = useState<string | undefined>();
  const [whole, setWhole] = useState(false);
  const [arrived, setArrived] = useState<string | undefined>();

  // Where the student was when this card came up, and not at each step since.
  useEffect(() => {
    setAsked(undefined);
    setArrived(standing?.lastAt);
  }, [card.id]);

  const open = () =>
    standing
      ? Promise.resolve()
      : record({
          act: 'card-opened',
          card: card.id,
          procedure: card.procedure,
          revision: card.revision,
          list: card.list,
        });
  const next = nextStep(card, done);
  const step = card.steps.find((one) => one.key === asked) ?? next;
  const left = minutesLeft(card, done);
  const holds = card.steps
    .filter((one) => one.hold)
    .map((one, index) => ({ at: one.n, n: index + 1, passed: done.has(one.key) }));

  return (
    <>
      <header class="card-top">
        <p class="card-where">
          <b>
            {step
              ? step.hold
                ? `Hold point ${step.holdNumber}, step ${step.n}`
                : `Step ${step.n} of ${card.steps.length}`
              : 'All done'}
          </b>
          <span>{step && `done about ${clock(left)}`}</span>
        </p>
        <button type="button" class="card-ruler" aria-expanded={whole} onClick={() => setWhole(!whole)}>
          <JobRuler
            of={card.steps.length}
            done={done.size}
            here={step?.n}
            holds={holds}
            label={`${done.size} of ${card.steps.length} steps done.`}
          />
          <span class="card-under">
            <span>{step ? chapterOf(card, step.chapter) : card.title}</span>
            <span class="card-all">{whole ? 'Back to the step' : 'All steps'}</span>
          </span>
        </button>
        {deviceState.value.kind === 'no-room' && (
          <p class="card-unsaved" role="alert">
            This browser keeps nothing for this site, so your ticks are lost when the page closes.{' '}
            <a href={link('logbook/')}>Keep a file</a> before you go.
          </p>
        )}
        {bench.from === 'example' && done.size === 0 && (
          <p class="card-note">
            This is the card for “{exampleName}”. <a href={listPage(card.procedure)}>Hand in a list of your own</a> and
            the card is made for your parts.
          </p>
        )}
        {arrived && asked === undefined && done.size > 0 && next && (
          <p class="card-note">You were here {localTime(arrived)}.</p>
        )}
      </header>
      {whole ? (
        <WholeList
          card={card}
          done={done}
          here={step?.key}
          choose={(key) => {
            setAsked(key);
            setWhole(false);
          }}
        />
      ) : step ? (
        <OneStep
          key={step.key}
          card={card}
          step={step}
          done={done}
          measured={standing?.measured.get(step.key)}
          open={open}
          goTo={(key) => setAsked(key ?? '')}
          takeFocus={asked !== undefined}
        />
      ) : (
        <Finished card={card} takeFocus={asked !== undefined} />
      )}
    </>
  );
}

/** Where a list for the procedure is chosen; the front page when no exercise is about it. */
function listPage(procedure: string): string {
  const exercise = exerciseFor(procedure);
  return link(exercise ? `exercises/${exercise.id}/` : '');
}

const chapterOf = (card: Card, id: string) => card.chapters.find((chapter) => chapter.id === id)?.title;

/** Parts that are joined in a way this procedure has no step for: a card that passed them over would not be whole. */
function withoutSteps(card: Card, report: FitReport): string[] {
  const names = new Map(report.units.map(({ id, name }) => [id, name]));
  const unmade = new Set(card.unmade);
  const says = report.joints
    .filter(({ id }) => unmade.has(id))
    .map(({ kind, need }) => `${names.get(unitOf(need))} to ${needWords(kind)}`);
  return [...new Set(says)].map((joint) => `“${card.title}” has no step yet that joins ${joint}.`);
}

type NotYetProps = { report: FitReport; amiss: string[]; procedure: string };

function NotYet({ report, amiss, procedure }: NotYetProps) {
  return (
    <div class="card-not-yet">
      <h1>Not ready to build</h1>
      <p>A job card is made for a list that fits, and of parts that the procedure has steps for. In this one:</p>
      <ul>
        {amiss.map((says) => (
          <li key={says}>{says}</li>
        ))}
        {report.findings.filter(isFault).map((one) => {
          const words = sayFinding(one);
          return (
            <li key={one.id}>
              <b>{words.headline}.</b> {words.remedy}
            </li>
          );
        })}
      </ul>
      <p>
        <a class="button button-main" href={listPage(procedure)}>
          Go back to the list
        </a>
      </p>
    </div>
  );
}

function Finished({ card, takeFocus }: { card: Card; takeFocus: boolean }) {
  const heading = useArrival(takeFocus);
  return (
    <div class="card-step">
      <h1 ref={heading} tabIndex={-1}>
        All {card.steps.length} steps are done.
      </h1>
      <p>The list is complete. Keep a file of your logbook and hand it to the instructor.</p>
      <p>
        <a class="button button-main" href={link('logbook/')}>
          Keep a file now
        </a>
      </p>
    </div>
  );
}

/** The time on the wall so many minutes on. */
const clock = (minutes: number) => wallClock(new Date(Date.now() + minutes * 60_000));
