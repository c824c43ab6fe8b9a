/** The temperatures a simulation offers, and the two that the course sets against each other. */
import { COLD_C, HOT_C } from '../../car/cold-and-hot.ts';
import { FLUID_TEMP_C } from '../../engine/index.ts';
import { printer } from '../../quantity/print.ts';
import { temperature } from '../../quantity/quantities.ts';
import type { UnitSystem } from '../../quantity/unit-system.ts';
import { words } from './words.en.ts';

/** All that the fluid law is good for [°C]. */
export const TEMP = { min: FLUID_TEMP_C.min, max: FLUID_TEMP_C.max, step: 1 } as const;
export { COLD_C as COOL_C, HOT_C };

/** Every two degrees: finer than a phone can show, and -30, 20 and 100 are among them. */
export const TEMPS: readonly number[] = Array.from(
  { length: (TEMP.max - TEMP.min) / 2 + 1 },
  (_, i) => TEMP.min + 2 * i,
);

/** The axis of a chart over all of them. */
export const TEMP_AXIS = {
  label: words.temperatureAxis,
  quantity: temperature,
  min: TEMP.min,
  max: TEMP.max,
};

/** The two of them as printed. */
export function coolAndHot(system: UnitSystem) {
  const print = printer(system);
  return { cool: print(COLD_C, temperature), hot: print(HOT_C, temperature) };
}
