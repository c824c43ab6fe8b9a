import type { ComponentChildren } from 'preact';
import { useLayoutEffect, useRef } from 'preact/hooks';
import type { StageModel } from './model.ts';
import { words } from './words.en.ts';

interface MoreMenuProps {
  readonly open: StageModel['open'];
  readonly children: ComponentChildren;
}

/** Opened and closed by its own button; a press elsewhere closes it as well, and Escape before anything else. */
export function MoreMenu({ open, children }: MoreMenuProps) {
  const box = useRef<HTMLDetailsElement>(null);
  const shown = open.value === 'more';
  useLayoutEffect(() => {
    if (!shown) return undefined;
    const isIn = (there: EventTarget | null): boolean =>
      there instanceof Node && box.current?.contains(there) === true;
    const onDown = ({ target }: Event): void => {
      if (!isIn(target)) open.value = null;
    };
    addEventListener('pointerdown', onDown);
    return () => {
      removeEventListener('pointerdown', onDown);
      if (isIn(document.activeElement)) box.current?.querySelector('summary')?.focus();
    };
  }, [shown]);
  return (
    <details class="stage-more" ref={box} open={shown}>
      <summary
        class="stage-button"
        onClick={(event) => {
          event.preventDefault();
          open.value = shown ? null : 'more';
        }}
      >
        {words.more}
      </summary>
      <div>{children}</div>
    </details>
  );
}
