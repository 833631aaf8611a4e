/** Handing in: a button that says what is missing, and the marks shown in place. */
import { content } from 'virtual:benchbook/content';
import { useRef } from 'preact/hooks';
import { listToText } from '../../parts/address.ts';
import { showMarks } from '../../wording/progress.ts';
import { link } from '../link.ts';
import { drawerName } from './list.ts';
import { Marks } from './Marks.tsx';
import type { Checker } from './store.ts';

type HandInProps = {
  checker: Checker /** Opens a drawer and brings it into view. */;
  goTo: (position: string | undefined) => void;
};

export function HandIn({ checker, goTo }: HandInProps) {
  const heading = useRef<HTMLHeadingElement>(null);
  const short = checker.short.value;
  const last = checker.last.value;
  const isHandedIn = last?.isThis === true;
  const [first] = short;
  const { procedure } = checker.exercise;
  const hasCard = content.procedures.some(({ id }) => id === procedure);

  async function handIn(): Promise<void> {
    await checker.handIn();
    heading.current?.focus();
  }

  return (
    <div class="hand-in">
      {!isHandedIn && first && (
        <button
          type="button"
          class="button button-dotted"
          onClick={() => {
            checker.said.value = `Still empty: ${short.map(drawerName).join(', ')}.`;
            goTo(first.position);
          }}
        >
          {short.length === 1 ? '1 drawer still empty' : `${short.length} drawers still empty`}
        </button>
      )}
      {!isHandedIn && !first && (
        <button type="button" class="button button-main" onClick={() => void handIn()}>
          Hand in this list
        </button>
      )}
      {last && (
        <section class="handed-in" aria-label="Marks">
          <h2 ref={heading} tabIndex={-1}>
            {showMarks(last.marked.marks, last.marked.of)} marks
          </h2>
          {last.best > last.marked.marks && (
            <p class="quiet">Your best so far: {showMarks(last.best, last.marked.of)}. The best one counts.</p>
          )}
          {isHandedIn ? (
            <>
              <Marks marked={last.marked} />
              <div class="buttons">
                {hasCard && (
                  <a class="button button-main" href={link(`card/${procedure}/#list=${listToText(last.list)}`)}>
                    Open the job card for this list
                  </a>
                )}
                <button type="button" class="button" onClick={() => goTo(undefined)}>
                  Change the list and hand in again
                </button>
              </div>
            </>
          ) : (
            <>
              <p>That was for the list you handed in. You have changed it since.</p>
              <details class="checker-more">
                <summary>The marks of the list handed in</summary>
                <Marks marked={last.marked} />
              </details>
            </>
          )}
        </section>
      )}
    </div>
  );
}
