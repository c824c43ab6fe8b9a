import type { Signal } from '@preact/signals';

interface AskProps {
  readonly id: string;
  readonly asked: Signal<boolean>;
  readonly words: string;
  /** What it is worth before it is pressed, what came of it after. */
  readonly under: string;
}

/** A question, or a line to read, to press; pressed again, it is taken back. */
export function Ask({ id, asked, words, under }: AskProps) {
  return (
    <button
      type="button"
      id={id}
      class="share-ask"
      aria-pressed={asked.value}
      onClick={() => (asked.value = !asked.value)}
    >
      <strong>{words}</strong>
      <span>{under}</span>
    </button>
  );
}
