import { predictionsKeeper } from '../../storage/predictions.ts';
import type { Givens, SimModel, SimSpec } from '../sim-spec.ts';
import { CONFIDENCES, type StageState } from '../stages.ts';

/** What was last predicted here in another visit and run; null where nothing was, or the question has other answers now. */
export function readPredicted<G extends Givens, M extends SimModel<G>>({
  id,
  predict,
}: Pick<SimSpec<G, M>, 'id' | 'predict'>): Pick<StageState, 'prediction' | 'confidence'> | null {
  const kept = predictionsKeeper().read().data.bySim[id];
  const prediction = predict.options.find((option) => option.id === kept?.option)?.id;
  const confidence = CONFIDENCES.find((one) => one === kept?.confidence);
  return prediction === undefined || confidence === undefined ? null : { prediction, confidence };
}
