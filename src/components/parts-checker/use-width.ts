/** Width of an element, followed as it changes. */
import type { RefObject } from 'preact';
import { useEffect, useState } from 'preact/hooks';

/** `first` until the element is measured; a hidden element keeps the last width it had. */
export function useWidth(ref: RefObject<HTMLElement>, first: number): number {
  const [width, setWidth] = useState(first);
  useEffect(() => {
    const element = ref.current;
    if (!element) return undefined;
    const read = () => {
      const now = Math.floor(element.clientWidth);
      if (now > 0) setWidth(now);
    };
    read();
    const watch = new ResizeObserver(read);
    watch.observe(element);
    return () => watch.disconnect();
  }, [ref]);
  return width;
}
