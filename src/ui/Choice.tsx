import type { Signal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import { textFor, type UnitText } from '../quantity/unit-system.ts';
import { useUnits } from './use-units.ts';

export interface ChoiceOption {
  readonly value: string;
  readonly words: UnitText;
  /** One line under the words, where the choice needs it. */
  readonly note?: UnitText;
}

export interface ChoiceProps {
  readonly id: string;
  readonly label: UnitText;
  readonly value: Signal<string>;
  readonly options: readonly ChoiceOption[];
  /** A list that folds away, for more than about five options. */
  readonly as?: 'radio' | 'select' | undefined;
}

/** One of several. Radio buttons by default: every option can be read without opening anything. */
export function Choice({ id, label, value, options, as = 'radio' }: ChoiceProps) {
  const system = useUnits();
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
        <label for={id}>{textFor(label, system)}</label>
        <select id={id} value={value.value} onChange={(e) => (value.value = e.currentTarget.value)}>
          {options.map((option) => (
            <option key={option.value} value={option.value} selected={option.value === value.value}>
              {textFor(option.words, system)}
            </option>
          ))}
        </select>
      </div>
    );
  }
  return (
    <fieldset class="choice" ref={root as never}>
      <legend>{textFor(label, system)}</legend>
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
              {textFor(option.words, system)}
              {option.note !== undefined && (
                <span class="choice-note">{textFor(option.note, system)}</span>
              )}
            </span>
          </label>
        ))}
      </div>
    </fieldset>
  );
}
