import type { ComponentChildren } from 'preact';
import type { Field } from './choice.ts';

interface TextFieldProps {
  readonly field: Field;
  readonly value: string;
  readonly fault: string | undefined;
  readonly label: string;
  readonly hint: string;
  readonly onInput: (text: string) => void;
  readonly numeric?: boolean;
  /** What stands beside the field. */
  readonly children?: ComponentChildren;
}

export function TextField(props: TextFieldProps) {
  const { field, value, fault, label, hint, onInput, numeric = false, children } = props;
  const id = `sheet-${field}`;
  return (
    <div class="sheet-field">
      <label for={id}>{label}</label>
      <p class="muted" id={`${id}-hint`}>
        {hint}
      </p>
      <div class="sheet-row">
        <input
          id={id}
          data-field={field}
          type="text"
          inputMode={numeric ? 'numeric' : 'text'}
          autocomplete="off"
          autocapitalize="none"
          spellcheck={false}
          value={value}
          aria-invalid={fault === undefined ? undefined : 'true'}
          aria-describedby={`${id}-hint ${id}-fault`}
          onInput={(event) => onInput(event.currentTarget.value)}
        />
        {children}
      </div>
      <p class="field-error" id={`${id}-fault`} role="alert">
        {fault}
      </p>
    </div>
  );
}
