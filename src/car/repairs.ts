/** The car of the course as it came in, and what it may be after somebody has repaired it. */
import type { FaultSet } from '../engine/index.ts';
import { makeCar, oneFault, REFERENCE_CRACK_MM, type Car } from './car.ts';

/** Where the customer's complaint comes [°C]: the fluid of a car driven hot in traffic. */
export const COMPLAINT_C = 95;
/** A seal that was put in with half of the crack left in it [mm]: five thousandths of an inch. */
export const HALF_CRACK_MM = 0.127;
const RINGS: FaultSet = oneFault('sealingRings', 20);

/** By what is wrong with it. */
export const REPAIRS = ['sound', 'half', 'rings', 'untouched'] as const;
export type Repair = (typeof REPAIRS)[number];

const makers: Readonly<Record<Repair, () => Car>> = {
  sound: () => makeCar({}),
  half: () => makeCar({ crackMm: HALF_CRACK_MM }),
  rings: () => makeCar({ faults: RINGS }),
  untouched: () => makeCar({ crackMm: REFERENCE_CRACK_MM }),
};
const made = new Map<Repair, Car>();
export function repaired(repair: Repair): Car {
  const car = made.get(repair) ?? makers[repair]();
  made.set(repair, car);
  return car;
}
