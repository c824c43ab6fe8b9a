import type { RefObject } from 'preact';
import { useLayoutEffect } from 'preact/hooks';

/**
 * Tells the style sheet, as `--held`, how much of the screen the picture takes that stays at its top, so
 * that a control which gets the focus is scrolled to a place under it and not behind it; and, as `data-ready`, that the
 * simulation is alive.
 */
export function useHeldHeight(bench: RefObject<HTMLElement>): void {
  useLayoutEffect(() => {
    const picture = bench.current?.firstElementChild;
    const controls = bench.current?.lastElementChild;
    if (!picture || !controls) return undefined;
    const observer = new ResizeObserver(() => {
      // On the controls, which alone read it: whatever lies under the element that has it is styled anew.
      (controls as HTMLElement).style.setProperty('--held', `${Math.ceil(picture.clientHeight)}px`);
      // The observers of its charts were told before: all is drawn. By hand, since a state would draw it once more.
      bench.current?.parentElement?.setAttribute('data-ready', 'true');
    });
    observer.observe(picture);
    return () => observer.disconnect();
  }, [bench]);
}
