import { useLayoutEffect } from 'preact/hooks';
import { NotKept } from '../../ui/NotKept.tsx';
import { textFor, type UnitSystem, type UnitText } from '../../quantity/unit-system.ts';
import type { PredictOption } from '../sim-spec.ts';
import type { StageEvent, StageState } from '../stages.ts';
import { useArrival } from '../use-arrival.ts';
import { keepPrediction } from './keep-prediction.ts';
import { Sides } from './Sides.tsx';
import { words } from './words.en.ts';

interface CompareProps {
  readonly sim: string;
  readonly options: readonly PredictOption[];
  /** How many tasks there are to go on to. */
  readonly tasks: number;
  /** The model's own sentence after the run, with its numbers. */
  readonly outcomeWords: UnitText;
  readonly state: StageState;
  readonly system: UnitSystem;
  /** False where a reload or Back led here. */
  readonly byHand: boolean;
  readonly send: (event: StageEvent) => void;
}

/** Prediction and outcome side by side, then why. Right or wrong is never said without a reason. */
export function Compare(props: CompareProps) {
  const { sim, options, tasks, outcomeWords, state, system, byHand, send } = props;
  const head = useArrival<HTMLHeadingElement>(byHand);
  const mine = options.find(({ id }) => id === state.prediction);
  const came = options.find(({ id }) => id === state.outcome);
  const right = mine !== undefined && mine === came;
  // This stage is reached by a finished run alone, so that each run is kept once; before it is painted, or who goes on at once takes it away.
  useLayoutEffect(() => {
    if (byHand) keepPrediction(sim, state);
  }, []);
  const others = options.filter((option) => option !== mine && option !== came);
  return (
    <div class="sim-stage">
      <h4 class="stage-head" ref={head} tabIndex={-1} aria-describedby={`${sim}-compare`}>
        {words.whatItDid}
      </h4>
      <Sides id={`${sim}-compare`} {...{ options, state, outcomeWords, system }} />
      {right ? (
        <p>
          <strong>{words.right}</strong> {textFor(mine.why, system)}
        </p>
      ) : (
        <>
          <p>
            <strong>{words.wrong}</strong> {mine && textFor(mine.why, system)}
          </p>
          <p>
            <strong>{words.instead}</strong> {came && textFor(came.why, system)}
          </p>
        </>
      )}
      {others.length > 0 && (
        <details class="more">
          <summary>{words.otherAnswers({ count: others.length })}</summary>
          <ul class="compare-others">
            {others.map(({ id, words: option, why }) => (
              <li key={id}>
                <strong>{textFor(option, system)}</strong> {textFor(why, system)}
              </li>
            ))}
          </ul>
        </details>
      )}
      <button type="button" class="act" onClick={() => send({ type: 'to-tasks', of: tasks })}>
        {words.toTasks}
      </button>
      <NotKept place={sim} />
    </div>
  );
}
