import { STEPS } from '../../car/back-together.ts';
import { HALVES, type Half as HalfName, type JobCardModel } from './model.ts';
import { printCount } from './print.ts';
import { words } from './words.en.ts';

interface Props {
  readonly id: string;
  readonly half: HalfName;
  readonly model: JobCardModel;
}

/** Half of the card: a line is signed by pressing it, and taken back by pressing it again. */
export function Half({ id, half, model }: Props) {
  const done = model.done.value;
  return (
    <fieldset class="job-half">
      <legend>{words.halves[half]}</legend>
      {HALVES[half].map((step) => (
        <button
          key={step}
          type="button"
          id={`${id}-${step}`}
          class="share-ask"
          aria-pressed={done.includes(step)}
          onClick={() => model.press(step)}
        >
          <strong>
            {words.line({ number: printCount(STEPS.indexOf(step) + 1), step: words.steps[step] })}
          </strong>
          <span>{words.proofs[step]}</span>
        </button>
      ))}
    </fieldset>
  );
}
