import type { VoteScene as Scene } from '../meeting/meeting.ts';
import type { ComponentChildren } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { allHands, barOf, handsTyped, MOST_HANDS, type Hands } from '../meeting/tally.ts';
import { explained, isAnswered, stepOfWhy, type Step } from '../meeting/steps.ts';
import { ChartPicture } from '../widgets/retrieval/ChartPicture.tsx';
import { WordsText } from '../widgets/retrieval/WordsText.tsx';
import type { StageModel } from './model.ts';
import { words } from './words.en.ts';

interface VoteSceneProps {
  readonly model: StageModel;
  readonly scene: Scene;
  readonly step: Step;
}

/** Hands first, then the bars, then which is right, and of each option why. */
export function VoteScene({ model, scene, step }: VoteSceneProps) {
  const hands = model.handsHere.value;
  const all = allHands(hands);
  const answered = isAnswered(step);
  const told = explained(scene, model.place.value.step);
  const options = useRef<HTMLOListElement>(null);
  // One at a time: on a small screen it may lie under the foot of the wall.
  const [only] = told.length === 1 ? told : [];
  useEffect(() => {
    if (only !== undefined) options.current?.children[only]?.scrollIntoView({ block: 'nearest' });
  }, [only]);
  return (
    <div class={scene.chart ? 'stage-vote with-chart' : 'stage-vote'}>
      <p class="stage-stem">
        <WordsText words={scene.stem} />
      </p>
      {scene.chart && <ChartPicture chart={scene.chart} asTable={words.vote.asTable} />}
      <ol class="stage-options" ref={options}>
        {scene.options.map((option, i) => (
          <li key={i} class={answered && option.correct ? 'stage-right' : undefined}>
            <span class="stage-number" aria-hidden="true">
              {i + 1}
            </span>
            <div class="stage-option">
              <span>
                {answered && option.correct && <strong>{words.vote.right}. </strong>}
                <WordsText words={option.words} />
              </span>
              {step !== 'ask' && (
                <Bar hands={hands} option={i}>
                  {answered && stepOfWhy(scene, i) !== undefined && (
                    <button
                      type="button"
                      class="stage-button"
                      aria-pressed={told.includes(i)}
                      aria-label={words.vote.whyOf(String(i + 1))}
                      onClick={() => model.run({ do: 'hand', option: i, by: 1 })}
                    >
                      {words.vote.why}
                    </button>
                  )}
                </Bar>
              )}
              {told.includes(i) && option.why.length > 0 && (
                <span class="stage-why">
                  <WordsText words={option.why} />
                </span>
              )}
            </div>
            {step === 'ask' && <Counter model={model} hands={hands} option={i} />}
          </li>
        ))}
      </ol>
      <p class="stage-quiet" role="status">
        {step === 'ask' && (
          <>
            {words.vote.how}{' '}
            <span class="stage-hint">{words.vote.keys(String(scene.options.length))} </span>
          </>
        )}
        {all === 0 && step !== 'ask' ? words.vote.none : all > 0 && words.vote.total(String(all))}
      </p>
    </div>
  );
}

interface BarProps {
  readonly hands: Hands;
  readonly option: number;
  /** What stands beside the count. */
  readonly children: ComponentChildren;
}

function Bar({ hands, option, children }: BarProps) {
  return (
    <span class="stage-bar">
      <svg viewBox="0 0 100 10" preserveAspectRatio="none" aria-hidden="true">
        <rect width={100 * barOf(hands, option)} height="10" />
      </svg>
      <strong class="number">{hands[option]}</strong>
      {children}
    </span>
  );
}

interface CounterProps {
  readonly model: StageModel;
  readonly hands: Hands;
  readonly option: number;
}

function Counter({ model, hands, option }: CounterProps) {
  const name = String(option + 1);
  const now = hands[option] ?? 0;
  const wrongId = `stage-hands-${name}`;
  // As it was typed, until it is left or hands come in another way.
  const [typed, setTyped] = useState<string | null>(null);
  useEffect(() => setTyped(null), [now]);
  const wrong = typed !== null && handsTyped(typed) === undefined;
  const press = (by: 1 | -1): void => {
    setTyped(null);
    model.run({ do: 'hand', option, by });
  };
  return (
    <>
      <span class="stage-counter">
        <button type="button" aria-label={words.vote.take(name)} onClick={() => press(-1)}>
          −
        </button>
        <input
          type="text"
          inputMode="numeric"
          aria-label={words.vote.hands(name)}
          aria-invalid={wrong}
          aria-describedby={wrongId}
          value={typed ?? now}
          // What is typed takes the place of what stood there.
          onFocus={({ currentTarget }) => currentTarget.select()}
          onClick={({ currentTarget }) => currentTarget.select()}
          onInput={({ currentTarget }) => {
            const read = handsTyped(currentTarget.value);
            setTyped(currentTarget.value);
            if (read !== undefined) model.typeHands(option, read);
          }}
          onBlur={() => {
            if (!wrong) setTyped(null);
          }}
          onKeyDown={({ key, currentTarget }) => {
            // Typed and done: the keys are the stage's again.
            if (key === 'Enter') currentTarget.blur();
          }}
        />
        <button type="button" aria-label={words.vote.add(name)} onClick={() => press(1)}>
          +
        </button>
      </span>
      <span id={wrongId} class="field-error" role="alert" hidden={!wrong}>
        {wrong && words.vote.wrong(String(MOST_HANDS))}
      </span>
    </>
  );
}
