/** Which fault, and how bad: the same two controls wherever a simulation offers faults. */
import { words as names } from '../../car/words.en.ts';
import { FAULT_IDS, type FaultId } from '../../engine/index.ts';
import { percent } from '../../quantity/quantities.ts';
import { numberControl } from '../choices/number.ts';
import type { ChoiceSpec } from '../sim-spec.ts';
import { words } from './words.en.ts';

export const faultControl = <K extends string>(
  key: K,
  label = words.fault,
  offered: readonly FaultId[] = FAULT_IDS,
) =>
  ({
    kind: 'choice',
    key,
    label,
    options: offered.map((id) => ({ value: id, words: names.faults[id] })),
    as: 'select',
  }) satisfies ChoiceSpec<Record<K, string>>;

/** In percent of the way from healthy to worst. */
export const severityControl = <K extends string>(key: K, label = words.severity) =>
  numberControl(key, label, percent, { min: 0, max: 100, step: 1 }, (value) =>
    value === 0 ? words.healthy : value === 100 ? words.worst : words.between,
  );
