import { useSignal } from '@preact/signals';
import { useEffect, useLayoutEffect, useRef } from 'preact/hooks';
import type { ComponentChildren } from 'preact';
import {
  CODES,
  isNumeric,
  OUTCOMES,
  TESTS,
  WARMTHS,
  type OutcomeTest,
  type TakenReading,
} from '../diagnosis/index.ts';
import { format } from '../quantity/print.ts';
import { temperature } from '../quantity/quantities.ts';
import { useUnits } from '../ui/use-units.ts';
import { measuredAs } from './amounts.ts';
import { BeforeTest } from './BeforeTest.tsx';
import { NO_CODES, readDraft, type FormDraft, type FormModel, type Trouble } from './form-model.ts';
import type { PlannerModel } from './model.ts';
import { nameOf } from './reading-text.ts';
import { words } from './words.en.ts';

const { form: said } = words;
const groups = [...new Set(TESTS.map(({ kind }) => words.groups[kind]))];

interface FormProps {
  readonly model: Pick<PlannerModel, 'form' | 'grounds' | 'awaited'>;
  /** `typed`: the number as it stood in the field. */
  readonly add: (reading: TakenReading, typed: string) => void;
  readonly title?: string;
  readonly button?: string;
  /** Whatever else is asked of a reading. */
  readonly children?: ComponentChildren;
}

/** One reading: which test, and what it showed. */
export function Form({ model, add, title = said.title, button = said.add, children }: FormProps) {
  const system = useUnits();
  const { form } = model;
  const test = form.test.value;
  const { text, temperature: typed, never } = form.draft.value;
  const { warmth } = test.at;
  const takeNow = (draft: FormDraft) => {
    const read = readDraft(draft, system, model.grounds.peek());
    if (read.ok) add(read.reading, draft.text.trim());
    else form.trouble.value = read.trouble;
    // What was typed on while it waited stays.
    if (read.ok && form.draft.peek() === draft) form.empty();
  };
  /** What was pressed before it can be said whether its unit is likely. */
  const waiting = useSignal<FormDraft | null>(null);
  /** It waits no longer: whoever goes on, or leaves, has meant what was pressed. */
  const settle = () => {
    const draft = waiting.peek();
    if (draft === null) return;
    waiting.value = null;
    takeNow(draft);
  };
  const { awaited } = model;
  const take = () => {
    const draft = form.draft.peek();
    // Pressed twice.
    if (waiting.peek() === draft) return;
    settle();
    if (awaited.peek() && isNumeric(form.test.peek())) waiting.value = draft;
    else takeNow(draft);
  };
  useEffect(() => {
    if (!awaited.value) settle();
  }, [awaited.value]);
  const onLeaving = useRef(settle);
  onLeaving.current = settle;
  useEffect(() => {
    const leave = () => onLeaving.current();
    addEventListener('pagehide', leave);
    return () => {
      removeEventListener('pagehide', leave);
      leave();
    };
  }, []);
  const top = useRef<HTMLHeadingElement>(null);
  const { value: answering } = form.answering;
  useLayoutEffect(() => {
    if (answering === 0) return;
    // The number, that it did not stop, or the first of what may be seen; with the name of the test, which stands over it.
    document
      .querySelector<HTMLElement>(
        '.next-form :is(#next-test-value, .next-check input, fieldset input):enabled',
      )
      ?.focus({ preventScroll: true });
    top.current?.scrollIntoView({ block: 'nearest' });
  }, [answering]);
  return (
    <form
      class="next-form"
      // Pressed before the script has come it stays where it is, and keeps what was typed.
      method="dialog"
      onInputCapture={settle}
      onChangeCapture={settle}
      onSubmit={(event) => {
        event.preventDefault();
        take();
      }}
    >
      <h3 ref={top}>{title}</h3>
      <label for="next-test-test">{said.test}</label>
      <select
        id="next-test-test"
        value={test.id}
        onChange={(event) => form.choose(event.currentTarget.value, system)}
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
      {/* A narrow select cuts its last word, which tells hot from cold; who hears it hears it whole. */}
      <p class="next-chosen" aria-hidden="true">
        {nameOf(test, system)}
      </p>
      <div aria-live="polite">
        <BeforeTest test={test} />
      </div>
      {isNumeric(test) ? (
        <>
          <Amount
            id="next-test-value"
            label={said.value}
            symbol={measuredAs[test.kind].quantity[system].symbol}
            field="text"
            typed={text}
            disabled={never}
            form={form}
            take={take}
          />
          {test.kind === 'stopTime' && (
            <label class="next-check">
              <input
                type="checkbox"
                checked={never}
                onChange={(event) => form.set({ never: event.currentTarget.checked })}
              />
              {said.neverStopped}
            </label>
          )}
          {warmth !== undefined && (
            <Amount
              id="next-test-temperature"
              label={said.temperature}
              symbol={temperature[system].symbol}
              note={said.usual({ temperature: format(WARMTHS[warmth].at, temperature, system) })}
              field="temperature"
              typed={typed}
              form={form}
              take={take}
            />
          )}
        </>
      ) : (
        <Seen test={test} form={form} />
      )}
      {children}
      <button type="submit" class="act">
        {button}
      </button>
    </form>
  );
}

interface AmountProps {
  readonly id: string;
  readonly label: string;
  readonly symbol: string;
  readonly note?: string;
  readonly field: Trouble['field'];
  readonly typed: string;
  readonly disabled?: boolean;
  readonly form: FormModel;
  readonly take: () => void;
}

/** A typed amount, with what is wrong with it or asked about it below. */
function Amount({ id, label, symbol, note, field, typed, disabled, form, take }: AmountProps) {
  const input = useRef<HTMLInputElement>(null);
  const trouble = form.trouble.value?.field === field ? form.trouble.value : null;
  useEffect(() => {
    if (trouble === null || trouble.aside === true) return;
    input.current?.focus();
    // It may have had the keys already; what is said of it stands under it.
    input.current?.scrollIntoView({ block: 'nearest' });
  }, [trouble]);
  return (
    <>
      <label for={id}>{label}</label>
      <span class="next-amount">
        <input
          ref={input}
          id={id}
          type="text"
          inputMode="decimal"
          autoComplete="off"
          value={typed}
          disabled={disabled}
          aria-invalid={trouble !== null}
          aria-describedby={`${id}-wrong${note === undefined ? '' : ` ${id}-note`}`}
          onInput={(event) => form.set({ [field]: event.currentTarget.value })}
        />
        <span class="unit">{symbol}</span>
      </span>
      {note !== undefined && (
        <p id={`${id}-note`} class="next-note muted">
          {note}
        </p>
      )}
      <p id={`${id}-wrong`} class="next-wrong" role="alert">
        {trouble?.sentence}
      </p>
      {trouble?.offers && (
        <p class="next-offers">
          {trouble.offers.map((meant) => (
            <button
              key={meant}
              type="button"
              class="quiet"
              onClick={() => {
                form.set({ [field]: meant });
                take();
              }}
            >
              {meant}
            </button>
          ))}
        </p>
      )}
    </>
  );
}

/** What was seen or stored. Nothing is chosen until somebody has looked. */
function Seen({ test, form }: { readonly test: OutcomeTest; readonly form: FormModel }) {
  const { codes, outcome } = form.draft.value;
  const { kind } = test;
  const trouble = form.trouble.value;
  const wrong = trouble?.field === 'outcome' ? trouble : null;
  const set = useRef<HTMLFieldSetElement>(null);
  useEffect(() => {
    if (wrong !== null) set.current?.querySelector('input')?.focus();
  }, [wrong]);
  const options =
    kind === 'codes'
      ? [...CODES.map((code) => ({ id: code, label: code })), { id: NO_CODES, label: said.none }]
      : OUTCOMES[kind].map((id) => ({ id, label: words.outcomes[kind][id] }));
  const stored = (id: string, is: boolean): Partial<FormDraft> => {
    const others = codes.filter((one) => one !== id);
    if (id === NO_CODES) return { codes: [], outcome: is ? id : '' };
    return { codes: is ? [...others, id] : others, outcome: '' };
  };
  return (
    <fieldset ref={set} class="choice" aria-describedby="next-test-seen-wrong">
      <legend>{kind === 'codes' ? said.stored : said.seen}</legend>
      <div class="choice-options">
        {options.map(({ id, label }) => (
          <label key={id} class="choice-option">
            {kind === 'codes' ? (
              <input
                type="checkbox"
                checked={codes.includes(id) || outcome === id}
                onChange={(event) => form.set(stored(id, event.currentTarget.checked))}
              />
            ) : (
              <input
                type="radio"
                name="next-test-outcome"
                checked={outcome === id}
                onChange={() => form.set({ outcome: id })}
              />
            )}
            <span class="choice-words">{label}</span>
          </label>
        ))}
      </div>
      <p id="next-test-seen-wrong" class="next-wrong" role="alert">
        {wrong?.sentence}
      </p>
    </fieldset>
  );
}
