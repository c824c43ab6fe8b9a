import { useSignal } from '@preact/signals';
import { asksCircuit, type Cause } from '../cases/judge.ts';
import { OUTSIDE, REPAIRS } from '../cases/lists.ts';
import { CIRCUITS, FAULT_IDS, type Circuit } from '../engine/index.ts';
import { words as car } from '../car/words.en.ts';
import type { CaseModel } from './model.ts';
import { words } from './words.en.ts';

/** The answer: what is wrong, where, and what is done about it. */
export function Conclude({ model }: { readonly model: CaseModel }) {
  const { conclude, repairs } = words;
  const wrong = useSignal('');
  return (
    <form
      class="case-part case-conclude"
      id="case-conclude"
      onSubmit={(event) => {
        event.preventDefault();
        const wants = model.wanting();
        wrong.value = wants === null ? '' : conclude[wants];
        if (wants === null) model.handIn();
      }}
    >
      <h3>{conclude.title}</h3>
      <p class="muted">{conclude.note}</p>
      <CauseField model={model} place={0} />
      <CauseField model={model} place={1} />
      <fieldset class="choice">
        <legend>{conclude.repairs}</legend>
        <div class="choice-options">
          {REPAIRS.map((id) => (
            <label key={id} class="choice-option">
              <input
                type="checkbox"
                checked={model.repairs.value.includes(id)}
                onChange={(event) => model.plan(id, event.currentTarget.checked)}
              />
              <span class="choice-words">{repairs[id]}</span>
            </label>
          ))}
        </div>
      </fieldset>
      <p class="field-error" role="alert">
        {wrong.value}
      </p>
      <button type="submit" class="act">
        {conclude.handIn}
      </button>
      <p class="muted">{conclude.once}</p>
    </form>
  );
}

function CauseField({ model, place }: { readonly model: CaseModel; readonly place: 0 | 1 }) {
  const { conclude, causes } = words;
  const draft = model.drafts[place].value;
  const id = `case-cause-${place}`;
  const option = (cause: Cause) => (
    <option key={cause} value={cause}>
      {causes[cause]}
    </option>
  );
  return (
    <div class="choice choice-select">
      <label for={id}>{place === 0 ? conclude.first : conclude.second}</label>
      <select
        id={id}
        value={draft.cause}
        onChange={(event) =>
          model.choose(place, {
            cause: event.currentTarget.value as Cause | '',
            circuit: draft.circuit,
          })
        }
      >
        <option value="">{place === 0 ? conclude.choose : conclude.nothingElse}</option>
        {place === 0 && <optgroup label={conclude.nothing}>{option('healthy')}</optgroup>}
        <optgroup label={conclude.listed}>{FAULT_IDS.map(option)}</optgroup>
        <optgroup label={conclude.unlisted}>{OUTSIDE.map(option)}</optgroup>
      </select>
      {draft.cause !== '' && asksCircuit(draft.cause) && (
        <>
          <label for={`${id}-circuit`}>{conclude.which}</label>
          <select
            id={`${id}-circuit`}
            value={draft.circuit}
            onChange={(event) =>
              model.choose(place, {
                cause: draft.cause,
                circuit: event.currentTarget.value as Circuit | '',
              })
            }
          >
            <option value="">{conclude.choose}</option>
            {CIRCUITS.map((circuit) => (
              <option key={circuit} value={circuit}>
                {car.clutches[circuit]}
              </option>
            ))}
          </select>
        </>
      )}
    </div>
  );
}
