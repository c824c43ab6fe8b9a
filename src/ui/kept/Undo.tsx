import { More } from '../More.tsx';
import { words } from './words.en.ts';

interface UndoProps<Of> {
  /** What was deleted since the page came, the last one first. */
  readonly gone: readonly Of[];
  readonly nameOf: (one: Of) => string;
  readonly bringBack: (one: Of) => void;
  /** Id of the heading of the list, which takes the focus when a button goes with what it brought back. */
  readonly heading: string;
}

/** What was deleted last and the way back; what went before it, folded. */
export function Undo<Of>({ gone, nameOf, bringBack, heading }: UndoProps<Of>) {
  const [last, ...before] = gone;
  const back = (one: Of) => (
    <button
      type="button"
      class="quiet"
      aria-label={words.bringBack(nameOf(one))}
      onClick={() => {
        bringBack(one);
        document.getElementById(heading)?.focus();
      }}
    >
      {words.undo}
    </button>
  );
  return (
    <>
      <p role="status" class="kept-undo">
        {last !== undefined && (
          <>
            {words.removed(nameOf(last))} {back(last)}
          </>
        )}
      </p>
      {before.length > 0 && (
        <More label={words.removedBefore(String(before.length))}>
          <ul>
            {before.map((one, n) => (
              <li key={n}>
                {nameOf(one)} {back(one)}
              </li>
            ))}
          </ul>
        </More>
      )}
    </>
  );
}
