/** What a clutch is asked to do, as the choice offers it; links carry these names. */
import { needs, type Demand, type Need } from '../../car/need.ts';
import { printer } from '../../quantity/print.ts';
import { speed } from '../../quantity/quantities.ts';
import type { ChoiceSpec } from '../sim-spec.ts';
import { words } from './words.en.ts';

/** Standing in gear, a gentle and a firm take-off: src/car/need.ts says what each takes. */
export const DEMAND_OF = {
  idle: 'standing',
  gentle: 'gentle',
  'take-off': 'firm',
} as const satisfies Record<string, Demand>;
export type Required = keyof typeof DEMAND_OF;

/** What each thing asked of the clutch takes. */
export const needed: Readonly<Record<Required, Need>> = {
  idle: needs[DEMAND_OF.idle],
  gentle: needs[DEMAND_OF.gentle],
  'take-off': needs[DEMAND_OF['take-off']],
};

export const requiredControl = <K extends string>(key: K, label = words.label) =>
  ({
    kind: 'choice',
    key,
    label,
    options: (['idle', 'gentle', 'take-off'] as const).map((value) => ({
      value,
      words: words.options[value].words,
      note: (system) =>
        words.options[value].note({ speed: printer(system)(needed[value].engineRpm, speed) }),
    })),
  }) satisfies ChoiceSpec<Record<K, string>>;
