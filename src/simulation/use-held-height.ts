import type { RefObject } from 'preact';
import { useLayoutEffect } from 'preact/hooks';

/**
 * Tells the style sheet, as `--held`, how much of the screen the picture takes that stays at its top, so
 * that a control which gets the focus is scrolled to a place under it and not behind it.
 */
export function useHeldHeight(bench: RefObject<HTMLElement>): void {
  useLayoutEffect(() => {
    const picture = bench.current?.firstElementChild;
    if (!picture || typeof ResizeObserver === 'undefined') return undefined;
    const observer = new ResizeObserver(() => {
      bench.current?.style.setProperty('--held', `${Math.ceil(picture.clientHeight)}px`);
    });
    observer.observe(picture);
    return () => observer.disconnect();
  }, [bench]);
}
