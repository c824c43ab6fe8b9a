import type { Signal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';

export interface ToggleProps {
  readonly id: string;
  readonly label: string;
  readonly value: Signal<boolean>;
  /** What each position means: "open", "shut". */
  readonly on: string;
  readonly off: string;
}

/** A switch whose position is always said in words as well. */
export function Toggle({ id, label, value, on, off }: ToggleProps) {
  const box = useRef<HTMLInputElement>(null);
  useEffect(() => {
    if (box.current) value.value = box.current.checked;
  }, []);
  return (
    <label class="toggle" for={id}>
      <input
        ref={box}
        id={id}
        type="checkbox"
        role="switch"
        checked={value.value}
        onChange={(event) => (value.value = event.currentTarget.checked)}
      />
      <span>
        {label}: <strong>{value.value ? on : off}</strong>
      </span>
    </label>
  );
}
