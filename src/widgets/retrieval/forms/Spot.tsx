import { START, type AskedSpot } from '../../../quiz/asked.ts';
import type { FormProps } from '../form-props.ts';
import { WordsText } from '../WordsText.tsx';
import { words } from './words.en.ts';

/** The steps of a job: one points at the one that is wrong, or at the place where one is missing. */
export function Spot({ model, asked, id }: FormProps<AskedSpot>) {
  const { steps, missing } = asked;
  const gap = (after: string, place: number) => (
    <li class="form-gap">
      <label class="choice-option">
        <Point {...{ model, id }} step={after} />
        <span>{place === 0 ? words.atStart : words.after(String(place))}</span>
      </label>
    </li>
  );
  return (
    <fieldset class="choice form-spot" aria-describedby={`${id}-fault-answer`}>
      <legend>{missing === undefined ? words.spotStep : words.spotGap}</legend>
      <ol>
        {missing !== undefined && gap(START, 0)}
        {steps.map((step, place) => {
          const text = (
            <>
              <span class="form-place">{place + 1}</span>
              <span>
                <WordsText words={step.words} />
              </span>
            </>
          );
          return missing === undefined ? (
            <li key={step.id}>
              <label class="choice-option">
                <Point {...{ model, id }} step={step.id} />
                {text}
              </label>
            </li>
          ) : (
            [
              <li key={step.id} class="form-line">
                {text}
              </li>,
              gap(step.id, place + 1),
            ]
          );
        })}
      </ol>
    </fieldset>
  );
}

function Point({ model, id, step }: Pick<FormProps, 'model' | 'id'> & { readonly step: string }) {
  return (
    <input
      type="radio"
      name={`${id}-spot`}
      checked={model.ticked.value.includes(step)}
      onChange={() => model.give([step])}
    />
  );
}
