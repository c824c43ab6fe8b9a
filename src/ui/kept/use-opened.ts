import { useSignal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';

interface Kept {
  readonly load: () => Promise<unknown>;
  readonly watch: () => () => void;
  readonly keep: () => Promise<unknown>;
  readonly leave: () => void;
}

/**
 * Which record the address names behind its #, and what is kept when the page is left.
 *
 * @param list the id of what takes the focus when a record is closed
 */
export function useOpened(kept: Kept, list: string) {
  const at = useSignal('');
  const frame = useRef<HTMLDivElement>(null);
  /** It was opened here, and not by the address: the keys go along. */
  const arrived = useRef(false);
  useEffect(() => {
    const look = (): void => {
      at.value = location.hash.slice(1);
    };
    const leave = (): void => kept.leave();
    const hidden = (): void => {
      if (document.visibilityState === 'hidden') void kept.keep();
    };
    look();
    void kept.load();
    const stop = kept.watch();
    addEventListener('popstate', look);
    addEventListener('pagehide', leave);
    document.addEventListener('visibilitychange', hidden);
    return () => {
      stop();
      removeEventListener('popstate', look);
      removeEventListener('pagehide', leave);
      document.removeEventListener('visibilitychange', hidden);
    };
  }, []);
  const go = (id: string): void => {
    history.pushState(null, '', id === '' ? location.pathname : `#${id}`);
    at.value = id;
    // Drawn before this runs: what is drawn of a change was asked for earlier.
    queueMicrotask(() => {
      frame.current?.scrollIntoView({ block: 'start' });
      if (id === '') document.getElementById(list)?.focus({ preventScroll: true });
    });
  };
  return {
    at,
    frame,
    arrived,
    open: ({ id }: { readonly id: string }): void => {
      arrived.current = true;
      go(id);
    },
    close: (): void => go(''),
  };
}
