/** What a clutch is asked to do, as the choice offers it; links carry these two names. */
import type { Demand } from '../../car/need.ts';

/** Standing in gear, and a firm take-off: src/car/need.ts says what each takes. */
export const DEMAND_OF = { idle: 'standing', 'take-off': 'firm' } as const satisfies Record<
  string,
  Demand
>;
export type Required = keyof typeof DEMAND_OF;
