/** The whole card at a glance; any step can be opened from it. */
import { useEffect, useRef } from 'preact/hooks';
import type { JobCard } from '../../procedures/types.ts';

type Props = { card: JobCard; done: ReadonlySet<string>; here: string | undefined; choose: (key: string) => void };

export function WholeList({ card, done, here, choose }: Props) {
  const list = useRef<HTMLElement>(null);
  useEffect(() => list.current?.querySelector<HTMLElement>('[aria-current]')?.focus(), []);
  return (
    <nav ref={list} class="card-whole" aria-label="All steps">
      {card.chapters.map((chapter) => (
        <section key={chapter.id}>
          <h2>{chapter.title}</h2>
          <ol>
            {card.steps
              .filter((step) => step.chapter === chapter.id)
              .map((step) => (
                <li key={step.key} class={done.has(step.key) ? 'card-is-done' : undefined}>
                  <button
                    type="button"
                    aria-current={step.key === here ? 'step' : undefined}
                    onClick={() => choose(step.key)}
                  >
                    <span class={done.has(step.key) ? 'card-box card-box-done' : 'card-box'} aria-hidden="true" />
                    <span>
                      {step.n} {step.hold ? `Hold point ${step.holdNumber}: ` : ''}
                      {step.action}
                      <span class="visually-hidden">{done.has(step.key) ? ', done' : ''}</span>
                    </span>
                  </button>
                </li>
              ))}
          </ol>
        </section>
      ))}
    </nav>
  );
}
