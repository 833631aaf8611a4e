/** Where a step begins for eye and ear: the top of the card on the screen, the focus on the heading. */
import { useEffect, useRef } from 'preact/hooks';

/**
 * A ref for the step's heading. With `takeFocus` the heading gets the focus when it appears; the page goes to the top
 * of the card and not to the heading, since a caution stands before it.
 */
export function useArrival(takeFocus: boolean) {
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    if (!takeFocus) return;
    heading.current?.focus({ preventScroll: true });
    heading.current?.closest('.card-screen')?.scrollIntoView();
  }, [takeFocus]);
  return heading;
}
