/** The card as it is printed, and as it is read without script: chapters, boxes, hold points with room for initials. */
import { content } from 'virtual:benchbook/content';
import type { CardStep, JobCard } from '../../procedures/types.ts';
import { CautionBlock } from './CautionBlock.tsx';

export function CardPaper({ card, forWhom }: { card: JobCard; forWhom: string | undefined }) {
  return (
    <div class="card-paper">
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
                  {step.hold ? <PaperHold step={step} /> : <PaperStep step={step} />}
                </li>
              ))}
          </ol>
          <dl class="paper-block">
            <div>
              <dt>Course</dt>
              <dd>{content.course.title}</dd>
            </div>
            <div>
              <dt>For</dt>
              <dd>{forWhom ?? ' '}</dd>
            </div>
            <div>
              <dt>Procedure</dt>
              <dd>
                {card.title}, rev. {card.revision}
              </dd>
            </div>
            <div>
              <dt>Sheet</dt>
              <dd>
                {index + 1} of {card.chapters.length}
              </dd>
            </div>
          </dl>
        </section>
      ))}
    </div>
  );
}

function PaperStep({ step }: { step: CardStep }) {
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
        {step.ifNot.map(({ sees, does }) => (
          <p key={sees} class="paper-small">
            If not: {sees} {does}
          </p>
        ))}
      </div>
    </div>
  );
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
