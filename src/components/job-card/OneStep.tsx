/** One step, large enough to read at arm's length; ticking it is a claim that the state is true. */
import { useRef, useState } from 'preact/hooks';
import { reachable } from '../../procedures/tailor.ts';
import type { CardStep, JobCard } from '../../procedures/types.ts';
import { mayBeDone, nextStep, restingOn } from '../../procedures/working.ts';
import { count } from '../../wording/phrases.ts';
import { record } from '../device/device.ts';
import { CautionBlock } from './CautionBlock.tsx';
import { StepDrawing } from './StepDrawing.tsx';
import { useArrival } from './use-arrival.ts';

type Props = {
  card: JobCard;
  step: CardStep;
  done: ReadonlySet<string>;
  measured: number | undefined;
  /** Writes that the card was opened, once, before the first entry about it. */
  open: () => Promise<void>;
  goTo: (key: string | undefined) => void;
  /** Focus follows the step; a page just opened keeps its top. */
  takeFocus: boolean;
};

export function OneStep(props: Props) {
  const { card, step, done, goTo, takeFocus } = props;
  const heading = useArrival(takeFocus);
  const before = card.steps[step.n - 2];
  const isDone = done.has(step.key);
  const waitsFor = card.steps.find((one) => step.after.includes(one.key) && !done.has(one.key));

  return (
    <>
      <article class="card-step">
        {step.cautions.map((caution) => (
          <CautionBlock key={caution.text} {...caution} />
        ))}
        {step.hold ? (
          <>
            <h1 ref={heading} tabIndex={-1}>
              Stop here. {step.action}
            </h1>
            <p>Touch none of it until they have looked.</p>
            <ol class="card-looks">
              {step.hold.map((look) => (
                <li key={look}>{look}</li>
              ))}
            </ol>
          </>
        ) : (
          <div class="card-action">
            <h1 ref={heading} tabIndex={-1}>
              {step.action}
            </h1>
            <StepDrawing card={card} step={step} />
          </div>
        )}
        {step.tools.length > 0 && <p class="card-tools">Tools: {step.tools.join(', ')}</p>}
        <p class="card-right">
          <b>Right when</b> {step.right}
        </p>
        {step.ifNot.length > 0 && (
          <details class="card-help">
            <summary>{step.hold ? 'If something is not right' : 'It is not like that'}</summary>
            <dl>
              {step.ifNot.map(({ sees, does }) => (
                <div key={sees}>
                  <dt>{sees}</dt>
                  <dd>{does}</dd>
                </div>
              ))}
            </dl>
          </details>
        )}
      </article>
      {waitsFor ? (
        <Dock back={before} goTo={goTo}>
          <button type="button" class="card-tick card-tick-not-yet" onClick={() => goTo(waitsFor.key)}>
            First step {waitsFor.n}. Go there
          </button>
        </Dock>
      ) : isDone ? (
        <DoneDock {...props} before={before} />
      ) : step.hold ? (
        <HoldDock {...props} before={before} />
      ) : step.measure ? (
        <MeasureDock {...props} before={before} />
      ) : (
        <Dock back={before} goTo={goTo}>
          <TickButton {...props} />
        </Dock>
      )}
    </>
  );
}

type DockProps = {
  back: CardStep | undefined;
  goTo: Props['goTo'];
  children: preact.ComponentChildren;
};

function Dock({ back, goTo, children }: DockProps) {
  return (
    <div class="card-dock">
      {back && (
        <button type="button" class="button card-back" onClick={() => goTo(back.key)}>
          Back
        </button>
      )}
      {children}
    </div>
  );
}

/** Says what is missing, and takes the hand to it: `field` is a selector. */
function NotYet({ field, children }: { field: string; children: preact.ComponentChildren }) {
  return (
    <button
      type="button"
      class="card-tick card-tick-not-yet"
      onClick={() => document.querySelector<HTMLElement>(field)?.focus()}
    >
      {children}
    </button>
  );
}

/** After a tick the card goes to the first step that is not done. */
async function tick({ card, step, done, open, goTo }: Props): Promise<void> {
  if (done.has(step.key) || !mayBeDone(step, done)) return;
  await open();
  await record({ act: 'step-ticked', card: card.id, step: step.key });
  goTo(nextStep(card, new Set([...done, step.key]))?.key);
}

function TickButton(props: Props) {
  const last = props.step.n === props.card.steps.length;
  return (
    // The second of two quick taps would claim a state that nobody has looked at.
    <button type="button" class="card-tick" onClick={(event) => event.detail < 2 && void tick(props)}>
      <span class="card-box" aria-hidden="true" />
      <span>
        {props.step.claim}. <span class="card-next">{last ? 'That was the last' : 'Next step'}</span>
      </span>
    </button>
  );
}

function DoneDock({ card, step, done, goTo, before }: Props & { before: CardStep | undefined }) {
  const [sure, setSure] = useState(false);
  const resting = restingOn(card, step.key, done);
  const after = card.steps[step.n];
  async function takeBack() {
    // The last first, so that at no time a step is ticked whose ground is gone.
    for (const key of [...resting].reverse().concat(step.key)) {
      await record({ act: 'step-unticked', card: card.id, step: key });
    }
    goTo(step.key);
  }
  if (sure) {
    return (
      <div class="card-dock">
        <button type="button" class="button card-back" onClick={() => setSure(false)}>
          Leave it
        </button>
        <button type="button" class="card-tick" onClick={() => void takeBack()}>
          Take it back
          {resting.length > 0 &&
            `, and with it the ${count(resting.length, 'later step that rests', 'later steps that rest')} on it`}
        </button>
      </div>
    );
  }
  return (
    <>
      <p class="card-done">
        Done.{' '}
        <button type="button" class="card-plain" onClick={() => setSure(true)}>
          It is not so after all
        </button>
      </p>
      <Dock back={before} goTo={goTo}>
        <button type="button" class="card-tick" onClick={() => goTo(after?.key)}>
          <span class="card-box card-box-done" aria-hidden="true" />
          <span>
            {step.claim}. <span class="card-next">Go on</span>
          </span>
        </button>
      </Dock>
    </>
  );
}

function MeasureDock(props: Props & { before: CardStep | undefined }) {
  const { card, step, measured, open, before, goTo } = props;
  const [text, setText] = useState(measured === undefined ? '' : String(measured));
  const [trouble, setTrouble] = useState('');
  const says = useRef<HTMLParagraphElement>(null);
  const { measure } = step;
  if (!measure) return null;
  const { quantity, unit, low, high, instrument, ifOut } = measure;
  const within = measured !== undefined && low <= measured && measured <= high;
  async function note() {
    const value = Number(text.trim().replace(',', '.'));
    if (text.trim() === '' || !Number.isFinite(value)) {
      setTrouble(`Write the number that the ${instrument} shows, in ${unit}.`);
      return;
    }
    setTrouble('');
    await open();
    await record({ act: 'value-measured', card: card.id, step: step.key, value });
    // What it comes to stands under the field, where the buttons at the thumb may cover it.
    requestAnimationFrame(() => says.current?.scrollIntoView({ block: 'nearest' }));
  }
  return (
    <>
      <div class={measured !== undefined && !within ? 'card-measure card-measure-out' : 'card-measure'}>
        <label for="measured">
          {quantity}, read from the {instrument}. Right from {low} to {high} {unit}.
        </label>
        <p class="card-measure-row">
          <input
            id="measured"
            inputMode="decimal"
            autocomplete="off"
            value={text}
            aria-describedby="measure-says"
            onInput={(event) => setText(event.currentTarget.value)}
            onKeyDown={(event) => event.key === 'Enter' && void note()}
          />
          <span>{unit}</span>
          <button type="button" class="button" onClick={() => void note()}>
            Note it
          </button>
        </p>
        <p ref={says} id="measure-says" role="status">
          {trouble ||
            (measured === undefined
              ? ''
              : within
                ? `${measured} ${unit} is within ${low} to ${high} ${unit}.`
                : `Stop. ${measured} ${unit} is outside ${low} to ${high} ${unit}. ${ifOut}`)}
        </p>
      </div>
      <Dock back={before} goTo={goTo}>
        {within ? (
          <TickButton {...props} />
        ) : (
          <NotYet field="#measured">{measured === undefined ? 'One value to measure' : 'Stopped here'}</NotYet>
        )}
      </Dock>
    </>
  );
}

function HoldDock(props: Props & { before: CardStep | undefined }) {
  const { card, step, done, open, before, goTo } = props;
  const free = new Set(reachable(card, done));
  const meanwhile = card.steps.find((one) => one.n > step.n && !one.hold && free.has(one.key));
  const [alone, setAlone] = useState(false);
  const [initials, setInitials] = useState('');
  const [seen, setSeen] = useState<ReadonlySet<string>>(new Set());
  const looks = step.hold ?? [];
  const toLook = looks.length - seen.size;
  const written = initials.trim();
  const ready = alone ? toLook === 0 : written.length >= 2;
  async function pass() {
    if (!ready) return;
    await open();
    await record({
      act: 'hold-passed',
      card: card.id,
      step: step.key,
      ...(alone ? { by: 'self' as const } : { by: 'initials' as const, initials: written }),
    });
    await tick(props);
  }
  return (
    <>
      {alone ? (
        <fieldset class="card-self">
          <legend>Look at each thing yourself, and tick what you have seen</legend>
          {looks.map((look) => (
            <label key={look}>
              <input
                type="checkbox"
                checked={seen.has(look)}
                onChange={(event) => {
                  const next = new Set(seen);
                  if (event.currentTarget.checked) next.add(look);
                  else next.delete(look);
                  setSeen(next);
                }}
              />
              {look}
            </label>
          ))}
        </fieldset>
      ) : (
        <p class="card-initials">
          <label for="initials">Initials of the instructor who looked</label>
          <input
            id="initials"
            maxLength={12}
            autocomplete="off"
            value={initials}
            onInput={(event) => setInitials(event.currentTarget.value)}
            onKeyDown={(event) => event.key === 'Enter' && void pass()}
          />
        </p>
      )}
      <p>
        <button type="button" class="card-plain" onClick={() => setAlone(!alone)}>
          {alone ? 'An instructor is here after all' : 'No instructor tonight? Answer for yourself'}
        </button>
      </p>
      {meanwhile && (
        <p>
          <button type="button" class="card-plain" onClick={() => goTo(meanwhile.key)}>
            While you wait: step {meanwhile.n}, {meanwhile.action}
          </button>
        </p>
      )}
      <Dock back={before} goTo={goTo}>
        {ready ? (
          <button type="button" class="card-tick" onClick={() => void pass()}>
            <span class="card-box" aria-hidden="true" />
            <span>
              {step.claim}. <span class="card-next">Next step</span>
            </span>
          </button>
        ) : (
          <NotYet field={alone ? '.card-self input:not(:checked)' : '#initials'}>
            {alone ? `${toLook} more to look at` : written.length === 0 ? 'Initials still to write' : '1 more letter'}
          </NotYet>
        )}
      </Dock>
    </>
  );
}
