/**
 * What was last predicted in each simulation that has been run here. The log of answers has it too, and all before it; this is what a
 * page reads at once when somebody comes back.
 */
import { keeper, type Area, type Keeper } from './envelope.ts';
import { isRecord, type Form } from './versioned.ts';

export interface Predicted {
  /** Ids; the simulation says whether it still has them. */
  readonly option: string;
  readonly confidence: string;
}
export interface Predictions {
  readonly bySim: Readonly<Record<string, Predicted>>;
}

const isPredicted = (value: unknown): value is Predicted =>
  isRecord(value) && typeof value['option'] === 'string' && typeof value['confidence'] === 'string';

function parse(data: unknown): Predictions | undefined {
  const bySim = isRecord(data) ? data['bySim'] : undefined;
  if (!isRecord(bySim)) return undefined;
  const all = Object.entries(bySim);
  const good = all.filter((one): one is [string, Predicted] => isPredicted(one[1]));
  return good.length === all.length ? { bySim: Object.fromEntries(good) } : undefined;
}

export const predictionsForm: Form<Predictions> = { name: 'predicted', version: 1, parse };

export const predictionsKeeper = (area?: Area): Keeper<Predictions> =>
  keeper({ ...predictionsForm, empty: { bySim: {} }, area });
