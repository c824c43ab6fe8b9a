import { predictionsKeeper } from '../../storage/predictions.ts';
import { keepAt } from '../../ui/keep-at.ts';
import type { StageState } from '../stages.ts';

type Run = Pick<StageState, 'prediction' | 'confidence' | 'outcome'>;

/** A prediction that has been run goes into the log of answers, and to where the next visit finds it at once. */
export function keepPrediction(sim: string, { prediction, confidence, outcome }: Run): void {
  if (prediction === null || confidence === null) return;
  const right = prediction === outcome;
  // If this one is refused the log is too, and says so.
  predictionsKeeper().update(({ bySim }) => ({
    bySim: { ...bySim, [sim]: { option: prediction, confidence } },
  }));
  void keepAt(sim, { kind: 'prediction', sim, option: prediction, confidence, right });
}
