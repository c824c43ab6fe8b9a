import type { Signal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';

export interface ChoiceOption {
  readonly value: string;
  readonly words: string;
  /** One line under the words, where the choice needs it. */
  readonly note?: string;
}

export interface ChoiceProps {
  readonly id: string;
  readonly label: string;
  readonly value: Signal<string>;
  readonly options: readonly ChoiceOption[];
  /** A list that folds away, for more than about five options. */
  readonly as?: 'radio' | 'select' | undefined;
}

/** One of several. Radio buttons by default: every option can be read without opening anything. */
export function Choice({ id, label, value, options, as = 'radio' }: ChoiceProps) {
  const root = useRef<HTMLElement>(null);
  useEffect(() => {
    // What was chosen before this script ran counts.
    const field = root.current?.querySelector<HTMLInputElement | HTMLSelectElement>(
      'select, :checked',
    );
    if (field && options.some((option) => option.value === field.value)) value.value = field.value;
  }, []);

  if (as === 'select') {
    return (
      <div class="choice choice-select" ref={root as never}>
        <label for={id}>{label}</label>
        <select id={id} value={value.value} onChange={(e) => (value.value = e.currentTarget.value)}>
          {options.map((option) => (
            <option key={option.value} value={option.value} selected={option.value === value.value}>
              {option.words}
            </option>
          ))}
        </select>
      </div>
    );
  }
  return (
    <fieldset class="choice" ref={root as never}>
      <legend>{label}</legend>
      <div class="choice-options">
        {options.map((option) => (
          <label key={option.value} class="choice-option">
            <input
              type="radio"
              name={id}
              value={option.value}
              checked={option.value === value.value}
              onChange={() => (value.value = option.value)}
            />
            <span class="choice-words">
              {option.words}
              {option.note !== undefined && <span class="choice-note">{option.note}</span>}
            </span>
          </label>
        ))}
      </div>
    </fieldset>
  );
}
