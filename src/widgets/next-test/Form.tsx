import { useSignal } from '@preact/signals';
import {
  CODES,
  isNumeric,
  OUTCOMES,
  TESTS,
  WARMTHS,
  type TakenReading,
  type Test,
} from '../../diagnosis/index.ts';
import { parseAmount } from '../../quantity/parse-amount.ts';
import { printer } from '../../quantity/print.ts';
import { speed } from '../../quantity/quantities.ts';
import type { UnitSystem } from '../../quantity/unit-system.ts';
import { useUnits } from '../../ui/use-units.ts';
import { measuredAs } from './amounts.ts';
import type { NextTestModel } from './model.ts';
import { words } from './words.en.ts';

const { form } = words;
const groups = [...new Set(TESTS.map(({ kind }) => words.groups[kind]))];

export function nameOf({ kind, at }: Test, system: UnitSystem): string {
  return words.tests[kind]({
    circuit: at.circuit === undefined ? '' : words.circuits[at.circuit],
    range: at.range === undefined ? '' : words.ranges[at.range],
    warm: at.warmth === undefined ? '' : words.warmths[at.warmth],
    speed: at.rpm === undefined ? '' : printer(system)(at.rpm, speed),
  });
}

interface FormProps {
  readonly model: NextTestModel;
}

/** One reading: which test, and what it showed. */
export function Form({ model }: FormProps) {
  const system = useUnits();
  const typed = useSignal('');
  const never = useSignal(false);
  const wrong = useSignal('');
  const codes = useSignal<readonly string[]>([]);
  const outcome = useSignal('');
  const test = model.test.value;
  const empty = () => {
    typed.value = '';
    never.value = false;
    wrong.value = '';
    codes.value = [];
    outcome.value = '';
  };
  const take = (value: TakenReading['value']) => {
    const { warmth } = test.at;
    model.add({
      test,
      value,
      ...(warmth !== undefined && { temperatureC: WARMTHS[warmth].at }),
    });
    empty();
  };
  const submit = () => {
    if (!isNumeric(test)) {
      if (test.kind === 'codes') take(codes.value);
      else take(outcome.value === '' ? OUTCOMES[test.kind][0] : outcome.value);
      return;
    }
    if (never.value) {
      take(null);
      return;
    }
    const { quantity, min, max } = measuredAs[test.kind];
    const read = parseAmount(typed.value, quantity, system, { min, max });
    if (read.ok) take(read.value);
    else wrong.value = read.sentence;
  };
  return (
    <form
      class="next-form"
      onSubmit={(event) => {
        event.preventDefault();
        submit();
      }}
    >
      <h3>{form.title}</h3>
      <label for="next-test-test">{form.test}</label>
      <select
        id="next-test-test"
        value={model.chosen.value}
        onChange={(event) => {
          model.chosen.value = event.currentTarget.value;
          empty();
        }}
      >
        {groups.map((group) => (
          <optgroup key={group} label={group}>
            {TESTS.filter(({ kind }) => words.groups[kind] === group).map((one) => (
              <option key={one.id} value={one.id}>
                {nameOf(one, system)}
              </option>
            ))}
          </optgroup>
        ))}
      </select>
      {isNumeric(test) && (
        <>
          <label for="next-test-value">{form.value}</label>
          <span class="next-amount">
            <input
              id="next-test-value"
              type="text"
              inputMode="decimal"
              autoComplete="off"
              value={typed.value}
              disabled={never.value}
              aria-invalid={wrong.value !== ''}
              aria-describedby="next-test-wrong"
              onInput={(event) => {
                typed.value = event.currentTarget.value;
                wrong.value = '';
              }}
            />
            <span class="unit">{measuredAs[test.kind].quantity[system].symbol}</span>
          </span>
          <p id="next-test-wrong" class="next-wrong" role="alert">
            {wrong.value}
          </p>
          {test.kind === 'stopTime' && (
            <label class="next-check">
              <input
                type="checkbox"
                checked={never.value}
                onChange={(event) => (never.value = event.currentTarget.checked)}
              />
              {form.neverStopped}
            </label>
          )}
        </>
      )}
      {!isNumeric(test) && test.kind === 'codes' && (
        <fieldset class="choice">
          <legend>{form.stored}</legend>
          <div class="choice-options">
            {CODES.map((code) => (
              <label key={code} class="choice-option">
                <input
                  type="checkbox"
                  checked={codes.value.includes(code)}
                  onChange={(event) => {
                    const others = codes.value.filter((one) => one !== code);
                    codes.value = event.currentTarget.checked ? [...others, code] : others;
                  }}
                />
                <span class="choice-words">{code}</span>
              </label>
            ))}
          </div>
        </fieldset>
      )}
      {!isNumeric(test) && test.kind !== 'codes' && (
        <fieldset class="choice">
          <legend>{form.seen}</legend>
          <div class="choice-options">
            {OUTCOMES[test.kind].map((one, i) => (
              <label key={one} class="choice-option">
                <input
                  type="radio"
                  name="next-test-outcome"
                  checked={outcome.value === one || (outcome.value === '' && i === 0)}
                  onChange={() => (outcome.value = one)}
                />
                <span class="choice-words">
                  {words.outcomes[test.kind as keyof typeof words.outcomes][one]}
                </span>
              </label>
            ))}
          </div>
        </fieldset>
      )}
      <button type="submit" class="act">
        {form.add}
      </button>
    </form>
  );
}
