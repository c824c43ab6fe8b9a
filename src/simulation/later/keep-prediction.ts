import { keepAt } from '../../ui/keep-at.ts';
import type { StageState } from '../stages.ts';

type Run = Pick<StageState, 'prediction' | 'confidence' | 'outcome'>;

/** A prediction that has been run goes into the log of answers. */
export function keepPrediction(sim: string, { prediction, confidence, outcome }: Run): void {
  if (prediction === null || confidence === null) return;
  const right = prediction === outcome;
  void keepAt(sim, { kind: 'prediction', sim, option: prediction, confidence, right });
}
