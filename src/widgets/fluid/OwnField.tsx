import { useEffect, useRef } from 'preact/hooks';
import { useUnits } from '../../ui/use-units.ts';
import type { FluidModel } from './model.ts';
import type { OwnKey } from './own-fluid.ts';
import { ownLabel, printIndex } from './print.ts';
import { words } from './words.en.ts';

interface OwnFieldProps {
  readonly id: string;
  readonly which: OwnKey;
  readonly model: FluidModel;
}

/** One of the two published numbers, typed. A slider from 2 to 2000 would be no help. */
export function OwnField({ id, which, model: { own, ownIndex } }: OwnFieldProps) {
  const system = useUnits();
  const field = useRef<HTMLInputElement>(null);
  const error = own.problems.value[which];
  useEffect(() => {
    // Typed before this script ran, or handed back by the browser: it counts.
    const input = field.current;
    if (input && input.value !== input.defaultValue) {
      own.type(which, input.value);
      own.take(which);
    }
  }, []);
  return (
    <div class="own-field">
      <label for={id}>{ownLabel(which)(system)}</label>
      <input
        ref={field}
        id={id}
        type="text"
        inputMode="decimal"
        autocomplete="off"
        aria-invalid={error !== ''}
        aria-describedby={`${id}-error`}
        value={own.text(which)}
        onInput={(event) => own.type(which, event.currentTarget.value)}
        onChange={() => own.take(which)}
      />
      <p id={`${id}-error`} class="field-error" aria-live="polite">
        {error}
      </p>
      {which === 'own100' && (
        <p class="own-index" role="status">
          {words.ownIndex({ index: printIndex(ownIndex.value) })}
        </p>
      )}
    </div>
  );
}
