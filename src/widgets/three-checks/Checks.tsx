import { useUnits } from '../../ui/use-units.ts';
import type { ThreeChecksModel } from './model.ts';
import { checkName, underCheck } from './print.ts';
import { words } from './words.en.ts';

interface Props {
  readonly id: string;
  readonly model: ThreeChecksModel;
}

/** The four checks of the complaint, to take in any order; pressed again, one is taken back. */
export function Checks({ id, model }: Props) {
  const system = useUnits();
  const { keys, taken, givens, toggle } = model;
  return (
    <fieldset class="checks">
      <legend>{words.checks}</legend>
      {keys.value.map((key, i) => (
        <button
          key={key}
          type="button"
          id={`${id}-${i}`}
          class="share-ask"
          aria-pressed={taken.value.includes(key)}
          onClick={() => toggle(key)}
        >
          <strong>{checkName(givens.complaint.value, key)}</strong>
          <span>{underCheck(model, key, system)}</span>
        </button>
      ))}
    </fieldset>
  );
}
