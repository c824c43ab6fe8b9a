import { useSignal, type Signal } from '@preact/signals';
import { asksCircuit, type Cause } from '../cases/judge.ts';
import { OUTSIDE, REPAIRS } from '../cases/lists.ts';
import { CIRCUITS, FAULT_IDS, type Circuit } from '../engine/index.ts';
import { words as car } from '../car/words.en.ts';
import { KnownAgain } from './Known.tsx';
import {
  causeField,
  circuitField,
  REPAIR_FIELD,
  type CaseModel,
  type Draft,
  type Wanting,
} from './model.ts';
import { words } from './words.en.ts';

/** The answer: what is wrong, where, and what is done about it. */
export function Conclude({ model }: { readonly model: CaseModel }) {
  const { conclude, repairs } = words;
  const wrong = useSignal<Wanting | null>(null);
  return (
    <form
      class="case-part case-conclude"
      id="case-conclude"
      onSubmit={(event) => {
        event.preventDefault();
        wrong.value = model.wanting();
        if (wrong.value === null) model.handIn();
        else focusOn(wrong.value.field);
      }}
    >
      <KnownAgain model={model} />
      <h3>{conclude.title}</h3>
      <p class="muted">{conclude.note}</p>
      <CauseField model={model} place={0} wrong={wrong} />
      <CauseField model={model} place={1} wrong={wrong} />
      <fieldset class="choice" id={REPAIR_FIELD}>
        <legend>{conclude.repairs}</legend>
        <Wrong wrong={wrong} field={REPAIR_FIELD} />
        <div class="choice-options">
          {REPAIRS.map((id) => (
            <label key={id} class="choice-option">
              <input
                type="checkbox"
                checked={model.repairs.value.includes(id)}
                onChange={(event) => {
                  wrong.value = null;
                  model.plan(id, event.currentTarget.checked);
                }}
              />
              <span class="choice-words">{repairs[id]}</span>
            </label>
          ))}
        </div>
      </fieldset>
      <button type="submit" class="act">
        {conclude.handIn}
      </button>
      <p class="muted">{conclude.once}</p>
    </form>
  );
}

/** The field that is wrong comes into sight, however far up it stands. */
function focusOn(field: string): void {
  const found = document.getElementById(field);
  const input = found?.querySelector('input') ?? found;
  input?.focus();
}

interface WrongProps {
  readonly wrong: Signal<Wanting | null>;
  readonly field: string;
}

/** What is wrong with a field, beside it. */
const Wrong = ({ wrong, field }: WrongProps) => (
  <p class="field-error" id={`${field}-wrong`} role="alert">
    {wrong.value?.field === field && words.conclude[wrong.value.what]}
  </p>
);

interface CauseProps {
  readonly model: CaseModel;
  readonly place: 0 | 1;
  readonly wrong: Signal<Wanting | null>;
}

function CauseField({ model, place, wrong }: CauseProps) {
  const { conclude, causes } = words;
  const draft = model.drafts[place].value;
  const id = causeField(place);
  const circuit = circuitField(place);
  const choose = (change: Partial<Draft>) => {
    wrong.value = null;
    model.choose(place, { ...draft, ...change });
  };
  const marked = (field: string) => ({
    'aria-invalid': wrong.value?.field === field,
    'aria-describedby': `${field}-wrong`,
  });
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
        onChange={(event) => choose({ cause: event.currentTarget.value as Cause | '' })}
        {...marked(id)}
      >
        <option value="">{place === 0 ? conclude.choose : conclude.nothingElse}</option>
        {place === 0 && <optgroup label={conclude.nothing}>{option('healthy')}</optgroup>}
        <optgroup label={conclude.listed}>{FAULT_IDS.map(option)}</optgroup>
        <optgroup label={conclude.unlisted}>{OUTSIDE.map(option)}</optgroup>
      </select>
      <Wrong wrong={wrong} field={id} />
      {draft.cause !== '' && asksCircuit(draft.cause) && (
        <>
          <label for={circuit}>{conclude.which}</label>
          <select
            id={circuit}
            value={draft.circuit}
            onChange={(event) => choose({ circuit: event.currentTarget.value as Circuit | '' })}
            {...marked(circuit)}
          >
            <option value="">{conclude.choose}</option>
            {CIRCUITS.map((one) => (
              <option key={one} value={one}>
                {car.clutches[one]}
              </option>
            ))}
          </select>
          <Wrong wrong={wrong} field={circuit} />
        </>
      )}
    </div>
  );
}
