/** The card as it is printed, and as it is read without script: chapters, boxes, hold points with room for initials. */
import { content } from 'virtual:benchbook/content';
import type { CardStep, JobCard } from '../../procedures/types.ts';
import { CautionBlock } from './CautionBlock.tsx';
import { StepDrawing } from './StepDrawing.tsx';

export function CardPaper({ card, forWhom }: { card: JobCard; forWhom: string | undefined }) {
  const names = new Map(content.parts.map((part) => [part.id, part.name]));
  return (
    <div class="card-paper">
      {/* A footer of this kind is printed at the foot of every page. */}
      <div class="paper-foot">
        <dl class="paper-block">
          <div>
            <dt>Course</dt>
            <dd>{content.course.title}</dd>
          </div>
          <div>
            <dt>For</dt>
            <dd>{forWhom ?? '\u00a0'}</dd>
          </div>
          <div>
            <dt>Procedure</dt>
            <dd>
              {card.title}, rev. {card.revision}
            </dd>
          </div>
          <div>
            <dt>List</dt>
            <dd>{card.id.slice(-8)}</dd>
          </div>
        </dl>
      </div>
      <div class="paper-body">
        <section class="paper-chapter paper-first">
          <h2>Job card</h2>
          <p>
            {card.steps.length} steps, {card.holds} hold points, about {Math.round(minutes(card) / 10) * 10} minutes.
            One step, one box. Tick a box when what is “right” can be seen, and not before.
          </p>
          <ul class="paper-list">
            {card.list.map(({ part, quantity }) => (
              <li key={part}>
                {quantity > 1 ? `${quantity} × ` : ''}
                {names.get(part) ?? part}
              </li>
            ))}
          </ul>
        </section>
        {card.chapters.map((chapter, index) => (
          <section key={chapter.id} class="paper-chapter">
            <h2>
              Chapter {index + 1}: {chapter.title}
            </h2>
            {(chapter.mat.length > 0 || chapter.tools.length > 0) && (
              <p class="paper-mat">
                {chapter.mat.length > 0 && (
                  <>
                    <b>On the mat:</b> {chapter.mat.join(' · ')}.{' '}
                  </>
                )}
                {chapter.tools.length > 0 && (
                  <>
                    <b>Tools:</b> {chapter.tools.join(', ')}.
                  </>
                )}
              </p>
            )}
            <ol class="paper-steps">
              {card.steps
                .filter((step) => step.chapter === chapter.id)
                .map((step) => (
                  <li key={step.key}>
                    {step.cautions.map((caution) => (
                      <CautionBlock key={caution.text} {...caution} />
                    ))}
                    {step.hold ? <PaperHold step={step} /> : <PaperStep card={card} step={step} />}
                  </li>
                ))}
            </ol>
          </section>
        ))}
      </div>
    </div>
  );
}

const minutes = (card: JobCard) => card.steps.reduce((sum, step) => sum + step.minutes[1], 0);

function PaperStep({ card, step }: { card: JobCard; step: CardStep }) {
  return (
    <div class="paper-step">
      <span class="paper-box" aria-hidden="true" />
      <span class="paper-n">{step.n}</span>
      <div>
        <p class="paper-action">{step.action}</p>
        <p>
          <span class="paper-small">Right when:</span> {step.right}
        </p>
        {step.measure && (
          <p>
            <span class="paper-small">
              {step.measure.quantity}, from {step.measure.low} to {step.measure.high} {step.measure.unit}. Measured:
            </span>{' '}
            <span class="paper-line" /> {step.measure.unit}
          </p>
        )}
        {step.ifNot.length > 0 && (
          <p class="paper-small paper-if-not">{step.ifNot.map(({ sees, does }) => `${sees} ${does}`).join(' ')}</p>
        )}
      </div>
      {firstOfItsKind(card, step) && <StepDrawing card={card} step={step} />}
    </div>
  );
}

/** On paper a drawing stands at the first step that asks for it with this place; the repeats point the same way. */
function firstOfItsKind(card: JobCard, step: CardStep): boolean {
  return step.drawing === 'module' && card.steps.find((one) => one.step === step.step)?.key === step.key;
}

function PaperHold({ step }: { step: CardStep }) {
  return (
    <div class="paper-hold">
      <h3>
        Hold point {step.holdNumber}. Stop. {step.action}
      </h3>
      <p>{step.hold?.join(' · ')}</p>
      <div class="paper-fields">
        <span>Initials</span>
        <span>Time</span>
        <span>Note</span>
      </div>
    </div>
  );
}
