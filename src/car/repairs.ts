import { makeCar, oneFault, REFERENCE_CRACK_MM, type Car } from './car.ts';
import type { Repair } from './repair-names.ts';

/** A seal that was put in with half of the crack left in it [mm]: five thousandths of an inch. */
const HALF_CRACK_MM = 0.127;
/** How worn the rings are that were left in [%]. */
const WORN_RINGS = 20;

const makers: Readonly<Record<Repair, () => Car>> = {
  sound: () => makeCar({}),
  half: () => makeCar({ crackMm: HALF_CRACK_MM }),
  rings: () => makeCar({ faults: oneFault('sealingRings', WORN_RINGS) }),
  untouched: () => makeCar({ crackMm: REFERENCE_CRACK_MM }),
};
const made = new Map<Repair, Car>();

/** The car after such a repair. */
export function repaired(repair: Repair): Car {
  const car = made.get(repair) ?? makers[repair]();
  made.set(repair, car);
  return car;
}
