import { computed } from '@preact/signals';
import { makeCar, oneFault, soundCar, type Car } from '../../car/car.ts';
import { HOT_C } from '../../car/cold-and-hot.ts';
import { clutchKpa } from '../../car/readings.ts';
import { airHeld, type AirTestTarget, type Circuit, type FaultId } from '../../engine/index.ts';
import { TEMP } from '../../simulation/choices/temperatures.ts';
import { givensFrom } from '../../simulation/givens.ts';
import type { SimModel } from '../../simulation/sim-spec.ts';

/** What lies between valve and piston, and can be at fault there. */
export const PLACES = [
  'sealingRings',
  'pistonSeal',
  'hardLip',
  'openPort',
  'transferSeal',
  'clutchControl',
  'feedRestriction',
] as const satisfies readonly FaultId[];

export type HeatAndAirGivens = {
  fault: FaultId;
  /** [% of the way from healthy to worst] */
  severity: number;
  /** Fluid, in the car [°C] */
  temp: number;
  /** The circuit that is read and put under air; a fault of one circuit sits in it. */
  circuit: Circuit;
};

const START: HeatAndAirGivens = {
  fault: 'sealingRings',
  severity: 20,
  temp: 20,
  circuit: 'forward',
};

/** Sixty points [°C]: under three degrees apart. */
export const SWEEP_TEMPS: readonly number[] = Array.from(
  { length: 60 },
  (_, i) => TEMP.min + (i * (TEMP.max - TEMP.min)) / 59,
);

/** What the tester's gauge holds of its supply [%]. */
const held = ({ plant }: Car, target: AirTestTarget): number => 100 * airHeld(plant, target);

export function makeModel() {
  const { givens, apply, reset } = givensFrom(START);
  const car = computed(() =>
    makeCar({
      faults: oneFault(givens.fault.value, givens.severity.value, givens.circuit.value),
    }),
  );
  /** Settled pressure of the circuit's clutch at idle [kPa]. */
  const idle = (of: Car, tempC: number): number =>
    clutchKpa(of, { tempC, circuit: givens.circuit.value });
  const sweep = (of: Car): readonly number[] => SWEEP_TEMPS.map((tempC) => idle(of, tempC));
  /** Another clutch behind the transfer seal, or that goes past it: which of the two, says the pair. */
  const other = computed<Circuit>(() =>
    givens.circuit.value === 'forward' ? 'reverse' : 'forward',
  );
  return {
    givens,
    apply,
    reset,
    car,
    here: computed(() => sweep(car.value)),
    healthy: computed(() => sweep(soundCar)),
    /** At the temperature set [kPa]. */
    now: computed(() => idle(car.value, givens.temp.value)),
    healthyNow: computed(() => idle(soundCar, givens.temp.value)),
    /** At any temperature [kPa], as a task asks for it. */
    at: (tempC: number) => ({ here: idle(car.value, tempC), healthy: idle(soundCar, tempC) }),
    /** A second clutch, hot at idle, here and healthy [kPa]. */
    other,
    otherHot: computed(() => {
      const asked = { tempC: HOT_C, circuit: other.value };
      return { here: clutchKpa(car.value, asked), healthy: clutchKpa(soundCar, asked) };
    }),
    /** Cold on the bench, valve body off [% held]. */
    air: computed(() => ({
      circuit: held(car.value, givens.circuit.value),
      seal: held(car.value, 'transferSeal'),
    })),
  } satisfies SimModel<HeatAndAirGivens> & Record<string, unknown>;
}
export type HeatAndAirModel = ReturnType<typeof makeModel>;

/** Of a healthy transmission [% held]. */
export const HEALTHY_AIR = {
  circuit: held(soundCar, 'forward'),
  seal: held(soundCar, 'transferSeal'),
};
