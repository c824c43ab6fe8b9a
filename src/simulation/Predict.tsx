import { useEffect, useRef } from 'preact/hooks';
import { type UnitSystem, type UnitText, textFor } from '../quantity/unit-system.ts';
import type { PredictOption } from './sim-spec.ts';
import { CONFIDENCES, whyNotYet, type StageEvent, type StageState } from './stages.ts';
import { useArrival } from './use-arrival.ts';
import { words } from './words.en.ts';

interface PredictProps {
  readonly sim: string;
  readonly question: UnitText;
  readonly options: readonly PredictOption[];
  readonly runLabel: string;
  readonly state: StageState;
  readonly system: UnitSystem;
  /** False while nobody has come back to it: the page has only been opened. */
  readonly byHand: boolean;
  readonly send: (event: StageEvent) => void;
  readonly onRun: () => void;
}

/** The question before the run. Both answers are frozen while it runs; the button says why it waits. */
export function Predict({
  sim,
  question,
  options,
  runLabel,
  state,
  system,
  byHand,
  send,
  onRun,
}: PredictProps) {
  const running = state.stage === 'running';
  const reason = whyNotYet(state);
  const form = useRef<HTMLFormElement>(null);
  const head = useArrival<HTMLLegendElement>(byHand);
  useEffect(() => {
    // Chosen before this script ran: it counts.
    const chosen = (name: string): string | undefined =>
      form.current?.querySelector<HTMLInputElement>(`input[name="${sim}-${name}"]:checked`)?.value;
    const option = chosen('prediction');
    const confidence = CONFIDENCES.find((one) => one === chosen('confidence'));
    if (option !== undefined) send({ type: 'predict', option });
    if (confidence !== undefined) send({ type: 'rate', confidence });
  }, []);
  return (
    <form
      ref={form}
      class="sim-stage"
      onSubmit={(event) => {
        event.preventDefault();
        if (reason === null && !running) onRun();
      }}
    >
      <fieldset class="choice choice-stack" disabled={running}>
        <legend ref={head} tabIndex={-1}>
          {textFor(question, system)}
        </legend>
        <div class="choice-options">
          {options.map(({ id, words: option }) => (
            <label key={id} class="choice-option">
              <input
                type="radio"
                name={`${sim}-prediction`}
                value={id}
                checked={state.prediction === id}
                onChange={() => send({ type: 'predict', option: id })}
              />
              <span class="choice-words">{textFor(option, system)}</span>
            </label>
          ))}
        </div>
      </fieldset>
      <fieldset class="choice choice-row" disabled={running}>
        <legend>{words.howSure}</legend>
        <div class="choice-options">
          {CONFIDENCES.map((value) => (
            <label key={value} class="choice-option">
              <input
                type="radio"
                name={`${sim}-confidence`}
                value={value}
                checked={state.confidence === value}
                onChange={() => send({ type: 'rate', confidence: value })}
              />
              <span class="choice-words">{words.confidence[value]}</span>
            </label>
          ))}
        </div>
      </fieldset>
      <div class="sim-go">
        <button
          type="submit"
          class="act"
          disabled={reason !== null}
          // Not `disabled` while it runs: that would throw the focus to the top of the page.
          aria-disabled={running || undefined}
          aria-describedby={`${sim}-why`}
        >
          {running ? words.running : runLabel}
        </button>
        <span id={`${sim}-why`} class="sim-why">
          {running ? words.watch : reason && words.notYet[reason]}
        </span>
      </div>
    </form>
  );
}
