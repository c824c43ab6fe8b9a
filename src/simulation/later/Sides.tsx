import { textFor, type UnitSystem, type UnitText } from '../../quantity/unit-system.ts';
import type { PredictOption } from '../sim-spec.ts';
import type { StageState } from '../stages.ts';
import { words } from './words.en.ts';

interface SidesProps {
  readonly id?: string;
  readonly options: readonly PredictOption[];
  readonly state: StageState;
  /** The model's own sentence after the run, with its numbers. */
  readonly outcomeWords: UnitText;
  readonly system: UnitSystem;
}

/** What was predicted, and what came of it, side by side. */
export function Sides({ id, options, state, outcomeWords, system }: SidesProps) {
  const mine = options.find((option) => option.id === state.prediction);
  return (
    <dl class="compare" id={id}>
      <div>
        <dt>{words.youSaid[state.confidence ?? 'guessing']}</dt>
        <dd>{mine && textFor(mine.words, system)}</dd>
      </div>
      <div>
        <dt>{words.modelSays}</dt>
        <dd>{textFor(outcomeWords, system)}</dd>
      </div>
    </dl>
  );
}
