import { useLayoutEffect, useRef } from 'preact/hooks';
import { words } from './words.en.ts';

/** Nothing to look at. It has the focus as long as it lasts: a key reaches no button or field under it. */
export function Blank({ show }: { readonly show: () => void }) {
  const button = useRef<HTMLButtonElement>(null);
  useLayoutEffect(() => {
    const before = document.activeElement;
    button.current?.focus();
    return () => {
      if (before instanceof HTMLElement) before.focus({ preventScroll: true });
    };
  }, []);
  return (
    <button ref={button} type="button" class="stage-blank" onClick={show}>
      <span class="visually-hidden">{words.blanked}</span>
    </button>
  );
}
