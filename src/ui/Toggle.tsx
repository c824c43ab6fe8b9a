import type { Signal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import { textFor, type UnitText } from '../quantity/unit-system.ts';
import { words } from './later/words.en.ts';
import { useUnits } from './use-units.ts';

export interface ToggleProps {
  readonly id: string;
  readonly label: UnitText;
  readonly value: Signal<boolean>;
  /** What each position means: "open", "shut". */
  readonly on: string;
  readonly off: string;
}

/** A switch whose position is always said in words as well. */
export function Toggle({ id, label, value, on, off }: ToggleProps) {
  const system = useUnits();
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
        {words.switched(textFor(label, system))} <strong>{value.value ? on : off}</strong>
      </span>
    </label>
  );
}
