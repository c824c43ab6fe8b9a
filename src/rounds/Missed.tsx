import type { Miss } from './load.ts';
import { words } from './words.en.ts';

interface MissedProps {
  readonly miss: Miss;
  readonly again: () => void;
}

/** What did not come, and the one thing to do about it. */
export function Missed({ miss, again }: MissedProps) {
  const stuck = miss === 'stuck';
  return (
    <>
      <p role="alert">{words.miss[miss]}</p>
      <button type="button" class="act" onClick={() => (stuck ? location.reload() : again())}>
        {stuck ? words.reload : words.again}
      </button>
    </>
  );
}
