import { words } from './words.en.ts';

/** What was deleted last, and the way back. */
export function Undo({
  name,
  bringBack,
}: {
  readonly name: string | undefined;
  readonly bringBack: () => void;
}) {
  return (
    <p role="status" class="kept-undo">
      {name !== undefined && (
        <>
          {words.removed(name)}{' '}
          <button type="button" class="quiet" onClick={bringBack}>
            {words.undo}
          </button>
        </>
      )}
    </p>
  );
}
