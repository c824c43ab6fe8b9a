import { useLayoutEffect, useRef } from 'preact/hooks';
import { format } from '../quantity/print.ts';
import { percent } from '../quantity/quantities.ts';
import { LiveText } from '../ui/LiveText.tsx';
import type { Chosen } from './chosen.ts';
import { words } from './words.en.ts';

/** How the planner's table of the chosen transmission stands, and the buttons that make it or end that. */
export function TableStanding({ chosen }: { readonly chosen: Chosen }) {
  const box = useRef<HTMLDivElement>(null);
  const hadKeys = useRef(false);
  const { kind } = chosen.standing.value;
  // The button that was pressed goes with how it stood; the keys stay where it was, and not on the one that undoes it.
  useLayoutEffect(() => {
    if (hadKeys.current && document.activeElement === document.body)
      box.current?.focus({ preventScroll: true });
  }, [kind]);
  return (
    <div
      ref={box}
      class="own-standing"
      tabIndex={-1}
      onFocusIn={() => (hadKeys.current = true)}
      onFocusOut={({ relatedTarget }) => {
        // What goes away with the keys hands them to nothing.
        if (relatedTarget !== null) hadKeys.current = false;
      }}
    >
      <Standing chosen={chosen} />
    </div>
  );
}

function Standing({ chosen }: { readonly chosen: Chosen }) {
  const standing = chosen.standing.value;
  const { table } = words;
  const own = chosen.basis.value?.own;
  switch (standing.kind) {
    case 'ready':
      return own ? <p role="status">{table.ready}</p> : null;
    case 'fetching':
      return <p role="status">{table.fetching}</p>;
    case 'faulty':
      return (
        <p class="field-error" role="status">
          {table.faulty(own?.name ?? '')}
        </p>
      );
    case 'gone':
      return (
        <p class="field-error" role="status">
          {table.gone}
        </p>
      );
    case 'missed':
      return (
        <p class="field-error" role="status">
          {table.missed}
        </p>
      );
    case 'noTable':
      return (
        <>
          <p role="status">
            {standing.last === undefined ? table.none : table.after[standing.last]}
          </p>
          <button type="button" class="act no-print" onClick={chosen.make}>
            {table.make}
          </button>
        </>
      );
    case 'making': {
      const so = table.soFar(format(Math.round(100 * standing.share), percent, 'si'));
      return (
        <div class="own-making no-print">
          <label for="own-share">{table.making}</label>
          <progress id="own-share" max={1} value={standing.share} />
          <LiveText visible text={so} />
          <button type="button" class="quiet" onClick={chosen.cancel}>
            {table.cancel}
          </button>
        </div>
      );
    }
  }
}
