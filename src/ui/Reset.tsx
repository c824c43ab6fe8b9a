import { words } from './later/words.en.ts';

interface ResetProps {
  readonly onReset: () => void;
  readonly label?: string;
}

/** Back to the start. Nothing typed is worth a question here: every state has a link. */
export function Reset({ onReset, label = words.reset }: ResetProps) {
  return (
    <button type="button" class="quiet" onClick={onReset}>
      {label}
    </button>
  );
}
