import { words } from './words.en.ts';

interface UndoProps<Of> {
  /** What was deleted since the page came, the last one first. */
  readonly gone: readonly Of[];
  readonly nameOf: (one: Of) => string;
  readonly bringBack: (one: Of) => void;
  /** Id of the heading of the list, which takes the focus when a button goes with what it brought back. */
  readonly heading: string;
}

/** What was deleted, and the way back for each. */
export const Undo = <Of,>({ gone, nameOf, bringBack, heading }: UndoProps<Of>) => (
  <div role="status" class="kept-undo">
    {gone.map((one) => (
      <p>
        {words.removed(nameOf(one))}{' '}
        <button
          type="button"
          class="quiet"
          onClick={() => {
            bringBack(one);
            document.getElementById(heading)?.focus();
          }}
        >
          {words.undo}
        </button>
      </p>
    ))}
  </div>
);
