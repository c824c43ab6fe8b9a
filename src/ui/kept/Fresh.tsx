import { useSignal } from '@preact/signals';
import { useRef } from 'preact/hooks';

interface FreshProps {
  /** Of the ids on the page: "job". */
  readonly id: string;
  readonly most: number;
  readonly said: {
    readonly fresh: string;
    readonly label: string;
    readonly how: string;
    readonly missing: string;
    readonly start: string;
  };
  readonly start: (name: string) => void;
}

/** A new one, by its name. */
export function Fresh({ id, most, said, start }: FreshProps) {
  const missing = useSignal(false);
  const field = useRef<HTMLInputElement>(null);
  return (
    <form
      class="kept-fresh"
      // Pressed before the script has come it stays where it is, and keeps what was typed.
      method="dialog"
      onSubmit={(event) => {
        event.preventDefault();
        // What was typed before the script came is in the field and nowhere else.
        const name = (field.current?.value ?? '').trim();
        if (name === '') {
          missing.value = true;
          field.current?.focus();
        } else start(name);
      }}
    >
      <h2>{said.fresh}</h2>
      <label for={`${id}-new`}>{said.label}</label>
      <input
        ref={field}
        id={`${id}-new`}
        type="text"
        autoComplete="off"
        maxLength={most}
        aria-describedby={`${id}-new-how ${id}-new-wrong`}
        aria-invalid={missing.value}
        onInput={() => (missing.value = false)}
      />
      <p id={`${id}-new-how`} class="muted">
        {said.how}
      </p>
      <p id={`${id}-new-wrong`} class="field-error" role="alert">
        {missing.value && said.missing}
      </p>
      <button type="submit" class="act">
        {said.start}
      </button>
    </form>
  );
}
