import type { RefObject } from 'preact';
import { useLayoutEffect, useState } from 'preact/hooks';
import { onPaper } from '../ui/on-paper.ts';

export interface Size {
  readonly width: number;
  readonly height: number;
  /** The text size in force, so that margins grow with it on a projector. */
  readonly em: number;
}

/** A phone's column: what the server draws. The style sheet keeps the box, so nothing jumps. */
export const SERVER_SIZE: Size = { width: 360, height: 240, em: 14 };

/** The column of a sheet and its text, for a chart that is drawn anew on its way to the printer. */
const ON_PAPER: Size = { width: 660, height: 359, em: 14 };

/** The box of an element in CSS pixels, watched; one drawing unit is one pixel ever after. */
export function useSize(box: RefObject<HTMLElement>): Size {
  const [size, setSize] = useState(SERVER_SIZE);
  useLayoutEffect(() => {
    const element = box.current;
    if (!element) return undefined;
    const measure = () => {
      const { width, height } = element.getBoundingClientRect();
      const em = Number.parseFloat(getComputedStyle(element).fontSize);
      if (width < 40 || height < 40) return;
      setSize((old) =>
        Math.abs(old.width - width) < 0.5 && Math.abs(old.height - height) < 0.5 && old.em === em
          ? old
          : { width, height, em },
      );
    };
    // Told before the first paint as well. To measure here besides would lay out the page in the midst of a task.
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    const print = () => setSize(ON_PAPER);
    addEventListener('beforeprint', print);
    addEventListener('afterprint', measure);
    return () => {
      observer.disconnect();
      removeEventListener('beforeprint', print);
      removeEventListener('afterprint', measure);
    };
  }, [box]);
  if (import.meta.env.SSR && onPaper.units !== null) return ON_PAPER;
  return size;
}
