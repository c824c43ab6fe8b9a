/** A hidden car for each number: the same number is the same car on every device, so that a class can talk about it. */
import { DAYS, type Day } from '../../cases/answers.ts';
import { CIRCUITS, FAULT_IDS, type Circuit, type FaultId } from '../../engine/index.ts';

/** Whatever nobody has chosen goes by the number of the car. */
export const DEALT = 'dealt';
export type Dealt = typeof DEALT;
export const CARS = { min: 1, max: 999, step: 1 } as const;
export const nextCar = (car: number): number => (car < CARS.max ? car + 1 : CARS.min);

interface HiddenCar {
  readonly fault: FaultId;
  readonly circuit: Circuit;
  readonly day: Day;
}

/** A step that has no divisor in common with fifteen comes to each fault once in fifteen cars; each round has its own order. */
const STEPS = [7, 11, 2, 13, 4, 8];

export function dealtAt(car: number): HiddenCar {
  const round = Math.floor((car - 1) / FAULT_IDS.length);
  const one = (list: readonly string[], place: number) => list[place % list.length];
  return {
    fault: one(FAULT_IDS, (STEPS[round % STEPS.length] ?? 1) * car + 4 * round) as FaultId,
    circuit: one(CIRCUITS, car + round) as Circuit,
    day: one(DAYS, car + 2 * round) as Day,
  };
}
