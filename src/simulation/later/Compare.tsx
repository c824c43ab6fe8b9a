import type { UnitSystem } from '../../ui/quantity.ts';
import { say, type Words } from '../../ui/words.ts';
import type { PredictOption } from '../sim-spec.ts';
import type { StageEvent, StageState } from '../stages.ts';
import { useArrival } from '../use-arrival.ts';
import { words } from './words.en.ts';

interface CompareProps {
  readonly sim: string;
  readonly options: readonly PredictOption[];
  /** The model's own sentence after the run, with its numbers. */
  readonly outcomeWords: Words;
  readonly state: StageState;
  readonly system: UnitSystem;
  readonly send: (event: StageEvent) => void;
}

/** Prediction and outcome side by side, then why. Right or wrong is never said without a reason. */
export function Compare({ sim, options, outcomeWords, state, system, send }: CompareProps) {
  const head = useArrival<HTMLHeadingElement>(true);
  const mine = options.find(({ id }) => id === state.prediction);
  const came = options.find(({ id }) => id === state.outcome);
  const right = mine !== undefined && mine === came;
  const others = options.filter((option) => option !== mine && option !== came);
  return (
    <div class="sim-stage">
      <h4 class="stage-head" ref={head} tabIndex={-1} aria-describedby={`${sim}-compare`}>
        {words.whatItDid}
      </h4>
      <dl class="compare" id={`${sim}-compare`}>
        <div>
          <dt>{words.youSaid[state.confidence ?? 'guessing']}</dt>
          <dd>{mine && say(mine.words, system)}</dd>
        </div>
        <div>
          <dt>{words.modelSays}</dt>
          <dd>{say(outcomeWords, system)}</dd>
        </div>
      </dl>
      {right ? (
        <p>
          <strong>{words.right}</strong> {say(mine.why, system)}
        </p>
      ) : (
        <>
          <p>
            <strong>{words.wrong}</strong> {mine && say(mine.why, system)}
          </p>
          <p>
            <strong>{words.instead}</strong> {came && say(came.why, system)}
          </p>
        </>
      )}
      {others.length > 0 && (
        <details class="more">
          <summary>{words.otherAnswers({ count: others.length })}</summary>
          <ul class="compare-others">
            {others.map(({ id, words: option, why }) => (
              <li key={id}>
                <strong>{say(option, system)}</strong> {say(why, system)}
              </li>
            ))}
          </ul>
        </details>
      )}
      <button type="button" class="act" onClick={() => send({ type: 'to-tasks' })}>
        {words.toTasks}
      </button>
    </div>
  );
}
